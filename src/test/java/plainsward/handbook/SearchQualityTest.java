package plainsward.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** How often people's own words find the right note, and how well doubt is told. */
class SearchQualityTest {
  private static final Path OFF_SUBJECT = Path.of("src/test/resources/handbook/off-subject.txt");
  private static final int FEWEST_WORDINGS = 320;
  private static final double LEAST_FIRST = 0.85;
  private static final double LEAST_AMONG_THREE = 0.95;
  private static final double LEAST_BLIND_FIRST = 0.8;
  private static final double SURE = 0.5;

  private static final Handbook BOOK = Handbook.shipped();
  private static final List<Found> FOUND = new ArrayList<>();

  /** A wording with its hits; place is the right note's, from 0, or -1. */
  private record Found(Wording wording, List<Hit> hits, int place) {
    String topic() {
      return wording.notes().stream()
          .findFirst()
          .flatMap(BOOK::note)
          .map(note -> note.topics().get(0))
          .orElse("?");
    }
  }

  @BeforeAll
  static void searchAll() throws IOException {
    FOUND.clear();
    for (Wording wording : Wording.all()) {
      List<Hit> hits = BOOK.search(wording.ask(), Search.first(3));
      int place = -1;
      for (int i = hits.size() - 1; i >= 0; i--) {
        place = wording.notes().contains(hits.get(i).note().id()) ? i : place;
      }
      FOUND.add(new Found(wording, hits, place));
    }
    report();
  }

  private static void report() {
    Map<String, int[]> byTopic = new TreeMap<>();
    for (Found found : FOUND) {
      int[] counts = byTopic.computeIfAbsent(found.topic(), k -> new int[3]);
      counts[0]++;
      counts[1] += found.place == 0 ? 1 : 0;
      counts[2] += found.place >= 0 ? 1 : 0;
    }
    byTopic.forEach(
        (topic, n) ->
            System.out.printf(
                Locale.ROOT,
                "%-12s %3d asked, %3d first, %3d in three%n",
                topic,
                n[0],
                n[1],
                n[2]));
    System.out.printf(
        Locale.ROOT,
        "all %d: first %.1f %%, among three %.1f %%%n",
        FOUND.size(),
        100 * share(found -> found.place == 0),
        100 * share(found -> found.place >= 0));
  }

  private static double share(Predicate<Found> fits) {
    return (double) FOUND.stream().filter(fits).count() / FOUND.size();
  }

  @Test
  void theWordingsAreManyAndNobodyElses() throws IOException {
    Set<String> sample = new HashSet<>();
    Set<String> ids = new HashSet<>();
    for (Path file : NoteFolder.files(Path.of("corpus/notes"))) {
      BOOK.note(file.getFileName().toString().replace(".md", ""))
          .ifPresent(
              note -> {
                ids.add(note.id());
                note.questions().forEach(q -> sample.add(plain(q)));
              });
    }
    Set<String> seen = new HashSet<>();
    List<String> wrong = new ArrayList<>();
    List<Wording> all = new ArrayList<>(Wording.all());
    all.addAll(Wording.blind());
    for (Wording wording : all) {
      String ask = plain(wording.ask());
      if (sample.contains(ask) || !seen.add(ask) || !ids.containsAll(wording.notes())) {
        wrong.add(wording.toString());
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(seen.size() >= FEWEST_WORDINGS, () -> seen.size() + " wordings");
  }

  @Test
  void theRightNoteIsMostlyFirstAndNearlyAlwaysAmongThree() {
    double first = share(found -> found.place == 0);
    double three = share(found -> found.place >= 0);
    assertTrue(first >= LEAST_FIRST, () -> "first: " + first + missed());
    assertTrue(three >= LEAST_AMONG_THREE, () -> "among three: " + three + missed());
  }

  /** What was mended after the blind rounds stays mended; it is no measure of words unseen. */
  @Test
  void theBlindWordingsKeepWhatWasMended() throws IOException {
    List<String> missed = new ArrayList<>();
    List<Wording> blind = Wording.blind();
    for (Wording wording : blind) {
      List<Hit> hits = BOOK.search(wording.ask(), Search.first(1));
      if (hits.isEmpty() || !wording.notes().contains(hits.get(0).note().id())) {
        missed.add(wording.ask());
      }
    }
    double first = 1 - missed.size() / (double) blind.size();
    System.out.printf(Locale.ROOT, "blind %d: first %.1f %%%n", blind.size(), 100 * first);
    assertTrue(first >= LEAST_BLIND_FIRST, () -> first + String.join("\n", missed));
  }

  private static String missed() {
    StringBuilder missed = new StringBuilder();
    for (Found found : FOUND) {
      if (found.place < 0) {
        missed.append('\n').append(found.wording.ask()).append(" -> ");
        found.hits.forEach(hit -> missed.append(hit.note().id()).append(' '));
      }
    }
    return missed.toString();
  }

  @Test
  void rightNotesAreMostlyShownWithConfidence() {
    long right = FOUND.stream().filter(f -> f.place == 0).count();
    long sure =
        FOUND.stream().filter(f -> f.place == 0 && f.hits.get(0).confidence() >= SURE).count();
    assertTrue(sure >= 0.9 * right, () -> sure + " of " + right + " are sure");
  }

  @Test
  void questionsOffTheSubjectAreMetWithDoubt() throws IOException {
    List<String> asked = Files.readAllLines(OFF_SUBJECT);
    List<String> sure = new ArrayList<>();
    for (String ask : asked) {
      for (Hit hit : BOOK.search(ask, Search.first(1))) {
        // A note that says what is outside the subject is the right answer to such a question.
        if (hit.confidence() >= SURE && !hit.note().topics().contains("other")) {
          sure.add(ask + " -> " + hit.note().id());
        }
      }
    }
    assertTrue(sure.size() <= asked.size() / 10, sure::toString);
  }

  @Test
  void confidenceIsNearTheShareThatIsRight() {
    for (double from = 0.5; from < 0.95; from += 0.25) {
      double low = from;
      double high = from + 0.25;
      List<Found> band =
          FOUND.stream()
              .filter(f -> !f.hits.isEmpty())
              .filter(f -> f.hits.get(0).confidence() >= low && f.hits.get(0).confidence() < high)
              .toList();
      double told = band.stream().mapToDouble(f -> f.hits.get(0).confidence()).average().orElse(0);
      double right = band.stream().filter(f -> f.place == 0).count() / (double) band.size();
      assertEquals(right, told, 0.15, () -> "from " + low + " among " + band.size());
    }
  }

  private static String plain(String text) {
    return String.join(" ", Words.of(text));
  }
}
