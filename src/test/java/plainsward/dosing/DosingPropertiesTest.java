package plainsward.dosing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainsward.units.Amounts.q;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Units;

/**
 * What holds for any job. Each has a plain test of one case beside it ({@link TankMixTest}, {@link
 * SameDoseTest}).
 */
class DosingPropertiesTest {

  @Property
  void theFillsAddUpToTheJobExactly(
      @ForAll("areas") Quantity area,
      @ForAll("rates") Quantity rate,
      @ForAll("sprayRates") Quantity sprayRate,
      @ForAll("tanks") Quantity tank) {
    TankMix mix = TankMix.of(job(area, rate, sprayRate).fromTank(tank));
    Fills fills = mix.fills().get();
    Ratio full = Ratio.of(fills.full());
    Quantity spray = fills.each().volume().times(full);
    Quantity product = fills.each().product().get().times(full);
    if (fills.endsInPart()) {
      spray = spray.plus(fills.last().volume());
      product = product.plus(fills.last().product().get());
    }
    assertTrue(spray.isSameAmount(mix.spray().get()));
    assertTrue(product.isSameAmount(mix.product().get()));
    assertTrue(fills.last().volume().compareTo(tank) <= 0);
  }

  @Property
  void everyLoadIsWaterAndProduct(
      @ForAll("areas") Quantity area,
      @ForAll("rates") Quantity rate,
      @ForAll("sprayRates") Quantity sprayRate,
      @ForAll("tanks") Quantity tank) {
    Fills fills = TankMix.of(job(area, rate, sprayRate).fromTank(tank)).fills().get();
    for (Load load : List.of(fills.each(), fills.last())) {
      assertTrue(load.water().plus(load.product().get()).isSameAmount(load.volume()));
      assertTrue(load.water().signum() >= 0);
    }
  }

  @Property
  void theSameJobInMetricUnitsTakesTheSameDose(
      @ForAll("areas") Quantity area,
      @ForAll("rates") Quantity rate,
      @ForAll("sprayRates") Quantity sprayRate,
      @ForAll("tanks") Quantity tank) {
    TankMix us = TankMix.of(job(area, rate, sprayRate).fromTank(tank));
    TankMix metric =
        TankMix.of(
            job(
                    area.in(Units.SQUARE_METRE),
                    rate.in(Units.ML_PER_HUNDRED),
                    sprayRate.in(Units.LITRE_PER_HECTARE))
                .fromTank(tank.in(Units.LITRE)));
    us.figures()
        .forEach((name, value) -> assertTrue(value.isSameAmount(metric.figures().get(name)), name));
    assertEquals(us.figures().keySet(), metric.figures().keySet());
  }

  @Property
  void twiceTheAreaTakesTwiceTheProduct(
      @ForAll("areas") Quantity area,
      @ForAll("rates") Quantity rate,
      @ForAll("sprayRates") Quantity sprayRate) {
    TankMix once = TankMix.of(job(area, rate, sprayRate));
    TankMix twice = TankMix.of(job(area.times(Ratio.of(2)), rate, sprayRate));
    assertEquals(once.product().get().times(Ratio.of(2)), twice.product().get());
    assertEquals(once.spray().get().times(Ratio.of(2)), twice.spray().get());
  }

  @Property
  void theSprayRateNeverChangesTheTotal(
      @ForAll("areas") Quantity area,
      @ForAll("rates") Quantity rate,
      @ForAll("sprayRates") Quantity one,
      @ForAll("sprayRates") Quantity other) {
    assertEquals(
        TankMix.of(job(area, rate, one)).product(), TankMix.of(job(area, rate, other)).product());
  }

  @Property
  void whatIsLaidDownIsTheLabelsRate(
      @ForAll("areas") Quantity area, @ForAll("rates") Quantity rate) {
    Quantity product = TankMix.of(TankJob.start().onArea(area).atRate(rate)).product().get();
    AppliedDose dose = AppliedDose.of(product, area, rate);
    assertEquals(Ratio.ONE, dose.times());
    assertTrue(Coverage.ofProduct(product, rate).area().isSameAmount(area));
  }

  @Property
  void aStrengthIsFoundAgainFromItsMix(
      @ForAll("tanks") Quantity volume, @ForAll("parts") Quantity strength) {
    Quantity product = Dilution.of(volume, strength).product();
    assertEquals(strength, Strength.of(product, volume, Units.PERCENT).result());
  }

  @Property
  void theOrderOfPiecesDoesNotMatter(@ForAll("manyAreas") List<Quantity> pieces) {
    List<Quantity> mixed = new ArrayList<>(pieces);
    Collections.shuffle(mixed, new Random(7));
    assertTrue(sum(pieces).isSameAmount(sum(mixed)));
  }

  @Property
  void everyStepOfTheWorkingComesToItsOutcome(
      @ForAll("areas") Quantity area,
      @ForAll("rates") Quantity rate,
      @ForAll("sprayRates") Quantity sprayRate,
      @ForAll("tanks") Quantity tank) {
    for (Step step : TankMix.of(job(area, rate, sprayRate).fromTank(tank)).steps()) {
      assertEquals(reckoned(step), step.exact().inBase(), step.line());
      assertTrue(step.result().compareTo(step.exact()) >= 0, step.line());
    }
  }

  private static Ratio reckoned(Step step) {
    Ratio outcome = Ratio.ZERO;
    for (Term term : step.terms()) {
      Ratio value = term.value().inBase();
      outcome =
          switch (term.sign()) {
            case START -> value;
            case PLUS -> outcome.plus(value);
            case MINUS -> outcome.minus(value);
            case TIMES -> outcome.times(value);
            case OVER -> outcome.dividedBy(value);
          };
    }
    return outcome;
  }

  private static Quantity sum(List<Quantity> pieces) {
    LawnArea all = LawnArea.of(pieces.get(0));
    for (Quantity piece : pieces.subList(1, pieces.size())) {
      all = all.plus(LawnArea.of(piece));
    }
    return all.area();
  }

  private static TankJob job(Quantity area, Quantity rate, Quantity sprayRate) {
    return TankJob.start().onArea(area).atRate(rate).atSprayRate(sprayRate);
  }

  @Provide
  Arbitrary<Quantity> areas() {
    return amounts(1, 90_000_000, "[sft_i]");
  }

  @Provide
  Arbitrary<List<Quantity>> manyAreas() {
    Arbitrary<Quantity> metric = amounts(1, 5_000_000, "m2");
    return Arbitraries.oneOf(areas(), metric).list().ofMinSize(1).ofMaxSize(8);
  }

  @Provide
  Arbitrary<Quantity> rates() {
    return amounts(1, 20_000, "[foz_us]/(1000.[sft_i])");
  }

  @Provide
  Arbitrary<Quantity> sprayRates() {
    return amounts(200, 10_000, "[gal_us]/(1000.[sft_i])");
  }

  @Provide
  Arbitrary<Quantity> tanks() {
    return amounts(250, 300_000, "[gal_us]");
  }

  @Provide
  Arbitrary<Quantity> parts() {
    return amounts(1, 100_000, "%");
  }

  /** So many thousandths of a unit. */
  private static Arbitrary<Quantity> amounts(int low, int high, String code) {
    return Arbitraries.integers()
        .between(low, high)
        .map(thousandths -> q(thousandths + "/1000 " + code));
  }
}
