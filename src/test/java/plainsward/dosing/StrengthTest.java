package plainsward.dosing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static plainsward.dosing.Refused.refused;
import static plainsward.units.Amounts.q;
import static plainsward.units.Amounts.r;

import org.junit.jupiter.api.Test;
import plainsward.dosing.NotDosable.Why;
import plainsward.units.DimensionMismatch;
import plainsward.units.Unit;
import plainsward.units.Units;

class StrengthTest {

  @Test
  void onePerCentIsOnePoint28OuncesAGallonAndTenMillilitresALitre() {
    assertEquals(q("1.28 [foz_us]/[gal_us]"), q("1 %").in(Units.FL_OZ_PER_GALLON));
    assertEquals(q("10 mL/L"), q("1 %").in(Unit.of("mL/L")));
    assertEquals(q("10000 [ppm]"), q("1 %").in(Unit.of("[ppm]")));
  }

  @Test
  void onePartToNAndOneInNDiffer() {
    assertEquals(q("1/9 1"), Strength.oneTo(r("8")));
    assertEquals(q("1/8 1"), Strength.oneIn(r("8")));
    assertEquals(q("1 1"), Strength.oneIn(r("1")));
    refused("strength", Why.NOT_ABOVE_ZERO, () -> Strength.oneTo(r("0")));
    refused("strength", Why.NOT_ABOVE_ZERO, () -> Strength.oneIn(r("-2")));
    refused("strength", Why.TOO_LARGE, () -> Strength.oneIn(r("0.5")));
  }

  @Test
  void theStrengthOfAMixIsToldBack() {
    assertEquals(
        q("2 %"), Strength.of(q("5.12 [foz_us]"), q("2 [gal_us]"), Units.PERCENT).result());
    assertEquals(q("4 g/L"), Strength.of(q("40 g"), q("10 L"), Unit.of("g/L")).result());
    refused("strength", Why.TOO_LARGE, () -> Strength.of(q("3 L"), q("2 L"), Units.PERCENT));
    refused("product", Why.NOT_ABOVE_ZERO, () -> Strength.of(q("0 L"), q("2 L"), Units.PERCENT));
    refused(
        "spray_volume", Why.NOT_ABOVE_ZERO, () -> Strength.of(q("1 L"), q("0 L"), Units.PERCENT));
    assertThrows(DimensionMismatch.class, () -> Strength.of(q("1 L"), q("2 L"), Unit.of("g/L")));
  }

  @Test
  void aRateAndASprayRateMakeAStrengthAndBack() {
    assertEquals(
        q("1.5 [foz_us]/[gal_us]"),
        Strength.ofRate(
                q("3 [foz_us]/(1000.[sft_i])"),
                q("2 [gal_us]/(1000.[sft_i])"),
                Units.FL_OZ_PER_GALLON)
            .result());
    assertEquals(
        q("3 [foz_us]/(1000.[sft_i])"),
        Strength.rateOf(
                q("1.5 [foz_us]/[gal_us]"),
                q("2 [gal_us]/(1000.[sft_i])"),
                Units.FL_OZ_PER_THOUSAND)
            .result());
    refused(
        "label_rate",
        Why.NOT_ABOVE_ZERO,
        () -> Strength.ofRate(q("0 L/har"), q("1 L/har"), Units.PERCENT));
    refused(
        "spray_rate",
        Why.NOT_ABOVE_ZERO,
        () -> Strength.ofRate(q("1 L/har"), q("0 L/har"), Units.PERCENT));
    refused(
        "spray_rate",
        Why.NOT_ABOVE_ZERO,
        () -> Strength.rateOf(q("1 %"), q("0 L/har"), Unit.of("L/har")));
    refused(
        "strength",
        Why.NOT_ABOVE_ZERO,
        () -> Strength.rateOf(q("0 %"), q("1 L/har"), Unit.of("L/har")));
  }

  @Test
  void weightInVolumeIsGramsInAHundredMillilitres() {
    assertEquals(q("20 g/L"), Strength.weightInVolume(q("2 %")));
    refused("strength", Why.TOO_LARGE, () -> Strength.weightInVolume(q("120 %")));
  }
}
