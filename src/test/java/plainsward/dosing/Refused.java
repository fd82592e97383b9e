package plainsward.dosing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.function.Executable;

/** A check that a sum refuses what it must, and says what is the matter. */
final class Refused {
  private Refused() {}

  static void refused(String name, NotDosable.Why why, Executable sum) {
    NotDosable refusal = assertThrows(NotDosable.class, sum);
    assertEquals(name, refusal.name());
    assertEquals(why, refusal.why());
    assertEquals(name + " " + why.words(), refusal.getMessage());
  }
}
