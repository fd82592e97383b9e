package plainsward.dosing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static plainsward.dosing.Refused.refused;
import static plainsward.units.Amounts.q;
import static plainsward.units.Amounts.r;

import java.util.List;
import org.junit.jupiter.api.Test;
import plainsward.dosing.NotDosable.Why;
import plainsward.units.Unit;

class NozzleTest {
  private static final Unit PER_MINUTE = Unit.of("[gal_us]/min");

  @Test
  void aCatchOverItsTimeIsTheFlow() {
    assertEquals(
        q("0.25 [gal_us]/min"), Nozzle.flow(q("16 [foz_us]"), q("30 s"), PER_MINUTE).result());
    assertEquals(q("2 L/min"), Nozzle.together(q("0.5 L/min"), 4).result());
    refused("catch_volume", Why.NOT_ABOVE_ZERO, () -> Nozzle.flow(q("0 L"), q("1 s"), PER_MINUTE));
    refused("catch_time", Why.NOT_ABOVE_ZERO, () -> Nozzle.flow(q("1 L"), q("0 s"), PER_MINUTE));
    refused("nozzle_count", Why.NOT_ABOVE_ZERO, () -> Nozzle.together(q("1 L/min"), 0));
    refused("nozzle_flow", Why.NOT_ABOVE_ZERO, () -> Nozzle.together(q("0 L/min"), 2));
    assertEquals(q("1 L/min"), Nozzle.together(q("1 L/min"), 1).result());
  }

  @Test
  void flowGoesWithTheRootOfThePressure() {
    assertEquals(
        q("0.4 [gal_us]/min"),
        Nozzle.flowAt(q("0.2 [gal_us]/min"), q("10 [psi]"), q("40 [psi]")).result());
    assertEquals(
        q("40 [psi]"),
        Nozzle.pressureFor(q("10 [psi]"), q("0.2 [gal_us]/min"), q("0.4 [gal_us]/min")).result());
    assertEquals(q("9 1"), Nozzle.pressureTimes(r("3")).result());
  }

  @Test
  void senselessPressuresAndFlowsAreRefused() {
    Why why = Why.NOT_ABOVE_ZERO;
    refused("nozzle_flow", why, () -> Nozzle.flowAt(q("0 L/min"), q("1 bar"), q("2 bar")));
    refused("pressure", why, () -> Nozzle.flowAt(q("1 L/min"), q("0 bar"), q("2 bar")));
    refused("pressure", why, () -> Nozzle.flowAt(q("1 L/min"), q("1 bar"), q("0 bar")));
    refused("pressure", why, () -> Nozzle.pressureFor(q("0 bar"), q("1 L/min"), q("1 L/min")));
    refused("nozzle_flow", why, () -> Nozzle.pressureFor(q("1 bar"), q("0 L/min"), q("1 L/min")));
    refused("nozzle_flow", why, () -> Nozzle.pressureFor(q("1 bar"), q("1 L/min"), q("0 L/min")));
    refused("nozzle_flow", why, () -> Nozzle.pressureTimes(r("0")));
  }

  @Test
  void catchesAreAveragedAndTheOddOnesNamed() {
    Catches catches =
        Catches.of(
            List.of(
                q("20 [foz_us]"),
                q("21 [foz_us]"),
                q("19 [foz_us]"),
                q("0.18 [gal_us]"),
                q("16.96 [foz_us]")));
    assertEquals(q("20 [foz_us]"), catches.average());
    assertEquals(q("19 [foz_us]"), catches.low());
    assertEquals(q("21 [foz_us]"), catches.high());
    assertEquals(List.of(3, 4), catches.outside());
    assertEquals(
        "20 fl oz + 21 fl oz + 19 fl oz + 0.18 gal + 16.96 fl oz = 100 fl oz",
        catches.steps().get(0).line());
    assertEquals("100 fl oz ÷ 5 = 20 fl oz", catches.steps().get(1).line());
  }

  @Test
  void catchesOfDifferentKindsOrNoneAreRefused() {
    refused("catch_volume", Why.MISSING, () -> Catches.of(List.of()));
    refused("catch_volume", Why.WRONG_KIND, () -> Catches.of(List.of(q("1 L"), q("1 L/min"))));
    refused("catch_volume", Why.NOT_ABOVE_ZERO, () -> Catches.of(List.of(q("1 L"), q("0 L"))));
    refused("catch_volume", Why.WRONG_KIND, () -> Catches.of(List.of(q("1 m"))));
    assertEquals(List.of(), Catches.of(List.of(q("3 g"))).outside());
  }

  @Test
  void walkingIsDistanceOverTime() {
    assertEquals(
        q("3 [mi_i]/h"), WalkSpeed.of(q("264 [ft_i]"), q("60 s"), Unit.of("[mi_i]/h")).result());
    assertEquals(
        q("60 s"), WalkSpeed.timeFor(q("264 [ft_i]"), q("3 [mi_i]/h"), Unit.of("s")).result());
    assertEquals(q("100 m2"), WalkSpeed.ground(q("50 m"), q("2 m"), Unit.of("m2")).result());
    Why why = Why.NOT_ABOVE_ZERO;
    refused("distance", why, () -> WalkSpeed.of(q("0 m"), q("1 s"), Unit.of("m/s")));
    refused("walk_time", why, () -> WalkSpeed.of(q("1 m"), q("0 s"), Unit.of("m/s")));
    refused("distance", why, () -> WalkSpeed.timeFor(q("0 m"), q("1 m/s"), Unit.of("s")));
    refused("walk_speed", why, () -> WalkSpeed.timeFor(q("1 m"), q("0 m/s"), Unit.of("s")));
    refused("distance", why, () -> WalkSpeed.ground(q("0 m"), q("1 m"), Unit.of("m2")));
    refused("swath", why, () -> WalkSpeed.ground(q("1 m"), q("0 m"), Unit.of("m2")));
  }
}
