package plainsward.topics;

import java.util.Optional;
import plainsward.trade.Row;
import plainsward.trade.Rows;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;
import plainsward.units.Unit;

/** Says so where a liquid broadleaf rate lies far outside what labels usually give. */
final class Unusual {
  private static final Ratio FAR = Ratio.of(3);
  private static final Usual USUAL = usual();

  private record Usual(Quantity low, Quantity high) {}

  private Unusual() {}

  private static Usual usual() {
    for (Row row : Rows.of("usual-rates")) {
      if (row.text("id").equals("three-way")) {
        Unit unit = Unit.of(row.text("unit"));
        return new Usual(
            new Quantity(Ratio.of(row.number("low").orElseThrow()), unit),
            new Quantity(Ratio.of(row.number("high").orElseThrow()), unit));
      }
    }
    throw new IllegalStateException("usual-rates: the row \"three-way\" is missing");
  }

  /** Adds the caution where the rate is three times off the usual range or more. */
  static void check(Request request, Sheet sheet, Optional<LabelRate> rate) {
    if (rate.isEmpty()
        || !rate.get().isPerArea()
        || !rate.get().low().dimension().equals(USUAL.low.dimension())) {
      return;
    }
    Quantity said = rate.get().low();
    boolean above = said.compareTo(USUAL.high.times(FAR)) > 0;
    boolean below = isThreeWay(request) && said.times(FAR).compareTo(USUAL.low) < 0;
    if (above || below) {
      sheet.caution("rate-unusual");
      sheet.say(
          "That rate is "
              + Shown.of(said.in(USUAL.low.unit()))
              + "; a three-way usually has "
              + Shown.range(USUAL.low, USUAL.high)
              + ". Check on the label what it is per before you pour.");
    }
  }

  private static boolean isThreeWay(Request request) {
    return request
        .get("product")
        .map(k -> k.fact().word().orElse("").equals("three-way"))
        .orElse(false);
  }
}
