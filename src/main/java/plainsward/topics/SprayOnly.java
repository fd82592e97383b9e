package plainsward.topics;

import java.util.List;
import java.util.Optional;
import plainsward.dosing.Step;
import plainsward.dosing.Tanks;
import plainsward.dosing.Working;
import plainsward.reply.Reply;
import plainsward.units.Quantity;
import plainsward.units.Shown;

/** The spray and the loads alone, where no product is asked about. */
final class SprayOnly {
  private final Request request;
  private final Sheet sheet;

  SprayOnly(Request request, Sheet sheet) {
    this.request = request;
    this.sheet = sheet;
  }

  Reply reply(Optional<Quantity> ground) {
    if (ground.isEmpty()) {
      return sheet.ask(Asking.question("area"), "area");
    }
    Quantity rate = Sprayer.rate(request, sheet);
    Step spray = Working.of("spray_total", rate).times(ground.get()).as(rate.unit().above());
    String all = sheet.steps(List.of(spray)).figure("spray_total", spray.result());
    if (!request.has("tank")) {
      return request.wants("fills")
          ? sheet.ask(all + " of spray in all. " + Asking.question("tank"), "tank")
          : sheet.answer("Mix " + all + " of spray in all.");
    }
    Tanks tanks = Tanks.holding(spray.result(), request.amount("tank").orElseThrow());
    sheet.steps(tanks.steps());
    String fills = sheet.figure("fills", Quantity.of(tanks.count(), plainsward.units.Units.ONE));
    String last = sheet.figure("last_fill", tanks.last());
    String part = tanks.isLastFull() ? "" : ", the last of " + last;
    return sheet.answer(
        "That is "
            + fills
            + (tanks.count() == 1 ? " load" : " loads")
            + part
            + ": "
            + all
            + " of spray in "
            + Shown.of(request.amount("tank").orElseThrow())
            + " tanks.");
  }
}
