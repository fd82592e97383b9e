package plainsward.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Rounds an exact amount to a mark that a person's measure has. The marks, chosen to what household
 * cups, spoons, syringes and scales carry (common practice, no source): teaspoon ¼, tablespoon ½,
 * cup ¼; fluid ounce 0.1 below 1, ¼ below 8, ½ below 32, else 1; millilitre 0.1 below 5, 1 below
 * 20, 5 below 200, else 10; pint and quart ¼, gallon ⅛, litre 0.05; gram 0.1 below 10, else 1;
 * ounce 0.1 below 16, else ¼; pound 0.1 below 10, ¼ below 50, else 1; kilogram 0.05.
 */
public final class Measures {
  private static final Ratio MOST_OFF = Ratio.of(1, 10);
  private static final Ratio NO_LIMIT_OFF = Ratio.of(1_000_000);

  private Measures() {}

  /** Which way an amount was rounded. */
  public enum Rounding {
    /** It stands on a mark as it is. */
    EXACT,
    /** To the mark above. */
    UP,
    /** To the mark below. */
    DOWN
  }

  /**
   * An amount on a mark.
   *
   * @param amount the amount to measure out
   * @param exact the exact amount, in the same unit
   * @param rounding which way it was rounded
   * @param isFiner whether a finer measure than the one asked for was taken
   */
  public record Measured(Quantity amount, Quantity exact, Rounding rounding, boolean isFiner) {}

  /**
   * The nearest mark of the measure, halves up. Where that is 0, or more than a tenth off, the
   * nearest mark of a finer measure instead: millilitres for volumes, grams for weights.
   *
   * @param exact a volume or a mass of at least 0
   * @param measure a unit of the same kind
   */
  public static Measured nearest(Quantity exact, Unit measure) {
    return chosen(exact, measure, RoundingMode.HALF_UP);
  }

  /**
   * The nearest mark, but the mark below where the nearest would pass the most that is allowed. The
   * most must not be below the exact amount.
   */
  public static Measured nearest(Quantity exact, Unit measure, Quantity most) {
    Measured near = nearest(exact, measure);
    return near.amount().compareTo(most) > 0 ? chosen(exact, measure, RoundingMode.FLOOR) : near;
  }

  private static Measured chosen(Quantity exact, Unit measure, RoundingMode mode) {
    Quantity wanted = exact.in(measure);
    Measured made = onMark(wanted, mode, false);
    if (wanted.signum() == 0 || off(made).compareTo(MOST_OFF) <= 0) {
      return made;
    }
    Measured finer = onMark(exact.in(finer(measure)), mode, true);
    return off(finer).compareTo(off(made)) < 0 ? finer : made;
  }

  private static Unit finer(Unit measure) {
    return measure.dimension().equals(Dimension.MASS) ? Units.GRAM : Units.MILLILITRE;
  }

  /** How far the amount on the mark is from the exact one, as a part; an empty measure is worst. */
  private static Ratio off(Measured made) {
    if (made.amount().signum() == 0) {
      return NO_LIMIT_OFF;
    }
    Ratio part = made.amount().ratioTo(made.exact()).minus(Ratio.ONE);
    return part.signum() < 0 ? part.negate() : part;
  }

  private static Measured onMark(Quantity exact, RoundingMode mode, boolean isFiner) {
    Ratio mark = mark(exact);
    BigDecimal marks = exact.value().dividedBy(mark).toDecimal(0, mode);
    Quantity amount = new Quantity(Ratio.of(marks).times(mark), exact.unit());
    return new Measured(amount, exact, way(amount.compareTo(exact)), isFiner);
  }

  private static Rounding way(int compared) {
    if (compared == 0) {
      return Rounding.EXACT;
    }
    return compared > 0 ? Rounding.UP : Rounding.DOWN;
  }

  private static Ratio mark(Quantity exact) {
    String code = exact.unit().code();
    double size = exact.value().toDouble();
    return switch (code) {
      case "[tsp_us]", "[cup_us]", "[pt_us]", "[qt_us]", "[pt_br]", "[qt_br]" -> Ratio.of(1, 4);
      case "[tbs_us]" -> Ratio.of(1, 2);
      case "[gal_us]", "[gal_br]" -> Ratio.of(1, 8);
      case "[foz_us]", "[foz_br]" -> ounceMark(size);
      case "mL" -> millilitreMark(size);
      case "L", "kg" -> Ratio.of(1, 20);
      case "g" -> size < 10 ? Ratio.of(1, 10) : Ratio.ONE;
      case "[oz_av]" -> size < 16 ? Ratio.of(1, 10) : Ratio.of(1, 4);
      case "[lb_av]" -> poundMark(size);
      default -> throw new IllegalArgumentException("no measure has marks in " + code);
    };
  }

  private static Ratio ounceMark(double size) {
    if (size < 1) {
      return Ratio.of(1, 10);
    }
    return size < 8 ? Ratio.of(1, 4) : size < 32 ? Ratio.of(1, 2) : Ratio.ONE;
  }

  private static Ratio millilitreMark(double size) {
    if (size < 5) {
      return Ratio.of(1, 10);
    }
    return size < 20 ? Ratio.ONE : size < 200 ? Ratio.of(5) : Ratio.of(10);
  }

  private static Ratio poundMark(double size) {
    return size < 10 ? Ratio.of(1, 10) : size < 50 ? Ratio.of(1, 4) : Ratio.ONE;
  }
}
