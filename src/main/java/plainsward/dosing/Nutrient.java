package plainsward.dosing;

import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.Units;

/**
 * What a fertilizer holds. The three numbers of a bag are per cent by weight of nitrogen, phosphate
 * (P₂O₅) and potash (K₂O); the sums are the same for each.
 */
public final class Nutrient {
  /** Phosphorus in phosphate by standard atomic weights (P 30.974, O 15.999): 61.948/141.943. */
  public static final Ratio PHOSPHORUS_IN_PHOSPHATE = Ratio.of(61_948, 141_943);

  /** Potassium in potash by standard atomic weights (K 39.098, O 15.999): 78.196/94.195. */
  public static final Ratio POTASSIUM_IN_POTASH = Ratio.of(78_196, 94_195);

  private Nutrient() {}

  /** The product that holds an amount or a rate of nutrient: nutrient ÷ part. */
  public static Step productFor(Quantity nutrient, Quantity part) {
    weighed("nitrogen_target", nutrient);
    Given.part("analysis", part);
    return Working.of(isRate(nutrient) ? "product_rate" : "product_total", nutrient)
        .over(part)
        .as(nutrient.unit());
  }

  /** The nutrient in an amount or a rate of product: product × part. */
  public static Step in(Quantity product, Quantity part) {
    weighed("spread_rate", product);
    Given.part("analysis", part);
    return Working.of(isRate(product) ? "nitrogen_rate" : "nitrogen_total", product)
        .times(part)
        .as(product.unit());
  }

  /** The nutrient in a volume of liquid fertilizer: density × part × volume. */
  public static Step inLiquid(Quantity volume, Quantity density, Quantity part) {
    Given.above("product", volume, Dimension.VOLUME);
    Given.above("density", density, Dimension.MASS_PER_VOLUME);
    Given.part("analysis", part);
    return Working.of("nitrogen_total", density)
        .times(part)
        .times(volume)
        .as(density.unit().above());
  }

  /** The nutrient per volume of liquid fertilizer: density × part. */
  public static Step perVolume(Quantity density, Quantity part) {
    Given.above("density", density, Dimension.MASS_PER_VOLUME);
    Given.part("analysis", part);
    return Working.of("nitrogen_per_volume", density).times(part).as(density.unit());
  }

  /** The volume of liquid fertilizer per area for a rate of nutrient: rate ÷ part ÷ density. */
  public static Step liquidRate(Quantity nutrient, Quantity part, Quantity density, Unit unit) {
    Given.above("nitrogen_target", nutrient, Dimension.MASS_PER_AREA);
    Given.part("analysis", part);
    Given.above("density", density, Dimension.MASS_PER_VOLUME);
    return Working.of("product_rate", nutrient).over(part).over(density).as(unit);
  }

  /** The element in an amount of its oxide. */
  public static Step element(Quantity oxide, Ratio factor) {
    weighed("analysis", oxide);
    return Working.of("element", oxide).times(share(factor)).as(oxide.unit());
  }

  /** The oxide that holds an amount of its element. */
  public static Step oxide(Quantity element, Ratio factor) {
    weighed("analysis", element);
    return Working.of("oxide", element).over(share(factor)).as(element.unit());
  }

  private static Quantity share(Ratio factor) {
    return Given.part("analysis", new Quantity(factor, Units.ONE));
  }

  private static void weighed(String name, Quantity given) {
    Given.above(name, given, Dimension.MASS, Dimension.MASS_PER_AREA);
  }

  private static boolean isRate(Quantity given) {
    return given.dimension().equals(Dimension.MASS_PER_AREA);
  }
}
