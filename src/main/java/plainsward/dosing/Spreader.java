package plainsward.dosing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Unit;
import plainsward.units.Units;

/**
 * A granular product for an area: product = rate × area, bags = product ÷ bag, rounded up. Dry
 * products are weighed, never measured in spoons.
 *
 * @param product the product in all
 * @param bags how many bags, where a bag's weight is known
 * @param left what is left of the last bag, where a bag's weight is known
 * @param steps the working
 */
public record Spreader(
    Quantity product, Optional<Quantity> bags, Optional<Quantity> left, List<Step> steps) {

  /** Keeps the steps as they are. */
  public Spreader {
    steps = List.copyOf(steps);
  }

  /** The product for an area at a rate. */
  public static Spreader of(Quantity rate, Quantity area) {
    Given.above("spread_rate", rate, Dimension.MASS_PER_AREA);
    Given.above("area", area, Dimension.AREA);
    Step step = Working.of("product_total", rate).times(area).as(rate.unit().above().single());
    return new Spreader(step.result(), Optional.empty(), Optional.empty(), List.of(step));
  }

  /** The same in bags of a weight. */
  public Spreader inBags(Quantity bag) {
    Given.above("bag", bag, Dimension.MASS);
    Step count = Working.of("bags", product).over(bag).roundedUp(Units.ONE);
    Quantity bought = bag.times(count.result().value());
    List<Step> all = new ArrayList<>(steps);
    all.add(count);
    Quantity rest = bought.minus(product);
    return new Spreader(product, Optional.of(count.result()), Optional.of(rest), all);
  }

  /** The bags for an area by what one bag is said to cover: "a 15,000 sq ft bag". */
  public static Step bagsByCoverage(Quantity area, Quantity bagCovers) {
    Given.above("area", area, Dimension.AREA);
    Given.above("bag", bagCovers, Dimension.AREA);
    return Working.of("bags", area).over(bagCovers).roundedUp(Units.ONE);
  }

  /** The rate of a weight thrown on, or a bag said to cover, an area. */
  public static Step rate(Quantity weight, Quantity area) {
    return rate(weight, area, weight.unit().single().per(Fitting.plot(area.unit())));
  }

  /** The rate of a weight thrown on, or a bag said to cover, an area, in the unit asked for. */
  public static Step rate(Quantity weight, Quantity area, Unit unit) {
    Given.above("test_amount", weight, Dimension.MASS);
    Given.above("test_area", area, Dimension.AREA);
    return Working.of("spread_rate", weight).over(area).as(unit);
  }

  /** What a spreader set right throws on a test area: rate × area. */
  public static Step testWeight(Quantity rate, Quantity testArea) {
    Given.above("spread_rate", rate, Dimension.MASS_PER_AREA);
    Given.above("test_area", testArea, Dimension.AREA);
    return Working.of("test_amount", rate).times(testArea).as(rate.unit().above().single());
  }

  /** How long a test strip must be for an area at a swath: area ÷ swath. */
  public static Step course(Quantity testArea, Quantity swath) {
    return Calibration.course(testArea, swath, swath.unit());
  }

  /** How far a rate is above its target, in per cent of the target; below 0 if it is under. */
  public static Step overTarget(Quantity rate, Quantity target) {
    Given.above("spread_rate", target, Dimension.MASS_PER_AREA, Dimension.VOLUME_PER_AREA);
    Given.above("spread_rate", rate, target.dimension());
    return Working.of("over_target", rate)
        .over(target)
        .minus(Quantity.of(100, Units.PERCENT))
        .as(Units.PERCENT);
  }
}
