package plainsward.topics;

import plainsward.units.Quantity;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;
import plainsward.units.Units;

/** How much spray is laid down: what was said, or else openly assumed. */
final class Sprayer {
  private static final Quantity US = Quantity.of(1, Units.GALLON_PER_THOUSAND);
  private static final Quantity IMPERIAL = Quantity.of(1, Unit.of("[gal_br]/(1000.[sft_i])"));
  private static final Quantity METRIC = Quantity.of(4, Units.LITRE_PER_HUNDRED);
  private static final String REASON =
      "usual for hand-held and backpack sprayers; measure yours with plain water";

  private Sprayer() {}

  /** The spray rate; an assumed one stands in the reply, with the caution to calibrate. */
  static Quantity rate(Request request, Sheet sheet) {
    if (request.has("spray_rate")) {
      Known said = request.get("spray_rate").orElseThrow();
      if (said.leavesOpen("gallon") && request.units() != UnitSystem.US) {
        sheet.caution("gallon-kind");
      }
      return said.amount();
    }
    Quantity usual = usual(request);
    sheet.assume("spray_rate", usual, REASON).caution("calibrate-first");
    return usual;
  }

  private static Quantity usual(Request request) {
    String tank =
        request.has("tank") ? request.get("tank").orElseThrow().amount().unit().code() : "";
    if (tank.equals("L") || tank.isEmpty() && request.units() == UnitSystem.METRIC) {
      return METRIC;
    }
    return tank.equals("[gal_br]") || tank.isEmpty() && request.units() == UnitSystem.IMPERIAL
        ? IMPERIAL
        : US;
  }
}
