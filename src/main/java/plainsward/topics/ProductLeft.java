package plainsward.topics;

import java.util.List;
import java.util.Optional;
import plainsward.dosing.Step;
import plainsward.dosing.Working;
import plainsward.reply.Reply;
import plainsward.units.Quantity;
import plainsward.units.Shown;

/** "whats left" after a job: what was in the container less what the job takes. */
final class ProductLeft {
  private ProductLeft() {}

  /** The reply, where the job takes so much product. */
  static Reply reply(Request request, Sheet sheet, Quantity used) {
    Optional<Quantity> held =
        request.amount("container").filter(bottle -> bottle.dimension().equals(used.dimension()));
    if (held.isEmpty()) {
      return sheet.ask(
          "The job takes " + Shown.of(used) + ". How much was in the container before?",
          "container");
    }
    if (used.compareTo(held.get()) > 0) {
      return sheet.answer(
          "Nothing: the job takes "
              + Shown.of(used)
              + ", and the container held "
              + Shown.of(held.get())
              + ".");
    }
    Step left = Working.of("product_left", held.get()).minus(used).as(used.unit());
    sheet.steps(List.of(left));
    String shown = sheet.figure("product_left", left.result());
    return sheet.answer(
        "There is "
            + shown
            + " left of "
            + Shown.of(held.get())
            + ", if the job took what it should.");
  }
}
