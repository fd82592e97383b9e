package plainsward.talk;

import java.util.List;
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
  private static final Set<String> NIGHT =
      Set.of("night", "nights", "overnight", "lows", "low", "nighttime");
  private static final Set<String> DAY =
      Set.of("day", "days", "daytime", "highs", "high", "afternoon", "afternoons");
  private static final Set<String> LINKS = Set.of("at", "in", "by", "during", "the", "over");
  private static final Set<String> UNCLEAR = Set.of("number", "interval", "temperature");
  private static final int NEAR = 4;
  private static final Set<String> TO = Set.of("to");
  private static final Set<String> DOWN = Set.of("down", "up", "dropped", "died");
  private static final Ratio MOST_BREEZE = Ratio.of(30);
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
    boolean dropped =
        turn.isWord(number.at() - 1, TO)
            && turn.isWord(number.at() - 2, DOWN)
            && value.compareTo(MOST_BREEZE) < 0;
    if ((dropped || follows(number, WIND)) && value.compareTo(MOST_WIND) < 0) {
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

  /**
   * "its 48 at night and 61 day": it is sprayed by day, so the day's number is the air's, and the
   * night's is kept beside it.
   */
  void nights(List<Fact> all) {
    if (!weather || !turn.hasWord(NIGHT) || !turn.hasWord(DAY)) {
      return;
    }
    all.replaceAll(fact -> UNCLEAR.contains(fact.name()) ? ofDayOrNight(fact) : fact);
  }

  private Fact ofDayOrNight(Fact fact) {
    int at = fact.at();
    boolean night = turn.isWord(at - 1, NIGHT) || turn.isWord(at - 2, NIGHT) || isBefore(at, NIGHT);
    boolean day = turn.isWord(at - 1, DAY) || turn.isWord(at - 2, DAY) || isBefore(at, DAY);
    if (night == day) {
      return fact;
    }
    return measured(
        fact,
        night ? "night_temperature" : "temperature",
        metric() ? Unit.of("Cel") : Units.FAHRENHEIT);
  }

  private boolean isBefore(int number, Set<String> words) {
    return turn.isWord(number + 1, words)
        || turn.isWord(number + 1, LINKS) && turn.isWord(number + 2, words)
        || turn.isWord(number + 2, LINKS) && turn.isWord(number + 3, words);
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
