package plainsward.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * An exact rational number, always reduced, its denominator positive; equal numbers are equal
 * objects.
 *
 * @param numerator any whole number
 * @param denominator a whole number above 0
 */
public record Ratio(BigInteger numerator, BigInteger denominator) implements Comparable<Ratio> {

  private static final int LONG_BITS = 62;

  /** Nought. */
  public static final Ratio ZERO = of(0);

  /** One. */
  public static final Ratio ONE = of(1);

  /** Reduces the fraction. A denominator of 0 is refused with an {@link ArithmeticException}. */
  public Ratio {
    if (denominator.signum() == 0) {
      throw new ArithmeticException("a ratio with the denominator 0");
    }
    if (denominator.signum() < 0) {
      numerator = numerator.negate();
      denominator = denominator.negate();
    }
    if (!denominator.equals(BigInteger.ONE)) {
      BigInteger common = common(numerator, denominator);
      if (!common.equals(BigInteger.ONE)) {
        numerator = numerator.divide(common);
        denominator = denominator.divide(common);
      }
    }
  }

  /** The greatest common divisor; of small numbers without big arithmetic, which most are. */
  private static BigInteger common(BigInteger one, BigInteger other) {
    if (one.bitLength() > LONG_BITS || other.bitLength() > LONG_BITS) {
      return one.gcd(other);
    }
    long a = Math.abs(one.longValue());
    long b = other.longValue();
    while (b != 0) {
      long rest = a % b;
      a = b;
      b = rest;
    }
    return a == 1 ? BigInteger.ONE : BigInteger.valueOf(a);
  }

  /** The whole number {@code n}. */
  public static Ratio of(long n) {
    return new Ratio(BigInteger.valueOf(n), BigInteger.ONE);
  }

  /** The fraction {@code n/d}; {@code d} must not be 0. */
  public static Ratio of(long n, long d) {
    return new Ratio(BigInteger.valueOf(n), BigInteger.valueOf(d));
  }

  /** A decimal as it is written, such as {@code "0.45359237"} or {@code "1e-3"}. */
  public static Ratio of(String decimal) {
    return of(new BigDecimal(decimal));
  }

  /** A decimal, exactly. */
  public static Ratio of(BigDecimal decimal) {
    BigDecimal plain = decimal.stripTrailingZeros();
    return plain.scale() <= 0
        ? new Ratio(plain.toBigIntegerExact(), BigInteger.ONE)
        : new Ratio(plain.unscaledValue(), BigInteger.TEN.pow(plain.scale()));
  }

  /** The nearest exact value that a computed double shows (pi, a root), to its shortest decimal. */
  public static Ratio ofDouble(double value) {
    return of(BigDecimal.valueOf(value));
  }

  /** The sum. */
  public Ratio plus(Ratio other) {
    if (denominator.equals(other.denominator)) {
      return new Ratio(numerator.add(other.numerator), denominator);
    }
    return new Ratio(
        numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
        denominator.multiply(other.denominator));
  }

  /** The difference. */
  public Ratio minus(Ratio other) {
    return plus(other.negate());
  }

  /** The product. */
  public Ratio times(Ratio other) {
    return new Ratio(numerator.multiply(other.numerator), denominator.multiply(other.denominator));
  }

  /** The quotient; dividing by 0 throws an {@link ArithmeticException}. */
  public Ratio dividedBy(Ratio other) {
    return new Ratio(numerator.multiply(other.denominator), denominator.multiply(other.numerator));
  }

  /** The number with its sign turned. */
  public Ratio negate() {
    return new Ratio(numerator.negate(), denominator);
  }

  /** -1, 0 or 1. */
  public int signum() {
    return numerator.signum();
  }

  /** The largest whole number that is not above this. */
  public BigInteger floor() {
    BigInteger[] parts = numerator.divideAndRemainder(denominator);
    return numerator.signum() < 0 && parts[1].signum() != 0
        ? parts[0].subtract(BigInteger.ONE)
        : parts[0];
  }

  /** The smallest whole number that is not below this. */
  public BigInteger ceiling() {
    return negate().floor().negate();
  }

  /** Whether this is a whole number. */
  public boolean isWhole() {
    return denominator.equals(BigInteger.ONE);
  }

  /** The nearest double. */
  public double toDouble() {
    return new BigDecimal(numerator)
        .divide(new BigDecimal(denominator), MathContext.DECIMAL64)
        .doubleValue();
  }

  /** A decimal with {@code places} digits after the point, rounded as told. */
  public BigDecimal toDecimal(int places, RoundingMode mode) {
    return new BigDecimal(numerator).divide(new BigDecimal(denominator), places, mode);
  }

  @Override
  public int compareTo(Ratio other) {
    if (denominator.equals(other.denominator)) {
      return numerator.compareTo(other.numerator);
    }
    return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
  }

  @Override
  public String toString() {
    return isWhole() ? numerator.toString() : numerator + "/" + denominator;
  }
}
