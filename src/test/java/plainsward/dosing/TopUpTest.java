package plainsward.dosing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static plainsward.dosing.Refused.refused;
import static plainsward.units.Amounts.q;

import org.junit.jupiter.api.Test;
import plainsward.dosing.NotDosable.Why;

class TopUpTest {

  @Test
  void onlyTheMissingVolumeIsDosed() {
    TopUp more = TopUp.toFull(q("4 [gal_us]"), q("1 [gal_us]"), q("1.5 [foz_us]/[gal_us]"));
    assertEquals(q("3 [gal_us]"), more.volume());
    assertEquals(q("4.5 [foz_us]"), more.product());
    assertEquals(q("3 [gal_us]").minus(q("4.5 [foz_us]")), more.water());
    assertEquals("4 gal − 1 gal = 3 gal", more.steps().get(0).line());
    assertEquals("1.5 fl oz per gallon × 3 gal = 4.5 fl oz", more.steps().get(1).line());
  }

  @Test
  void anEmptyTankIsDosedWhole() {
    assertEquals(q("20 mL"), TopUp.toFull(q("2 L"), q("0 L"), q("1 %")).product());
  }

  @Test
  void aFullTankTakesNothing() {
    refused("spray_volume", Why.TOO_LARGE, () -> TopUp.toFull(q("2 L"), q("2 L"), q("1 %")));
    refused("spray_volume", Why.TOO_LARGE, () -> TopUp.toFull(q("2 L"), q("3 L"), q("1 %")));
    refused("spray_volume", Why.BELOW_ZERO, () -> TopUp.toFull(q("2 L"), q("-1 L"), q("1 %")));
    refused("tank", Why.NOT_ABOVE_ZERO, () -> TopUp.toFull(q("0 L"), q("0 L"), q("1 %")));
  }

  @Test
  void aMixThatIsTooStrongIsThinnedWithWater() {
    TopUp water = TopUp.toWeaken(q("2 [gal_us]"), q("6 [foz_us]"), q("1.5 [foz_us]/[gal_us]"));
    assertEquals(q("2 [gal_us]"), water.water());
    assertEquals(q("2 [gal_us]"), water.volume());
    assertEquals(q("0 [foz_us]"), water.product());
    assertEquals("6 fl oz ÷ 1.5 fl oz per gallon = 4 gal", water.steps().get(0).line());
    assertEquals("4 gal − 2 gal = 2 gal", water.steps().get(1).line());
  }

  @Test
  void aMixThatIsNotTooStrongIsNotThinned() {
    refused("strength", Why.TOO_LARGE, () -> TopUp.toWeaken(q("2 L"), q("20 mL"), q("1 %")));
    refused("strength", Why.TOO_LARGE, () -> TopUp.toWeaken(q("2 L"), q("10 mL"), q("1 %")));
    refused(
        "spray_volume", Why.NOT_ABOVE_ZERO, () -> TopUp.toWeaken(q("0 L"), q("1 mL"), q("1 %")));
  }
}
