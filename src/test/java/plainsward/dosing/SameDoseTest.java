package plainsward.dosing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainsward.units.Amounts.q;

import org.junit.jupiter.api.Test;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Units;

/** One plain case of each of the {@link DosingPropertiesTest}. */
class SameDoseTest {
  private static final TankJob JOB =
      TankJob.start()
          .onArea(q("7300 [sft_i]"))
          .atRate(q("1.2 [foz_us]/(1000.[sft_i])"))
          .atSprayRate(q("0.9 [gal_us]/(1000.[sft_i])"))
          .fromTank(q("3 [gal_us]"));

  @Test
  void theFillsAddUpToTheJobExactly() {
    TankMix mix = TankMix.of(JOB);
    Fills fills = mix.fills().get();
    Ratio full = Ratio.of(fills.full());
    assertEquals(
        mix.product().get(),
        fills.each().product().get().times(full).plus(fills.last().product().get()));
    assertEquals(mix.spray().get(), fills.each().volume().times(full).plus(fills.last().volume()));
    assertEquals(fills.last().volume(), fills.last().water().plus(fills.last().product().get()));
  }

  @Test
  void theSameJobInMetricUnitsTakesTheSameDose() {
    TankMix metric =
        TankMix.of(
            TankJob.start()
                .onArea(q("7300 [sft_i]").in(Units.HECTARE))
                .atRate(q("1.2 [foz_us]/(1000.[sft_i])").in(Units.ML_PER_HUNDRED))
                .atSprayRate(q("0.9 [gal_us]/(1000.[sft_i])").in(Units.LITRE_PER_HUNDRED))
                .fromTank(q("3 [gal_us]").in(Units.LITRE)));
    TankMix.of(JOB)
        .figures()
        .forEach((name, value) -> assertTrue(value.isSameAmount(metric.figures().get(name)), name));
  }

  @Test
  void twiceTheAreaTakesTwiceTheProductAndTheSprayRateDoesNotMatter() {
    Quantity once = TankMix.of(JOB).product().get();
    assertEquals(q("8.76 [foz_us]"), once);
    assertEquals(
        once.times(Ratio.of(2)), TankMix.of(JOB.onArea(q("14600 [sft_i]"))).product().get());
    assertEquals(once, TankMix.of(JOB.atSprayRate(q("2 [gal_us]/(1000.[sft_i])"))).product().get());
  }

  @Test
  void theOrderOfPiecesDoesNotMatter() {
    LawnArea front = LawnArea.of(q("1200 [sft_i]"));
    LawnArea back = LawnArea.of(q("300 m2"));
    assertTrue(front.plus(back).area().isSameAmount(back.plus(front).area()));
  }
}
