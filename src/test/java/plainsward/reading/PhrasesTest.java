package plainsward.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every phrase under {@code phrases/} is read as its line says, and no more than it allows. */
class PhrasesTest {
  private static final String FAULTS = "known-faults.jsonl";
  private static final Set<String> KINDS =
      Set.of(
          "analysis",
          "areas",
          "asks",
          "dates",
          "fractions",
          "money",
          "must-not-read",
          "numbers",
          "owners",
          "rates-per-area",
          "rates-per-volume",
          "ratios",
          "roles",
          "shapes",
          "signs",
          "tanks",
          "units",
          "waits");
  private static final int FEWEST = 400;
  private static final Map<String, int[]> TALLY = new TreeMap<>();

  static Stream<JsonLines.Line> phrases() {
    return lines(false).stream();
  }

  private static List<JsonLines.Line> lines(boolean faults) {
    return JsonLines.files("phrases").stream()
        .filter(f -> f.endsWith(FAULTS) == faults)
        .flatMap(f -> JsonLines.read(f).stream())
        .toList();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("phrases")
  void thePhraseIsReadAsItsLineSays(JsonLines.Line line) {
    int[] tally = TALLY.computeIfAbsent(line.file(), f -> new int[2]);
    tally[0]++;
    List<String> faults = PhraseCheck.faults(line);
    assertTrue(
        faults.isEmpty(),
        () -> line.place() + " \"" + line.text("say") + "\": " + String.join("; ", faults));
    tally[1]++;
  }

  @Test
  void everyKindHasItsFileAndThereAreEnoughPhrases() {
    Set<String> files =
        JsonLines.files("phrases").stream()
            .map(Path::getFileName)
            .map(f -> f.toString().replace(".jsonl", ""))
            .collect(Collectors.toSet());
    assertTrue(files.containsAll(KINDS), () -> "there are only " + files);
    assertTrue(lines(false).size() >= FEWEST, "too few phrases");
  }

  @Test
  void noPhraseStandsTwice() {
    List<String> said = phrases().map(l -> l.text("units") + " " + l.text("say")).sorted().toList();
    assertEquals(said.stream().distinct().toList(), said);
  }

  /** A known fault has a reason; one that is mended is told, to be moved to its own file. */
  @Test
  void everyKnownFaultHasAReason() {
    List<JsonLines.Line> faults = lines(true);
    for (JsonLines.Line line : faults) {
      assertTrue(!line.text("reason").isBlank(), line.place());
    }
    List<String> mended =
        faults.stream()
            .filter(l -> PhraseCheck.faults(l).isEmpty())
            .map(l -> l.text("say"))
            .toList();
    System.out.println("phrases known to be misread: " + faults.size() + ", mended: " + mended);
  }

  @AfterAll
  static void tell() {
    TALLY.forEach(
        (file, n) -> System.out.printf("%-24s total %4d  passed %4d%n", file, n[0], n[1]));
  }
}
