package plainsward.dosing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static plainsward.dosing.Refused.refused;
import static plainsward.units.Amounts.q;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plainsward.dosing.NotDosable.Why;
import plainsward.units.Quantity;
import plainsward.units.Units;

class CostTest {
  private static final Quantity RATE = q("1.5 [foz_us]/(1000.[sft_i])");

  @Test
  void priceOverContentTimesRateIsTheCostPerArea() {
    Cost cost = Cost.of(q("48 USD"), q("1 [gal_us]"), RATE);
    assertEquals(q("0.5625 USD/(1000.[sft_i])"), cost.rate());
    assertEquals(Optional.empty(), cost.total());
    Cost job = cost.on(q("8000 [sft_i]"));
    assertEquals(Optional.of(q("4.5 USD")), job.total());
    assertEquals(cost.rate(), job.rate());
    assertEquals("$0.56 per 1,000 sq ft × 8,000 sq ft = $4.50", job.steps().get(1).line());
    assertEquals(
        "$48 ÷ 1 gal × 1.5 fl oz per 1,000 sq ft = $0.56 per 1,000 sq ft",
        job.steps().get(0).line());
  }

  @Test
  void metricRatesCostPerHundredSquareMetres() {
    assertEquals(q("3 EUR/(100.m2)"), Cost.of(q("100 EUR"), q("1 L"), q("30 mL/(100.m2)")).rate());
    assertEquals(q("3 EUR/(100.m2)"), Cost.of(q("100 EUR"), q("1 L"), q("3 L/har")).rate());
    assertEquals(
        q("1/43.56 USD/(1000.[sft_i])"),
        Cost.of(q("1 USD"), q("1 [gal_us]"), q("1 [gal_us]/[acr_us]")).rate());
  }

  @Test
  void whatIsSoldReadyCostsItsPriceOverItsGround() {
    assertEquals(
        q("12.5 USD/(1000.[sft_i])"), Cost.covering(q("25 USD"), q("2000 [sft_i]")).rate());
    assertEquals(q("10 EUR/(100.m2)"), Cost.covering(q("5 EUR"), q("50 m2")).rate());
  }

  @Test
  void amountsAndMeasuresHaveTheirPrice() {
    assertEquals(
        q("2.25 USD"), Cost.ofAmount(q("48 USD"), q("1 [gal_us]"), q("6 [foz_us]")).result());
    assertEquals(
        q("0.375 USD/[foz_us]"), Cost.each(q("48 USD"), q("1 [gal_us]"), Units.FL_OZ).result());
    assertEquals(
        q("2 USD/[lb_av]"),
        Cost.eachOfNutrient(q("25 USD"), q("50 [lb_av]"), q("25 %"), Units.POUND).result());
  }

  @Test
  void theCheapestIsNamedAndTiesGoToTheFirst() {
    Cost dear = Cost.of(q("48 USD"), q("1 [gal_us]"), RATE);
    Cost cheap = Cost.of(q("20 USD"), q("1 [gal_us]"), RATE);
    assertEquals(1, Cost.cheapest(List.of(dear, cheap)));
    assertEquals(0, Cost.cheapest(List.of(cheap, dear)));
    assertEquals(0, Cost.cheapest(List.of(cheap, cheap)));
    assertEquals(0, Cost.cheapest(List.of(dear)));
    assertEquals(2, Cost.cheapest(List.of(dear, dear, cheap)));
  }

  @Test
  void currenciesAreNotCompared() {
    Cost dollars = Cost.of(q("48 USD"), q("1 [gal_us]"), RATE);
    Cost euros = Cost.of(q("20 EUR"), q("1 [gal_us]"), RATE);
    refused("price", Why.WRONG_KIND, () -> Cost.cheapest(List.of(dollars, euros)));
    refused("price", Why.MISSING, () -> Cost.cheapest(List.of()));
  }

  @Test
  void senselessPricesAreRefused() {
    Why why = Why.NOT_ABOVE_ZERO;
    refused("price", why, () -> Cost.of(q("0 USD"), q("1 L"), q("1 L/har")));
    refused("container", why, () -> Cost.of(q("1 USD"), q("0 L"), q("1 L/har")));
    refused("label_rate", Why.WRONG_KIND, () -> Cost.of(q("1 USD"), q("1 L"), q("1 kg/har")));
    refused("price", why, () -> Cost.covering(q("0 USD"), q("1 m2")));
    refused("area", why, () -> Cost.covering(q("1 USD"), q("0 m2")));
    refused("area", why, () -> Cost.covering(q("1 USD"), q("1 m2")).on(q("0 m2")));
    refused("price", why, () -> Cost.ofAmount(q("0 USD"), q("1 L"), q("1 L")));
    refused("container", why, () -> Cost.ofAmount(q("1 USD"), q("0 L"), q("1 L")));
    refused("product", Why.WRONG_KIND, () -> Cost.ofAmount(q("1 USD"), q("1 L"), q("1 kg")));
    refused("price", why, () -> Cost.each(q("0 USD"), q("1 L"), Units.LITRE));
    refused("container", Why.WRONG_KIND, () -> Cost.each(q("1 USD"), q("1 L"), Units.POUND));
    refused("price", why, () -> Cost.eachOfNutrient(q("0 USD"), q("1 kg"), q("9 %"), Units.POUND));
    refused(
        "container", why, () -> Cost.eachOfNutrient(q("1 USD"), q("0 kg"), q("9 %"), Units.POUND));
    refused(
        "analysis", why, () -> Cost.eachOfNutrient(q("1 USD"), q("1 kg"), q("0 %"), Units.POUND));
  }

  @Test
  void aSeasonIsBoughtInWholeContainers() {
    Purchase season = Purchase.of(RATE, q("8000 [sft_i]"), 3);
    assertEquals(q("36 [foz_us]"), season.product());
    assertEquals(
        "1.5 fl oz per 1,000 sq ft × 8,000 sq ft × 3 = 36 fl oz", season.steps().get(0).line());
    Purchase quarts = season.inContainers(q("1 [qt_us]"));
    assertEquals(Optional.of(q("2 1")), quarts.containers());
    assertEquals(Optional.of(q("28 [foz_us]").in(Units.QUART)), quarts.left());
    assertEquals(2, quarts.steps().size());
    Purchase once = Purchase.of(RATE, q("8000 [sft_i]"), 1);
    assertEquals("1.5 fl oz per 1,000 sq ft × 8,000 sq ft = 12 fl oz", once.steps().get(0).line());
    assertEquals(
        Optional.of(q("1 1")),
        Purchase.ofAmount(q("1 [qt_us]")).inContainers(q("32 [foz_us]")).containers());
    Why why = Why.NOT_ABOVE_ZERO;
    refused("label_rate", why, () -> Purchase.of(q("0 L/har"), q("1 har"), 1));
    refused("area", why, () -> Purchase.of(RATE, q("0 har"), 1));
    refused("applied_count", why, () -> Purchase.of(RATE, q("1 har"), 0));
    refused("product", why, () -> Purchase.ofAmount(q("0 L")));
    refused("container", Why.WRONG_KIND, () -> season.inContainers(q("1 kg")));
  }
}
