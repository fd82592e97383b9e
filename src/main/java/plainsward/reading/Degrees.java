package plainsward.reading;

import java.util.List;
import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Ratio;

/** Tells temperatures from angles and from codes, and those below nought from the rest. */
final class Degrees {
  private static final Ratio BOILING = Ratio.of(212);
  private static final Set<String> TURNED =
      Set.of(
          "angle", "angles", "nozzle", "nozzles", "tip", "tips", "fan", "flat", "spray", "turn",
          "bend", "corner", "pattern", "slope", "cone");
  private static final Set<String> TURNING = Set.of("rotate", "turn", "angle", "tilt", "slope");

  private final List<Token> tokens;

  Degrees(List<Token> tokens) {
    this.tokens = tokens;
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
    return !code && !angle;
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

  private String word(int i) {
    return i >= 0 && i < tokens.size() ? tokens.get(i).norm() : "";
  }
}
