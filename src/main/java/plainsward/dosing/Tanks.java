package plainsward.dosing;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Units;

/**
 * How often a tank is filled for a volume of spray.
 *
 * @param count how many loads, the last of which may be a part of a tank; at least 1
 * @param full how many of them are full tanks
 * @param last the volume of the last load, in the tank's unit
 * @param isLastFull whether the last load is a full tank
 * @param steps the working
 */
public record Tanks(long count, long full, Quantity last, boolean isLastFull, List<Step> steps) {
  private static final BigInteger MOST = BigInteger.valueOf(1_000_000_000);

  /** Keeps the steps as they are. */
  public Tanks {
    steps = List.copyOf(steps);
  }

  /**
   * Parts a volume into tanks.
   *
   * @throws NotDosable where a volume is not above 0, or for more than a milliard loads
   */
  public static Tanks holding(Quantity spray, Quantity tank) {
    Given.above("spray_volume", spray, Dimension.VOLUME);
    Given.above("tank", tank, Dimension.VOLUME);
    Step fills = Working.of("fills", spray).over(tank).roundedUp(Units.ONE);
    BigInteger count = fills.result().value().numerator();
    if (count.compareTo(MOST) > 0) {
      throw new NotDosable("spray_volume", NotDosable.Why.TOO_LARGE);
    }
    return parted(spray, tank, fills);
  }

  private static Tanks parted(Quantity spray, Quantity tank, Step fills) {
    List<Step> steps = new ArrayList<>();
    steps.add(fills);
    long count = fills.result().value().numerator().longValueExact();
    if (fills.exact().value().isWhole()) {
      return new Tanks(count, count, tank, true, steps);
    }
    long full = count - 1;
    Quantity last = spray.in(tank.unit());
    if (full > 0) {
      Step filled =
          Working.of("full_fills", Quantity.of(full, Units.ONE)).times(tank).as(tank.unit());
      Step rest = Working.of("last_fill", spray).minus(filled.result()).as(tank.unit());
      steps.add(filled);
      steps.add(rest);
      last = rest.result();
    }
    return new Tanks(count, full, last, false, steps);
  }
}
