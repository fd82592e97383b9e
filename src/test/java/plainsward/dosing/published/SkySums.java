package plainsward.dosing.published;

import java.time.Period;
import java.util.Map;
import plainsward.dosing.DegreeDays;
import plainsward.dosing.Interval;
import plainsward.dosing.SprayWeather;
import plainsward.units.Ratio;
import plainsward.units.Units;

/** The examples on weather and days. */
final class SkySums {
  private SkySums() {}

  static void addTo(Sums sums) {
    weather(sums);
    days(sums);
  }

  private static void weather(Sums sums) {
    sums.put("wx-01", x -> Map.of("gdd", degreeDays(x)));
    sums.put("wx-03", x -> Map.of("gdd", degreeDays(x)));
    // The source's own method clips at 86 and 50 first; this day lies inside, so both ways agree.
    sums.put("wx-04", x -> Map.of("gdd", degreeDays(x)));
    sums.put(
        "wx-06",
        x -> {
          SprayWeather sky = SprayWeather.of(x.in("t"), x.in("rh"));
          return Map.of("tw", sky.wetBulb(), "delta_t", sky.deltaT());
        });
    // A kilopascal is ten millibars.
    sums.put(
        "wx-07",
        x -> Map.of("es", SprayWeather.saturationPressure(x.in("t")).value().times(Ratio.of(10))));
  }

  private static void days(Sums sums) {
    sums.put(
        "date-01",
        x -> {
          Period wait = Period.ofDays(x.number("interval").numerator().intValue());
          int count = x.number("count").numerator().intValue();
          return Map.of("dates", Interval.days(x.day("start"), wait, count));
        });
    sums.put(
        "date-02",
        x -> {
          Period wait = Period.ofDays(x.number("interval").numerator().intValue());
          return Map.of(
              "leap", Interval.earliest(x.day("start_leap"), wait),
              "common", Interval.earliest(x.day("start_common"), wait));
        });
    sums.put("date-03", x -> Map.of("days", x.in("wait").in(Units.DAY)));
  }

  private static Ratio degreeDays(Example x) {
    return DegreeDays.of(x.in("tmax"), x.in("tmin"), x.in("base")).value();
  }
}
