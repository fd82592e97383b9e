package plainsward.talk;

import java.util.Set;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;
import plainsward.units.Units;

/**
 * Numbers without a unit where the weather is spoken of: in "it's 84 and the wind is 7" the one is
 * degrees and the other a speed, in the units of the user's system.
 */
final class AirNumbers {
  private static final Set<String> WIND = Set.of("wind", "winds", "gust", "gusts", "breeze");
  private static final Set<String> AIR =
      Set.of("its", "it", "temp", "temps", "temperature", "be", "high", "low", "hit", "hitting");
  private static final int NEAR = 4;
  private static final Ratio MOST_WIND = Ratio.of(60);

  private final Facts turn;
  private final UnitSystem system;
  private final boolean weather;

  /**
   * @param weatherBefore whether the reply before this turn was about the weather
   */
  AirNumbers(Facts turn, UnitSystem system, boolean weatherBefore) {
    this.turn = turn;
    this.system = system;
    this.weather =
        weatherBefore || turn.asks("weather") || turn.has("wind") || turn.has("temperature");
  }

  /** The number as wind or as the air's temperature, or as it was. */
  Fact of(Fact number) {
    if (!weather) {
      return number;
    }
    Ratio value = number.amount().value();
    if (follows(number, WIND) && value.compareTo(MOST_WIND) < 0) {
      return measured(number, "wind", metric() ? Unit.of("km/h") : Units.MILE_PER_HOUR);
    }
    Ratio least = Ratio.of(metric() ? 0 : 25);
    Ratio most = Ratio.of(metric() ? 50 : 120);
    boolean air = value.compareTo(least) >= 0 && value.compareTo(most) <= 0;
    if (air && follows(number, AIR) && !follows(number, WIND)) {
      return measured(number, "temperature", metric() ? Unit.of("Cel") : Units.FAHRENHEIT);
    }
    return number;
  }

  private boolean metric() {
    return system == UnitSystem.METRIC;
  }

  private static Fact measured(Fact number, String role, Unit unit) {
    return number
        .as(role)
        .with(
            new Quantity(number.amount().value(), unit),
            number.high().map(h -> new Quantity(h.value(), unit)));
  }

  private boolean follows(Fact number, Set<String> words) {
    for (int i = number.at() - 1; i >= Math.max(0, number.at() - NEAR); i--) {
      if (turn.tokens().get(i).endsSentence() || turn.tokens().get(i).is(",")) {
        return false;
      }
      if (words.contains(turn.tokens().get(i).norm())) {
        return true;
      }
    }
    return false;
  }
}
