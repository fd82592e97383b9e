package plainsward.dosing;

import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Unit;

/**
 * Product from active ingredient and back. A liquid's strength is active ingredient per volume (lb
 * per gallon, grams per litre), a dry product's a part by weight.
 */
public final class ActiveIngredient {
  private static final Set<Dimension> WEIGHED =
      Set.of(Dimension.MASS, Dimension.MASS_PER_AREA, Dimension.MASS_PER_VOLUME);

  private ActiveIngredient() {}

  /**
   * The product for an amount of active ingredient, whether in all, per area or per volume of
   * spray: active ÷ strength.
   *
   * @throws plainsward.units.DimensionMismatch where {@code unit} does not measure the product
   */
  public static Step product(Quantity active, Quantity strength, Unit unit) {
    weighed("active", active);
    Strength.checked("strength", strength);
    return Working.of(name(unit), active).over(strength).as(unit);
  }

  /** The active ingredient in an amount of product: product × strength. */
  public static Step active(Quantity product, Quantity strength, Unit unit) {
    Given.above("product", product, product.dimension());
    Strength.checked("strength", strength);
    return Working.of("active", product).times(strength).as(unit);
  }

  /** Liquid product by its part by weight and its density: active ÷ part ÷ density. */
  public static Step liquid(Quantity active, Quantity part, Quantity density, Unit unit) {
    weighed("active", active);
    Given.part("strength", part);
    Given.above("density", density, Dimension.MASS_PER_VOLUME);
    return Working.of(name(unit), active).over(part).over(density).as(unit);
  }

  private static void weighed(String name, Quantity given) {
    Given.above(name, given, WEIGHED.toArray(Dimension[]::new));
  }

  private static String name(Unit unit) {
    return unit.below().isPresent() ? "product_rate" : "product_total";
  }
}
