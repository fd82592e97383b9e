package plainsward.reading;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Ratio;

/** Tells temperatures from angles and from codes, and those below nought from the rest. */
final class Degrees extends TokenWalk {
  private static final Ratio BOILING = Ratio.of(212);
  private static final Set<String> TURNED =
      Set.of(
          "angle", "angles", "nozzle", "nozzles", "tip", "tips", "fan", "flat", "spray", "turn",
          "bend", "corner", "pattern", "slope", "cone");
  private static final Set<String> DECADE = Set.of("the", "mid", "low", "lower", "high", "upper");
  private static final Set<String> YEARS =
      Set.of(
          "since", "back", "built", "bought", "born", "from", "house", "planted", "early", "late");
  private static final Set<String> DIFFERENT =
      Set.of(
          "below",
          "above",
          "warmer",
          "cooler",
          "colder",
          "hotter",
          "higher",
          "lower",
          "difference",
          "swing");
  private static final Set<String> TURNING = Set.of("rotate", "turn", "angle", "tilt", "slope");

  Degrees(List<Token> tokens) {
    super(tokens);
  }

  /** Whether a number with this unit can be a temperature, where the unit says that it is one. */
  boolean areTemperature(int from, Numeral number, UnitReader.Found unit) {
    if (!unit.word().us().dimension().equals(Dimension.TEMPERATURE)) {
      return true;
    }
    boolean letter = tokens.get(unit.to() - 1).norm().length() == 1 && unit.to() - number.to() == 1;
    boolean code =
        letter && !word(number.to()).equals("\u00b0") && number.low().compareTo(BOILING) > 0;
    boolean bare = unit.word().doubt().equals("degree");
    boolean angle =
        bare
            && (TURNED.contains(word(unit.to()))
                || TURNING.contains(word(from - 1))
                || word(from - 1).equals("a") && TURNING.contains(word(from - 2)));
    return !code && !angle && !isDifference(unit.to());
  }

  /** "in the 80s", "mid 70s": ten degrees or three of them; empty where no such weather is told. */
  Optional<Numeral> decade(int i) {
    boolean tens = isNumber(i) && is(i + 1, "s") && isTight(i + 1) && word(i).endsWith("0");
    if (!tens || !DECADE.contains(word(i - 1)) || word(i).length() > 3 || isYears(i)) {
      return Optional.empty();
    }
    Ratio low = Ratio.of(word(i));
    boolean part = !is(i - 1, "the") && !is(i - 2, "to") && !is(i - 2, "-");
    int first = part ? is(i - 1, "low") || is(i - 1, "lower") ? 1 : is(i - 1, "mid") ? 4 : 7 : 0;
    int last = part ? first + 2 : 9;
    Ratio high = low.plus(Ratio.of(last));
    return Optional.of(
        new Numeral(i, i + 2, low.plus(Ratio.of(first)), Optional.of(high), false, false));
  }

  /** "back in the 80s": years and no weather. */
  private boolean isYears(int i) {
    boolean years = false;
    for (int k = i - 5; k < i; k++) {
      years |= YEARS.contains(word(k));
    }
    return years;
  }

  /** The place after "below zero" that stands here, else 0. */
  int pastBelowZero(int i) {
    boolean below = word(i).equals("below") || word(i).equals("under");
    boolean zero = word(i + 1).equals("zero") || word(i + 1).equals("0");
    return below && zero ? i + 2 : 0;
  }

  /** "5 degrees below normal", "10 degrees warmer": so many degrees are no temperature. */
  private boolean isDifference(int i) {
    boolean zero = word(i + 1).equals("zero") || word(i + 1).equals("0");
    return DIFFERENT.contains(word(i)) && !zero;
  }

  /** Whether a sign or word that takes below nought stands here, and no dash, bullet or sum. */
  boolean isBelow(int i) {
    if (word(i).equals("minus") || word(i).equals("negative")) {
      return i == 0 || !tokens.get(i - 1).isNumber();
    }
    if (!word(i).equals("-") || i + 1 >= tokens.size()) {
      return false;
    }
    boolean tight = !tokens.get(i + 1).apart();
    boolean starts = i == 0 || tokens.get(i - 1).endsSentence();
    boolean joined = i > 0 && (!tokens.get(i).apart() || tokens.get(i - 1).isNumber());
    return !joined && (tight || !starts);
  }
}
