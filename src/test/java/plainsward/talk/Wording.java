package plainsward.talk;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;

/**
 * One way to put a job into words, with the product that it takes.
 *
 * @param text what is typed
 * @param product what must come out where anything does
 */
record Wording(String text, Quantity product) {
  private static final List<String> SQUARE_FEET =
      List.of(
          "sq ft",
          "sqft",
          "sf",
          "square feet",
          "sq. ft.",
          "sq feet",
          "ft2",
          "square foot",
          "squre feet",
          "SQ FT");
  private static final List<String> OUNCES =
      List.of("oz", "fl oz", "fluid ounces", "ounces", "oz.", "onces", "floz", "OZ", "ounce");
  private static final List<String> THOUSAND =
      List.of(
          "per thousand",
          "per 1000",
          "per 1,000 sq ft",
          "/1000",
          "/k",
          "/M",
          "a thousand",
          "per k",
          "per thousand square feet",
          "per 1000 sqft",
          "/1000 sq ft",
          "/1,000 sf",
          "per thosand",
          "per M",
          "for every thousand sq ft");
  private static final List<String> ONES =
      List.of("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine");
  private static final List<String> ORDERS =
      List.of(
          "how much for {area} at {rate}",
          "{area}, {rate}, how much",
          "{rate} on {area} how much do i need",
          "how much product do i need, {area} of lawn, label says {rate}",
          "my lawn is {area} and the label says {rate}. how much?",
          "label says {rate}. lawn is {area}. how much do i put in",
          "whats the total for {area} at {rate}",
          "hi, got {area} of grass, rate is {rate}, how much stuff in all",
          "how much weed killer for {area} if its {rate}",
          "need the amount for {area}, {rate}",
          "at {rate} how much do i need for {area}");
  private static final List<String> TANKS =
      List.of(
          "",
          "",
          "",
          " in a 2 gal sprayer",
          " with a 4 gallon backpack",
          ", 2 gallon tank",
          ", tank is 25 gallons");

  /** A random wording of a random job. */
  static Wording of(Random random) {
    int hundreds = 10 + random.nextInt(190);
    int quarters = 2 + random.nextInt(14);
    String area = area(random, hundreds);
    String rate = rate(random, quarters) + pick(random, THOUSAND);
    String text =
        pick(random, ORDERS).replace("{area}", area).replace("{rate}", rate) + pick(random, TANKS);
    Ratio ounces = Ratio.of((long) hundreds * quarters, 40);
    return new Wording(typed(random, text), new Quantity(ounces, Unit.of("[foz_us]")));
  }

  private static <T> T pick(Random random, List<T> all) {
    return all.get(random.nextInt(all.size()));
  }

  private static String area(Random random, int hundreds) {
    String unit = pick(random, SQUARE_FEET);
    return switch (random.nextInt(7)) {
      case 0 -> hundreds * 100 + " " + unit;
      case 1 -> String.format(Locale.ROOT, "%,d %s", hundreds * 100, unit);
      case 2 -> hundreds * 100 + unit;
      case 3 -> thousands(hundreds) + "k " + unit;
      case 4 -> thousands(hundreds) + "k";
      case 5 -> words(hundreds) + " " + unit;
      default -> hundreds + "x100";
    };
  }

  private static String thousands(int hundreds) {
    return hundreds % 10 == 0 ? "" + hundreds / 10 : hundreds / 10 + "." + hundreds % 10;
  }

  /** 42 hundreds as "four thousand two hundred" or, below a hundred, "forty two hundred". */
  private static String words(int hundreds) {
    if (hundreds >= 100 || hundreds % 10 == 0) {
      String rest = hundreds % 10 == 0 ? "" : " " + ONES.get(hundreds % 10) + " hundred";
      return small(hundreds / 10) + " thousand" + rest;
    }
    return small(hundreds) + " hundred";
  }

  private static String small(int n) {
    List<String> teens =
        List.of(
            "ten",
            "eleven",
            "twelve",
            "thirteen",
            "fourteen",
            "fifteen",
            "sixteen",
            "seventeen",
            "eighteen",
            "nineteen");
    List<String> tens =
        List.of("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety");
    if (n < 10) {
      return ONES.get(n);
    }
    return n < 20
        ? teens.get(n - 10)
        : tens.get(n / 10 - 2) + (n % 10 == 0 ? "" : " " + ONES.get(n % 10));
  }

  private static String rate(Random random, int quarters) {
    int whole = quarters / 4;
    String part = List.of("", "1/4", "1/2", "3/4").get(quarters % 4);
    String decimal = BigDecimal.valueOf(quarters * 25L, 2).stripTrailingZeros().toPlainString();
    String unit = pick(random, OUNCES);
    return switch (random.nextInt(4)) {
      case 0 -> decimal + " " + unit + " ";
      case 1 -> decimal + unit.replace(".", "") + " ";
      case 2 ->
          (whole == 0 ? part : part.isEmpty() ? "" + whole : whole + " " + part) + " " + unit + " ";
      default -> spoken(whole, quarters % 4) + " " + unit + " ";
    };
  }

  private static String spoken(int whole, int rest) {
    String part = List.of("", "a quarter", "a half", "three quarters").get(rest);
    if (whole == 0) {
      return rest == 2 ? "half" : part + " of an";
    }
    return rest == 0 ? ONES.get(whole) : ONES.get(whole) + " and " + part;
  }

  /** As typed: often without punctuation, sometimes in capitals or with spaces doubled. */
  private static String typed(Random random, String text) {
    return switch (random.nextInt(6)) {
      case 0 -> text.replaceAll("[?]", "");
      case 1 -> text.replace(" ", "  ");
      case 2 -> text.replace("how much", "how mutch");
      case 3 -> text + "?";
      default -> text;
    };
  }
}
