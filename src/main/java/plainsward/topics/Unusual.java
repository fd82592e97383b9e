package plainsward.topics;

import java.util.List;
import java.util.Optional;
import plainsward.trade.Row;
import plainsward.trade.Rows;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;
import plainsward.units.Unit;

/** Says so where a liquid broadleaf rate lies far outside what labels usually give. */
public final class Unusual {
  private static final Ratio FAR = Ratio.of(3);
  private static final Usual USUAL = usual("three-way");
  private static final Usual USUAL_STRENGTH = usual("ready-made-spray");

  private record Usual(Quantity low, Quantity high) {}

  private Unusual() {}

  private static Usual usual(String id) {
    for (Row row : Rows.of("usual-rates")) {
      if (row.text("id").equals(id)) {
        Unit unit = Unit.of(row.text("unit"));
        return new Usual(
            new Quantity(Ratio.of(row.number("low").orElseThrow()), unit),
            new Quantity(Ratio.of(row.number("high").orElseThrow()), unit));
      }
    }
    throw new IllegalStateException("usual-rates: the row \"" + id + "\" is missing");
  }

  /** What is to be asked about a rate that a label is said to give, where it is far above usual. */
  public static Optional<String> question(Quantity rate) {
    for (Usual usual : List.of(USUAL, USUAL_STRENGTH)) {
      boolean alike = rate.dimension().equals(usual.low.dimension());
      if (alike && rate.compareTo(usual.high.times(FAR)) > 0) {
        return Optional.of(
            Shown.of(rate)
                + " is far more than the usual "
                + Shown.range(usual.low, usual.high)
                + ". Is that what stands there, and per what?");
      }
    }
    return Optional.empty();
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
