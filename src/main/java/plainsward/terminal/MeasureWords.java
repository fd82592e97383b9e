package plainsward.terminal;

import java.util.Optional;
import plainsward.reply.Figure;
import plainsward.units.Measures;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;
import plainsward.units.Unit;
import plainsward.units.Units;

/**
 * The mark to pour an amount to, as told beside the exact figure. It is never above the exact
 * amount, since the label may allow no more.
 */
final class MeasureWords {
  private static final Ratio SPOONFUL = Ratio.of(1, 2);
  private static final Ratio MOST_SPOONED = Ratio.of(4);

  private MeasureWords() {}

  /** The mark in a measure; for a range that of its low end; none where there is none to add. */
  static Optional<String> beside(Figure figure) {
    return figure
        .value()
        .flatMap(MeasureWords::mark)
        .map(words -> figure.high().isPresent() ? "from " + words : words);
  }

  private static Optional<String> mark(Quantity exact) {
    return measure(exact)
        .map(measure -> Measures.nearest(exact, measure, exact))
        .filter(made -> made.amount().signum() > 0 && !isSame(made.amount(), exact))
        .map(MeasureWords::words);
  }

  private static boolean isSame(Quantity amount, Quantity exact) {
    return amount.equals(exact);
  }

  private static String words(Measures.Measured made) {
    String shown = Shown.of(made.amount());
    return switch (made.rounding()) {
      case EXACT -> shown;
      case DOWN -> "just over " + shown;
      case UP -> "just under " + shown;
    };
  }

  private static Optional<Unit> measure(Quantity exact) {
    return switch (exact.unit().code()) {
      case "[foz_us]", "[cup_us]", "[pt_us]", "[qt_us]", "[gal_us]" -> Optional.of(us(exact));
      case "[tbs_us]", "[tsp_us]", "[foz_br]", "[pt_br]", "[qt_br]" ->
          Optional.of(Units.MILLILITRE);
      case "mL", "L" -> Optional.of(metric(exact));
      case "[oz_av]", "[lb_av]" -> Optional.of(weight(exact));
      case "g" -> Optional.of(Units.GRAM);
      case "kg" -> Optional.of(Units.KILOGRAM);
      default -> Optional.empty();
    };
  }

  private static Unit us(Quantity exact) {
    Ratio ounces = exact.in(Units.FL_OZ).value();
    if (ounces.compareTo(SPOONFUL) < 0) {
      return Units.TEASPOON;
    }
    return ounces.compareTo(MOST_SPOONED) <= 0 ? Units.TABLESPOON : Units.MILLILITRE;
  }

  private static Unit metric(Quantity exact) {
    boolean small = exact.in(Units.LITRE).value().compareTo(Ratio.ONE) < 0;
    return small ? Units.MILLILITRE : Units.LITRE;
  }

  private static Unit weight(Quantity exact) {
    boolean small = exact.in(Units.POUND).value().compareTo(Ratio.ONE) < 0;
    return small ? Units.GRAM : Units.POUND;
  }
}
