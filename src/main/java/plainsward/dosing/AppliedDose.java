package plainsward.dosing;

import java.util.List;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Units;

/**
 * What was really put down, after the fact.
 *
 * @param rate product per area, in the label's unit
 * @param times how many times the label's rate that is
 * @param rightArea the ground that the product should have covered
 * @param rightAmount the product that the ground should have had
 * @param steps the working
 */
public record AppliedDose(
    Quantity rate, Ratio times, Quantity rightArea, Quantity rightAmount, List<Step> steps) {

  /** Keeps the steps as they are. */
  public AppliedDose {
    steps = List.copyOf(steps);
  }

  /** An amount of product put on an area, against the label's rate. */
  public static AppliedDose of(Quantity amount, Quantity area, Quantity labelRate) {
    Given.above("product", amount, Dimension.VOLUME, Dimension.MASS);
    Given.above("area", area, Dimension.AREA);
    Given.above("label_rate", labelRate, amount.dimension().per(Dimension.AREA));
    Step rate = Working.of("applied_rate", amount).over(area).as(labelRate.unit());
    Step times = Working.of("times_label", rate.result()).over(labelRate).as(Units.ONE);
    Step ground = Working.of("area_covered", amount).over(labelRate).as(area.unit());
    Step right = Working.of("product_right", labelRate).times(area).as(amount.unit());
    return new AppliedDose(
        rate.result(),
        times.result().value(),
        ground.result(),
        right.result(),
        List.of(rate, times, ground, right));
  }

  /** Whether it was more than the label's rate. */
  public boolean isAboveLabel() {
    return times.compareTo(Ratio.ONE) > 0;
  }
}
