package plainsward.dosing;

import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;

/**
 * Growing degree days of one day by the simple average: (high + low) ÷ 2 − base, not below 0; the
 * low is not raised to the base first, as turf tables take it.
 *
 * @param value the degree days, 0 or more
 * @param scale the temperature scale whose degrees they are
 */
public record DegreeDays(Ratio value, Unit scale) {

  /** The degree days of a day, on the base's scale. */
  public static DegreeDays of(Quantity high, Quantity low, Quantity base) {
    Unit scale = Given.ofKind("temperature", base, Dimension.TEMPERATURE).unit();
    Ratio top = Given.ofKind("temperature", high, Dimension.TEMPERATURE).in(scale).value();
    Ratio bottom = Given.ofKind("temperature", low, Dimension.TEMPERATURE).in(scale).value();
    if (bottom.compareTo(top) > 0) {
      throw new NotDosable("temperature", NotDosable.Why.OUT_OF_RANGE);
    }
    Ratio above = top.plus(bottom).dividedBy(Ratio.of(2)).minus(base.value());
    return new DegreeDays(above.signum() < 0 ? Ratio.ZERO : above, scale);
  }

  /** These and another day's, on the same scale. */
  public DegreeDays plus(DegreeDays other) {
    if (!scale.equals(other.scale)) {
      throw new NotDosable("temperature", NotDosable.Why.WRONG_KIND);
    }
    return new DegreeDays(value.plus(other.value), scale);
  }
}
