package plainsward.units;

/**
 * An exact value with its unit. Adding, comparing and converting check the dimension; two
 * quantities are the same amount when {@link #compareTo} says 0, while {@code equals} also asks for
 * the same unit.
 *
 * @param value how many
 * @param unit of what
 */
public record Quantity(Ratio value, Unit unit) implements Comparable<Quantity> {

  /** A quantity of a UCUM code. */
  public static Quantity of(Ratio value, String code) {
    return new Quantity(value, Unit.of(code));
  }

  /** A quantity of a decimal as written and a UCUM code. */
  public static Quantity of(String decimal, String code) {
    return new Quantity(Ratio.of(decimal), Unit.of(code));
  }

  /** A whole number of a unit. */
  public static Quantity of(long value, Unit unit) {
    return new Quantity(Ratio.of(value), unit);
  }

  /** A plain number. */
  public static Quantity number(Ratio value) {
    return new Quantity(value, Units.ONE);
  }

  /** What it measures. */
  public Dimension dimension() {
    return unit.dimension();
  }

  /** The value in base units (litres, kilograms, square metres, metres, seconds, pascals). */
  public Ratio inBase() {
    return unit.offset().signum() == 0
        ? value.times(unit.factor())
        : value.times(unit.factor()).plus(unit.offset());
  }

  /**
   * The same amount in another unit of the same dimension.
   *
   * @throws DimensionMismatch where the units measure different things
   */
  public Quantity in(Unit other) {
    if (other.code().equals(unit.code())) {
      return this;
    }
    require(other.dimension());
    return new Quantity(inBase().minus(other.offset()).dividedBy(other.factor()), other);
  }

  /** The sum, in this quantity's unit. */
  public Quantity plus(Quantity other) {
    return new Quantity(value.plus(other.in(unit).value), unit);
  }

  /** The difference, in this quantity's unit. */
  public Quantity minus(Quantity other) {
    return new Quantity(value.minus(other.in(unit).value), unit);
  }

  /** So many times this. */
  public Quantity times(Ratio factor) {
    return new Quantity(value.times(factor), unit);
  }

  /** A part of this: divided by a plain number other than 0. */
  public Quantity dividedBy(Ratio number) {
    return new Quantity(value.dividedBy(number), unit);
  }

  /**
   * A rate times what it is per, in the unit asked for: ounces per thousand × square feet = ounces.
   *
   * @throws DimensionMismatch where the product does not measure what {@code result} does
   */
  public Quantity times(Quantity other, Unit result) {
    Dimension made = dimension().times(other.dimension());
    check(made, result.dimension());
    return new Quantity(inBase().times(other.inBase()).dividedBy(result.factor()), result);
  }

  /**
   * A quotient in the unit asked for: gallons ÷ gallons per thousand = square feet.
   *
   * @throws DimensionMismatch where the quotient does not measure what {@code result} does
   * @throws ArithmeticException where {@code other} is 0
   */
  public Quantity dividedBy(Quantity other, Unit result) {
    Dimension made = dimension().per(other.dimension());
    check(made, result.dimension());
    return new Quantity(inBase().dividedBy(other.inBase()).dividedBy(result.factor()), result);
  }

  /** The plain ratio of two amounts of the same dimension. */
  public Ratio ratioTo(Quantity other) {
    require(other.dimension());
    return inBase().dividedBy(other.inBase());
  }

  /** Whether both are the same amount, whatever their units; false across dimensions. */
  public boolean isSameAmount(Quantity other) {
    return dimension().equals(other.dimension()) && inBase().equals(other.inBase());
  }

  /** -1, 0 or 1. */
  public int signum() {
    return value.signum();
  }

  @Override
  public int compareTo(Quantity other) {
    require(other.dimension());
    return inBase().compareTo(other.inBase());
  }

  private void require(Dimension wanted) {
    check(dimension(), wanted);
  }

  private static void check(Dimension made, Dimension wanted) {
    if (!made.equals(wanted)) {
      throw new DimensionMismatch(made, wanted);
    }
  }

  @Override
  public String toString() {
    return value + " " + unit.code();
  }
}
