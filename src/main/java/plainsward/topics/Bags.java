package plainsward.topics;

import java.util.List;
import java.util.Optional;
import plainsward.dosing.Step;
import plainsward.dosing.Working;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;
import plainsward.units.Units;

/** How many bags an amount is. */
final class Bags {
  private Bags() {}

  /** The sentence about bags, with the figure, where a bag's weight is known; else empty. */
  static String told(Request request, Sheet sheet, Quantity total) {
    Optional<Quantity> bag =
        request.amount("bag").filter(b -> b.dimension().equals(total.dimension()));
    if (bag.isEmpty()) {
      return "";
    }
    Step bags = Working.of("bags", total).over(bag.get()).roundedUp(Units.ONE);
    sheet.steps(List.of(bags)).figure("bags", bags.result());
    sheet.figure("containers", bags.result());
    return " That is "
        + Shown.number(bags.exact().value())
        + " bags of "
        + Shown.of(bag.get())
        + ": buy "
        + count(bags.result().value())
        + ".";
  }

  private static String count(Ratio bags) {
    return Shown.number(bags);
  }
}
