package plainsward.talk;

import java.util.Optional;
import java.util.Set;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.units.Quantity;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;
import plainsward.units.Units;

/**
 * Bare numbers that a label's limits give, by what the turn speaks of: "wind 12, label says 10",
 * "did 2, label max 4", "it's been 10 days, label says 14".
 */
final class BareLimits {
  private static final Set<String> LABEL =
      Set.of("label", "labels", "says", "max", "maximum", "limit", "allows", "most", "wants");
  private static final Set<String> DONE = Set.of("did", "done", "used", "made", "sprayed", "had");
  private static final Set<String> WIND = Set.of("wind", "winds", "gusts", "breeze");
  private static final int NEAR = 3;

  private final Facts turn;
  private final UnitSystem system;

  BareLimits(Facts turn, UnitSystem system) {
    this.turn = turn;
    this.system = system;
  }

  /** The number in its role, or nothing. */
  Optional<Fact> of(Fact number) {
    boolean label = follows(number, LABEL);
    if (turn.hasWord(WIND)) {
      boolean wind = follows(number, WIND);
      String role = wind ? "wind" : "label_limit";
      return wind || label ? Optional.of(measured(number, role, mph())) : Optional.empty();
    }
    if (!turn.asks("repeat") || number.high().isPresent()) {
      return Optional.empty();
    }
    boolean counted = turn.asks().get(0).want().equals("applications_left");
    if (counted && (label || follows(number, DONE))) {
      return Optional.of(number.as(label ? "season_limit" : "applied_count"));
    }
    boolean days = turn.has("elapsed") || turn.has("day") || turn.has("last_applied");
    return label && days && !turn.has("interval")
        ? Optional.of(measured(number, "interval", Units.DAY).worded("days"))
        : Optional.empty();
  }

  private Unit mph() {
    return system == UnitSystem.METRIC ? Unit.of("km/h") : Units.MILE_PER_HOUR;
  }

  private static Fact measured(Fact number, String role, Unit unit) {
    return number.as(role).with(new Quantity(number.amount().value(), unit), Optional.empty());
  }

  private boolean follows(Fact number, Set<String> words) {
    for (int i = number.at() - 1; i >= Math.max(0, number.at() - NEAR); i--) {
      if (words.contains(turn.tokens().get(i).norm())) {
        return true;
      }
    }
    return false;
  }
}
