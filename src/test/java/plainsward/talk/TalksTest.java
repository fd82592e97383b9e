package plainsward.talk;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainsward.reading.JsonLines;

/** Every conversation under {@code talk/} goes as its line expects. */
class TalksTest {
  private static final String FAULTS = "known-faults.jsonl";
  private static final int FEWEST = 40;
  private static final Map<String, int[]> TALLY = new TreeMap<>();

  static Stream<JsonLines.Line> talks() {
    return lines(false).stream();
  }

  private static List<JsonLines.Line> lines(boolean faults) {
    return JsonLines.files("talk").stream()
        .filter(f -> f.endsWith(FAULTS) == faults)
        .flatMap(f -> JsonLines.read(f).stream())
        .toList();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("talks")
  void theTalkGoesAsItsLineExpects(JsonLines.Line line) {
    int[] tally = TALLY.computeIfAbsent(line.file(), f -> new int[2]);
    tally[0]++;
    List<String> faults = TalkCheck.faults(line);
    assertTrue(
        faults.isEmpty(),
        () -> line.place() + " " + line.texts("turns") + ": " + String.join("; ", faults));
    tally[1]++;
  }

  @Test
  void everyTalkExpectsSomethingAndThereAreEnough() {
    List<JsonLines.Line> all = lines(false);
    assertTrue(all.size() >= FEWEST, "too few talks");
    for (JsonLines.Line line : all) {
      assertTrue(!line.objects("expect").isEmpty(), line.place());
    }
  }

  /** A known fault has a reason; one that is mended is told, to be moved to its own file. */
  @Test
  void everyKnownFaultHasAReason() {
    List<JsonLines.Line> faults = lines(true);
    for (JsonLines.Line line : faults) {
      assertTrue(!line.text("reason").isBlank(), line.place());
    }
    List<List<String>> mended =
        faults.stream()
            .filter(l -> TalkCheck.faults(l).isEmpty())
            .map(l -> l.texts("turns"))
            .toList();
    System.out.println("talks known to go wrong: " + faults.size() + ", mended: " + mended);
  }

  @AfterAll
  static void tell() {
    TALLY.forEach(
        (file, n) -> System.out.printf("%-30s total %4d  passed %4d%n", file, n[0], n[1]));
  }
}
