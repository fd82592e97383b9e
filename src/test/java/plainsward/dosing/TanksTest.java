package plainsward.dosing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainsward.dosing.Refused.refused;
import static plainsward.units.Amounts.q;

import org.junit.jupiter.api.Test;
import plainsward.dosing.NotDosable.Why;

class TanksTest {

  @Test
  void aVolumeThatDividesExactlyEndsInAFullTank() {
    Tanks tanks = Tanks.holding(q("6 [gal_us]"), q("2 [gal_us]"));
    assertEquals(3, tanks.count());
    assertEquals(3, tanks.full());
    assertTrue(tanks.isLastFull());
    assertEquals(q("2 [gal_us]"), tanks.last());
    assertEquals(1, tanks.steps().size());
  }

  @Test
  void aDropMoreIsAnotherLoad() {
    Tanks tanks = Tanks.holding(q("6.001 [gal_us]"), q("2 [gal_us]"));
    assertEquals(4, tanks.count());
    assertEquals(3, tanks.full());
    assertFalse(tanks.isLastFull());
    assertEquals(q("0.001 [gal_us]"), tanks.last());
    assertEquals(3, tanks.steps().size());
  }

  @Test
  void lessThanATankIsOneLoadInTheTanksUnit() {
    Tanks tanks = Tanks.holding(q("64 [foz_us]"), q("2 [gal_us]"));
    assertEquals(1, tanks.count());
    assertEquals(0, tanks.full());
    assertEquals(q("0.5 [gal_us]"), tanks.last());
    assertEquals(1, tanks.steps().size());
  }

  @Test
  void aSenselessNumberOfLoadsIsRefused() {
    refused("tank", Why.NOT_ABOVE_ZERO, () -> Tanks.holding(q("1 L"), q("0 L")));
    refused("spray_volume", Why.NOT_ABOVE_ZERO, () -> Tanks.holding(q("0 L"), q("1 L")));
    refused("spray_volume", Why.TOO_LARGE, () -> Tanks.holding(q("1000000001 L"), q("1 L")));
    assertEquals(1_000_000_000, Tanks.holding(q("1000000000 L"), q("1 L")).count());
  }
}
