package plainsward.dosing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static plainsward.dosing.Refused.refused;
import static plainsward.units.Amounts.q;
import static plainsward.units.Amounts.r;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainsward.dosing.NotDosable.Why;
import plainsward.units.Quantity;
import plainsward.units.Unit;
import plainsward.units.Units;

class CalibrationTest {
  private static final Unit PER_MINUTE = Unit.of("[gal_us]/min");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.5 [gal_us] | 1000 [sft_i] | 1.5 [gal_us]/(1000.[sft_i])",
        "64 [foz_us] | 500 [sft_i] | 1 [gal_us]/(1000.[sft_i])",
        "2 [gal_us] | 0.1 [acr_us] | 20 [gal_us]/[acr_us]",
        "5 L | 50 m2 | 10 L/(100.m2)",
        "500 mL | 10 m2 | 5 L/(100.m2)",
        "40 L | 0.1 har | 400 L/har",
        "160 [foz_br] | 1000 [sft_i] | 1 [gal_br]/(1000.[sft_i])",
        "1 [gal_us] | 100 [syd_i] | 10/9 [gal_us]/(1000.[sft_i])",
      })
  void aKnownAreaGivesTheSprayRateInTheUsualUnit(String volume, String area, String rate) {
    Step step = Calibration.onArea(q(volume), q(area));
    assertEquals(q(rate), step.result());
    assertEquals("spray_rate", step.what());
  }

  @Test
  void theClockGivesTheSprayRate() {
    Step step =
        Calibration.byClock(
            q("0.5 [gal_us]/min"), q("90 s"), q("500 [sft_i]"), Units.GALLON_PER_THOUSAND);
    assertEquals(q("1.5 [gal_us]/(1000.[sft_i])"), step.result());
    assertEquals(
        q("90 s"),
        Calibration.timeFor(
                q("1.5 [gal_us]/(1000.[sft_i])"),
                q("500 [sft_i]"),
                q("0.5 [gal_us]/min"),
                Units.SECOND)
            .result());
  }

  @Test
  void theConstantOfGallonsPerAcreIsNothingButUnits() {
    Quantity gpa =
        Calibration.atSpeed(
                q("1 [gal_us]/min"), q("1 [mi_i]/h"), q("1 [in_i]"), Units.GALLON_PER_ACRE)
            .result();
    assertEquals(r("5940"), gpa.value());
  }

  @Test
  void flowSpeedAndSprayRateSolveForEachOther() {
    Quantity rate = q("40 [gal_us]/[acr_us]");
    Quantity flow = Calibration.flowFor(rate, q("3 [mi_i]/h"), q("20 [in_i]"), PER_MINUTE).result();
    assertEquals(r("2400/5940"), flow.value());
    assertEquals(
        q("3 [mi_i]/h"),
        Calibration.speedFor(rate, flow, q("20 [in_i]"), Units.MILE_PER_HOUR).result());
    assertEquals(
        rate,
        Calibration.atSpeed(flow, q("3 [mi_i]/h"), q("20 [in_i]"), Units.GALLON_PER_ACRE).result());
  }

  @Test
  void ouncesOnA128thOfAnAcreAreGallonsPerAcre() {
    assertEquals(q("37 [gal_us]/[acr_us]"), Calibration.onAcrePart(q("37 [foz_us]")).result());
    assertEquals(q("340.3125 [sft_i]"), Calibration.ACRE_PART);
    assertEquals(q("68.0625 [ft_i]"), Calibration.acrePartCourse(q("5 [ft_i]")).result());
  }

  @Test
  void aCourseIsAreaOverSwath() {
    assertEquals(
        q("250 [ft_i]"), Calibration.course(q("1000 [sft_i]"), q("4 [ft_i]"), Units.FOOT).result());
  }

  @Test
  void senselessMeasurementsAreRefusedByName() {
    Quantity rate = q("1 L/har");
    Quantity flow = q("1 L/min");
    Quantity speed = q("1 m/s");
    Quantity swath = q("1 m");
    Quantity area = q("1 m2");
    Unit unit = rate.unit();
    Why why = Why.NOT_ABOVE_ZERO;
    refused("catch_volume", why, () -> Calibration.onArea(q("0 L"), area));
    refused("area", why, () -> Calibration.onArea(q("1 L"), q("0 m2")));
    refused("nozzle_flow", why, () -> Calibration.byClock(q("0 L/min"), q("1 s"), area, unit));
    refused("walk_time", why, () -> Calibration.byClock(flow, q("0 s"), area, unit));
    refused("area", why, () -> Calibration.byClock(flow, q("1 s"), q("0 m2"), unit));
    refused("nozzle_flow", why, () -> Calibration.atSpeed(q("0 L/min"), speed, swath, unit));
    refused("walk_speed", why, () -> Calibration.atSpeed(flow, q("0 m/s"), swath, unit));
    refused("swath", why, () -> Calibration.atSpeed(flow, speed, q("0 m"), unit));
    refused("spray_rate", why, () -> Calibration.flowFor(q("0 L/har"), speed, swath, PER_MINUTE));
    refused("walk_speed", why, () -> Calibration.flowFor(rate, q("0 m/s"), swath, PER_MINUTE));
    refused("swath", why, () -> Calibration.flowFor(rate, speed, q("0 m"), PER_MINUTE));
    refused("spray_rate", why, () -> Calibration.speedFor(q("0 L/har"), flow, swath, unit));
    refused("nozzle_flow", why, () -> Calibration.speedFor(rate, q("0 L/min"), swath, unit));
    refused("swath", why, () -> Calibration.speedFor(rate, flow, q("0 m"), unit));
    refused("spray_rate", why, () -> Calibration.timeFor(q("0 L/har"), area, flow, unit));
    refused("area", why, () -> Calibration.timeFor(rate, q("0 m2"), flow, unit));
    refused("nozzle_flow", why, () -> Calibration.timeFor(rate, area, q("0 L/min"), unit));
    refused("area", why, () -> Calibration.course(q("0 m2"), swath, Units.METRE));
    refused("swath", why, () -> Calibration.course(area, q("0 m"), Units.METRE));
    refused("swath", Why.WRONG_KIND, () -> Calibration.acrePartCourse(q("1 m2")));
  }
}
