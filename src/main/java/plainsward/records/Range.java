package plainsward.records;

import plainsward.units.Quantity;

/**
 * An amount, or a range of amounts of one unit.
 *
 * @param low the amount, or the lower end
 * @param high the upper end, not below the lower; the same as {@code low} where there is one figure
 */
public record Range(Quantity low, Quantity high) {

  /** Brings the upper end to the lower end's unit; ends in the wrong order are refused. */
  public Range {
    high = high.in(low.unit());
    if (high.compareTo(low) < 0) {
      throw new IllegalArgumentException("a range whose upper end is below its lower end");
    }
  }

  /** One amount. */
  public static Range of(Quantity amount) {
    return new Range(amount, amount);
  }

  /** Whether the two ends differ. */
  public boolean isRange() {
    return low.compareTo(high) != 0;
  }
}
