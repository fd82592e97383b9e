package plainsward.topics;

import java.util.Optional;
import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.Units;

/**
 * The label's figure that a dose rests on, per area or per volume, with the end of a range chosen
 * and a dry product's ounces taken as weight.
 *
 * @param low the figure; for a range the low end, or the end that was chosen
 * @param high the high end, where it was left open
 * @param isPerArea whether it is per area
 */
record LabelRate(Quantity low, Optional<Quantity> high, boolean isPerArea) {
  private static final Ratio HALF = Ratio.of(1, 2);
  private static final Set<String> LIQUID = Set.of("liquid", "spray", "concentrate");
  private static final Set<String> DRY =
      Set.of("granules", "granular", "granule", "pellets", "bag", "bags", "preventer");

  /** The figure that is known, the one said later where both kinds are. */
  static Optional<LabelRate> of(Request request) {
    if (request.has("label_rate")) {
      Optional<Dimension> kind = kindNamed(request);
      Optional<Known> named =
          kind.flatMap(d -> request.find("label_rate", k -> k.amount().dimension().equals(d)));
      return named.or(() -> request.get("label_rate")).map(k -> made(request, k, true));
    }
    return request.get("strength").map(k -> made(request, k, false));
  }

  /** "how much of the liquid": of a poured and a weighed rate the one whose kind is named. */
  static Optional<Dimension> kindNamed(Request request) {
    if (request.turn().hasWord(LIQUID)) {
      return Optional.of(Dimension.VOLUME_PER_AREA);
    }
    return request.turn().hasWord(DRY) ? Optional.of(Dimension.MASS_PER_AREA) : Optional.empty();
  }

  private static LabelRate made(Request request, Known known, boolean perArea) {
    Quantity low = share(request, weighed(request, known, known.amount()));
    Optional<Quantity> high = known.high().map(h -> share(request, weighed(request, known, h)));
    if (high.isPresent() && request.says("middle-end")) {
      Quantity middle = low.plus(high.get()).times(HALF);
      return new LabelRate(middle, Optional.empty(), perArea);
    }
    if (high.isPresent() && request.says("high-end")) {
      return new LabelRate(high.get(), Optional.empty(), perArea);
    }
    return request.says("low-end")
        ? new LabelRate(low, Optional.empty(), perArea)
        : new LabelRate(low, high, perArea);
  }

  /** Half of the rate, where it is asked for, and not two passes that make up the whole. */
  private static Quantity share(Request request, Quantity rate) {
    boolean half = request.says("half-rate") && !request.says("in-two");
    return half ? rate.times(HALF) : rate;
  }

  /** Ounces of a product known to be dry are weight. */
  private static Quantity weighed(Request request, Known known, Quantity rate) {
    boolean open = known.leavesOpen("ounce") || known.leavesOpen("unit");
    Unit above = rate.unit().above();
    boolean ounces = above.equals(Units.FL_OZ) || above.equals(Units.IMPERIAL_FL_OZ);
    if (!open || !ounces || !isDry(request)) {
      return rate;
    }
    return new Quantity(rate.value(), Units.OUNCE.per(rate.unit().below().orElseThrow()));
  }

  /** Whether the product is known to be dry. */
  static boolean isDry(Request request) {
    return request.says("dry-product") || request.has("dry_product");
  }

  /** Whether the ounces were taken as fluid ounces without having been said to be. */
  static boolean isOunceTaken(Request request) {
    String role = request.has("label_rate") ? "label_rate" : "strength";
    return !isDry(request)
        && request.get(role).map(k -> k.leavesOpen("ounce") || k.leavesOpen("unit")).orElse(false)
        && request.get(role).map(k -> isOunces(k.amount())).orElse(false);
  }

  private static boolean isOunces(Quantity rate) {
    Unit above = rate.unit().above();
    return above.equals(Units.FL_OZ) || above.equals(Units.IMPERIAL_FL_OZ);
  }

  /** Whether the product is measured by weight. */
  boolean isByWeight() {
    Dimension dimension = low.dimension();
    return dimension.equals(Dimension.MASS_PER_AREA) || dimension.equals(Dimension.MASS_PER_VOLUME);
  }
}
