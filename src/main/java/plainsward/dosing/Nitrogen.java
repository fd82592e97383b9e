package plainsward.dosing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Unit;

/**
 * A feeding: product per area = target nitrogen ÷ the product's part of nitrogen, and what it comes
 * to on an area. The same sums serve phosphate and potash.
 *
 * @param productRate product per area
 * @param nitrogenRate nitrogen per area
 * @param product the product in all, where an area is known
 * @param nitrogen the nitrogen in all, where an area is known
 * @param steps the working
 */
public record Nitrogen(
    Quantity productRate,
    Quantity nitrogenRate,
    Optional<Quantity> product,
    Optional<Quantity> nitrogen,
    List<Step> steps) {

  /** Keeps the steps as they are. */
  public Nitrogen {
    steps = List.copyOf(steps);
  }

  /** The product that lays down a target of nitrogen per area. */
  public static Nitrogen toReach(Quantity target, Quantity part) {
    Given.above("nitrogen_target", target, Dimension.MASS_PER_AREA);
    Step rate = Nutrient.productFor(target, part);
    return new Nitrogen(rate.result(), target, Optional.empty(), Optional.empty(), List.of(rate));
  }

  /** The nitrogen that a rate of product lays down. */
  public static Nitrogen laidBy(Quantity productRate, Quantity part) {
    Given.above("spread_rate", productRate, Dimension.MASS_PER_AREA);
    Step rate = Nutrient.in(productRate, part);
    return new Nitrogen(
        productRate, rate.result(), Optional.empty(), Optional.empty(), List.of(rate));
  }

  /** The nitrogen that an amount of product, such as a bag, lays down on an area. */
  public static Nitrogen laidBy(Quantity product, Quantity part, Quantity area) {
    Given.above("bag", product, Dimension.MASS);
    Given.above("area", area, Dimension.AREA);
    Unit unit = product.unit().single().per(Fitting.plot(area.unit()));
    Step total = Nutrient.in(product, part);
    Step productRate = Working.of("product_rate", product).over(area).as(unit);
    Step rate = Working.of("nitrogen_rate", total.result()).over(area).as(unit);
    return new Nitrogen(
        productRate.result(),
        rate.result(),
        Optional.of(product),
        Optional.of(total.result()),
        List.of(total, productRate, rate));
  }

  /** The same on an area. */
  public Nitrogen on(Quantity area) {
    Given.above("area", area, Dimension.AREA);
    Step all = Working.of("product_total", productRate).times(area).as(mass(productRate));
    Step fed = Working.of("nitrogen_total", nitrogenRate).times(area).as(mass(nitrogenRate));
    List<Step> both = new ArrayList<>(steps);
    both.add(all);
    both.add(fed);
    return new Nitrogen(
        productRate, nitrogenRate, Optional.of(all.result()), Optional.of(fed.result()), both);
  }

  /** The bags of a weight for the product in all; an area must be known. */
  public Step bags(Quantity bag) {
    Quantity all = Given.needed("area", product);
    Spreader bagged = new Spreader(all, Optional.empty(), Optional.empty(), List.of()).inBags(bag);
    return bagged.steps().get(0);
  }

  private static Unit mass(Quantity rate) {
    return rate.unit().above().single();
  }
}
