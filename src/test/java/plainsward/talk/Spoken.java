package plainsward.talk;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Numbers as people write and say them. */
final class Spoken {
  private static final List<String> SMALL =
      List.of(
          ("zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen"
                  + " fifteen sixteen seventeen eighteen nineteen")
              .split(" "));
  private static final List<String> TENS =
      List.of("twenty thirty forty fifty sixty seventy eighty ninety".split(" "));
  private static final List<String> QUARTERS = List.of("", "1/4", "1/2", "3/4");
  private static final List<String> SIGNS = List.of("", "\u00bc", "\u00bd", "\u00be");

  private Spoken() {}

  /** A whole number below a million in words. */
  static String words(int n) {
    if (n < 20) {
      return SMALL.get(n);
    }
    if (n < 100) {
      return TENS.get(n / 10 - 2) + (n % 10 == 0 ? "" : " " + SMALL.get(n % 10));
    }
    if (n < 1000) {
      return SMALL.get(n / 100) + " hundred" + (n % 100 == 0 ? "" : " " + words(n % 100));
    }
    return words(n / 1000) + " thousand" + (n % 1000 == 0 ? "" : " " + words(n % 1000));
  }

  /** Hundreds, as an area is told: "4,200", "4.2k", "forty two hundred". */
  static String hundreds(Random random, int hundreds) {
    int n = hundreds * 100;
    String thousands =
        hundreds % 10 == 0 ? "" + hundreds / 10 : hundreds / 10 + "." + hundreds % 10;
    boolean teens = hundreds < 100 && hundreds % 10 != 0 && hundreds > 10;
    return switch (random.nextInt(8)) {
      case 6 -> thousands + "e3";
      case 7 -> teens ? words(hundreds).replace(' ', '-') + "-hundred" : words(n);
      case 0 -> "" + n;
      case 1 -> String.format(Locale.ROOT, "%,d", n);
      case 2 -> thousands + "k";
      case 3 -> teens ? words(hundreds) + " hundred" : words(n);
      case 4 -> words(n);
      default -> hundreds % 10 == 0 ? thousands + " thousand" : "" + n;
    };
  }

  /** Quarters in words: "one and three quarters", "half a", "three quarters of a". */
  static String quarterWords(int quarters, String unit) {
    String article = unit.matches("(?i)[aeiou].*") ? "an" : "a";
    String whole = words(quarters / 4);
    return switch (quarters) {
      case 1 -> "a quarter " + unit;
      case 2 -> "half " + article + " " + unit;
      case 3 -> "three quarters of " + article + " " + unit;
      default ->
          switch (quarters % 4) {
            case 0 -> whole + " " + unit;
            case 1 -> whole + " and a quarter " + unit;
            case 2 -> whole + " and a half " + unit;
            default -> whole + " and three quarters " + unit;
          };
    };
  }

  /** Quarters with a unit in any way. */
  static String quarters(Random random, int quarters, String unit) {
    int whole = quarters / 4;
    String decimal = BigDecimal.valueOf(quarters * 25L, 2).stripTrailingZeros().toPlainString();
    String part = QUARTERS.get(quarters % 4);
    return switch (random.nextInt(10)) {
      case 7 -> mixed(whole, part, whole > 0 ? " & " : "") + " " + unit;
      case 8 -> hyphened(quarters, unit);
      case 9 -> pieces(quarters, unit);
      case 0 -> decimal + " " + unit;
      case 1 -> decimal + unit.replace(".", "");
      case 2 -> mixed(whole, part, " ") + " " + unit;
      case 3 -> (whole > 0 ? mixed(whole, part, "-") : part) + " " + unit;
      case 4 -> (whole == 0 ? "" : whole) + SIGNS.get(quarters % 4) + " " + unit;
      case 5 -> decimal.replaceFirst("^0", "") + " " + unit;
      default -> quarterWords(quarters, unit);
    };
  }

  /** "one-and-a-half ounces", "three-quarters of an ounce". */
  private static String hyphened(int quarters, String unit) {
    String said = quarterWords(quarters, "UNIT");
    int end = said.indexOf(quarters < 4 ? " of" : " UNIT");
    int to = end < 0 ? 0 : end;
    String words = said.substring(0, to).replace(' ', '-') + said.substring(to);
    String article = unit.matches("(?i)[aeiou].*") ? "an " : "a ";
    return words
        .replaceFirst("an? UNIT", "UNIT")
        .replace("UNIT", quarters < 4 ? article + unit : unit)
        .replace("a quarter a", "a quarter of a");
  }

  /** "3/4ths of a gallon", "3 quarters of an ounce". */
  private static String pieces(int quarters, String unit) {
    String article = unit.matches("(?i)[aeiou].*") ? " of an " : " of a ";
    return quarters == 3
        ? "3 quarters" + article + unit
        : quarters == 1 ? "1/4th" + article + unit : quarterWords(quarters, unit);
  }

  private static String mixed(int whole, String part, String gap) {
    return whole == 0 ? part : part.isEmpty() ? "" + whole : whole + gap + part;
  }
}
