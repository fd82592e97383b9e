package plainsward.topics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.dosing.Coverage;
import plainsward.dosing.Step;
import plainsward.dosing.Working;
import plainsward.reply.Reply;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;
import plainsward.units.Units;

/** What a product costs per area and for the job. */
public final class CostTopic implements Topic {
  private static final Set<String> LASTS =
      Set.of("lasts", "lasted", "last", "covers", "does", "did");
  private static final Set<String> YEARLY = Set.of("year", "season", "summer", "yearly", "total");

  @Override
  public String code() {
    return "cost";
  }

  @Override
  public Reply reply(Request request) {
    Sheet sheet = new Sheet(request, "cost");
    if (request.all("price").size() >= 2) {
      return new CostComparison(request, sheet).reply();
    }
    Optional<Quantity> price = request.amount("price");
    if (price.isEmpty()) {
      return sheet.ask(Asking.question("price"), "price");
    }
    if (isByLawn(request)) {
      return byLawn(request, sheet, price.get());
    }
    Optional<Quantity> content = content(request);
    if (content.isEmpty()) {
      return request.has("bag_area")
          ? byBag(request, sheet, price.get())
          : sheet.ask(Asking.question("container"), "container");
    }
    Optional<Quantity> rate = rate(request, sheet);
    if (rate.isEmpty()) {
      return sheet.ask(Asking.question("label_rate"), "label_rate");
    }
    Unit per = perArea(request, price.get());
    Step cost = Working.of("cost_rate", price.get()).over(content.get()).times(rate.get()).as(per);
    String each = sheet.steps(List.of(cost)).figure("cost_rate", cost.result());
    Optional<Quantity> ground = Ground.of(request);
    if (ground.isEmpty()) {
      return sheet.answer("That costs " + each + ".");
    }
    Ratio times = goes(request);
    Working job = Working.of("cost_total", cost.result()).times(ground.get());
    Working all = times.equals(Ratio.ONE) ? job : job.times(Quantity.number(times));
    Step total = all.as(price.get().unit());
    String often = times.equals(Ratio.ONE) ? "" : " done " + Shown.number(times) + " times";
    String shown = sheet.steps(List.of(total)).figure("cost_total", total.result());
    String line = "That costs " + shown + " for the job" + often + ", " + each + ".";
    return sheet.answer(
        line + whole(request, sheet, content.get(), rate.get(), ground.get(), price.get()));
  }

  /** "$45 and it lasts me 12 lawns, cost per lawn": no size of a lawn and no rate is wanted. */
  private static boolean isByLawn(Request request) {
    return request.turn().has("lawn_count")
        && request.turn().hasWord(LASTS)
        && !request.has("area")
        && !request.has("label_rate")
        && !request.has("strength");
  }

  private static Reply byLawn(Request request, Sheet sheet, Quantity price) {
    Quantity lawns = request.amount("lawn_count").orElseThrow();
    Step each = Working.of("cost_total", price).over(lawns).as(price.unit());
    String shown = sheet.steps(List.of(each)).figure("cost_total", each.result());
    return sheet.answer("That costs " + shown + " a lawn.");
  }

  /** A bag's price over the ground that it is for. */
  private static Reply byBag(Request request, Sheet sheet, Quantity price) {
    Quantity each = request.amount("bag_area").orElseThrow();
    Step cost = Working.of("cost_rate", price).over(each).as(perArea(request, price));
    String rate = sheet.steps(List.of(cost)).figure("cost_rate", cost.result());
    Optional<Quantity> ground = Ground.of(request);
    if (ground.isEmpty()) {
      return sheet.answer("That costs " + rate + ".");
    }
    Step total = Working.of("cost_total", cost.result()).times(ground.get()).as(price.unit());
    String all = sheet.steps(List.of(total)).figure("cost_total", total.result());
    return sheet.answer("That costs " + all + " for the job, " + rate + ".");
  }

  /** What whole bags cost, where it is asked how many. */
  private static String whole(
      Request request, Sheet sheet, Quantity bag, Quantity rate, Quantity ground, Quantity price) {
    boolean asked = request.turn().asks("spread") || request.turn().asks("buy");
    if (!asked || !bag.dimension().equals(Dimension.MASS)) {
      return "";
    }
    Step bags = Working.of("bags", rate).times(ground).over(bag).roundedUp(Units.ONE);
    sheet.steps(List.of(bags)).figure("bags", bags.result());
    Step all = Working.of("cost_bags", price).times(bags.result()).as(price.unit());
    sheet.steps(List.of(all));
    return " In whole bags that is "
        + Shown.number(bags.result().value())
        + ", "
        + Shown.of(all.result())
        + ".";
  }

  /** How often, where the cost of a year or season is asked for. */
  private static Ratio goes(Request request) {
    Optional<Quantity> times =
        request
            .amount("applications")
            .or(() -> request.amount("times"))
            .or(() -> request.amount("season_limit"));
    boolean yearly = request.turn().hasWord(YEARLY);
    return times.filter(t -> yearly).map(Quantity::value).orElse(Ratio.ONE);
  }

  static Optional<Quantity> content(Request request) {
    return request
        .amount("container")
        .or(() -> request.amount("bag"))
        .or(() -> request.amount("product_amount"))
        .or(() -> request.amount("volume"))
        .or(() -> request.amount("tank").filter(t -> !request.has("in_hand")));
  }

  /** The label's rate, or what the mix in the tank or a bag for its ground comes to per area. */
  private static Optional<Quantity> rate(Request request, Sheet sheet) {
    Optional<Quantity> bag = content(request);
    if (request.has("bag_area") && bag.isPresent()) {
      Quantity ground = request.amount("bag_area").orElseThrow();
      Step rate = Coverage.rateOf(bag.get(), ground, bag.get().unit().per(perUnit(ground)));
      sheet.steps(List.of(rate));
      return Optional.of(rate.result());
    }
    if (request.has("in_hand") && request.has("tank")) {
      Quantity tank = request.amount("tank").orElseThrow();
      Coverage ground = Coverage.ofSpray(tank, Sprayer.rate(request, sheet));
      Quantity hand = request.amount("in_hand").orElseThrow();
      Step rate = Coverage.rateOf(hand, ground.area(), hand.unit().per(perUnit(ground.area())));
      List<Step> steps = new ArrayList<>(ground.steps());
      steps.add(rate);
      sheet.steps(steps);
      return Optional.of(rate.result());
    }
    return LabelRate.of(request)
        .filter(LabelRate::isPerArea)
        .map(LabelRate::low)
        .or(
            () ->
                LabelRate.of(request)
                    .filter(r -> !r.isPerArea())
                    .map(r -> r.low().times(Sprayer.rate(request, sheet), perStrength(r.low()))));
  }

  private static Unit perStrength(Quantity strength) {
    boolean weight = strength.dimension().equals(Dimension.MASS_PER_VOLUME);
    return Unit.of(weight ? "[oz_av]/(1000.[sft_i])" : "[foz_us]/(1000.[sft_i])");
  }

  private static Unit perUnit(Quantity area) {
    boolean metric = area.unit().code().equals("m2") || area.unit().code().equals("har");
    return Unit.of(metric ? "100.m2" : "1000.[sft_i]");
  }

  static Unit perArea(Request request, Quantity price) {
    boolean metric = request.units() == UnitSystem.METRIC;
    return price.unit().per(Unit.of(metric ? "100.m2" : "1000.[sft_i]"));
  }
}
