package plainsward.topics;

import java.util.List;
import java.util.Optional;
import plainsward.dosing.Step;
import plainsward.dosing.Working;
import plainsward.units.Quantity;

/** What a full tank takes of the product, where the label's rate is one per area. */
final class FullTank {
  private FullTank() {}

  /**
   * A sentence with the product for the ground that a full tank covers, its figure and its step put
   * on the sheet; empty where no rate per area is known.
   */
  static String product(Request request, Sheet sheet, Quantity area) {
    Optional<LabelRate> rate = LabelRate.of(request).filter(LabelRate::isPerArea);
    if (rate.isEmpty()) {
      return "";
    }
    Step product =
        Working.of("product_per_fill", rate.get().low())
            .times(area)
            .as(rate.get().low().unit().above());
    String shown = sheet.steps(List.of(product)).figure("product_per_fill", product.result());
    MixWords.cautions(request, sheet, rate);
    return " It takes " + shown + " of product.";
  }
}
