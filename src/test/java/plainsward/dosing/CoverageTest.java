package plainsward.dosing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static plainsward.dosing.Refused.refused;
import static plainsward.units.Amounts.q;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import plainsward.dosing.NotDosable.Why;
import plainsward.units.Units;

class CoverageTest {

  @Test
  void aTankCoversItsVolumeOverTheSprayRate() {
    Coverage tank = Coverage.ofSpray(q("4 [gal_us]"), q("1.5 [gal_us]/(1000.[sft_i])"));
    assertEquals(q("8000/3 [sft_i]"), tank.area());
    assertEquals(Optional.of(q("4 [gal_us]")), tank.spray());
    assertEquals(Optional.empty(), tank.fills());
    assertEquals(
        q("0.1 [acr_us]").in(Units.SQUARE_FOOT),
        Coverage.ofSpray(q("4 [gal_us]"), q("40 [gal_us]/[acr_us]")).area());
    assertEquals(
        q("1 [acr_us]"), Coverage.ofSpray(q("4 [gal_us]"), q("4 [gal_us]/[acr_us]")).area());
    assertEquals(q("400 m2"), Coverage.ofSpray(q("16 L"), q("400 L/har")).area());
    assertEquals(q("2 har"), Coverage.ofSpray(q("800 L"), q("400 L/har")).area());
  }

  @Test
  void aContainerCoversItsContentOverTheRate() {
    Coverage quart = Coverage.ofProduct(q("1 [qt_us]"), q("1.5 [foz_us]/(1000.[sft_i])"));
    assertEquals(q("64000/3 [sft_i]"), quart.area());
    assertEquals(Optional.empty(), quart.spray());
    assertEquals(
        q("12500 [sft_i]"),
        Coverage.ofProduct(q("50 [lb_av]"), q("4 [lb_av]/(1000.[sft_i])")).area());
    refused(
        "label_rate",
        Why.WRONG_KIND,
        () -> Coverage.ofProduct(q("1 [qt_us]"), q("4 [lb_av]/(1000.[sft_i])")));
  }

  @Test
  void aContainerCoversWhatItsMixCovers() {
    Coverage pint =
        Coverage.ofProductAtStrength(
            q("16 [foz_us]"), q("2 [foz_us]/[gal_us]"), q("1 [gal_us]/(1000.[sft_i])"));
    assertEquals(q("8000 [sft_i]"), pint.area());
    assertEquals(Optional.of(q("8 [gal_us]")), pint.spray());
    assertEquals(2, pint.steps().size());
  }

  @Test
  void theCoveredGroundIsSprayedInSoManyTanks() {
    Coverage quart =
        Coverage.ofProduct(q("1 [qt_us]"), q("4 [foz_us]/(1000.[sft_i])"))
            .inTanks(q("3 [gal_us]"), q("1 [gal_us]/(1000.[sft_i])"));
    assertEquals(q("8000 [sft_i]"), quart.area());
    assertEquals(Optional.of(q("8 [gal_us]")), quart.spray());
    assertEquals(3, quart.fills().get().count());
    assertEquals(q("2 [gal_us]"), quart.fills().get().last());
    assertEquals(5, quart.steps().size());
  }

  @Test
  void whatIsSaidToCoverAnAreaHasARate() {
    assertEquals(
        q("4 [foz_us]/(1000.[sft_i])"),
        Coverage.rateOf(q("1 [qt_us]"), q("8000 [sft_i]"), Units.FL_OZ_PER_THOUSAND).result());
  }

  @Test
  void onlyWholeApplicationsCount() {
    Step goes =
        Coverage.applications(q("1 [qt_us]"), q("1.5 [foz_us]/(1000.[sft_i])"), q("5000 [sft_i]"));
    assertEquals(q("4 1"), goes.result());
    assertEquals(q("64/15 1"), goes.exact());
  }

  @Test
  void senselessAmountsAreRefused() {
    refused("spray_volume", Why.NOT_ABOVE_ZERO, () -> Coverage.ofSpray(q("0 L"), q("1 L/har")));
    refused("spray_rate", Why.NOT_ABOVE_ZERO, () -> Coverage.ofSpray(q("1 L"), q("0 L/har")));
    refused("container", Why.NOT_ABOVE_ZERO, () -> Coverage.ofProduct(q("0 L"), q("1 L/har")));
    refused("label_rate", Why.NOT_ABOVE_ZERO, () -> Coverage.ofProduct(q("1 L"), q("0 L/har")));
    refused(
        "spray_rate",
        Why.WRONG_KIND,
        () -> Coverage.ofProductAtStrength(q("1 L"), q("1 %"), q("1 g/har")));
    Coverage some = Coverage.ofProduct(q("1 L"), q("1 L/har"));
    refused("spray_rate", Why.NOT_ABOVE_ZERO, () -> some.inTanks(q("1 L"), q("0 L/har")));
    refused(
        "container",
        Why.NOT_ABOVE_ZERO,
        () -> Coverage.rateOf(q("0 L"), q("1 har"), Units.LITRE_PER_HECTARE));
    refused(
        "area",
        Why.NOT_ABOVE_ZERO,
        () -> Coverage.rateOf(q("1 L"), q("0 har"), Units.LITRE_PER_HECTARE));
    refused(
        "area",
        Why.NOT_ABOVE_ZERO,
        () -> Coverage.applications(q("1 L"), q("1 L/har"), q("0 har")));
  }
}
