package plainsward.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;

/**
 * Quantities as people read them: {@code 6 fl oz}, {@code 4,000 sq ft}, {@code $0.11 per 1,000 sq
 * ft}. Never a power of ten; thousands are parted by commas. A value that is a short decimal is
 * shown as it is (3 places below 10, 2 below 1,000), any other to three digits, and from 1,000 up
 * to the whole number.
 */
public final class Shown {
  private static final Map<String, String> CURRENCIES =
      Map.of(
          "USD", "$", "CAD", "C$", "AUD", "A$", "NZD", "NZ$", "GBP", "£", "EUR", "€", "ZAR", "R",
          "INR", "₹");
  private static final Ratio TEN = Ratio.of(10);
  private static final Ratio THOUSAND = Ratio.of(1000);
  private static final Ratio TENTH = Ratio.of(1, 10);

  private Shown() {}

  /** The quantity, rounded to the nearest. */
  public static String of(Quantity quantity) {
    return written(quantity, RoundingMode.HALF_UP);
  }

  /** The quantity, never rounded above its exact value: for amounts that a label limits. */
  public static String notAbove(Quantity quantity) {
    return written(quantity, RoundingMode.FLOOR);
  }

  /** The quantity, never rounded below its exact value: for amounts that must be enough. */
  public static String notBelow(Quantity quantity) {
    return written(quantity, RoundingMode.CEILING);
  }

  /**
   * A range of two quantities of one unit, such as {@code 1.2 to 1.8 fl oz}, neither rounded up.
   */
  public static String range(Quantity low, Quantity high) {
    Quantity top = high.in(low.unit());
    if (low.isSameAmount(high)) {
      return of(low);
    }
    if (low.dimension().has(Base.MONEY)) {
      return of(low) + " to " + of(top);
    }
    return number(low.value(), RoundingMode.FLOOR) + " to " + notAbove(top);
  }

  /** A plain number, rounded to the nearest. */
  public static String number(Ratio value) {
    return number(value, RoundingMode.HALF_UP);
  }

  private static String written(Quantity quantity, RoundingMode mode) {
    String code = quantity.unit().code();
    if (code.indexOf('/') > 0 && !UnitWords.isNamed(code)) {
      return written(new Quantity(quantity.value(), quantity.unit().above()), mode) + per(code);
    }
    Unit single = quantity.unit().single();
    Ratio value = quantity.value().times(Ratio.of(quantity.unit().many()));
    String sign = CURRENCIES.get(single.code());
    return sign == null ? measured(value, single, mode) : money(value, sign, mode);
  }

  private static String per(String code) {
    StringBuilder words = new StringBuilder();
    for (String part : code.substring(code.indexOf('/') + 1).split("/", -1)) {
      Unit unit = Unit.of(part.startsWith("(") ? part.substring(1, part.length() - 1) : part);
      UnitWords name = UnitWords.of(unit.single().code());
      words.append(" per ");
      words.append(
          unit.many() == 1 ? name.each() : number(Ratio.of(unit.many())) + " " + name.after(false));
    }
    return words.toString();
  }

  private static String measured(Ratio value, Unit unit, RoundingMode mode) {
    UnitWords words = UnitWords.of(unit.code());
    String number = number(value, mode);
    String word = words.after(value.compareTo(Ratio.ONE) <= 0 && value.signum() > 0);
    return words.isAttached() ? number + word : number + " " + word;
  }

  private static String money(Ratio value, String sign, RoundingMode mode) {
    Ratio size = size(value);
    boolean small = size.signum() > 0 && size.compareTo(TENTH) < 0;
    int places = value.isWhole() ? 0 : small ? places(size) - 1 : 2;
    BigDecimal rounded = size.toDecimal(places, mode);
    while (rounded.scale() > 2 && rounded.stripTrailingZeros().scale() < rounded.scale()) {
      rounded = rounded.setScale(rounded.scale() - 1, RoundingMode.UNNECESSARY);
    }
    String number = grouped(rounded);
    return (value.signum() < 0 ? "−" : "") + sign + number;
  }

  private static String number(Ratio value, RoundingMode mode) {
    BigDecimal rounded = value.toDecimal(shortPlaces(value), mode);
    BigDecimal bare = rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
    String shown = grouped(bare.scale() < 0 ? bare.setScale(0) : bare);
    return shown.startsWith("-") ? "−" + shown.substring(1) : shown;
  }

  /** As many places as the value needs where they are few, else as many as make three digits. */
  private static int shortPlaces(Ratio value) {
    Ratio size = size(value);
    int allowed = size.compareTo(TEN) < 0 ? 3 : size.compareTo(THOUSAND) < 0 ? 2 : 0;
    Ratio shifted = value.times(Ratio.of(BigDecimal.TEN.pow(allowed)));
    return shifted.isWhole() ? allowed : places(size);
  }

  /** The places after the point that show three digits of it. */
  private static int places(Ratio size) {
    int places = 2;
    Ratio lead = size;
    while (lead.signum() > 0 && lead.compareTo(Ratio.ONE) < 0) {
      lead = lead.times(TEN);
      places++;
    }
    while (places > 0 && lead.compareTo(TEN) >= 0) {
      lead = lead.dividedBy(TEN);
      places--;
    }
    return places;
  }

  private static Ratio size(Ratio value) {
    return value.signum() < 0 ? value.negate() : value;
  }

  /** The decimal with a comma before every third digit of its whole part. */
  private static String grouped(BigDecimal decimal) {
    String plain = decimal.toPlainString();
    int point = plain.indexOf('.');
    int end = point < 0 ? plain.length() : point;
    int first = plain.startsWith("-") ? 1 : 0;
    if (end - first <= 3) {
      return plain;
    }
    StringBuilder parted = new StringBuilder(plain);
    for (int comma = end - 3; comma > first; comma -= 3) {
      parted.insert(comma, ',');
    }
    return parted.toString();
  }
}
