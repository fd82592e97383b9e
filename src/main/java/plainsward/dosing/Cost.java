package plainsward.dosing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Unit;

/**
 * What a product costs per area: price ÷ content × rate. Money is never changed from one currency
 * into another.
 *
 * @param rate money per 1,000 sq ft, or per 100 m² where the rate is metric
 * @param total money for the job, where an area is known
 * @param steps the working
 */
public record Cost(Quantity rate, Optional<Quantity> total, List<Step> steps) {

  /** Keeps the steps as they are. */
  public Cost {
    steps = List.copyOf(steps);
  }

  /** The cost of a product by the price of a container, its content and the rate per area. */
  public static Cost of(Quantity price, Quantity content, Quantity rate) {
    Given.above("price", price, Dimension.MONEY);
    Given.above("container", content, Dimension.VOLUME, Dimension.MASS);
    Given.above("label_rate", rate, content.dimension().per(Dimension.AREA));
    Unit unit = price.unit().per(Fitting.costPlot(Fitting.areaBelow(rate.unit())));
    return made(Working.of("cost_rate", price).over(content).times(rate).as(unit));
  }

  /** The cost of something that covers an area as it is sold, such as a ready-to-use bottle. */
  public static Cost covering(Quantity price, Quantity area) {
    Given.above("price", price, Dimension.MONEY);
    Given.above("area", area, Dimension.AREA);
    Unit unit = price.unit().per(Fitting.costPlot(area.unit()));
    return made(Working.of("cost_rate", price).over(area).as(unit));
  }

  /** The same on an area. */
  public Cost on(Quantity area) {
    Given.above("area", area, Dimension.AREA);
    Step all = Working.of("cost_total", rate).times(area).as(rate.unit().above());
    List<Step> both = new ArrayList<>(steps);
    both.add(all);
    return new Cost(rate, Optional.of(all.result()), both);
  }

  /** The cost of an amount of product: price ÷ content × amount. */
  public static Step ofAmount(Quantity price, Quantity content, Quantity amount) {
    Given.above("price", price, Dimension.MONEY);
    Given.above("container", content, Dimension.VOLUME, Dimension.MASS);
    Given.above("product", amount, content.dimension());
    return Working.of("cost_total", price).over(content).times(amount).as(price.unit());
  }

  /** The price of one measure of what is in a container: price ÷ content. */
  public static Step each(Quantity price, Quantity content, Unit measure) {
    Given.above("price", price, Dimension.MONEY);
    Given.above("container", content, measure.dimension());
    return Working.of("unit_price", price).over(content).as(price.unit().per(measure));
  }

  /** The price of a weight of a nutrient: price ÷ content ÷ part. */
  public static Step eachOfNutrient(Quantity price, Quantity content, Quantity part, Unit measure) {
    Given.above("price", price, Dimension.MONEY);
    Given.above("container", content, Dimension.MASS);
    Given.part("analysis", part);
    return Working.of("unit_price", price).over(content).over(part).as(price.unit().per(measure));
  }

  /**
   * The place, from 0, of the cheapest; the first of several alike.
   *
   * @param costs at least one, all of one currency
   */
  public static int cheapest(List<Cost> costs) {
    if (costs.isEmpty()) {
      throw new NotDosable("price", NotDosable.Why.MISSING);
    }
    int best = 0;
    for (int i = 1; i < costs.size(); i++) {
      sameCurrency(costs.get(0), costs.get(i));
      if (costs.get(i).rate.compareTo(costs.get(best).rate) < 0) {
        best = i;
      }
    }
    return best;
  }

  private static void sameCurrency(Cost one, Cost other) {
    if (!one.rate.unit().above().equals(other.rate.unit().above())) {
      throw new NotDosable("price", NotDosable.Why.WRONG_KIND);
    }
  }

  private static Cost made(Step step) {
    return new Cost(step.result(), Optional.empty(), List.of(step));
  }
}
