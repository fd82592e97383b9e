package plainsward.topics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.dosing.Coverage;
import plainsward.dosing.Step;
import plainsward.dosing.Strength;
import plainsward.dosing.TankJob;
import plainsward.dosing.TankMix;
import plainsward.reading.Fact;
import plainsward.reply.Reply;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;
import plainsward.units.Units;

/** How much product, water and wetting agent for an area, a tank or a volume of spray. */
public final class MixTopic implements Topic {
  private static final Set<String> SOMEBODY =
      Set.of("buddy", "boss", "he", "she", "old", "last", "not", "instead", "guy", "they", "was");
  private static final Set<String> LOTS = Set.of("lot", "lots", "property", "plot");
  private static final Set<String> DOUBLE = Set.of("double", "doubled", "twice");
  private static final Set<String> TANKS = Set.of("tank", "tankful", "load", "rig", "truck");
  private static final long MOST_FILLS = 300;

  @Override
  public String code() {
    return "mix";
  }

  @Override
  public Reply reply(Request request) {
    Optional<Quantity> ground = isFullTank(request) ? Optional.empty() : Ground.of(request);
    Optional<LabelRate> rate = LabelRate.of(request);
    boolean product = rate.isPresent();
    String topic = product && !rate.get().isPerArea() && ground.isEmpty() ? "strength" : "mix";
    Sheet sheet = new Sheet(request, topic);
    request.get("label_rate").flatMap(k -> k.fact().word()).ifPresent(sheet::work);
    if (areRatesOpen(request)) {
      return askWhichRate(request, sheet);
    }
    Optional<Reply> before = mixedAlready(request, sheet, rate);
    if (before.isPresent()) {
      return before.get();
    }
    if (!product && !request.has("adjuvant_rate") && !isSprayOnly(request)) {
      return askRate(request, sheet, ground);
    }
    if (product && rate.get().isPerArea() && request.turn().of("area_option").size() > 1) {
      return options(request, sheet, rate.get());
    }
    if (product && rate.get().isPerArea() && ground.isPresent() && areTwoRates(request)) {
      return new LawnRates(request, sheet)
          .reply(rate.get())
          .orElseGet(() -> forEach(request, sheet, rate.get(), ground.get()));
    }
    Optional<Quantity> volume = volume(request);
    if (product && request.all("tank").size() == 2 && TankChoice.isOpen(request)) {
      return new TankChoice(request, sheet).reply(rate.get());
    }
    if (isPerGallonAsked(request, rate) && ground.isEmpty() && volume.isEmpty()) {
      return perGallon(request, sheet, rate.get().low());
    }
    if (ground.isEmpty() && volume.isEmpty() && !request.has("tank")) {
      return askGround(request, sheet, rate);
    }
    if (!product && !request.has("adjuvant_rate")) {
      return new SprayOnly(request, sheet).reply(ground);
    }
    return dosed(request, sheet, rate, new JobMaker(request, sheet, rate, ground, volume).job());
  }

  /** "lawns avg 5k", no count of them, and then "how much in the tank": a full one is meant. */
  private static boolean isFullTank(Request request) {
    return request.has("lawn_each")
        && request.has("tank")
        && !request.turn().has("area")
        && !request.has("lawn_count")
        && request.turn().hasWord(TANKS)
        && request.all("area").size() == 1
        && request.amount("area").equals(request.amount("lawn_each"));
  }

  /** What is said of a mix that there is already, or of one that needs no mixing. */
  private static Optional<Reply> mixedAlready(
      Request request, Sheet sheet, Optional<LabelRate> rate) {
    if (request.has("ready_to_use")) {
      return Optional.of(readyToUse(sheet));
    }
    if (request.turn().has("piece_makes")) {
      return Optional.of(new Pieces(request, sheet).reply());
    }
    if (request.turn().hasWord(DOUBLE)
        && request.says("mend")
        && request.turn().has("left_in_tank")) {
      return Optional.of(doubled(request, sheet));
    }
    if (request.says("check") && HandCheck.isOfStrength(request)) {
      return Optional.of(new HandCheck(request, sheet).ofStrength());
    }
    if (request.has("mix_left") && MixLeftOver.isAsked(request)) {
      return Optional.of(new MixLeftOver(request, sheet).reply(rate));
    }
    if (isOverfull(request)) {
      return Optional.of(tooStrong(request, sheet));
    }
    if (request.turn().has("makes_volume") && request.has("container")) {
      return Optional.of(InHand.madeStrength(request, sheet));
    }
    Optional<Reply> unsprayed =
        request.says("unsprayed") ? UnsprayedMix.reply(request, sheet) : Optional.empty();
    if (rate.isEmpty() || unsprayed.isPresent()) {
      return unsprayed;
    }
    Optional<Reply> hand = new InHand(request, sheet, rate.get()).reply();
    return hand.isPresent() || !request.has("dial")
        ? hand
        : new HoseEndDial(request, sheet, rate.get()).reply(Ground.of(request));
  }

  private static Reply dosed(Request request, Sheet sheet, Optional<LabelRate> rate, TankJob job) {
    boolean fillsAsked = request.wants("fills") || request.wants("product_per_fill");
    if (request.wants("fills") && !request.has("tank")) {
      return askTank(request, sheet, job, rate);
    }
    return worked(request, sheet, job, rate, fillsAsked);
  }

  /** "mixed it double strength, 2 gal left, how much water to add": as much again. */
  private static Reply doubled(Request request, Sheet sheet) {
    String left = Shown.of(request.amount("left_in_tank").orElseThrow());
    sheet.caution("above-label", "read-label").alsoTopic("progress");
    return sheet.answer(
        "If it is twice the label's strength, add as much water as is left: "
            + left
            + " to the "
            + left
            + ", part of it in a clean bucket if the tank is too small.");
  }

  /** The product for a full tank went in, but less water did. */
  private static boolean isOverfull(Request request) {
    boolean both = request.turn().has("tank") && request.turn().has("spray_volume");
    boolean rate = request.turn().has("label_rate") || request.turn().has("strength");
    return both && !rate && request.says("past") && request.says("for-full");
  }

  private static Reply tooStrong(Request request, Sheet sheet) {
    Quantity tank = request.amount("tank").orElseThrow();
    Quantity mixed = request.amount("spray_volume").orElseThrow();
    Ratio times = tank.ratioTo(mixed);
    Quantity water = tank.minus(mixed.in(tank.unit()));
    sheet.work(Shown.of(tank) + " ÷ " + Shown.of(mixed) + " = " + Shown.number(times));
    sheet.caution("above-label", "read-label").alsoTopic("progress");
    return sheet.answer(
        "It is "
            + Shown.number(times)
            + " times too strong per gallon, so don't spray it like that: "
            + "it needs "
            + Shown.of(water)
            + " more water, in a clean bucket with part of the mix "
            + "if the tank is full.");
  }

  /** What is mixed at the factory is not mixed again. */
  private static Reply readyToUse(Sheet sheet) {
    sheet.caution("concentrate-or-ready", "read-label");
    return sheet.answer(
        "None to mix: ready-to-use is already at spraying strength. Add no water, and spray it as "
            + "it comes, from its own bottle.");
  }

  /** A small table: the product for each of several areas. */
  private static Reply options(Request request, Sheet sheet, LabelRate rate) {
    StringBuilder line = new StringBuilder();
    for (Fact option : request.turn().of("area_option")) {
      TankMix mix = TankMix.of(TankJob.start().onArea(option.amount()).atRate(rate.low()));
      Quantity total = sheet.fitted(mix.product().orElseThrow());
      sheet.steps(mix.steps());
      line.append(line.isEmpty() ? "" : "; ")
          .append(Shown.of(option.amount()))
          .append(": ")
          .append(Shown.notAbove(total));
    }
    MixWords.cautions(request, sheet, Optional.of(rate));
    return sheet.answer(line.append('.').toString());
  }

  /** "A 1.2 oz/k, B .5 oz/k": two rates that nothing tells to be one product's. */
  private static boolean areTwoRates(Request request) {
    List<Fact> rates = request.turn().of("label_rate");
    boolean one =
        request.says("correction")
            || request.says("past")
            || request.says("permission")
            || request.says("check")
            || request.turn().hasWord(SOMEBODY);
    return rates.size() == 2
        && !one
        && rates.get(0).amount().dimension().equals(rates.get(1).amount().dimension())
        && !rates.get(0).amount().isSameAmount(rates.get(1).amount());
  }

  /** Whether a poured and a weighed rate were told before and this turn says of neither. */
  private static boolean areRatesOpen(Request request) {
    List<Known> rates = request.all("label_rate");
    return rates.size() == 2
        && !request.turn().has("label_rate")
        && !rates.get(0).amount().dimension().equals(rates.get(1).amount().dimension())
        && LabelRate.kindNamed(request).isEmpty();
  }

  private static Reply askWhichRate(Request request, Sheet sheet) {
    String rates =
        String.join(
            " or ", request.all("label_rate").stream().map(k -> Shown.of(k.amount())).toList());
    return sheet.ask("Which of the two: " + rates + "?", "label_rate");
  }

  /** What the ground takes at each of two rates. */
  private static Reply forEach(Request request, Sheet sheet, LabelRate last, Quantity ground) {
    StringBuilder line = new StringBuilder();
    List<Quantity> totals = new ArrayList<>();
    for (Fact rate : request.turn().of("label_rate")) {
      TankMix mix = TankMix.of(TankJob.start().onArea(ground).atRate(rate.amount()));
      sheet.steps(mix.steps());
      totals.add(mix.product().orElseThrow());
      String shown = Shown.notAbove(sheet.fitted(totals.get(totals.size() - 1)));
      line.append(line.isEmpty() ? "At " : "; at ").append(rate.said()).append(": ").append(shown);
    }
    boolean rising = totals.get(0).compareTo(totals.get(1)) <= 0;
    sheet.range(
        "product_total", totals.get(rising ? 0 : 1), Optional.of(totals.get(rising ? 1 : 0)));
    MixWords.cautions(request, sheet, Optional.of(last));
    sheet.say("You told two rates. Say which one it is, and I split it into tanks.");
    return sheet.answer(line.append('.').toString());
  }

  /** "1.5 oz per thousand at .75 gal per thousand, what do I put per gallon". */
  private static boolean isPerGallonAsked(Request request, Optional<LabelRate> rate) {
    boolean joined =
        rate.map(LabelRate::isPerArea).orElse(false) && request.turn().has("spray_rate");
    boolean volume =
        request.turnWanted().stream()
            .anyMatch(
                u ->
                    u.dimension().equals(Dimension.NONE)
                        || u.dimension().equals(Dimension.MASS_PER_VOLUME)
                        || u.code().startsWith("[gal")
                        || u.code().equals("L"));
    return joined && volume && !request.has("tank");
  }

  private static Reply perGallon(Request request, Sheet sheet, Quantity rate) {
    Quantity spray = request.amount("spray_rate").orElseThrow();
    Unit per = rate.unit().above().per(spray.unit().above());
    Unit unit = request.wanted(per).orElse(per);
    Step strength = Strength.ofRate(rate, spray, unit);
    String shown = sheet.steps(List.of(strength)).figure("converted", strength.result());
    MixWords.cautions(request, sheet, LabelRate.of(request));
    return sheet
        .alsoTopic("strength")
        .answer("Mix " + shown + ": that lays down the label's rate.");
  }

  /** Nobody fills a hand sprayer hundreds of times: an acre was likely said for something else. */
  private static Reply absurd(Request request, Sheet sheet, TankMix mix) {
    String fills = Shown.number(Ratio.of(mix.fills().orElseThrow().count()));
    String tank = request.amount("tank").map(Shown::of).orElse("that tank");
    String area = mix.area().map(Shown::of).orElse("that area");
    return sheet.ask(
        "That would be "
            + fills
            + " fills of "
            + tank
            + " for "
            + area
            + ". Is the area right: acres or square feet? And the tank?",
        "area",
        "tank");
  }

  /** The lot is not the lawn. */
  private static void lot(Request request, Sheet sheet) {
    boolean lot = request.turn().hasWord(LOTS);
    if (lot && !request.says("both") && !Ground.hasMinus(request)) {
      sheet.say(
          "A lot is more than its lawn: take off the house, drive and beds, and ask again with "
              + "the grass area alone.");
    }
  }

  private static boolean isSprayOnly(Request request) {
    boolean spray = request.wants("spray_total") || request.wants("fills");
    return request.has("spray_rate") && spray;
  }

  /** The spray said outright, or the part of a tank that is filled. */
  private static Optional<Quantity> volume(Request request) {
    if (request.has("tank_part") && request.has("tank")) {
      Ratio part = request.amount("tank_part").orElseThrow().value();
      return request.amount("tank").map(t -> t.times(part));
    }
    boolean strengthOnly = request.has("strength") && !request.has("label_rate");
    return request
        .amount("spray_volume")
        .or(
            () ->
                strengthOnly && !request.has("tank")
                    ? request.amount("catch_volume")
                    : Optional.empty());
  }

  private static Reply askRate(Request request, Sheet sheet, Optional<Quantity> ground) {
    if (request.turn().has("in_hand") && ground.isPresent() && request.says("past")) {
      return InHand.laidDown(request, sheet, ground.get());
    }
    if (request.turn().has("in_hand") && request.has("tank") && ground.isEmpty()) {
      return new HandCheck(request, sheet).ofTank();
    }
    boolean perMissing =
        request.has("product_amount") && request.turn().has("product_amount")
            || request.has("product_amount") && request.turn().all().isEmpty();
    if (request.has("product_amount") && (perMissing || ground.isPresent())) {
      String said = Shown.of(request.amount("product_amount").orElseThrow());
      sheet.say("The label's " + said + " means nothing until I know what it is per.");
      sheet.caution("ounce-kind");
      return sheet.ask(Asking.question("per"), "label_rate");
    }
    sheet.say("I never guess a rate: only your product's label has it.");
    if (ground.isEmpty() && request.has("tank") && request.has("spray_rate")) {
      Coverage full =
          Coverage.ofSpray(
              request.amount("tank").orElseThrow(), request.amount("spray_rate").orElseThrow());
      String area = sheet.steps(full.steps()).figure("area_per_fill", full.area());
      return sheet.ask(
          "A full tank does " + area + ". " + Asking.question("label_rate"), "label_rate");
    }
    if (ground.isEmpty()) {
      return sheet.ask(
          Asking.question("label_rate") + " And how big is the lawn?", "label_rate", "area");
    }
    return sheet.ask(Asking.question("label_rate"), "label_rate");
  }

  private static Reply askGround(Request request, Sheet sheet, Optional<LabelRate> rate) {
    boolean perArea = rate.map(LabelRate::isPerArea).orElse(true);
    if (perArea) {
      return sheet.ask(Asking.question("area"), "area");
    }
    request.get("strength");
    return sheet.ask(
        "How much spray are you mixing: the tank's size, or how many gallons?",
        "spray_volume",
        "tank",
        "area");
  }

  private static Reply askTank(
      Request request, Sheet sheet, TankJob job, Optional<LabelRate> rate) {
    TankMix mix = TankMix.of(job);
    String total =
        mix.product().map(p -> sheet.range("product_total", p, high(job, rate))).orElse("");
    String spray = mix.spray().map(s -> sheet.figure("spray_total", s)).orElse("");
    sheet.steps(mix.steps());
    String known = total.isEmpty() ? spray + " of spray in all. " : total + " of product in all. ";
    MixWords.cautions(request, sheet, rate);
    return sheet.ask(known + Asking.question("tank"), "tank");
  }

  private static Optional<Quantity> high(TankJob job, Optional<LabelRate> rate) {
    return rate.flatMap(LabelRate::high)
        .flatMap(
            high ->
                TankMix.of(rate.get().isPerArea() ? job.atRate(high) : job.atStrength(high))
                    .product());
  }

  private static Reply worked(
      Request request, Sheet sheet, TankJob job, Optional<LabelRate> rate, boolean fillsAsked) {
    TankMix mix = TankMix.of(job);
    if (mix.fills().map(f -> f.count() > MOST_FILLS).orElse(false)) {
      return absurd(request, sheet, mix);
    }
    Optional<Quantity> high = high(job, rate);
    MixWords words = new MixWords(request, sheet, mix, high);
    words.figures();
    sheet.steps(Ground.steps(request)).steps(mix.steps());
    MixWords.cautions(request, sheet, rate);
    lot(request, sheet);
    if (request.wants("left") && mix.product().isPresent()) {
      return ProductLeft.reply(request, sheet, mix.product().get());
    }
    if (!fillsAsked && mix.fills().isEmpty()) {
      sheet.suggest("How much goes in each tank? Tell me its size.");
    }
    if (request.units() != UnitSystem.US && request.has("tank")) {
      request
          .get("tank")
          .filter(t -> t.leavesOpen("gallon") && !t.amount().unit().equals(Units.LITRE))
          .ifPresent(t -> sheet.caution("gallon-kind"));
    }
    return sheet.answer(words.headline());
  }
}
