package plainsward.talk;

import java.util.Optional;
import plainsward.records.Label;
import plainsward.records.LabelBuilder;
import plainsward.records.Range;
import plainsward.records.Rate;
import plainsward.units.Quantity;
import plainsward.units.Unit;
import plainsward.units.Units;

/** The label of a product that is weighed. */
final class DryLabel {
  private DryLabel() {}

  /** The label with fluid ounces read as ounces of weight. */
  static Label weighed(Label label) {
    LabelBuilder weighed = label.change();
    for (Rate rate : label.rates()) {
      Range amount = rate.amount();
      weighed.rate(new Rate(new Range(weighed(amount.low()), weighed(amount.high())), rate.use()));
    }
    Optional<Quantity> most = label.season().amount();
    if (most.isPresent()) {
      weighed.amountPerYear(weighed(most.get()));
    }
    return weighed.label();
  }

  private static Quantity weighed(Quantity rate) {
    Unit above = rate.unit().above();
    boolean ounces = above.equals(Units.FL_OZ) || above.equals(Units.IMPERIAL_FL_OZ);
    return ounces && rate.unit().below().isPresent()
        ? new Quantity(rate.value(), Units.OUNCE.per(rate.unit().below().get()))
        : rate;
  }
}
