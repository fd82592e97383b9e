package plainsward.records;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.time.Period;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;

/** Amounts, ranges and waits in files: {@code {"amount": 1.2, "unit": "[foz_us]"}}. */
final class Amounts {
  private static final Set<String> AMOUNT = Set.of("amount", "unit");
  private static final Set<String> RANGE = Set.of("amount", "high", "unit");

  /** A unit of nothing ({@code 0.[sft_i]}), or of more than anybody would write. */
  private static final Pattern ODD_MULTIPLIER = Pattern.compile("(?<![0-9])0+\\.|[0-9]{7}");

  private static final int LONGEST_WAIT = 3660;
  private static final BigInteger MOST_EXACT = BigInteger.TEN.pow(40);

  private Amounts() {}

  /** What a field may measure, with the words for it. */
  enum Kind {
    AREA("a unit of area such as [sft_i]", Dimension.AREA),
    VOLUME("a unit of volume such as [gal_us]", Dimension.VOLUME),
    PRODUCT(
        "a unit of volume or mass such as [foz_us] or [lb_av]", Dimension.VOLUME, Dimension.MASS),
    SPRAY_RATE(
        "a unit of volume per area such as [gal_us]/(1000.[sft_i])", Dimension.VOLUME_PER_AREA),
    PER_AREA(
        "a unit of product per area such as [foz_us]/(1000.[sft_i])",
        Dimension.VOLUME_PER_AREA,
        Dimension.MASS_PER_AREA),
    RATE(
        "a unit per area, per volume or % such as [foz_us]/(1000.[sft_i])",
        Dimension.VOLUME_PER_AREA,
        Dimension.MASS_PER_AREA,
        Dimension.NONE,
        Dimension.MASS_PER_VOLUME),
    STRENGTH(
        "% or a unit of mass per volume such as g/L", Dimension.NONE, Dimension.MASS_PER_VOLUME),
    TIME("a unit of time such as h", Dimension.TIME),
    SPEED("a unit of speed such as [mi_i]/h", Dimension.SPEED),
    TEMPERATURE("[degF] or Cel", Dimension.TEMPERATURE),
    DEPTH("a unit of length such as [in_i]", Dimension.LENGTH);

    private final String words;
    private final List<Dimension> dimensions;

    Kind(String words, Dimension... dimensions) {
      this.words = words;
      this.dimensions = Arrays.asList(dimensions);
    }

    /** Whether 0 and less may stand there. */
    private boolean mayBeBelowZero() {
      return this == TEMPERATURE;
    }
  }

  /** An object with amount and unit. */
  static Quantity read(Node node, Kind kind) {
    return amount(node.allow(AMOUNT), "amount", kind);
  }

  /** An object with amount, perhaps a higher end, and unit. */
  static Range range(Node node, Kind kind) {
    return ends(node.allow(RANGE), kind);
  }

  /** The ends of a range that stand among other fields. */
  static Range ends(Node node, Kind kind) {
    Quantity low = amount(node, "amount", kind);
    if (!node.has("high")) {
      return Range.of(low);
    }
    Quantity high = amount(node, "high", kind);
    if (high.compareTo(low) < 0) {
      throw node.get("high").expected("a number not below the amount");
    }
    return new Range(low, high);
  }

  private static Quantity amount(Node node, String key, Kind kind) {
    Node field = node.get(key);
    Ratio value = field.number();
    if (value.signum() <= 0 && !kind.mayBeBelowZero()) {
      throw field.expected("a number above 0");
    }
    return new Quantity(value, unit(node.get("unit"), kind));
  }

  private static Unit unit(Node node, Kind kind) {
    if (node.value() instanceof String code
        && !(code.indexOf('.') > 0 && ODD_MULTIPLIER.matcher(code).find())
        && Unit.isKnown(code)) {
      Unit unit = Unit.of(code);
      if (kind.dimensions.contains(unit.dimension())) {
        return unit;
      }
    }
    throw node.expected(kind.words);
  }

  /** A wait in days, weeks or calendar months. */
  static Period wait(Node node) {
    node.allow(AMOUNT);
    int count = node.get("amount").whole(0, LONGEST_WAIT);
    Object unit = node.get("unit").value();
    if ("mo".equals(unit)) {
      return Period.ofMonths(count);
    }
    if ("wk".equals(unit)) {
      return Period.ofWeeks(count);
    }
    if ("d".equals(unit)) {
      return Period.ofDays(count);
    }
    throw node.get("unit").expected("d, wk or mo");
  }

  /** A quantity as it is written. */
  static Tree tree(Quantity quantity) {
    return new Tree().put("amount", number(quantity.value())).put("unit", quantity.unit().code());
  }

  /** A range as it is written. */
  static Tree tree(Range range) {
    Optional<Object> high =
        range.isRange() ? Optional.of(number(range.high().value())) : Optional.empty();
    return new Tree()
        .put("amount", number(range.low().value()))
        .put("high", high)
        .put("unit", range.low().unit().code());
  }

  /** A wait as it is written: whole months, or else days. */
  static Tree tree(Period wait) {
    boolean months = wait.toTotalMonths() != 0;
    if (wait.isNegative() || months && wait.getDays() != 0) {
      throw new IllegalArgumentException("a wait in days or in months was expected: " + wait);
    }
    int count = months ? (int) wait.toTotalMonths() : wait.getDays();
    return new Tree().put("amount", count).put("unit", months ? "mo" : "d");
  }

  /** A decimal where one is exact, else a fraction as a text. */
  static Object number(Ratio value) {
    Ratio kept = value;
    if (value.denominator().compareTo(MOST_EXACT) > 0
        || value.numerator().abs().compareTo(MOST_EXACT) > 0) {
      BigDecimal above = new BigDecimal(value.numerator());
      kept = Ratio.of(above.divide(new BigDecimal(value.denominator()), new MathContext(34)));
    }
    try {
      return new BigDecimal(kept.numerator()).divide(new BigDecimal(kept.denominator()));
    } catch (ArithmeticException endless) {
      return kept.toString();
    }
  }
}
