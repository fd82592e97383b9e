package plainsward.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainsward.units.Amounts.r;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RatioTest {

  @Test
  void equalNumbersAreEqualObjects() {
    assertEquals(Ratio.of(1, 2), Ratio.of(2, 4));
    assertEquals(Ratio.of("0.50"), Ratio.of(1, 2));
    assertEquals(Ratio.of(-1, 2), Ratio.of(1, -2));
    assertEquals(Ratio.of(1, 2).hashCode(), Ratio.of(3, 6).hashCode());
    assertEquals(Ratio.ZERO, Ratio.of(0, 7));
  }

  @Test
  void theDenominatorIsKeptPositiveAndTheFractionReduced() {
    Ratio made = new Ratio(BigInteger.valueOf(6), BigInteger.valueOf(-4));
    assertEquals(BigInteger.valueOf(-3), made.numerator());
    assertEquals(BigInteger.TWO, made.denominator());
  }

  @Test
  void theDenominatorNoughtIsRefused() {
    assertEquals(
        "a ratio with the denominator 0",
        assertThrows(ArithmeticException.class, () -> Ratio.of(1, 0)).getMessage());
    assertThrows(ArithmeticException.class, () -> Ratio.ONE.dividedBy(Ratio.ZERO));
  }

  @ParameterizedTest
  @CsvSource({"0.45359237, 45359237/100000000", "1e-3, 1/1000", "1e3, 1000", "-2.50, -5/2", "0, 0"})
  void decimalsAreReadExactly(String decimal, String fraction) {
    assertEquals(r(fraction), Ratio.of(decimal));
  }

  @Test
  void sumsAreExact() {
    assertEquals(Ratio.of(5, 6), Ratio.of(1, 2).plus(Ratio.of(1, 3)));
    assertEquals(Ratio.of(1, 6), Ratio.of(1, 2).minus(Ratio.of(1, 3)));
    assertEquals(Ratio.of(3, 8), Ratio.of(3, 4).times(Ratio.of(1, 2)));
    assertEquals(Ratio.of(3, 2), Ratio.of(3, 4).dividedBy(Ratio.of(1, 2)));
    assertEquals(Ratio.of(-3, 2), Ratio.of(3, 4).dividedBy(Ratio.of(-1, 2)));
    assertEquals(Ratio.of(-3, 4), Ratio.of(3, 4).negate());
  }

  @ParameterizedTest
  @CsvSource({"7/2, 3, 4", "-7/2, -4, -3", "3, 3, 3", "-3, -3, -3", "0, 0, 0", "1/9, 0, 1"})
  void floorAndCeilingHoldBelowNoughtToo(String value, long floor, long ceiling) {
    assertEquals(BigInteger.valueOf(floor), r(value).floor());
    assertEquals(BigInteger.valueOf(ceiling), r(value).ceiling());
  }

  @Test
  void wholeNumbersAreKnown() {
    assertTrue(Ratio.of(8, 4).isWhole());
    assertFalse(Ratio.of(8, 3).isWhole());
  }

  @Test
  void signsAreTold() {
    assertEquals(1, r("0.001").signum());
    assertEquals(0, Ratio.ZERO.signum());
    assertEquals(-1, r("-1/3").signum());
  }

  @Test
  void orderIsByValue() {
    assertTrue(r("1/3").compareTo(r("0.3333")) > 0);
    assertTrue(r("-1").compareTo(r("1/9")) < 0);
    assertEquals(0, r("2/4").compareTo(r("0.5")));
  }

  @Test
  void doublesAndDecimalsAreRoundedOnlyWhenAsked() {
    assertEquals(1.0 / 3, r("1/3").toDouble(), 1e-16);
    assertEquals(new BigDecimal("0.34"), r("1/3").toDecimal(2, RoundingMode.CEILING));
    assertEquals(new BigDecimal("0.33"), r("1/3").toDecimal(2, RoundingMode.FLOOR));
    assertEquals(Ratio.of("0.1"), Ratio.ofDouble(0.1));
  }

  @Test
  void aRatioIsWrittenAsAFraction() {
    assertEquals("5/6", Ratio.of(10, 12).toString());
    assertEquals("2", Ratio.of(4, 2).toString());
  }
}
