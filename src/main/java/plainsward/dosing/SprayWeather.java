package plainsward.dosing;

import java.util.List;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.Units;

/**
 * How fast spray dries: the wet-bulb temperature and Delta T, the dry-bulb temperature less it.
 *
 * @param wetBulb in degrees Celsius
 * @param deltaT a difference in degrees Celsius, at least 0
 * @param steps the working
 */
public record SprayWeather(Quantity wetBulb, Quantity deltaT, List<Step> steps) {
  private static final Unit KILOPASCAL = Unit.of("kPa");

  /** Keeps the steps as they are. */
  public SprayWeather {
    steps = List.copyOf(steps);
  }

  /**
   * From temperature and relative humidity, by Stull's fit: R. Stull, "Wet-Bulb Temperature from
   * Relative Humidity and Air Temperature", J. Appl. Meteor. Climatol. 50 (2011), 2267-2269; error
   * -1 to +0.65 °C at ordinary pressure.
   *
   * @param temperature -20 to 50 °C
   * @param humidity 5 to 100 %; at 100 % the wet bulb is the dry one
   */
  public static SprayWeather of(Quantity temperature, Quantity humidity) {
    Quantity dry =
        Given.ofKind("temperature", temperature, Dimension.TEMPERATURE).in(Units.CELSIUS);
    Quantity damp = Given.ofKind("humidity", humidity, Dimension.NONE).in(Units.PERCENT);
    within("temperature", dry, -20, 50);
    within("humidity", damp, 5, 100);
    Quantity wet = wetBulb(dry, damp);
    Step difference = Working.of("delta_t", dry).minus(wet).as(Units.CELSIUS);
    return new SprayWeather(wet, difference.result(), List.of(difference));
  }

  private static Quantity wetBulb(Quantity dry, Quantity damp) {
    double t = dry.value().toDouble();
    double fitted = stull(t, damp.value().toDouble());
    boolean saturated = damp.value().equals(Ratio.of(100)) || fitted > t;
    return saturated ? dry : new Quantity(Ratio.ofDouble(fitted), Units.CELSIUS);
  }

  private static double stull(double t, double rh) {
    return t * Math.atan(0.151977 * Math.sqrt(rh + 8.313659))
        + Math.atan(t + rh)
        - Math.atan(rh - 1.676331)
        + 0.00391838 * Math.pow(rh, 1.5) * Math.atan(0.023101 * rh)
        - 4.686035;
  }

  /**
   * The pressure of water vapour in saturated air, by the Magnus form that the Arizona
   * Meteorological Network (AZMET) gives: 0.6108 × e^(17.27 t ÷ (t + 237.3)) kPa.
   *
   * @param temperature -20 to 50 °C
   */
  public static Quantity saturationPressure(Quantity temperature) {
    Quantity dry =
        Given.ofKind("temperature", temperature, Dimension.TEMPERATURE).in(Units.CELSIUS);
    within("temperature", dry, -20, 50);
    double t = dry.value().toDouble();
    double pressure = 0.6108 * Math.exp(17.27 * t / (t + 237.3));
    return new Quantity(Ratio.ofDouble(pressure), KILOPASCAL);
  }

  private static void within(String name, Quantity given, long low, long high) {
    if (given.value().compareTo(Ratio.of(low)) < 0 || given.value().compareTo(Ratio.of(high)) > 0) {
      throw new NotDosable(name, NotDosable.Why.OUT_OF_RANGE);
    }
  }
}
