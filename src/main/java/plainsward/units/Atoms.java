package plainsward.units;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * The single units by UCUM code, each an exact multiple of its kind's base (litre, kilogram, square
 * metre, metre, second, pascal). Sources: the international yard and pound (inch 2.54 cm, pound
 * 0.45359237 kg), the US gallon of 231 cubic inches, the imperial gallon of 4.54609 L; the acre is
 * 43,560 square feet of the international foot, as extension bulletins reckon it (the survey acre
 * differs by 4 parts in a million).
 */
final class Atoms {
  private static final Ratio INCH = Ratio.of("0.0254");
  private static final Ratio FOOT = INCH.times(Ratio.of(12));
  private static final Ratio YARD = FOOT.times(Ratio.of(3));
  private static final Ratio SQUARE_FOOT = FOOT.times(FOOT);
  private static final Ratio US_GALLON = INCH.times(INCH).times(INCH).times(Ratio.of(231_000));
  private static final Ratio IMPERIAL_GALLON = Ratio.of("4.54609");
  private static final Ratio POUND = Ratio.of("0.45359237");
  private static final Set<String> CURRENCIES =
      Set.of("USD", "CAD", "AUD", "NZD", "GBP", "EUR", "ZAR", "INR");
  private static final Map<String, Unit> ALL = table();

  private Atoms() {}

  /** The unit of this code, or null where there is none. */
  static Unit find(String code) {
    return ALL.get(code);
  }

  /** The codes of all units. */
  static Set<String> codes() {
    return ALL.keySet();
  }

  private static Map<String, Unit> table() {
    Map<String, Unit> all = new LinkedHashMap<>();
    volumes(all);
    masses(all);
    areas(all);
    lengths(all);
    rest(all);
    return all;
  }

  private static void volumes(Map<String, Unit> all) {
    part(all, "[gal_us]", US_GALLON, 1, Dimension.VOLUME);
    part(all, "[qt_us]", US_GALLON, 4, Dimension.VOLUME);
    part(all, "[pt_us]", US_GALLON, 8, Dimension.VOLUME);
    part(all, "[cup_us]", US_GALLON, 16, Dimension.VOLUME);
    part(all, "[foz_us]", US_GALLON, 128, Dimension.VOLUME);
    part(all, "[tbs_us]", US_GALLON, 256, Dimension.VOLUME);
    part(all, "[tsp_us]", US_GALLON, 768, Dimension.VOLUME);
    part(all, "[gal_br]", IMPERIAL_GALLON, 1, Dimension.VOLUME);
    part(all, "[qt_br]", IMPERIAL_GALLON, 4, Dimension.VOLUME);
    part(all, "[pt_br]", IMPERIAL_GALLON, 8, Dimension.VOLUME);
    part(all, "[foz_br]", IMPERIAL_GALLON, 160, Dimension.VOLUME);
    part(all, "L", Ratio.ONE, 1, Dimension.VOLUME);
    part(all, "mL", Ratio.ONE, 1000, Dimension.VOLUME);
  }

  private static void masses(Map<String, Unit> all) {
    part(all, "[lb_av]", POUND, 1, Dimension.MASS);
    part(all, "[oz_av]", POUND, 16, Dimension.MASS);
    part(all, "kg", Ratio.ONE, 1, Dimension.MASS);
    part(all, "g", Ratio.ONE, 1000, Dimension.MASS);
    part(all, "mg", Ratio.ONE, 1_000_000, Dimension.MASS);
    part(all, "t", Ratio.of(1000), 1, Dimension.MASS);
  }

  private static void areas(Map<String, Unit> all) {
    part(all, "[sft_i]", SQUARE_FOOT, 1, Dimension.AREA);
    part(all, "[syd_i]", YARD.times(YARD), 1, Dimension.AREA);
    part(all, "[acr_us]", SQUARE_FOOT.times(Ratio.of(43_560)), 1, Dimension.AREA);
    part(all, "m2", Ratio.ONE, 1, Dimension.AREA);
    part(all, "har", Ratio.of(10_000), 1, Dimension.AREA);
  }

  private static void lengths(Map<String, Unit> all) {
    part(all, "[ft_i]", FOOT, 1, Dimension.LENGTH);
    part(all, "[in_i]", INCH, 1, Dimension.LENGTH);
    part(all, "[yd_i]", YARD, 1, Dimension.LENGTH);
    part(all, "[mi_i]", FOOT.times(Ratio.of(5280)), 1, Dimension.LENGTH);
    part(all, "m", Ratio.ONE, 1, Dimension.LENGTH);
    part(all, "cm", Ratio.ONE, 100, Dimension.LENGTH);
    part(all, "mm", Ratio.ONE, 1000, Dimension.LENGTH);
    part(all, "km", Ratio.of(1000), 1, Dimension.LENGTH);
  }

  private static void rest(Map<String, Unit> all) {
    part(all, "s", Ratio.ONE, 1, Dimension.TIME);
    part(all, "min", Ratio.of(60), 1, Dimension.TIME);
    part(all, "h", Ratio.of(3600), 1, Dimension.TIME);
    part(all, "d", Ratio.of(86_400), 1, Dimension.TIME);
    part(all, "wk", Ratio.of(604_800), 1, Dimension.TIME);
    part(
        all,
        "[psi]",
        POUND.times(Ratio.of("9.80665")).dividedBy(INCH.times(INCH)),
        1,
        Dimension.PRESSURE);
    part(all, "bar", Ratio.of(100_000), 1, Dimension.PRESSURE);
    part(all, "kPa", Ratio.of(1000), 1, Dimension.PRESSURE);
    part(all, "1", Ratio.ONE, 1, Dimension.NONE);
    part(all, "%", Ratio.ONE, 100, Dimension.NONE);
    part(all, "[ppm]", Ratio.ONE, 1_000_000, Dimension.NONE);
    all.put("Cel", new Unit("Cel", Dimension.TEMPERATURE, Ratio.ONE, Ratio.ZERO));
    all.put("[degF]", new Unit("[degF]", Dimension.TEMPERATURE, Ratio.of(5, 9), Ratio.of(-160, 9)));
    CURRENCIES.forEach(code -> part(all, code, Ratio.ONE, 1, Dimension.MONEY));
  }

  private static void part(
      Map<String, Unit> all, String code, Ratio whole, long parts, Dimension dimension) {
    Ratio factor = whole.dividedBy(Ratio.of(parts));
    all.put(code, new Unit(code, dimension, factor, Ratio.ZERO));
  }
}
