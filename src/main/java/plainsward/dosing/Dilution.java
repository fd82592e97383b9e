package plainsward.dosing;

import java.util.List;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Unit;

/**
 * A volume of finished mix at a strength.
 *
 * @param volume the finished mix
 * @param product the product in it
 * @param water the water in it; what is dry takes up no room
 * @param steps the working
 */
public record Dilution(Quantity volume, Quantity product, Quantity water, List<Step> steps) {

  /** Keeps the steps as they are. */
  public Dilution {
    steps = List.copyOf(steps);
  }

  /** The product for a volume at a strength, in the strength's own measure. */
  public static Dilution of(Quantity volume, Quantity strength) {
    return of(volume, strength, Fitting.product(strength.unit(), volume.unit()));
  }

  /** The product for a volume at a strength, in the measure asked for. */
  public static Dilution of(Quantity volume, Quantity strength, Unit measure) {
    Given.above("spray_volume", volume, Dimension.VOLUME);
    Strength.checked("strength", strength);
    Step product = Working.of("product_total", strength).times(volume).as(measure);
    return made(volume, product);
  }

  /**
   * A weaker mix out of a stronger one, both in the same kind of strength: concentrate = volume ×
   * wanted ÷ concentrate.
   *
   * @throws NotDosable where the wanted strength is above the concentrate's
   */
  public static Dilution from(Quantity concentrate, Quantity wanted, Quantity volume) {
    Given.above("spray_volume", volume, Dimension.VOLUME);
    Strength.checked("strength", concentrate);
    Given.above("strength", wanted, concentrate.dimension());
    if (wanted.compareTo(concentrate) > 0) {
      throw new NotDosable("strength", NotDosable.Why.TOO_LARGE);
    }
    return made(
        volume,
        Working.of("product_total", volume).times(wanted).over(concentrate).as(volume.unit()));
  }

  /** The mix that a given amount of product makes at a strength, in a unit of volume. */
  public static Dilution using(Quantity product, Quantity strength, Unit unit) {
    Given.above("product", product, Dimension.VOLUME, Dimension.MASS);
    Strength.checked("strength", strength);
    Step volume = Working.of("spray_total", product).over(strength).as(unit);
    Quantity water = waterBeside(volume.result(), product);
    return new Dilution(volume.result(), product, water, List.of(volume));
  }

  private static Dilution made(Quantity volume, Step product) {
    Quantity water = waterBeside(volume, product.result());
    return new Dilution(volume, product.result(), water, List.of(product));
  }

  private static Quantity waterBeside(Quantity volume, Quantity product) {
    return product.dimension().equals(Dimension.VOLUME) ? volume.minus(product) : volume;
  }
}
