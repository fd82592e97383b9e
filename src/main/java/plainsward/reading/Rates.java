package plainsward.reading;

import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;

/** Rates as labels and people write them. */
public final class Rates {
  private Rates() {}

  /**
   * One amount per another, so that a thousand square feet or a hundred square metres stay whole.
   */
  public static Quantity per(Quantity top, Quantity below) {
    Unit unit = below.unit();
    Ratio count = below.value();
    Ratio whole = wholeFor(unit, count);
    Unit bottom = unit.times(whole.numerator().longValue());
    return new Quantity(top.value().times(whole).dividedBy(count), top.unit().per(bottom));
  }

  private static Ratio wholeFor(Unit unit, Ratio count) {
    return switch (unit.code()) {
      case "[sft_i]" -> Ratio.of(1000);
      case "m2" -> count.equals(Ratio.ONE) ? Ratio.ONE : Ratio.of(100);
      case "[gal_us]", "[gal_br]" -> count.equals(Ratio.of(100)) ? count : Ratio.ONE;
      default -> Ratio.ONE;
    };
  }
}
