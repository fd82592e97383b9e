package plainsward.reading;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.time.LocalDate;
import java.util.Set;
import plainsward.FuzzClock;
import plainsward.FuzzText;
import plainsward.units.UnitSystem;

/** Any text is read in time, without an exception, and its tokens stand in it in order. */
public final class ReaderFuzz {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);
  private static final Vocabulary KNOWN = new Vocabulary(Set.of("front"), Set.of("blue jug"));

  @FuzzTest
  void fuzz(byte[] data) {
    fuzzerTestOneInput(data);
  }

  /** One input, by the name that the fuzzer looks for. */
  public static void fuzzerTestOneInput(byte[] data) {
    String text = FuzzText.of(data);
    for (UnitSystem system : UnitSystem.values()) {
      FuzzClock.within(50, () -> read(text, system));
    }
  }

  private static void read(String text, UnitSystem system) {
    Facts facts = new Reader(system, TODAY).read(text, KNOWN);
    int end = 0;
    for (Token token : facts.tokens()) {
      if (token.start() < end || token.end() > facts.text().length()) {
        throw new AssertionError("the tokens are out of order at " + token);
      }
      end = token.end();
    }
    for (Fact fact : facts.all()) {
      if (fact.at() < 0 || fact.at() > facts.tokens().size() || fact.name().isEmpty()) {
        throw new AssertionError("a fact stands nowhere: " + fact);
      }
    }
  }
}
