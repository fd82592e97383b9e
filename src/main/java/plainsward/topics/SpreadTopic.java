package plainsward.topics;

import java.util.List;
import java.util.Optional;
import plainsward.dosing.LawnArea;
import plainsward.dosing.Spreader;
import plainsward.dosing.Step;
import plainsward.dosing.Working;
import plainsward.reply.Reply;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;
import plainsward.units.Units;

/** Granular products: how much, how many bags, and what a spreader throws. */
public final class SpreadTopic implements Topic {
  private static final Ratio FAR_OFF = Ratio.of(30);

  @Override
  public String code() {
    return "spread";
  }

  @Override
  public Reply reply(Request request) {
    Sheet sheet = new Sheet(request, "spread");
    boolean figure = request.turn().has("spread_rate") || request.turn().has("test_amount");
    if (request.wants("setting") && !figure) {
      return new NoteTopic("spread").reply(request);
    }
    if (request.turn().has("spread_rate")) {
      return thrown(request, sheet);
    }
    if (request.has("test_amount")) {
      return tested(request, sheet);
    }
    Optional<Quantity> rate =
        request.amount("label_rate").filter(r -> r.dimension().equals(Dimension.MASS_PER_AREA));
    if (request.has("bag_area")) {
      return bagsByArea(request, sheet);
    }
    if (rate.isPresent() && request.has("swath") && Ground.of(request).isEmpty()) {
      return testStrip(request, sheet, rate.get());
    }
    Optional<Quantity> ground = Ground.of(request);
    if (rate.isEmpty()) {
      return sheet.ask(
          "How many pounds per 1,000 sq ft does the bag give, or what area is it for?",
          "label_rate",
          "bag");
    }
    if (request.has("spread_rate") && (ground.isEmpty() || request.wants("spread_rate"))) {
      return thrown(request, sheet);
    }
    if (ground.isEmpty()) {
      return sheet.ask(Asking.question("area"), "area");
    }
    sheet.steps(Ground.steps(request));
    Step total = FeedTopic.total(rate.get(), ground.get());
    String all = sheet.steps(List.of(total)).figure("product_total", total.result());
    sheet.figure("product_rate", rate.get());
    sheet.caution("read-label");
    return sheet.answer("Spread " + all + " in all." + Bags.told(request, sheet, total.result()));
  }

  /** What the spreader throws, held against the rate that is wanted. */
  private static Reply thrown(Request request, Sheet sheet) {
    Quantity thrown = request.amount("spread_rate").orElseThrow();
    String shown = sheet.figure("spread_rate", thrown);
    return sheet.answer("Your spreader throws " + shown + "." + target(request, thrown));
  }

  private static Reply bagsByArea(Request request, Sheet sheet) {
    Quantity each = request.amount("bag_area").orElseThrow();
    Optional<Quantity> ground = Ground.of(request);
    if (ground.isEmpty()) {
      return sheet.ask(Asking.question("area"), "area");
    }
    Step bags = Working.of("bags", ground.get()).over(each).roundedUp(Units.ONE);
    sheet.steps(List.of(bags)).figure("bags", bags.result());
    sheet.figure("containers", bags.result());
    String part = partOfBag(request, sheet, each, ground.get());
    sheet.suggest("Is that the lot, or the grass alone?");
    return sheet.answer(
        "You need "
            + Shown.number(bags.result().value())
            + " bags: "
            + Shown.number(bags.exact().value())
            + " to be exact, for "
            + Shown.of(ground.get())
            + "."
            + part);
  }

  /** What the ground takes by weight, where the bag's weight is known. */
  private static String partOfBag(Request request, Sheet sheet, Quantity each, Quantity ground) {
    Optional<Quantity> bag =
        request
            .amount("bag")
            .or(() -> request.amount("container"))
            .or(() -> request.amount("product_amount"))
            .filter(b -> b.dimension().equals(Dimension.MASS));
    if (bag.isEmpty()) {
      return "";
    }
    Step total =
        Working.of("product_total", bag.get()).times(ground).over(each).as(bag.get().unit());
    String shown = sheet.steps(List.of(total)).figure("product_total", total.result());
    return " By weight that is " + shown + ".";
  }

  /** Where to walk to test a spreader: a strip of 1,000 sq ft. */
  private static Reply testStrip(Request request, Sheet sheet, Quantity rate) {
    Quantity width = request.amount("swath").orElseThrow();
    Step length =
        Working.of("distance", Quantity.of(1000, Units.SQUARE_FOOT)).over(width).as(Units.FOOT);
    sheet.steps(List.of(length));
    Quantity wanted = rate.times(Quantity.of(1000, Units.SQUARE_FOOT), Units.POUND);
    return sheet.answer(
        "Walk "
            + Shown.of(length.result())
            + " at a throw of "
            + Shown.of(width)
            + ": that is 1,000 sq ft. Weigh what goes in and what is left: "
            + Shown.of(wanted)
            + " should be gone.");
  }

  private static Reply tested(Request request, Sheet sheet) {
    Quantity thrown = request.amount("test_amount").orElseThrow();
    Optional<LawnArea> ground = Ground.test(request);
    if (ground.isEmpty()) {
      return sheet.ask(Asking.question("test_area"), "test_area");
    }
    Step rate = Spreader.rate(thrown, ground.get().area(), Units.POUND_PER_THOUSAND);
    String shown = sheet.steps(List.of(rate)).figure("spread_rate", rate.result());
    return sheet.answer("Your spreader throws " + shown + "." + target(request, rate.result()));
  }

  private static String target(Request request, Quantity thrown) {
    return request
        .amount("label_rate")
        .filter(r -> r.dimension().equals(Dimension.MASS_PER_AREA))
        .or(() -> FeedTopic.rateWanted(request))
        .map(t -> compared(thrown, t))
        .orElse("");
  }

  private static String compared(Quantity rate, Quantity target) {
    Ratio times = rate.ratioTo(target).minus(Ratio.ONE).times(Ratio.of(100));
    if (times.signum() == 0) {
      return " That is right on the target.";
    }
    boolean over = times.signum() > 0;
    String percent = Shown.number(over ? times : times.negate());
    return " That is "
        + percent
        + " % "
        + (over ? "too much: close" : "too little: open")
        + ((over ? times : times.negate()).compareTo(FAR_OFF) > 0
            ? " the gate by a good deal"
            : " the gate a little")
        + ", keep the same pace, and test again.";
  }
}
