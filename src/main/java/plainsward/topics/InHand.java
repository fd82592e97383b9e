package plainsward.topics;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.dosing.AppliedDose;
import plainsward.dosing.Coverage;
import plainsward.dosing.Dilution;
import plainsward.dosing.LawnArea;
import plainsward.dosing.SecondRoad;
import plainsward.dosing.Step;
import plainsward.dosing.Strength;
import plainsward.dosing.TopUp;
import plainsward.reply.Reply;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;
import plainsward.units.Unit;
import plainsward.units.Units;

/** What is already in the tank or on the lawn: checked, topped up, thinned, or reckoned back. */
final class InHand {
  private static final Set<String> MORE =
      Set.of("more", "add", "back", "up", "top", "refill", "refilling", "filling", "topping");
  private static final Set<String> DONE =
      Set.of("covered", "did", "sprayed", "done", "treated", "went", "emptied", "covers");
  private static final Ratio CLOSE = Ratio.of("0.03");
  private final Request request;
  private final Sheet sheet;
  private final LabelRate rate;

  InHand(Request request, Sheet sheet, LabelRate rate) {
    this.request = request;
    this.sheet = sheet;
    this.rate = rate;
  }

  /** The reply, where something in hand is told in this turn. */
  Optional<Reply> reply() {
    if (request.turn().has("left_in_tank") && request.has("tank") && asksMore()) {
      return Optional.of(toppedUp());
    }
    if (isRateOfPutDown()) {
      return Optional.of(
          applied(
              request.amount("put_down").orElseThrow(), request.amount("put_on").orElseThrow()));
    }
    if (request.turn().has("in_hand") && request.has("tank")) {
      boolean ground =
          request.turn().has("test_area")
              || request.turn().has("area")
              || request.turn().has("shape");
      boolean sprayed = ground && rate.isPerArea() && isUsedUp();
      return Optional.of(sprayed ? applied() : checked());
    }
    boolean ground = request.turn().has("area") || request.turn().has("shape");
    boolean laid = request.turn().has("in_hand") && ground && rate.isPerArea();
    if (laid && hand().unit().dimension().equals(rate.low().unit().above().dimension())) {
      return Optional.of(applied());
    }
    if (request.has("in_tank") && request.has("tank") && !ground) {
      boolean told = request.turn().has("strength") || request.turn().has("label_rate");
      if (request.says("mend")) {
        return Optional.of(mended());
      }
      return told ? Optional.of(checked()) : Optional.empty();
    }
    return Optional.empty();
  }

  /** "label is 1.5 per thousand" after what went down where: whether that was right. */
  private boolean isRateOfPutDown() {
    boolean onlyRate = request.turn().has("label_rate") && !request.turn().has("in_hand");
    return onlyRate
        && request.has("put_down")
        && rate.isPerArea()
        && !request.turn().has("area")
        && !request.turn().has("shape")
        && !request.turn().has("tank")
        && rate.low().unit().above().dimension().equals(putDown());
  }

  private plainsward.units.Dimension putDown() {
    return request.amount("put_down").orElseThrow().dimension();
  }

  /** Words that say the tank went out on that ground. */
  private boolean isUsedUp() {
    return request.turn().hasWord(DONE);
  }

  private boolean asksMore() {
    return request.turn().hasWord(MORE);
  }

  /** The strength that the tank should have. */
  private Quantity strength() {
    if (!rate.isPerArea()) {
      return rate.low();
    }
    Step step =
        Strength.ofRate(
            rate.low(), Sprayer.rate(request, sheet), rate.low().unit().above().per(tankUnit()));
    sheet.steps(List.of(step));
    return step.result();
  }

  private plainsward.units.Unit tankUnit() {
    return request.amount("tank").orElseThrow().unit();
  }

  private Reply toppedUp() {
    Quantity tank = request.amount("tank").orElseThrow();
    Quantity left = request.amount("left_in_tank").orElseThrow();
    TopUp more = TopUp.toFull(tank, left, strength());
    String product = sheet.figure("product_total", more.product());
    sheet.steps(more.steps()).figure("spray_total", more.volume());
    MixWords.cautions(request, sheet, Optional.of(rate));
    sheet.say("That takes the mix that is left to be fresh, of the same product and strength.");
    return sheet.answer(
        "Add "
            + product
            + " of product and fill up: "
            + Shown.of(more.volume())
            + " of new mix on top of the "
            + Shown.of(left)
            + ".");
  }

  /** The end of the label's range that lies nearest to what is in; inside it what is in itself. */
  private Quantity nearest(Quantity tank, Quantity hand) {
    if (rate.high().isEmpty() || rate.isPerArea()) {
      return strength();
    }
    Quantity high = rate.high().get();
    Quantity made = hand.dividedBy(tank, high.unit());
    boolean above = made.compareTo(high) > 0;
    return above ? high : made.compareTo(rate.low()) < 0 ? rate.low() : made;
  }

  private Reply checked() {
    Quantity tank = request.amount("tank").orElseThrow();
    Quantity hand = hand();
    Quantity strength = nearest(tank, hand);
    Dilution right = Dilution.of(tank, strength, hand.unit());
    sheet.steps(right.steps());
    String should = sheet.figure("product_total", right.product());
    sheet.figure("product_per_fill", right.product());
    SecondRoad roads = SecondRoad.compare(hand, right.product());
    MixWords.cautions(request, sheet, Optional.of(rate));
    if (roads.agrees(CLOSE)) {
      return sheet.answer(
          "Yes, right: "
              + Shown.of(tank)
              + " takes "
              + should
              + ", and "
              + Shown.of(hand)
              + " is in it.");
    }
    Ratio times = hand.ratioTo(right.product());
    return sheet.answer(
        (times.compareTo(Ratio.ONE) > 0 ? "No, too strong: " : "No, too weak: ")
            + Shown.of(tank)
            + " takes "
            + should
            + ", and "
            + Shown.of(hand)
            + " is "
            + Shown.number(times)
            + " times that."
            + mend(tank, hand, right, strength));
  }

  /** How what is in the tank is put right. */
  private Reply mended() {
    Quantity tank = request.amount("tank").orElseThrow();
    Quantity hand = hand();
    Dilution right = Dilution.of(tank, strength(), hand.unit());
    sheet.steps(right.steps());
    MixWords.cautions(request, sheet, Optional.of(rate));
    String holds =
        ": "
            + Shown.of(tank)
            + " takes "
            + Shown.of(right.product())
            + ", and "
            + Shown.of(hand)
            + " is in it.";
    int more = right.product().compareTo(hand);
    if (more == 0) {
      return sheet.answer("Nothing to mend" + holds);
    }
    if (more > 0) {
      String missing = sheet.figure("product_total", right.product().minus(hand));
      return sheet.answer("Add " + missing + " of product to what is in the tank" + holds);
    }
    sheet.caution("above-label");
    TopUp thin = TopUp.toWeaken(tank, hand, strength());
    sheet.steps(thin.steps()).figure("spray_total", tank.plus(thin.volume()));
    return sheet.answer(
        "Add "
            + Shown.of(thin.volume())
            + " of water and no product"
            + holds
            + " If the tank is too small, move part of the mix to a clean bucket first.");
  }

  private Quantity hand() {
    return request.amount("in_hand").or(() -> request.amount("in_tank")).orElseThrow();
  }

  private String mend(Quantity tank, Quantity hand, Dilution right, Quantity strength) {
    if (hand.compareTo(right.product()) < 0) {
      Quantity missing = right.product().minus(hand);
      return " If the tank is still full, add " + Shown.notAbove(missing) + " more.";
    }
    sheet.caution("above-label");
    TopUp thin = TopUp.toWeaken(tank, hand, strength);
    sheet.steps(thin.steps());
    return " Don't spray it so: it needs "
        + Shown.of(thin.volume())
        + " more water to be at the rate, part of it in a clean bucket if the tank is too small.";
  }

  /** What was really put down, against the label. */
  private Reply applied() {
    LawnArea ground = Ground.test(request).orElseThrow();
    sheet.steps(ground.steps());
    return applied(request.amount("in_hand").orElseThrow(), ground.area());
  }

  private Reply applied(Quantity hand, Quantity ground) {
    AppliedDose dose = AppliedDose.of(hand, ground, rate.low());
    sheet.steps(dose.steps());
    sheet.caution("read-label");
    if (dose.isAboveLabel()) {
      sheet.caution("above-label", "too-soon");
      sheet.say(
          "Don't spray it again this season without counting this. Water deeply where the label "
              + "allows it, keep off the grass, and watch for yellowing over two weeks.");
    }
    return sheet.answer(
        "You put down "
            + Shown.of(dose.steps().get(0).result())
            + ", against the label's "
            + Shown.of(rate.low())
            + ": "
            + (dose.times().equals(Ratio.ONE)
                ? "the same."
                : Shown.number(dose.times()) + " times it.")
            + " That takes it that all of it went on that ground.");
  }

  /** What went down per area, where no label's rate is known to hold it against. */
  static Reply laidDown(Request request, Sheet sheet, Quantity ground) {
    Quantity hand = request.amount("in_hand").orElseThrow();
    boolean metric = ground.unit().equals(Units.SQUARE_METRE);
    Unit per = metric ? Units.HUNDRED_SQUARE_METRES : Units.THOUSAND_SQUARE_FEET;
    Step rate = Coverage.rateOf(hand, ground, hand.unit().per(per));
    sheet.steps(List.of(rate)).figure("converted", rate.result());
    sheet.caution("read-label");
    return sheet.answer(
        "You put down "
            + Shown.of(rate.result())
            + ", if the whole tank went on that ground. What does the label give?");
  }

  /** A volume and the product that makes it: how strong that is. */
  static Reply madeStrength(Request request, Sheet sheet) {
    Quantity product = request.amount("container").orElseThrow();
    Quantity volume = request.amount("makes_volume").orElseThrow();
    Step step = Strength.of(product, volume, Units.FL_OZ.per(volume.unit()));
    sheet.steps(List.of(step)).figure("strength", step.result());
    Quantity spoons = step.result().times(Quantity.of(1, volume.unit()), Units.TABLESPOON);
    sheet.caution("read-label");
    sheet.say("\"Makes up to\" is the weakest rate on the label: read the line for your weed.");
    return sheet.answer(
        "That is " + Shown.of(step.result()) + ", or " + Shown.of(spoons) + ", at the weakest.");
  }
}
