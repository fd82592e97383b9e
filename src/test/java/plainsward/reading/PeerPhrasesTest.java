package plainsward.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import plainsward.units.Ratio;

/**
 * Quantity phrases of another reader of plain words, in the folder that {@code -Dpeer.phrases}
 * names, are read alike where they are of our trade ({@link PeerScope} says what is). Each
 * difference stands in {@code peers/differences.jsonl} with its reason.
 */
class PeerPhrasesTest {
  private static final String FOLDER = System.getProperty("peer.phrases", "");
  private static final Path DIFFERENCES = Path.of("src/test/resources/peers/differences.jsonl");
  private static final double FEWEST_ALIKE = 0.97;
  private static final Map<String, Ratio> SECONDS =
      Map.of(
          "s", Ratio.ONE,
          "min", Ratio.of(60),
          "h", Ratio.of(3600),
          "DAYS", Ratio.of(86_400),
          "WEEKS", Ratio.of(604_800),
          "MONTHS", Ratio.of(2_592_000));
  private static final Set<String> NO_DIMENSION =
      Set.of("1", "%", "USD", "s", "min", "h", "DAYS", "WEEKS", "MONTHS");
  private static final double ROUNDED = 1e-9;

  private final PeerScope scope = new PeerScope();
  private final Map<String, Integer> outside = new TreeMap<>();
  private final Map<String, int[]> tally = new TreeMap<>();
  private final Map<String, String> different = new TreeMap<>();

  @Test
  void whatIsOfOurTradeIsReadAlike() {
    Assumptions.assumeTrue(
        !FOLDER.isEmpty(), "no phrases: give their folder with -Dpeer.phrases=DIR");
    PeerCase.all(Path.of(FOLDER)).forEach(this::compare);
    int all = tally.values().stream().mapToInt(n -> n[0]).sum();
    int alike = tally.values().stream().mapToInt(n -> n[1]).sum();
    tally.forEach((file, n) -> System.out.printf("%-20s %3d of %3d alike%n", file, n[1], n[0]));
    System.out.printf(
        "peer phrases: %d of %d of our trade alike, outside %s%n", alike, all, outside);
    if ("show".equals(System.getProperty("peer.differences"))) {
      different.forEach((id, what) -> System.out.println(id + ": " + what));
    }
    assertTrue(alike >= all * FEWEST_ALIKE, alike + " of " + all);
    assertEquals(known(), new TreeSet<>(different.keySet()), "differences without a reason");
  }

  private static TreeSet<String> known() {
    TreeSet<String> ids = new TreeSet<>();
    for (JsonLines.Line line : JsonLines.read(DIFFERENCES)) {
      assertTrue(!line.text("reason").isBlank(), line.place());
      ids.add(line.text("id"));
    }
    return ids;
  }

  private void compare(PeerCase peer) {
    Optional<String> why =
        peer.wanted().stream().map(scope::outside).flatMap(Optional::stream).findFirst();
    boolean empty = peer.wanted().isEmpty() && !peer.file().startsWith("negative");
    if (why.isPresent() || empty) {
      outside.merge(why.orElse("no value"), 1, Integer::sum);
      return;
    }
    int[] n = tally.computeIfAbsent(peer.file(), f -> new int[2]);
    n[0]++;
    List<PeerReading.Found> found = found(peer);
    boolean alike =
        peer.wanted().isEmpty()
            ? found.stream().noneMatch(f -> isOfModel(f, peer.file()))
            : peer.wanted().stream()
                .allMatch(w -> found.stream().anyMatch(f -> isSame(w, f, isAsTyped(peer))));
    n[1] += alike ? 1 : 0;
    if (!alike) {
      different.put(peer.id(), peer.input() + " | " + peer.wanted() + " | " + found);
    }
  }

  private static List<PeerReading.Found> found(PeerCase peer) {
    boolean numbers = List.of("digits", "number-words", "fraction").contains(peer.file());
    return numbers ? PeerReading.numbers(peer.input()) : PeerReading.amounts(peer.input());
  }

  /** Whether something found is of the kind that must not be found in a file of misleading text. */
  private static boolean isOfModel(PeerReading.Found found, String file) {
    boolean temperature = List.of("Cel", "[degF]").contains(found.unit());
    return switch (file) {
      case "negative-money" -> found.unit().equals("USD");
      case "negative-number" -> found.unit().equals("1");
      case "negative-percent" -> found.unit().equals("%");
      case "negative-temperature" -> temperature;
      default -> !NO_DIMENSION.contains(found.unit()) && !temperature;
    };
  }

  /** Whether places in the cleaned text are places in the phrase. */
  private static boolean isAsTyped(PeerCase peer) {
    return Cleaner.clean(peer.input()).length() == peer.input().length();
  }

  private boolean isSame(PeerCase.Wanted wanted, PeerReading.Found found, boolean placed) {
    boolean overlaps = found.from() < wanted.to() && wanted.from() < found.to();
    if (placed && !overlaps) {
      return false;
    }
    for (String unit : scope.ours(wanted)) {
      boolean cents = unit.equals("USD/100");
      boolean span = wanted.kind().equals("duration");
      String code = cents ? "USD" : unit;
      Ratio peers = cents ? wanted.value().dividedBy(Ratio.of(100)) : wanted.value();
      Ratio ours = span ? found.value().times(SECONDS.get(unit)) : found.value();
      if (found.unit().equals(code) && isClose(peers, ours)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isClose(Ratio one, Ratio other) {
    double a = one.toDouble();
    double b = other.toDouble();
    return Math.abs(a - b) <= ROUNDED * Math.max(Math.abs(a), Math.abs(b));
  }
}
