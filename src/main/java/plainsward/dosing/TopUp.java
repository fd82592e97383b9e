package plainsward.dosing;

import java.util.List;
import plainsward.units.Dimension;
import plainsward.units.Quantity;

/**
 * What to add to a tank that already holds some mix. Topping up at a strength needs product for the
 * missing volume alone; a mix that is too strong needs water until it is back at the strength.
 *
 * @param volume the spray that is added
 * @param product the product in it; 0 where only water is added
 * @param water the water in it
 * @param steps the working
 */
public record TopUp(Quantity volume, Quantity product, Quantity water, List<Step> steps) {

  /** Keeps the steps as they are. */
  public TopUp {
    steps = List.copyOf(steps);
  }

  /**
   * Fills a tank up with mix of the same strength as is in it.
   *
   * @throws NotDosable where what is left is as much as the tank or more
   */
  public static TopUp toFull(Quantity tank, Quantity left, Quantity strength) {
    Given.above("tank", tank, Dimension.VOLUME);
    Given.notBelow("spray_volume", left, Dimension.VOLUME);
    if (left.compareTo(tank) >= 0) {
      throw new NotDosable("spray_volume", NotDosable.Why.TOO_LARGE);
    }
    Step missing = Working.of("spray_added", tank).minus(left).as(tank.unit());
    Dilution mix = Dilution.of(missing.result(), strength);
    List<Step> steps = List.of(missing, mix.steps().get(0));
    return new TopUp(mix.volume(), mix.product(), mix.water(), steps);
  }

  /**
   * Thins a mix that holds too much product: the finished volume is product ÷ strength, and the
   * water to add is what is missing to it.
   *
   * @throws NotDosable where the mix is not too strong
   */
  public static TopUp toWeaken(Quantity volume, Quantity product, Quantity strength) {
    Given.above("spray_volume", volume, Dimension.VOLUME);
    Step finished = Dilution.using(product, strength, volume.unit()).steps().get(0);
    if (finished.result().compareTo(volume) <= 0) {
      throw new NotDosable("strength", NotDosable.Why.TOO_LARGE);
    }
    Step water = Working.of("water_added", finished.result()).minus(volume).as(volume.unit());
    Quantity none = Quantity.of(0, product.unit());
    return new TopUp(water.result(), none, water.result(), List.of(finished, water));
  }
}
