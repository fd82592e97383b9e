package plainsward.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The parts that words play in a mishap, alone and in sets. */
class PartTest {
  @Test
  void eachPartHasOnePlaceOfItsOwn() {
    Set<Long> bits = new HashSet<>();
    for (Part part : Part.values()) {
      assertEquals(1, Long.bitCount(part.bit), part.name());
      bits.add(part.bit);
    }
    assertEquals(Part.values().length, bits.size());
  }

  @Test
  void aNameIsReadInAnyCase() {
    assertSame(Part.EYE, Part.named("eye"));
    assertThrows(IllegalArgumentException.class, () -> Part.named("elbow"));
  }

  @Test
  void aSetHoldsItsPartsAndNoOther() {
    long set = Part.set(Part.EYE, Part.MOUTH, Part.EYE);
    assertEquals(Part.EYE.bit + Part.MOUTH.bit, set);
    assertEquals(0, Part.set());
  }

  @Test
  void aSetOfNamesLeavesOutWhatIsNoPart() {
    assertEquals(
        Part.EYE.bit + Part.MOUTH.bit, Part.set(List.of("eye", "nothing", "mouth"), "nothing"));
  }
}
