package plainsward.reading;

import java.util.Optional;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;

/**
 * A number with a unit, as it was said.
 *
 * @param from its first token
 * @param to the token after its last
 * @param low the amount; for a range the low end
 * @param high the high end of a range
 * @param doubt what the unit's word leaves open: {@code ounce}, {@code gallon}, {@code degree},
 *     {@code unit} where no unit was said at all, or empty
 * @param dry the unit meant of a dry product
 * @param implied whether no number was said ("gallon and a half" is not implied, "gallon" is)
 */
record Measured(
    int from,
    int to,
    Quantity low,
    Optional<Quantity> high,
    String doubt,
    Optional<Unit> dry,
    boolean implied) {

  Dimension dimension() {
    return low.dimension();
  }

  boolean is(Dimension dimension) {
    return low.dimension().equals(dimension);
  }

  Measured plusPart(Ratio part, int end) {
    return new Measured(
        from, end, new Quantity(low.value().plus(part), low.unit()), high, doubt, dry, false);
  }

  Measured upTo(Measured end) {
    boolean rising = low.compareTo(end.low) <= 0;
    return new Measured(
        from,
        end.to,
        rising ? low : end.low,
        Optional.of(rising ? end.low : low),
        doubt,
        dry,
        false);
  }

  Measured negated(int start) {
    Quantity below = new Quantity(low.value().negate(), low.unit());
    return new Measured(start, to, below, high, doubt, dry, implied);
  }

  Measured to(int end) {
    return new Measured(from, end, low, high, doubt, dry, implied);
  }

  Measured from(int start) {
    return new Measured(start, to, low, high, doubt, dry, implied);
  }
}
