package plainsward.dosing;

import java.util.List;
import java.util.Optional;
import plainsward.units.Quantity;
import plainsward.units.Ratio;

/**
 * The slip behind a figure that is off by about a round factor: 2 (two of something taken for one),
 * 4 (quarts and gallons), 10 (the point) or 43.56 (per acre and per 1,000 sq ft).
 *
 * @param factor 2, 4, 10 or 43.56
 * @param tooMuch whether the figure is that many times too large; else it is that part of it
 * @param times how many times the right figure it really is
 */
public record RoundFactor(Ratio factor, boolean tooMuch, Ratio times) {
  /** The factors that are looked for. */
  public static final List<Ratio> FACTORS =
      List.of(Ratio.of(2), Ratio.of(4), Ratio.of(10), Ratio.of("43.56"));

  /** A tolerance that lets figures rounded for a cup through: 6 %. */
  public static final Ratio USUAL_TOLERANCE = Ratio.of("0.06");

  /**
   * The round factor between a figure and the right one, if any, within {@link #USUAL_TOLERANCE}.
   */
  public static Optional<RoundFactor> between(Quantity figure, Quantity right) {
    return between(figure, right, USUAL_TOLERANCE);
  }

  /**
   * The round factor between a figure and the right one, if any.
   *
   * @param figure the figure to check, above 0
   * @param right what it should be, of the same kind and above 0
   * @param tolerance how far from the round factor it may be, as a part of it, below a quarter
   */
  public static Optional<RoundFactor> between(Quantity figure, Quantity right, Ratio tolerance) {
    Given.above("figure", right, right.dimension());
    Given.above("figure", figure, right.dimension());
    Ratio times = figure.ratioTo(right);
    boolean tooMuch = times.compareTo(Ratio.ONE) > 0;
    Ratio size = tooMuch ? times : Ratio.ONE.dividedBy(times);
    return FACTORS.stream()
        .filter(factor -> isNear(size, factor, tolerance))
        .findFirst()
        .map(factor -> new RoundFactor(factor, tooMuch, times));
  }

  private static boolean isNear(Ratio size, Ratio factor, Ratio tolerance) {
    Ratio low = factor.times(Ratio.ONE.minus(tolerance));
    Ratio high = factor.times(Ratio.ONE.plus(tolerance));
    return size.compareTo(low) >= 0 && size.compareTo(high) <= 0;
  }
}
