package plainsward.dosing;

import java.util.List;
import plainsward.units.Dimension;
import plainsward.units.Quantity;

/**
 * Two passes crosswise, each at half the rate: together they lay down the full rate, no more. The
 * mix in the tank is the same; it is the spray laid down in a pass that is halved.
 *
 * @param passRate product per area in one pass
 * @param passSprayRate spray per area in one pass
 * @param passProduct product in one pass
 * @param passSpray spray in one pass
 * @param product product in both passes, the full rate's
 * @param spray spray in both passes
 * @param steps the working
 */
public record HalfRatePasses(
    Quantity passRate,
    Quantity passSprayRate,
    Quantity passProduct,
    Quantity passSpray,
    Quantity product,
    Quantity spray,
    List<Step> steps) {

  /** Keeps the steps as they are. */
  public HalfRatePasses {
    steps = List.copyOf(steps);
  }

  /** Halves a rate and a spray rate into two passes over an area. */
  public static HalfRatePasses of(Quantity rate, Quantity sprayRate, Quantity area) {
    Given.above("label_rate", rate, Dimension.VOLUME_PER_AREA, Dimension.MASS_PER_AREA);
    Given.above("spray_rate", sprayRate, Dimension.VOLUME_PER_AREA);
    Given.above("area", area, Dimension.AREA);
    Step half = Working.of("pass_rate", rate).over(2).as(rate.unit());
    Step thin = Working.of("pass_spray_rate", sprayRate).over(2).as(sprayRate.unit());
    Step dose = onGround("product_pass", half.result(), area);
    Step mix = onGround("spray_pass", thin.result(), area);
    Step product = Working.of("product_total", dose.result()).times(2).as(dose.result().unit());
    Step spray = Working.of("spray_total", mix.result()).times(2).as(mix.result().unit());
    return new HalfRatePasses(
        half.result(),
        thin.result(),
        dose.result(),
        mix.result(),
        product.result(),
        spray.result(),
        List.of(half, thin, dose, mix, product, spray));
  }

  private static Step onGround(String what, Quantity rate, Quantity area) {
    return Working.of(what, rate).times(area).as(rate.unit().above().single());
  }
}
