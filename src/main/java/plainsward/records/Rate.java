package plainsward.records;

import java.util.Optional;
import plainsward.units.Dimension;
import plainsward.units.Quantity;

/**
 * A rate of a label with what it is for. What it is per shows in its unit: an area, a volume of
 * spray, or nothing for a per cent.
 *
 * @param amount above 0: product per area, product per volume, or a share
 * @param use what it is for, in the label's words, such as {@code spot spraying}
 * @param taken whether bare ounces were taken as fluid ounces without having been said to be
 */
public record Rate(Range amount, Optional<String> use, boolean taken) {

  /** What a rate is per. */
  public enum Basis {
    /** Product per area. */
    AREA,
    /** Product per volume of spray, or a share of it. */
    VOLUME
  }

  /** Tidies the use. A rate that is not above 0 or per neither kind is refused. */
  public Rate {
    use = Names.remark(use);
    if (amount.low().signum() <= 0 || basis(amount.low().dimension()).isEmpty()) {
      throw new IllegalArgumentException("a rate per area or per volume was expected");
    }
  }

  /** A rate whose unit was said. */
  public Rate(Range amount, Optional<String> use) {
    this(amount, use, false);
  }

  /** A rate of one figure. */
  public static Rate of(Quantity amount, String use) {
    return new Rate(Range.of(amount), Optional.of(use));
  }

  /** What it is per. */
  public Basis basis() {
    return basis(amount.low().dimension()).orElseThrow();
  }

  /** What a rate of this dimension is per; none where it is no rate. */
  static Optional<Basis> basis(Dimension dimension) {
    if (dimension.equals(Dimension.VOLUME_PER_AREA) || dimension.equals(Dimension.MASS_PER_AREA)) {
      return Optional.of(Basis.AREA);
    }
    return dimension.equals(Dimension.NONE) || dimension.equals(Dimension.MASS_PER_VOLUME)
        ? Optional.of(Basis.VOLUME)
        : Optional.empty();
  }
}
