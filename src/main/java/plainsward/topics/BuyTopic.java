package plainsward.topics;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.dosing.Step;
import plainsward.dosing.Working;
import plainsward.reply.Reply;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;
import plainsward.units.Unit;
import plainsward.units.Units;

/** How much to buy for a season. */
public final class BuyTopic implements Topic {
  private static final Set<String> SOLD_IN = Set.of("[qt_us]", "[gal_us]", "[pt_us]", "L");

  @Override
  public String code() {
    return "buy";
  }

  @Override
  public Reply reply(Request request) {
    Sheet sheet = new Sheet(request, "buy");
    Optional<LabelRate> rate = LabelRate.of(request).filter(LabelRate::isPerArea);
    Optional<Quantity> ground = Ground.of(request);
    if (rate.isEmpty()) {
      return sheet.ask(Asking.question("label_rate"), "label_rate");
    }
    if (ground.isEmpty()) {
      return sheet.ask(Asking.question("area"), "area");
    }
    Ratio times = goes(request, sheet);
    sheet.steps(Ground.steps(request));
    Step total =
        Working.of("product_total", rate.get().low())
            .times(ground.get())
            .times(Quantity.number(times))
            .as(rate.get().low().unit().above());
    String all = sheet.steps(List.of(total)).figure("product_total", total.result());
    sheet.caution("read-label");
    if (LabelRate.isOunceTaken(request)) {
      sheet.caution("ounce-kind");
    }
    return sheet.answer(
        "You need "
            + all
            + " for "
            + Shown.number(times)
            + (times.equals(Ratio.ONE) ? " application." : " applications.")
            + containers(request, sheet, total.result()));
  }

  private static Ratio goes(Request request, Sheet sheet) {
    Optional<Quantity> said =
        request
            .amount("applications")
            .or(() -> request.amount("times"))
            .or(() -> request.amount("season_limit"));
    if (said.isEmpty()) {
      sheet.say("That is for one application; tell me how many you plan.");
    }
    return said.map(Quantity::value).orElse(Ratio.ONE);
  }

  /** "how many quarts do I buy": in whole ones. */
  private static String inWhole(Request request, Sheet sheet, Quantity total) {
    Optional<Unit> sold = request.wanted(total.unit()).filter(u -> SOLD_IN.contains(u.code()));
    if (sold.isEmpty()) {
      return "";
    }
    Step count =
        Working.of("containers", total).over(Quantity.of(1, sold.get())).roundedUp(Units.ONE);
    String shown = sheet.steps(List.of(count)).figure("containers", count.result());
    return " Bought in whole ones, that is " + shown + ".";
  }

  private static String containers(Request request, Sheet sheet, Quantity total) {
    Optional<Quantity> size =
        request
            .amount("container")
            .or(() -> request.amount("bag"))
            .filter(c -> c.dimension().equals(total.dimension()));
    if (size.isEmpty()) {
      return inWhole(request, sheet, total);
    }
    Step count = Working.of("containers", total).over(size.get()).roundedUp(Units.ONE);
    String shown = sheet.steps(List.of(count)).figure("containers", count.result());
    return " Buy " + shown + " of " + Shown.of(size.get()) + ".";
  }
}
