package plainsward.dosing.published;

import java.util.Map;

/** The units of the published examples, as the sources spell them, in UCUM codes. */
final class SourceUnits {
  private static final Map<String, String> SINGLE =
      Map.ofEntries(
          Map.entry("", "1"),
          Map.entry("1", "1"),
          Map.entry("%", "%"),
          Map.entry("bag", "1"),
          Map.entry("fl oz", "[foz_us]"),
          Map.entry("pt", "[pt_us]"),
          Map.entry("qt", "[qt_us]"),
          Map.entry("gal", "[gal_us]"),
          Map.entry("tbsp", "[tbs_us]"),
          Map.entry("tsp", "[tsp_us]"),
          Map.entry("mL", "mL"),
          Map.entry("L", "L"),
          Map.entry("oz", "[oz_av]"),
          Map.entry("lb", "[lb_av]"),
          Map.entry("g", "g"),
          Map.entry("acre", "[acr_us]"),
          Map.entry("ha", "har"),
          Map.entry("sq ft", "[sft_i]"),
          Map.entry("m2", "m2"),
          Map.entry("ft", "[ft_i]"),
          Map.entry("in", "[in_i]"),
          Map.entry("mile", "[mi_i]"),
          Map.entry("m", "m"),
          Map.entry("km", "km"),
          Map.entry("s", "s"),
          Map.entry("min", "min"),
          Map.entry("h", "h"),
          Map.entry("day", "d"),
          Map.entry("week", "wk"),
          Map.entry("mph", "[mi_i]/h"),
          Map.entry("degF", "[degF]"),
          Map.entry("degC", "Cel"),
          Map.entry("USD", "USD"));

  private SourceUnits() {}

  /** The code of a unit such as {@code lb ai/1000 sq ft}; what is weighed in it is left out. */
  static String code(String printed) {
    String bare = printed.replace(" ai", "").replace(" N", "").replaceAll("% [vw]/v", "%");
    int slash = bare.indexOf('/');
    if (slash < 0) {
      return single(bare);
    }
    String below = bare.substring(slash + 1);
    return below.equals("bag")
        ? single(bare.substring(0, slash))
        : single(bare.substring(0, slash)) + "/" + single(below);
  }

  private static String single(String word) {
    int space = word.indexOf(' ');
    if (space > 0 && word.substring(0, space).chars().allMatch(Character::isDigit)) {
      return "(" + word.substring(0, space) + "." + single(word.substring(space + 1)) + ")";
    }
    String code = SINGLE.get(word);
    if (code == null) {
      throw new IllegalArgumentException("no code for the unit " + word);
    }
    return code;
  }
}
