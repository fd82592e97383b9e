package plainsward.dosing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainsward.dosing.Refused.refused;
import static plainsward.units.Amounts.q;
import static plainsward.units.Amounts.r;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainsward.dosing.NotDosable.Why;

class SecondRoadTest {

  @Test
  void bothRoadsAgreeAtTheSprayRateThatTheStrengthIsFor() {
    SecondRoad road =
        SecondRoad.of(
            q("1.5 [foz_us]/(1000.[sft_i])"),
            q("4000 [sft_i]"),
            q("1.5 [foz_us]/[gal_us]"),
            q("4 [gal_us]"));
    assertEquals(q("6 [foz_us]"), road.byRate());
    assertEquals(q("6 [foz_us]"), road.byMix());
    assertEquals(r("1"), road.times());
    assertEquals(Optional.empty(), road.slip());
    assertTrue(road.agrees(r("0")));
    assertEquals(2, road.steps().size());
  }

  @Test
  void twiceTheSprayIsTwiceTheDose() {
    SecondRoad road =
        SecondRoad.of(
            q("1.5 [foz_us]/(1000.[sft_i])"),
            q("4000 [sft_i]"),
            q("1.5 [foz_us]/[gal_us]"),
            q("8 [gal_us]"));
    assertEquals(q("12 [foz_us]"), road.byMix());
    assertEquals(r("2"), road.times());
    assertEquals(r("2"), road.slip().get().factor());
    assertTrue(road.slip().get().tooMuch());
    assertFalse(road.agrees(r("0.05")));
  }

  @Test
  void aFigureIsComparedWithTheRightOne() {
    SecondRoad road = SecondRoad.compare(q("5.8 [foz_us]"), q("6 [foz_us]"));
    assertTrue(road.agrees(r("0.05")));
    assertFalse(road.agrees(r("0.03")));
    assertTrue(SecondRoad.compare(q("6.3 [foz_us]"), q("6 [foz_us]")).agrees(r("0.05")));
    assertEquals(q("6 [foz_us]"), road.byRate());
    assertEquals(q("5.8 [foz_us]"), road.byMix());
    refused("figure", Why.WRONG_KIND, () -> SecondRoad.compare(q("6 g"), q("6 [foz_us]")));
    refused("figure", Why.NOT_ABOVE_ZERO, () -> SecondRoad.compare(q("0 L"), q("6 [foz_us]")));
    refused("figure", Why.NOT_ABOVE_ZERO, () -> SecondRoad.compare(q("1 L"), q("0 L")));
  }

  @ParameterizedTest
  @CsvSource({
    "12, 6, 2, true",
    "3, 6, 2, false",
    "24, 6, 4, true",
    "0.6, 6, 10, false",
    "60, 6, 10, true",
    "261.36, 6, 43.56, true",
    "1, 43.56, 43.56, false",
    "11.28, 6, 2, true",
    "12.72, 6, 2, true",
  })
  void roundFactorsAreFoundBothWays(String figure, String right, String factor, boolean tooMuch) {
    RoundFactor found = RoundFactor.between(q(figure + " [foz_us]"), q(right + " [foz_us]")).get();
    assertEquals(r(factor), found.factor());
    assertEquals(tooMuch, found.tooMuch());
    assertEquals(r(figure).dividedBy(r(right)), found.times());
  }

  @ParameterizedTest
  @CsvSource({"6, 6", "6.3, 6", "11.27, 6", "12.73, 6", "18, 6", "42, 6", "120, 6"})
  void otherFactorsAreNoSlip(String figure, String right) {
    assertEquals(
        Optional.empty(), RoundFactor.between(q(figure + " [foz_us]"), q(right + " [foz_us]")));
  }

  @Test
  void theToleranceIsTheCallers() {
    assertEquals(Optional.empty(), RoundFactor.between(q("12.1 mL"), q("6 mL"), r("0.008")));
    assertTrue(RoundFactor.between(q("12.1 mL"), q("6 mL"), r("0.009")).isPresent());
    refused("figure", Why.NOT_ABOVE_ZERO, () -> RoundFactor.between(q("0 L"), q("1 L")));
    refused("figure", Why.NOT_ABOVE_ZERO, () -> RoundFactor.between(q("1 L"), q("0 L")));
  }

  @Test
  void senselessRoadsAreRefused() {
    Why why = Why.NOT_ABOVE_ZERO;
    refused("label_rate", why, () -> SecondRoad.of(q("0 L/har"), q("1 har"), q("1 %"), q("1 L")));
    refused("area", why, () -> SecondRoad.of(q("1 L/har"), q("0 har"), q("1 %"), q("1 L")));
    refused("strength", why, () -> SecondRoad.of(q("1 L/har"), q("1 har"), q("0 %"), q("1 L")));
    refused("spray_volume", why, () -> SecondRoad.of(q("1 L/har"), q("1 har"), q("1 %"), q("0 L")));
  }

  @Test
  void halfRatePassesLayDownTheFullRateTogether() {
    HalfRatePasses passes =
        HalfRatePasses.of(
            q("1.5 [foz_us]/(1000.[sft_i])"), q("1 [gal_us]/(1000.[sft_i])"), q("4000 [sft_i]"));
    assertEquals(q("0.75 [foz_us]/(1000.[sft_i])"), passes.passRate());
    assertEquals(q("0.5 [gal_us]/(1000.[sft_i])"), passes.passSprayRate());
    assertEquals(q("3 [foz_us]"), passes.passProduct());
    assertEquals(q("2 [gal_us]"), passes.passSpray());
    assertEquals(q("6 [foz_us]"), passes.product());
    assertEquals(q("4 [gal_us]"), passes.spray());
    assertEquals(6, passes.steps().size());
    Why why = Why.NOT_ABOVE_ZERO;
    refused("label_rate", why, () -> HalfRatePasses.of(q("0 L/har"), q("1 L/har"), q("1 har")));
    refused("spray_rate", why, () -> HalfRatePasses.of(q("1 L/har"), q("0 L/har"), q("1 har")));
    refused("area", why, () -> HalfRatePasses.of(q("1 L/har"), q("1 L/har"), q("0 har")));
  }

  @Test
  void whatWasPutDownIsHeldAgainstTheLabel() {
    AppliedDose dose =
        AppliedDose.of(q("6 [foz_us]"), q("2000 [sft_i]"), q("1.5 [foz_us]/(1000.[sft_i])"));
    assertEquals(q("3 [foz_us]/(1000.[sft_i])"), dose.rate());
    assertEquals(r("2"), dose.times());
    assertEquals(q("4000 [sft_i]"), dose.rightArea());
    assertEquals(q("3 [foz_us]"), dose.rightAmount());
    assertTrue(dose.isAboveLabel());
    assertFalse(AppliedDose.of(q("1 L"), q("1 har"), q("1 L/har")).isAboveLabel());
    assertEquals(4, dose.steps().size());
    refused("product", Why.NOT_ABOVE_ZERO, () -> AppliedDose.of(q("0 L"), q("1 m2"), q("1 L/har")));
    refused("area", Why.NOT_ABOVE_ZERO, () -> AppliedDose.of(q("1 L"), q("0 m2"), q("1 L/har")));
    refused("label_rate", Why.WRONG_KIND, () -> AppliedDose.of(q("1 L"), q("1 m2"), q("1 g/har")));
  }
}
