package plainsward.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UnitTest {

  @Test
  void aCodeIsMadeOfUnitsMultipliersAndSlashes() {
    Unit rate = Unit.of("[foz_us]/(1000.[sft_i])");
    assertEquals(Dimension.VOLUME_PER_AREA, rate.dimension());
    assertEquals(
        Units.FL_OZ.factor().dividedBy(Units.SQUARE_FOOT.factor().times(Ratio.of(1000))),
        rate.factor());
    assertEquals(Ratio.ZERO, rate.offset());
    assertSame(rate, Unit.of("[foz_us]/(1000.[sft_i])"));
  }

  /** Multipliers that no other test asks for, so that the code is really read here. */
  @Test
  void everyMultiplierCounts() {
    assertEquals(
        Units.POUND.factor().dividedBy(Units.SQUARE_FOOT.factor().times(Ratio.of(7))),
        Unit.of("[lb_av]/(7.[sft_i])").factor());
    assertEquals(Units.GALLON.factor().times(Ratio.of(23)), Unit.of("23.[gal_us]").factor());
    assertEquals(
        Units.GALLON.factor().dividedBy(Ratio.of(60)).dividedBy(Units.ACRE.factor()),
        Unit.of("[gal_us]/min/(1.[acr_us])").factor());
    assertFalse(Unit.isKnown("[gal_us)/min"));
    assertFalse(Unit.isKnown(".[gal_us]"));
  }

  @Test
  void aRatePerDegreeHasNoOffset() {
    assertEquals(Ratio.of(-160, 9), Units.FAHRENHEIT.offset());
    assertEquals(Ratio.ZERO, Unit.of("[degF]/d").offset());
  }

  @ParameterizedTest
  @ValueSource(strings = {"[glug]", "", "x.[sft_i]", "L/[glug]", "(L", "1000.[glug]"})
  void anUnknownCodeIsRefusedByName(String code) {
    assertFalse(Unit.isKnown(code));
    String why = assertThrows(IllegalArgumentException.class, () -> Unit.of(code)).getMessage();
    assertTrue(why.startsWith("unit not known: "), why);
  }

  @Test
  void knownCodesAreKnown() {
    assertTrue(Unit.isKnown("[gal_us]/[acr_us]"));
    assertTrue(Unit.isKnown("USD/(100.m2)"));
  }

  @Test
  void unitsArePutTogetherAsUcumWritesThem() {
    assertEquals("[foz_us]/[gal_us]", Units.FL_OZ.per(Units.GALLON).code());
    assertEquals("[foz_us]/(1000.[sft_i])", Units.FL_OZ.per(Units.THOUSAND_SQUARE_FEET).code());
    assertEquals("[foz_us]/(1000.[sft_i])", Units.FL_OZ.per(Unit.of("(1000.[sft_i])")).code());
    assertEquals("1000.[sft_i]", Units.SQUARE_FOOT.times(1000).code());
    assertSame(Units.SQUARE_FOOT, Units.SQUARE_FOOT.times(1));
  }

  @Test
  void aRateComesApartIntoWhatIsAboveAndBelow() {
    Unit rate = Units.FL_OZ_PER_THOUSAND;
    assertEquals(Units.FL_OZ, rate.above());
    assertEquals(Optional.of(Units.THOUSAND_SQUARE_FEET), rate.below());
    assertEquals(Optional.of(Units.GALLON), Units.FL_OZ_PER_GALLON.below());
    assertEquals(Units.GALLON, Units.GALLON.above());
    assertEquals(Optional.empty(), Units.GALLON.below());
    assertEquals(Optional.empty(), Unit.of("[foz_us]/[gal_us]/[sft_i]").below());
  }

  @Test
  void aMultiplierIsToldFromItsUnit() {
    assertEquals(1000, Units.THOUSAND_SQUARE_FEET.many());
    assertEquals(Units.SQUARE_FOOT, Units.THOUSAND_SQUARE_FEET.single());
    assertEquals(1, Units.GALLON.many());
    assertSame(Units.GALLON, Units.GALLON.single());
    assertEquals(1, Units.FL_OZ_PER_THOUSAND.many());
    assertSame(Units.FL_OZ_PER_THOUSAND, Units.FL_OZ_PER_THOUSAND.single());
  }

  @Test
  void dimensionsMultiplyAndCancel() {
    assertEquals(Dimension.VOLUME, Dimension.VOLUME_PER_AREA.times(Dimension.AREA));
    assertEquals(Dimension.NONE, Dimension.AREA.per(Dimension.AREA));
    assertEquals(Map.of(), Dimension.NONE.powers());
    assertEquals(2, Dimension.LENGTH.times(Dimension.LENGTH).powers().get(Base.LENGTH));
    assertEquals(-1, Dimension.NONE.per(Dimension.TIME).powers().get(Base.TIME));
  }

  @Test
  void unitSystemsGoByTheirWord() {
    assertEquals("imperial", UnitSystem.IMPERIAL.word());
    assertEquals("us", UnitSystem.US.word());
  }
}
