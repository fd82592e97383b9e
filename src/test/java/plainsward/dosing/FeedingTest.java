package plainsward.dosing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static plainsward.dosing.Refused.refused;
import static plainsward.units.Amounts.q;
import static plainsward.units.Amounts.r;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import plainsward.dosing.NotDosable.Why;
import plainsward.units.Unit;
import plainsward.units.Units;

class FeedingTest {

  @Test
  void aTargetOfNitrogenNeedsSoMuchProduct() {
    Nitrogen feed = Nitrogen.toReach(q("0.75 [lb_av]/(1000.[sft_i])"), q("25 %"));
    assertEquals(q("3 [lb_av]/(1000.[sft_i])"), feed.productRate());
    assertEquals(q("0.75 [lb_av]/(1000.[sft_i])"), feed.nitrogenRate());
    assertEquals(Optional.empty(), feed.product());
    assertEquals(Optional.empty(), feed.nitrogen());
    Nitrogen lawn = feed.on(q("6000 [sft_i]"));
    assertEquals(Optional.of(q("18 [lb_av]")), lawn.product());
    assertEquals(Optional.of(q("4.5 [lb_av]")), lawn.nitrogen());
    assertEquals(3, lawn.steps().size());
    assertEquals(q("2 1"), lawn.bags(q("10 [lb_av]")).result());
  }

  @Test
  void productLaysDownItsPartOfNitrogen() {
    Nitrogen rate = Nitrogen.laidBy(q("4 [lb_av]/(1000.[sft_i])"), q("25 %"));
    assertEquals(q("1 [lb_av]/(1000.[sft_i])"), rate.nitrogenRate());
    assertEquals(q("4 [lb_av]/(1000.[sft_i])"), rate.productRate());
    Nitrogen bag = Nitrogen.laidBy(q("50 [lb_av]"), q("20 %"), q("12500 [sft_i]"));
    assertEquals(q("4 [lb_av]/(1000.[sft_i])"), bag.productRate());
    assertEquals(q("0.8 [lb_av]/(1000.[sft_i])"), bag.nitrogenRate());
    assertEquals(Optional.of(q("10 [lb_av]")), bag.nitrogen());
    assertEquals(Optional.of(q("50 [lb_av]")), bag.product());
    assertEquals(
        q("3 kg/(100.m2)"), Nitrogen.laidBy(q("15 kg"), q("20 %"), q("500 m2")).productRate());
  }

  @Test
  void aFeedWithoutNitrogenCannotReachATarget() {
    refused(
        "analysis",
        Why.NOT_ABOVE_ZERO,
        () -> Nitrogen.toReach(q("1 [lb_av]/(1000.[sft_i])"), q("0 %")));
    refused("nitrogen_target", Why.NOT_ABOVE_ZERO, () -> Nitrogen.toReach(q("0 g/m2"), q("9 %")));
    refused("nitrogen_target", Why.WRONG_KIND, () -> Nitrogen.toReach(q("1 g"), q("9 %")));
    refused("spread_rate", Why.WRONG_KIND, () -> Nitrogen.laidBy(q("1 g"), q("9 %")));
    refused("analysis", Why.TOO_LARGE, () -> Nitrogen.laidBy(q("1 g/m2"), q("109 %")));
    refused("bag", Why.WRONG_KIND, () -> Nitrogen.laidBy(q("1 L"), q("9 %"), q("1 m2")));
    refused("area", Why.NOT_ABOVE_ZERO, () -> Nitrogen.laidBy(q("1 g"), q("9 %"), q("0 m2")));
    Nitrogen feed = Nitrogen.laidBy(q("1 g/m2"), q("9 %"));
    refused("area", Why.NOT_ABOVE_ZERO, () -> feed.on(q("0 m2")));
    refused("area", Why.MISSING, () -> feed.bags(q("10 kg")));
  }

  @Test
  void nutrientsAreAPartOfTheProduct() {
    Step amount = Nutrient.in(q("50 [lb_av]"), q("20 %"));
    assertEquals(q("10 [lb_av]"), amount.result());
    assertEquals("nitrogen_total", amount.what());
    Step rate = Nutrient.in(q("5 g/m2"), q("20 %"));
    assertEquals(q("1 g/m2"), rate.result());
    assertEquals("nitrogen_rate", rate.what());
    assertEquals("product_total", Nutrient.productFor(q("1 kg"), q("50 %")).what());
    assertEquals("product_rate", Nutrient.productFor(q("1 kg/har"), q("50 %")).what());
    refused("nitrogen_target", Why.WRONG_KIND, () -> Nutrient.productFor(q("1 L"), q("9 %")));
    refused("spread_rate", Why.WRONG_KIND, () -> Nutrient.in(q("1 L"), q("20 %")));
    refused("analysis", Why.NOT_ABOVE_ZERO, () -> Nutrient.in(q("1 kg"), q("0 %")));
  }

  @Test
  void liquidFeedGoesByItsDensity() {
    assertEquals(
        q("2.5 [lb_av]/[gal_us]"),
        Nutrient.perVolume(q("10 [lb_av]/[gal_us]"), q("25 %")).result());
    assertEquals(
        q("5 [lb_av]"),
        Nutrient.inLiquid(q("2 [gal_us]"), q("10 [lb_av]/[gal_us]"), q("25 %")).result());
    assertEquals(
        q("0.4 [gal_us]/(1000.[sft_i])"),
        Nutrient.liquidRate(
                q("1 [lb_av]/(1000.[sft_i])"),
                q("25 %"),
                q("10 [lb_av]/[gal_us]"),
                Units.GALLON_PER_THOUSAND)
            .result());
    Why why = Why.NOT_ABOVE_ZERO;
    Unit unit = Unit.of("L/har");
    refused("density", why, () -> Nutrient.perVolume(q("0 kg/L"), q("25 %")));
    refused("analysis", why, () -> Nutrient.perVolume(q("1 kg/L"), q("0 %")));
    refused("product", why, () -> Nutrient.inLiquid(q("0 L"), q("1 kg/L"), q("9 %")));
    refused("density", why, () -> Nutrient.inLiquid(q("1 L"), q("0 kg/L"), q("9 %")));
    refused("analysis", why, () -> Nutrient.inLiquid(q("1 L"), q("1 kg/L"), q("0 %")));
    refused(
        "nitrogen_target",
        why,
        () -> Nutrient.liquidRate(q("0 kg/har"), q("9 %"), q("1 kg/L"), unit));
    refused("analysis", why, () -> Nutrient.liquidRate(q("1 kg/har"), q("0 %"), q("1 kg/L"), unit));
    refused("density", why, () -> Nutrient.liquidRate(q("1 kg/har"), q("9 %"), q("0 kg/L"), unit));
  }

  @Test
  void oxidesHoldTheirElementByWeight() {
    double phosphorus =
        Nutrient.element(q("100 kg"), Nutrient.PHOSPHORUS_IN_PHOSPHATE).result().value().toDouble();
    double potassium =
        Nutrient.element(q("100 kg"), Nutrient.POTASSIUM_IN_POTASH).result().value().toDouble();
    assertEquals(43.64, phosphorus, 0.005);
    assertEquals(83.01, potassium, 0.01);
    assertEquals(q("100 kg"), Nutrient.oxide(q("44 kg"), r("0.44")).result());
    refused("analysis", Why.WRONG_KIND, () -> Nutrient.element(q("1 L"), r("0.44")));
    refused("analysis", Why.WRONG_KIND, () -> Nutrient.oxide(q("1 L"), r("0.44")));
    refused("analysis", Why.TOO_LARGE, () -> Nutrient.element(q("1 kg"), r("1.44")));
  }

  @Test
  void granulesAreWeighedOutAndBoughtInBags() {
    Spreader job = Spreader.of(q("3.2 [lb_av]/(1000.[sft_i])"), q("5000 [sft_i]"));
    assertEquals(q("16 [lb_av]"), job.product());
    assertEquals(Optional.empty(), job.bags());
    Spreader bagged = job.inBags(q("10 [lb_av]"));
    assertEquals(Optional.of(q("2 1")), bagged.bags());
    assertEquals(Optional.of(q("4 [lb_av]")), bagged.left());
    assertEquals(2, bagged.steps().size());
    assertEquals(q("16 [lb_av]"), bagged.product());
    assertEquals(
        q("2 1"), Spreader.bagsByCoverage(q("20000 [sft_i]"), q("15000 [sft_i]")).result());
    Why why = Why.NOT_ABOVE_ZERO;
    refused("spread_rate", why, () -> Spreader.of(q("0 g/m2"), q("1 m2")));
    refused("area", why, () -> Spreader.of(q("1 g/m2"), q("0 m2")));
    refused("bag", why, () -> job.inBags(q("0 kg")));
    refused("area", why, () -> Spreader.bagsByCoverage(q("0 m2"), q("1 m2")));
    refused("bag", why, () -> Spreader.bagsByCoverage(q("1 m2"), q("0 m2")));
  }

  @Test
  void aTestStripTellsTheSpreadersRate() {
    Step rate = Spreader.rate(q("2.5 [lb_av]"), q("500 [sft_i]"));
    assertEquals(q("5 [lb_av]/(1000.[sft_i])"), rate.result());
    assertEquals(q("50 g/m2"), Spreader.rate(q("500 g"), q("10 m2"), Unit.of("g/m2")).result());
    assertEquals(
        q("25 %"), Spreader.overTarget(rate.result(), q("4 [lb_av]/(1000.[sft_i])")).result());
    assertEquals(q("-50 %"), Spreader.overTarget(q("2 g/m2"), q("4 g/m2")).result());
    assertEquals(
        q("2 [lb_av]"),
        Spreader.testWeight(q("4 [lb_av]/(1000.[sft_i])"), q("500 [sft_i]")).result());
    assertEquals(q("200 [ft_i]"), Spreader.course(q("1000 [sft_i]"), q("5 [ft_i]")).result());
    Why why = Why.NOT_ABOVE_ZERO;
    refused("test_amount", why, () -> Spreader.rate(q("0 g"), q("1 m2")));
    refused("test_area", why, () -> Spreader.rate(q("1 g"), q("0 m2")));
    refused("spread_rate", why, () -> Spreader.testWeight(q("0 g/m2"), q("1 m2")));
    refused("test_area", why, () -> Spreader.testWeight(q("1 g/m2"), q("0 m2")));
    refused("spread_rate", why, () -> Spreader.overTarget(q("0 g/m2"), q("1 g/m2")));
    refused("spread_rate", why, () -> Spreader.overTarget(q("1 g/m2"), q("0 g/m2")));
    refused("spread_rate", Why.WRONG_KIND, () -> Spreader.overTarget(q("1 g/m2"), q("1 L/m2")));
  }

  @Test
  void activeIngredientAndProductGoByTheStrength() {
    Step rate =
        ActiveIngredient.product(
            q("0.5 [lb_av]/[acr_us]"), q("4 [lb_av]/[gal_us]"), Unit.of("[pt_us]/[acr_us]"));
    assertEquals(q("1 [pt_us]/[acr_us]"), rate.result());
    assertEquals("product_rate", rate.what());
    Step dry = ActiveIngredient.product(q("1 [oz_av]"), q("50 %"), Units.OUNCE);
    assertEquals(q("2 [oz_av]"), dry.result());
    assertEquals("product_total", dry.what());
    assertEquals(
        q("0.5 [lb_av]/[acr_us]"),
        ActiveIngredient.active(
                q("1 [pt_us]/[acr_us]"), q("4 [lb_av]/[gal_us]"), Unit.of("[lb_av]/[acr_us]"))
            .result());
    assertEquals(
        q("2 L/har"),
        ActiveIngredient.liquid(q("1 kg/har"), q("50 %"), q("1 kg/L"), Unit.of("L/har")).result());
    Why why = Why.NOT_ABOVE_ZERO;
    refused("active", why, () -> ActiveIngredient.product(q("0 g"), q("5 %"), Units.GRAM));
    refused(
        "active", Why.WRONG_KIND, () -> ActiveIngredient.product(q("1 L"), q("5 %"), Units.GRAM));
    refused("strength", why, () -> ActiveIngredient.product(q("1 g"), q("0 %"), Units.GRAM));
    refused("product", why, () -> ActiveIngredient.active(q("0 g"), q("5 %"), Units.GRAM));
    refused("strength", why, () -> ActiveIngredient.active(q("1 g"), q("0 %"), Units.GRAM));
    refused(
        "active", why, () -> ActiveIngredient.liquid(q("0 g"), q("5 %"), q("1 kg/L"), Units.LITRE));
    refused(
        "strength",
        why,
        () -> ActiveIngredient.liquid(q("1 g"), q("0 %"), q("1 kg/L"), Units.LITRE));
    refused(
        "density",
        why,
        () -> ActiveIngredient.liquid(q("1 g"), q("5 %"), q("0 kg/L"), Units.LITRE));
  }
}
