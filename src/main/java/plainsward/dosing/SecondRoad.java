package plainsward.dosing;

import java.util.List;
import java.util.Optional;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;

/**
 * A dose checked by another road: what the mix holds (strength × spray) against what the ground
 * takes (label rate × area). The two agree only where the spray laid down per area is what the
 * strength was reckoned for.
 *
 * @param byRate what the ground takes by the label's rate
 * @param byMix what the mix holds
 * @param times how many times the rate's amount the mix holds
 * @param slip the round factor between them, if there is one
 * @param steps the working
 */
public record SecondRoad(
    Quantity byRate, Quantity byMix, Ratio times, Optional<RoundFactor> slip, List<Step> steps) {

  /** Keeps the steps as they are. */
  public SecondRoad {
    steps = List.copyOf(steps);
  }

  /** Compares rate × area with strength × spray. */
  public static SecondRoad of(Quantity rate, Quantity area, Quantity strength, Quantity spray) {
    Given.above("label_rate", rate, Dimension.VOLUME_PER_AREA, Dimension.MASS_PER_AREA);
    Given.above("area", area, Dimension.AREA);
    Strength.checked("strength", strength);
    Given.above("spray_volume", spray, Dimension.VOLUME);
    Step ground = Working.of("product_by_rate", rate).times(area).as(rate.unit().above().single());
    Step mix = Working.of("product_by_mix", strength).times(spray).as(ground.result().unit());
    return compared(ground.result(), mix.result(), List.of(ground, mix));
  }

  /** Compares an amount that somebody worked out with the right one. */
  public static SecondRoad compare(Quantity figure, Quantity right) {
    Given.above("figure", right, right.dimension());
    Given.above("figure", figure, right.dimension());
    return compared(right, figure, List.of());
  }

  private static SecondRoad compared(Quantity right, Quantity figure, List<Step> steps) {
    Ratio times = figure.ratioTo(right);
    return new SecondRoad(right, figure, times, RoundFactor.between(figure, right), steps);
  }

  /** Whether both roads lead to the same within a part of the right amount, such as 0.05. */
  public boolean agrees(Ratio tolerance) {
    Ratio off = times.minus(Ratio.ONE);
    Ratio size = off.signum() < 0 ? off.negate() : off;
    return size.compareTo(tolerance) <= 0;
  }
}
