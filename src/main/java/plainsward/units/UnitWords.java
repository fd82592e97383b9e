package plainsward.units;

import java.util.HashMap;
import java.util.Map;

/** How the single units are written for people. */
final class UnitWords {
  private static final Map<String, UnitWords> ALL = table();

  private final String one;
  private final String many;
  private final String each;
  private final boolean attached;

  private UnitWords(String one, String many, String each, boolean attached) {
    this.one = one;
    this.many = many;
    this.each = each;
    this.attached = attached;
  }

  /** The words of a single unit; a code without words stands for itself. */
  static UnitWords of(String code) {
    UnitWords words = ALL.get(code);
    return words == null ? new UnitWords(code, code, code, false) : words;
  }

  /** Whether this very code has words of its own, as {@code km/h} has. */
  static boolean isNamed(String code) {
    return ALL.containsKey(code);
  }

  /** The word after a number. */
  String after(boolean single) {
    return single ? one : many;
  }

  /** The word after "per". */
  String each() {
    return each;
  }

  /** Whether it is written right after the number, without a space. */
  boolean isAttached() {
    return attached;
  }

  private static Map<String, UnitWords> table() {
    Map<String, UnitWords> all = new HashMap<>();
    volumes(all);
    weights(all);
    ground(all);
    rest(all);
    return all;
  }

  private static void volumes(Map<String, UnitWords> all) {
    put(all, "[foz_us]", "fl oz", "fl oz", "fl oz");
    put(all, "[pt_us]", "pint", "pints", "pint");
    put(all, "[qt_us]", "qt", "qt", "quart");
    put(all, "[gal_us]", "gal", "gal", "gallon");
    put(all, "[tsp_us]", "tsp", "tsp", "tsp");
    put(all, "[tbs_us]", "tbsp", "tbsp", "tbsp");
    put(all, "[cup_us]", "cup", "cups", "cup");
    put(all, "[foz_br]", "imp fl oz", "imp fl oz", "imp fl oz");
    put(all, "[pt_br]", "imp pint", "imp pints", "imp pint");
    put(all, "[qt_br]", "imp qt", "imp qt", "imp quart");
    put(all, "[gal_br]", "imp gal", "imp gal", "imp gallon");
    put(all, "mL", "mL", "mL", "mL");
    put(all, "L", "L", "L", "litre");
  }

  private static void weights(Map<String, UnitWords> all) {
    put(all, "[oz_av]", "oz", "oz", "oz");
    put(all, "[lb_av]", "lb", "lb", "lb");
    put(all, "mg", "mg", "mg", "mg");
    put(all, "g", "g", "g", "g");
    put(all, "kg", "kg", "kg", "kg");
    put(all, "t", "t", "t", "tonne");
  }

  private static void ground(Map<String, UnitWords> all) {
    put(all, "[sft_i]", "sq ft", "sq ft", "sq ft");
    put(all, "[syd_i]", "sq yd", "sq yd", "sq yd");
    put(all, "[acr_us]", "acre", "acres", "acre");
    put(all, "m2", "m²", "m²", "m²");
    put(all, "har", "ha", "ha", "hectare");
    put(all, "[in_i]", "in", "in", "inch");
    put(all, "[ft_i]", "ft", "ft", "ft");
    put(all, "[yd_i]", "yd", "yd", "yd");
    put(all, "[mi_i]", "mile", "miles", "mile");
  }

  private static void rest(Map<String, UnitWords> all) {
    put(all, "s", "s", "s", "second");
    put(all, "min", "min", "min", "minute");
    put(all, "h", "h", "h", "hour");
    put(all, "d", "day", "days", "day");
    put(all, "wk", "week", "weeks", "week");
    put(all, "[psi]", "psi", "psi", "psi");
    put(all, "[ppm]", "ppm", "ppm", "ppm");
    put(all, "[degF]", "°F", "°F", "°F");
    put(all, "Cel", "°C", "°C", "°C");
    put(all, "[mi_i]/h", "mph", "mph", "mph");
    put(all, "km/h", "km/h", "km/h", "km/h");
    put(all, "m/s", "m/s", "m/s", "m/s");
    put(all, "[ft_i]/s", "ft/s", "ft/s", "ft/s");
    put(all, "[ft_i]/min", "ft/min", "ft/min", "ft/min");
    put(all, "m/min", "m/min", "m/min", "m/min");
    all.put("%", new UnitWords("%", "%", "%", true));
    all.put("1", new UnitWords("", "", "", true));
  }

  private static void put(
      Map<String, UnitWords> all, String code, String one, String many, String each) {
    all.put(code, new UnitWords(one, many, each, false));
  }
}
