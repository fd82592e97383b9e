package plainsward.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainsward.units.Amounts.q;
import static plainsward.units.Amounts.r;

import org.junit.jupiter.api.Test;

class QuantityTest {

  @Test
  void convertingIsExact() {
    assertEquals(q("128 [foz_us]"), q("1 [gal_us]").in(Units.FL_OZ));
    assertEquals(q("43560 [sft_i]"), q("1 [acr_us]").in(Units.SQUARE_FOOT));
    assertEquals(q("1/3 [tbs_us]"), q("1 [tsp_us]").in(Units.TABLESPOON));
    assertEquals(q("3785.411784 mL"), q("1 [gal_us]").in(Units.MILLILITRE));
  }

  @Test
  void aGallonPerThousandIsForty3Point56PerAcre() {
    Quantity perAcre = q("1 [gal_us]/(1000.[sft_i])").in(Units.GALLON_PER_ACRE);
    assertEquals(r("43.56"), perAcre.value());
  }

  @Test
  void theSameUnitIsLeftAsItIs() {
    Quantity same = q("3 [gal_us]");
    assertSame(same, same.in(Units.GALLON));
  }

  @Test
  void fahrenheitGoesThroughItsOffset() {
    assertEquals(q("0 Cel"), q("32 [degF]").in(Units.CELSIUS));
    assertEquals(q("212 [degF]"), q("100 Cel").in(Units.FAHRENHEIT));
    assertEquals(r("265/9"), q("85 [degF]").inBase());
  }

  @Test
  void sumsKeepTheFirstUnit() {
    assertEquals(q("1.5 [gal_us]"), q("1 [gal_us]").plus(q("64 [foz_us]")));
    assertEquals(q("0.5 [gal_us]"), q("1 [gal_us]").minus(q("64 [foz_us]")));
    assertEquals(q("6 [lb_av]"), q("2 [lb_av]").times(r("3")));
    assertEquals(q("2/3 [lb_av]"), q("2 [lb_av]").dividedBy(r("3")));
  }

  @Test
  void aRateTimesAnAreaIsAnAmount() {
    Quantity rate = q("1.5 [foz_us]/(1000.[sft_i])");
    assertEquals(q("6 [foz_us]"), rate.times(q("4000 [sft_i]"), Units.FL_OZ));
    assertEquals(q("4000 [sft_i]"), q("6 [foz_us]").dividedBy(rate, Units.SQUARE_FOOT));
    assertThrows(DimensionMismatch.class, () -> rate.times(q("4000 [sft_i]"), Units.POUND));
    assertThrows(DimensionMismatch.class, () -> rate.dividedBy(q("1 [sft_i]"), Units.FL_OZ));
  }

  @Test
  void differentThingsAreNeverAddedComparedOrConverted() {
    Quantity volume = q("1 [foz_us]");
    Quantity weight = q("1 [oz_av]");
    assertThrows(DimensionMismatch.class, () -> volume.plus(weight));
    assertThrows(DimensionMismatch.class, () -> volume.minus(weight));
    assertThrows(DimensionMismatch.class, () -> volume.compareTo(weight));
    assertThrows(DimensionMismatch.class, () -> volume.in(Units.OUNCE));
    String why = assertThrows(DimensionMismatch.class, () -> volume.ratioTo(weight)).getMessage();
    assertTrue(why.contains("VOLUME") && why.contains("MASS"), why);
  }

  @Test
  void amountsCompareAcrossUnits() {
    assertTrue(q("1 L").compareTo(q("1 [qt_us]")) > 0);
    assertTrue(q("1 [qt_us]").compareTo(q("1 L")) < 0);
    assertEquals(r("4"), q("1 [gal_us]").ratioTo(q("1 [qt_us]")));
    assertTrue(q("2 [pt_us]").isSameAmount(q("1 [qt_us]")));
    assertFalse(q("2 [pt_us]").isSameAmount(q("1 [pt_us]")));
    assertFalse(q("1 L").isSameAmount(q("1 kg")));
    assertEquals(-1, q("-1 L").signum());
  }

  @Test
  void quantitiesAreMadeOfNumbersAndUnits() {
    assertEquals(q("7 L"), Quantity.of(7, Units.LITRE));
    assertEquals(q("7/2 L"), Quantity.of("3.5", "L"));
    assertEquals(q("1/3 1"), Quantity.number(r("1/3")));
    assertEquals(Dimension.VOLUME, q("7 L").dimension());
    assertEquals("3/2 [gal_us]", q("1.5 [gal_us]").toString());
  }
}
