package plainsward.dosing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainsward.dosing.Refused.refused;
import static plainsward.units.Amounts.q;
import static plainsward.units.Amounts.r;

import org.junit.jupiter.api.Test;
import plainsward.dosing.NotDosable.Why;
import plainsward.units.Units;

class SprayWeatherTest {

  /** Stull 2011 works the example 20 °C, 50 % → 13.7 °C: from memory. */
  @Test
  void wetBulbAndDeltaTComeFromTemperatureAndHumidity() {
    SprayWeather sky = SprayWeather.of(q("20 Cel"), q("50 %"));
    assertEquals(13.699342, sky.wetBulb().value().toDouble(), 1e-6);
    assertEquals(6.300658, sky.deltaT().value().toDouble(), 1e-6);
    assertEquals(Units.CELSIUS, sky.deltaT().unit());
    assertEquals("20 °C − 13.7 °C = 6.3 °C", sky.steps().get(0).line());
  }

  @Test
  void fahrenheitIsReadToo() {
    SprayWeather sky = SprayWeather.of(q("68 [degF]"), q("0.5 1"));
    assertEquals(SprayWeather.of(q("20 Cel"), q("50 %")).wetBulb(), sky.wetBulb());
  }

  @Test
  void inSaturatedAirTheWetBulbIsTheDryOne() {
    SprayWeather sky = SprayWeather.of(q("20 Cel"), q("100 %"));
    assertEquals(q("20 Cel"), sky.wetBulb());
    assertEquals(q("0 Cel"), sky.deltaT());
  }

  @Test
  void deltaTNeverGoesBelowNought() {
    for (int degrees = -20; degrees <= 50; degrees++) {
      for (int humidity = 5; humidity <= 100; humidity++) {
        SprayWeather sky = SprayWeather.of(q(degrees + " Cel"), q(humidity + " %"));
        assertTrue(sky.deltaT().signum() >= 0, degrees + " °C, " + humidity + " %");
      }
    }
  }

  @Test
  void theFormulaIsNotStretched() {
    refused("temperature", Why.OUT_OF_RANGE, () -> SprayWeather.of(q("-20.1 Cel"), q("50 %")));
    refused("temperature", Why.OUT_OF_RANGE, () -> SprayWeather.of(q("50.1 Cel"), q("50 %")));
    refused("humidity", Why.OUT_OF_RANGE, () -> SprayWeather.of(q("20 Cel"), q("4.9 %")));
    refused("humidity", Why.OUT_OF_RANGE, () -> SprayWeather.of(q("20 Cel"), q("100.1 %")));
    refused("temperature", Why.WRONG_KIND, () -> SprayWeather.of(q("20 %"), q("50 %")));
    refused("humidity", Why.WRONG_KIND, () -> SprayWeather.of(q("20 Cel"), q("50 Cel")));
    refused("temperature", Why.OUT_OF_RANGE, () -> SprayWeather.saturationPressure(q("51 Cel")));
    refused("temperature", Why.WRONG_KIND, () -> SprayWeather.saturationPressure(q("51 %")));
  }

  @Test
  void saturatedAirHoldsMoreVapourWhenWarm() {
    assertEquals(2.3382813, SprayWeather.saturationPressure(q("20 Cel")).value().toDouble(), 1e-6);
    assertEquals(0.6108, SprayWeather.saturationPressure(q("32 [degF]")).value().toDouble(), 1e-12);
    assertEquals("kPa", SprayWeather.saturationPressure(q("20 Cel")).unit().code());
  }

  @Test
  void degreeDaysAreTheMeanAboveTheBaseAndNeverBelowNought() {
    DegreeDays warm = DegreeDays.of(q("74 [degF]"), q("52 [degF]"), q("50 [degF]"));
    assertEquals(r("13"), warm.value());
    assertEquals(Units.FAHRENHEIT, warm.scale());
    assertEquals(r("0"), DegreeDays.of(q("50 [degF]"), q("40 [degF]"), q("50 [degF]")).value());
    assertEquals(r("5"), DegreeDays.of(q("59 [degF]"), q("15 Cel"), q("10 Cel")).value());
    assertEquals(r("0"), DegreeDays.of(q("9 Cel"), q("9 Cel"), q("10 Cel")).value());
    assertEquals(r("26"), warm.plus(warm).value());
    DegreeDays metric = DegreeDays.of(q("20 Cel"), q("10 Cel"), q("10 Cel"));
    refused("temperature", Why.WRONG_KIND, () -> warm.plus(metric));
    refused(
        "temperature", Why.OUT_OF_RANGE, () -> DegreeDays.of(q("9 Cel"), q("10 Cel"), q("5 Cel")));
    refused("temperature", Why.WRONG_KIND, () -> DegreeDays.of(q("9 Cel"), q("8 Cel"), q("5 1")));
    refused("temperature", Why.WRONG_KIND, () -> DegreeDays.of(q("9 Cel"), q("8 1"), q("5 Cel")));
    refused("temperature", Why.WRONG_KIND, () -> DegreeDays.of(q("9 1"), q("8 Cel"), q("5 Cel")));
  }
}
