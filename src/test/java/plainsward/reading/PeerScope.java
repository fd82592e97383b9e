package plainsward.reading;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import plainsward.units.Ratio;

/**
 * Which of a peer's phrases are of our trade, by rules of kind and not case by case:
 *
 * <ul>
 *   <li>A unit that no job on a lawn is told in (the map {@code peers/units.jsonl} lacks it: light
 *       years, barrels, tons, micrograms, other currencies than dollars) is outside.
 *   <li>A value over a hundred million, of money from a million on, or below a thousandth is
 *       outside, and so are the counting words of such sizes (billion, trillion, lakh, crore).
 *   <li>Below nought only a temperature is read.
 *   <li>A ratio of two numbers (over, out of, in) is a mixing ratio or an area here, not a number.
 *   <li>A part of one in words is read where measures have it: halves to tenths, twelfths,
 *       sixteenths, hundredths, not twenty-firsts; and where its count is below a hundred ("one
 *       hundred thirty fifths" may be 26 or 2.86).
 *   <li>Durations are read where they are counted: in seconds, minutes, hours, days, weeks, months.
 *   <li>What names a unit without any value is no quantity and is passed over.
 * </ul>
 */
final class PeerScope {
  private static final Ratio LARGEST = Ratio.of(100_000_000);
  private static final Ratio MOST_MONEY = Ratio.of(1_000_000);
  private static final Ratio SMALLEST = Ratio.of(1, 1000);
  private static final Pattern TOO_LARGE =
      Pattern.compile("(?i).*\\b(billion|trillion|trillionths?|millionths?|lakh|crore)\\b.*");
  private static final Pattern RATIO = Pattern.compile("(?i).*\\b(over|out of|in)\\b.*");
  private static final Pattern MANY_PARTS =
      Pattern.compile(".*\\b(hundred|thousand|million)\\b.*(ths?|thirds?|quarters?|hal(f|ves))");
  private static final Pattern MIXED =
      Pattern.compile(".* and (an?|one|two|three|four|five|six|seven|eight|nine)[ -][a-z]+");
  private static final Pattern OTHER_PARTS =
      Pattern.compile(
          ".*\\b(twenty|thirty|[a-z]+ty)[ -](firsts?|[a-z]+ths?)|.*(thirtieths?|twentieths?)");
  private static final Pattern COUNTED =
      Pattern.compile(
          "(?i)(?!all|full|whole)(less than |more than )?((a )?couple of|an?|another|[\\d.]+|half|[a-z]+|[a-z]+ and a half|([a-z]+|\\d+) weeks?"
              + "( and)? ([a-z]+|\\d+))( a couple of)?[ -]?(an? )?(s|secs?|seconds?|m|mins?|minutes?|h|hrs?|hours?|days?|weeks?|months?|fortnight)"
              + "( and (a )?half)?");

  private final Map<String, List<String>> units = new HashMap<>();

  PeerScope() {
    for (JsonLines.Line line : JsonLines.read(Path.of("src/test/resources/peers/units.jsonl"))) {
      units.put(line.text("peer"), line.texts("ours"));
    }
  }

  /** Our codes of a peer's unit; none where it is outside. */
  List<String> ours(PeerCase.Wanted wanted) {
    return switch (wanted.kind()) {
      case "integer", "decimal", "fraction", "number" -> List.of("1");
      case "percent" -> List.of("%");
      case "money" ->
          wanted.unit().matches("(United States )?[dD]ollar|Cent")
              ? units.get(wanted.unit())
              : List.of();
      case "duration" -> List.of("s", "min", "h", "DAYS", "WEEKS", "MONTHS");
      default -> units.getOrDefault(wanted.unit(), List.of());
    };
  }

  /** Why a quantity is outside our trade; empty where it is inside. */
  Optional<String> outside(PeerCase.Wanted wanted) {
    if (ours(wanted).isEmpty()) {
      return Optional.of("unit");
    }
    boolean temperature = wanted.kind().equals("temperature");
    if (wanted.value().signum() < 0 && !temperature) {
      return Optional.of("below nought");
    }
    Ratio most = wanted.kind().equals("money") ? MOST_MONEY : LARGEST;
    boolean large = wanted.value().compareTo(most) >= 0;
    boolean small = wanted.value().signum() > 0 && wanted.value().compareTo(SMALLEST) < 0;
    if (large || small || TOO_LARGE.matcher(wanted.text()).matches()) {
      return Optional.of("size");
    }
    return byWords(wanted);
  }

  private static Optional<String> byWords(PeerCase.Wanted wanted) {
    if (wanted.kind().equals("fraction") && RATIO.matcher(wanted.text()).matches()) {
      return Optional.of("ratio");
    }
    if (wanted.kind().equals("fraction") && !isMeasured(wanted)) {
      return Optional.of("part");
    }
    boolean counted = COUNTED.matcher(wanted.text()).matches();
    return wanted.kind().equals("duration") && !counted ? Optional.of("span") : Optional.empty();
  }

  /** Whether the part is one of measures, and its count is told below a hundred. */
  private static boolean isMeasured(PeerCase.Wanted wanted) {
    String text = wanted.text().toLowerCase(Locale.ROOT);
    boolean counted = MANY_PARTS.matcher(text).matches() && !MIXED.matcher(text).matches();
    return !counted && !OTHER_PARTS.matcher(text).matches();
  }
}
