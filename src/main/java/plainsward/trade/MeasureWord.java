package plainsward.trade;

import java.util.Optional;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;

/**
 * A unit as people spell it.
 *
 * @param us the unit meant where people think in US measures
 * @param imperial the unit meant where they think in imperial ones
 * @param metric the unit meant where they think in metric ones
 * @param doubt what the word leaves open: {@code ounce} (fluid or weight), {@code gallon} (US or
 *     imperial), {@code degree} (Fahrenheit or Celsius), or empty
 * @param dry the unit meant of a product known to be dry
 */
public record MeasureWord(Unit us, Unit imperial, Unit metric, String doubt, Optional<Unit> dry) {

  /** The unit meant by somebody who thinks in these measures. */
  public Unit in(UnitSystem system) {
    return switch (system) {
      case US -> us;
      case IMPERIAL -> imperial;
      case METRIC -> metric;
    };
  }
}
