package plainsward.dosing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainsward.dosing.Refused.refused;
import static plainsward.units.Amounts.q;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plainsward.dosing.NotDosable.Why;
import plainsward.units.Quantity;

class TankMixTest {
  private static final Quantity RATE = q("1.5 [foz_us]/(1000.[sft_i])");
  private static final Quantity SPRAY_RATE = q("1 [gal_us]/(1000.[sft_i])");
  private static final Quantity TANK = q("2 [gal_us]");

  private static TankJob threeWay(String area) {
    return TankJob.start().onArea(q(area)).atRate(RATE).atSprayRate(SPRAY_RATE).fromTank(TANK);
  }

  /** Common practice, no source. */
  @Test
  void aThreeWayOnFourThousandFromTwoGallonsIsSixOuncesInTwoFillsOfThree() {
    TankMix mix = TankMix.of(threeWay("4000 [sft_i]"));
    assertEquals(Optional.of(q("6 [foz_us]")), mix.product());
    assertEquals(Optional.of(q("4 [gal_us]")), mix.spray());
    Fills fills = mix.fills().get();
    assertEquals(2, fills.count());
    assertEquals(2, fills.full());
    assertFalse(fills.endsInPart());
    assertEquals(Optional.of(q("3 [foz_us]")), fills.each().product());
    assertEquals(fills.each(), fills.last());
    assertEquals(Optional.of(q("2000 [sft_i]")), fills.areaPerFill());
    assertEquals(q("253/128 [gal_us]"), fills.each().water());
  }

  /** Common practice, no source. */
  @Test
  void aWettingAgentAtFourTeaspoonsAGallonIsEightInTwoGallons() {
    TankMix mix = TankMix.of(threeWay("4500 [sft_i]").withAdjuvant(q("4 [tsp_us]/[gal_us]")));
    assertEquals(Optional.of(q("18 [tsp_us]")), mix.adjuvant());
    Fills fills = mix.fills().get();
    assertEquals(Optional.of(q("8 [tsp_us]")), fills.each().adjuvant());
    assertEquals(Optional.of(q("2 [tsp_us]")), fills.last().adjuvant());
    assertEquals(q("755/384 [gal_us]"), fills.each().water());
  }

  @Test
  void theLastFillIsWhatIsLeft() {
    TankMix mix = TankMix.of(threeWay("4500 [sft_i]"));
    Fills fills = mix.fills().get();
    assertEquals(3, fills.count());
    assertEquals(2, fills.full());
    assertTrue(fills.endsInPart());
    assertEquals(q("0.5 [gal_us]"), fills.last().volume());
    assertEquals(Optional.of(q("0.75 [foz_us]")), fills.last().product());
    assertEquals(q("63.25 [foz_us]").in(TANK.unit()), fills.last().water());
  }

  @Test
  void aJobOfLessThanATankIsOneLoad() {
    TankMix mix = TankMix.of(threeWay("1000 [sft_i]"));
    Fills fills = mix.fills().get();
    assertEquals(1, fills.count());
    assertEquals(0, fills.full());
    assertTrue(fills.endsInPart());
    assertEquals(q("1 [gal_us]"), fills.last().volume());
    assertEquals(Optional.of(q("1.5 [foz_us]")), fills.last().product());
    assertEquals(mix.product(), fills.last().product());
  }

  @Test
  void withoutATankThereAreTotalsOnly() {
    TankMix mix =
        TankMix.of(TankJob.start().onArea(q("4000 [sft_i]")).atRate(RATE).atSprayRate(SPRAY_RATE));
    assertEquals(Optional.of(q("4 [gal_us]")), mix.spray());
    assertEquals(Optional.empty(), mix.fills());
    assertEquals(List.of("product_total", "spray_total"), List.copyOf(mix.figures().keySet()));
  }

  @Test
  void withoutASprayRateTheProductIsKnownAllTheSame() {
    TankMix mix = TankMix.of(TankJob.start().onArea(q("4000 [sft_i]")).atRate(RATE).fromTank(TANK));
    assertEquals(Optional.of(q("6 [foz_us]")), mix.product());
    assertEquals(Optional.empty(), mix.spray());
    assertEquals(Optional.empty(), mix.fills());
  }

  @Test
  void theProductDoesNotDependOnTheSprayRate() {
    TankMix thin = TankMix.of(threeWay("4000 [sft_i]").atSprayRate(q("3 [gal_us]/[acr_us]")));
    assertEquals(Optional.of(q("6 [foz_us]")), thin.product());
  }

  @Test
  void aTankAloneIsFilledOnce() {
    TankJob job = TankJob.start().atRate(RATE).atSprayRate(SPRAY_RATE).fromTank(TANK);
    TankMix mix = TankMix.of(job);
    assertEquals(Optional.of(q("3 [foz_us]")), mix.product());
    assertEquals(Optional.of(TANK), mix.spray());
    assertEquals(Optional.of(q("2000 [sft_i]")), mix.area());
    assertEquals(1, mix.fills().get().count());
    assertEquals(1, mix.fills().get().full());
  }

  @Test
  void aStrengthIsForTheSpray() {
    TankJob start = TankJob.start().atStrength(q("2 %"));
    TankMix tank = TankMix.of(start.fromTank(TANK));
    assertEquals(Optional.of(q("5.12 [foz_us]")), tank.product());
    assertEquals(Optional.of(q("5.12 [foz_us]")), tank.fills().get().each().product());
    TankMix volume = TankMix.of(start.withSpray(q("5 L")));
    assertEquals(Optional.of(q("100 mL")), volume.product());
    TankMix ground = TankMix.of(start.onArea(q("3000 [sft_i]")).atSprayRate(SPRAY_RATE));
    assertEquals(Optional.of(q("7.68 [foz_us]")), ground.product());
    assertEquals(Optional.of(q("3 [gal_us]")), ground.spray());
  }

  @Test
  void aVolumeOfSprayWithARateCoversItsGround() {
    TankMix mix =
        TankMix.of(TankJob.start().withSpray(q("3 [gal_us]")).atRate(RATE).atSprayRate(SPRAY_RATE));
    assertEquals(Optional.of(q("3000 [sft_i]")), mix.area());
    assertEquals(Optional.of(q("4.5 [foz_us]")), mix.product());
  }

  @Test
  void areaAndSprayTogetherGiveTheSprayRate() {
    TankMix mix =
        TankMix.of(
            TankJob.start()
                .onArea(q("4000 [sft_i]"))
                .withSpray(q("6 [gal_us]"))
                .atRate(RATE)
                .atSprayRate(SPRAY_RATE)
                .fromTank(TANK));
    assertEquals(Optional.of(q("6 [foz_us]")), mix.product());
    assertEquals(3, mix.fills().get().count());
    assertEquals(Optional.of(q("2 [foz_us]")), mix.fills().get().each().product());
    assertEquals("6 gal ÷ 4,000 sq ft = 1.5 gal per 1,000 sq ft", mix.steps().get(0).line());
  }

  @Test
  void whatIsDryTakesUpNoRoom() {
    TankMix mix =
        TankMix.of(
            TankJob.start()
                .onArea(q("400 m2"))
                .atRate(q("5 g/(100.m2)"))
                .atSprayRate(q("4 L/(100.m2)"))
                .fromTank(q("16 L"))
                .withAdjuvant(q("0.25 %")));
    assertEquals(Optional.of(q("20 g")), mix.product());
    assertEquals(Optional.of(q("40 mL")), mix.adjuvant());
    assertEquals(q("15.96 L"), mix.fills().get().each().water());
  }

  @Test
  void aWettingAgentMayBeToldPerAreaOrAlone() {
    TankMix perArea =
        TankMix.of(threeWay("4000 [sft_i]").withAdjuvant(q("1 [foz_us]/(1000.[sft_i])")));
    assertEquals(Optional.of(q("4 [foz_us]")), perArea.adjuvant());
    assertEquals(Optional.of(q("2 [foz_us]")), perArea.fills().get().each().adjuvant());
    TankMix alone = TankMix.of(TankJob.start().fromTank(q("4 [gal_us]")).withAdjuvant(q("0.25 %")));
    assertEquals(Optional.of(q("1.28 [foz_us]")), alone.adjuvant());
    assertEquals(Optional.empty(), alone.product());
    assertEquals(
        List.of(
            "spray_total",
            "fills",
            "last_fill",
            "water_per_fill",
            "adjuvant_total",
            "adjuvant_per_fill",
            "adjuvant_last_fill"),
        List.copyOf(alone.figures().keySet()));
  }

  @Test
  void theFiguresBearTheContractsNames() {
    TankMix mix = TankMix.of(threeWay("4500 [sft_i]").withAdjuvant(q("4 [tsp_us]/[gal_us]")));
    assertEquals(
        List.of(
            "product_total",
            "spray_total",
            "fills",
            "product_per_fill",
            "last_fill",
            "product_last_fill",
            "area_per_fill",
            "water_per_fill",
            "adjuvant_total",
            "adjuvant_per_fill",
            "adjuvant_last_fill"),
        List.copyOf(mix.figures().keySet()));
    assertEquals(q("3 1"), mix.figures().get("fills"));
    assertEquals(q("0.5 [gal_us]"), mix.figures().get("last_fill"));
    assertEquals(q("755/384 [gal_us]"), mix.figures().get("water_per_fill"));
  }

  @Test
  void theWorkingIsWrittenAsAPersonWouldDoIt() {
    List<String> lines =
        TankMix.of(threeWay("4500 [sft_i]")).steps().stream().map(Step::line).toList();
    assertEquals(
        List.of(
            "1 gal per 1,000 sq ft × 4,500 sq ft = 4.5 gal",
            "1.5 fl oz per 1,000 sq ft × 4,500 sq ft = 6.75 fl oz",
            "4.5 gal ÷ 2 gal = 2.25 → 3",
            "2 × 2 gal = 4 gal",
            "4.5 gal − 4 gal = 0.5 gal",
            "2 gal ÷ 1 gal per 1,000 sq ft = 2,000 sq ft",
            "1.5 fl oz per 1,000 sq ft × 2,000 sq ft = 3 fl oz",
            "3 fl oz × 0.5 gal ÷ 2 gal = 0.75 fl oz"),
        lines);
  }

  @Test
  void groundComesInTheUnitThatSomebodyCanWalk() {
    TankMix acre = TankMix.of(threeWay("1 [acr_us]"));
    assertEquals(Optional.of(q("2000 [sft_i]")), acre.fills().get().areaPerFill());
    TankMix field =
        TankMix.of(
            TankJob.start()
                .onArea(q("10 [acr_us]"))
                .atRate(q("1 [qt_us]/[acr_us]"))
                .atSprayRate(q("20 [gal_us]/[acr_us]"))
                .fromTank(q("50 [gal_us]")));
    assertEquals(Optional.of(q("2.5 [acr_us]")), field.fills().get().areaPerFill());
    TankMix hectare =
        TankMix.of(
            TankJob.start().atRate(q("3 L/har")).atSprayRate(q("400 L/har")).fromTank(q("16 L")));
    assertEquals(Optional.of(q("400 m2")), hectare.fills().get().areaPerFill());
    assertEquals(Optional.of(q("0.12 L")), hectare.product());
  }

  @Test
  void productThatLeavesNoRoomForWaterIsRefused() {
    refused(
        "spray_rate",
        Why.DOES_NOT_FIT,
        () -> TankMix.of(threeWay("4000 [sft_i]").atRate(q("200 [foz_us]/(1000.[sft_i])"))));
    TankMix neat = TankMix.of(threeWay("4000 [sft_i]").atRate(q("128 [foz_us]/(1000.[sft_i])")));
    assertEquals(q("0 [gal_us]"), neat.fills().get().each().water());
  }

  @Test
  void whatIsMissingIsNamed() {
    TankJob job = TankJob.start();
    refused("label_rate", Why.MISSING, () -> TankMix.of(job.onArea(q("4000 [sft_i]"))));
    refused("area", Why.MISSING, () -> TankMix.of(job.atRate(RATE)));
    refused("area", Why.MISSING, () -> TankMix.of(job.atRate(RATE).atSprayRate(SPRAY_RATE)));
    refused("spray_rate", Why.MISSING, () -> TankMix.of(job.atRate(RATE).fromTank(TANK)));
    refused("spray_volume", Why.MISSING, () -> TankMix.of(job.atStrength(q("2 %"))));
    refused(
        "spray_rate",
        Why.MISSING,
        () -> TankMix.of(job.atStrength(q("2 %")).onArea(q("4000 [sft_i]"))));
  }

  @Test
  void whatIsSenselessIsRefusedAsItIsGiven() {
    TankJob job = TankJob.start();
    refused("area", Why.NOT_ABOVE_ZERO, () -> job.onArea(q("0 [sft_i]")));
    refused("area", Why.NOT_ABOVE_ZERO, () -> job.onArea(q("-1 [sft_i]")));
    refused("area", Why.WRONG_KIND, () -> job.onArea(q("4000 [ft_i]")));
    refused("spray_volume", Why.NOT_ABOVE_ZERO, () -> job.withSpray(q("0 L")));
    refused("label_rate", Why.NOT_ABOVE_ZERO, () -> job.atRate(q("0 L/har")));
    refused("label_rate", Why.WRONG_KIND, () -> job.atRate(q("1 [foz_us]/[gal_us]")));
    refused("strength", Why.TOO_LARGE, () -> job.atStrength(q("101 %")));
    refused("strength", Why.NOT_ABOVE_ZERO, () -> job.atStrength(q("0 g/L")));
    refused("strength", Why.WRONG_KIND, () -> job.atStrength(q("1 L/har")));
    refused("spray_rate", Why.NOT_ABOVE_ZERO, () -> job.atSprayRate(q("0 L/har")));
    refused("tank", Why.NOT_ABOVE_ZERO, () -> job.fromTank(q("0 [gal_us]")));
    refused("tank", Why.WRONG_KIND, () -> job.fromTank(q("2 [lb_av]")));
    refused("adjuvant_rate", Why.NOT_ABOVE_ZERO, () -> job.withAdjuvant(q("0 L/har")));
    refused("adjuvant_rate", Why.NOT_ABOVE_ZERO, () -> job.withAdjuvant(q("0 g/har")));
    refused("adjuvant_rate", Why.TOO_LARGE, () -> job.withAdjuvant(q("200 %")));
  }
}
