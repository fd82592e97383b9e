package plainsward.topics;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.dosing.Step;
import plainsward.dosing.Strength;
import plainsward.dosing.Working;
import plainsward.reply.Reply;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;
import plainsward.units.Unit;
import plainsward.units.Units;

/** How the dial of a hose-end sprayer is set for a label's rate per area. */
final class HoseEndDial {
  private static final String ASKED =
      "How many gallons does it take you to do 1,000 sq ft? Run plain water: time a gallon into a "
          + "bucket, then time yourself over 1,000 sq ft.";
  private static final Set<String> SETTING = Set.of("set", "setting", "dial", "mark", "notch");
  private static final Ratio CLOSE = Ratio.of("0.03");

  private final Request request;
  private final Sheet sheet;
  private final LabelRate rate;

  HoseEndDial(Request request, Sheet sheet, LabelRate rate) {
    this.request = request;
    this.sheet = sheet;
    this.rate = rate;
  }

  /** The setting; empty where no hose-end sprayer is spoken of or only product is to be told. */
  Optional<Reply> reply(Optional<Quantity> ground) {
    boolean told = request.has("spray_rate");
    if (!request.has("dial") || request.has("tank")) {
      return Optional.empty();
    }
    if (!rate.isPerArea()) {
      return ground.isPresent() || rate.isByWeight() || request.has("spray_volume")
          ? Optional.empty()
          : Optional.of(asTheLabel());
    }
    if (!told) {
      boolean amount = ground.isPresent() && !request.turn().hasWord(SETTING);
      return amount ? Optional.empty() : Optional.of(sheet.ask(ASKED, "spray_rate"));
    }
    return Optional.of(request.turn().has("dial_setting") ? compared() : set(ground));
  }

  /** A label's amount per gallon is what the dial says. */
  private Reply asTheLabel() {
    Quantity set = rate.low().in(Units.FL_OZ_PER_GALLON);
    String shown = sheet.range("converted", set, rate.high().map(h -> h.in(set.unit())));
    if (!rate.low().unit().equals(set.unit())) {
      sheet.work(Shown.of(rate.low()) + " = " + Shown.of(set));
    }
    sheet.say(
        "The dial counts ounces per gallon of water that goes out, and the jar holds undiluted "
            + "product on most; read the sprayer's leaflet. What the grass gets depends on your "
            + "pace: put in only what your measured grass may have, and stop when it is used.");
    MixWords.cautions(request, sheet, Optional.of(rate));
    sheet.caution("concentrate-or-ready");
    return sheet.answer("Set the dial to " + shown + ", as your label has it.");
  }

  private Step setting() {
    Quantity spray = request.amount("spray_rate").orElseThrow();
    Unit per = rate.low().unit().above().per(spray.unit().above());
    return Strength.ofRate(rate.low(), spray, per);
  }

  private Reply set(Optional<Quantity> ground) {
    Step setting = setting();
    String shown = sheet.steps(List.of(setting)).figure("converted", setting.result());
    String line = "Set the dial to " + shown + ", and keep the pace of your test.";
    if (ground.isPresent()) {
      Unit unit = rate.low().unit().above();
      Step total = Working.of("product_total", rate.low()).times(ground.get()).as(unit);
      String product = sheet.steps(List.of(total)).figure("product_total", total.result());
      line = "Put " + product + " of concentrate in the jar for it. " + line;
    }
    sheet.say("The jar holds undiluted product on most; read the sprayer's leaflet.");
    MixWords.cautions(request, sheet, Optional.of(rate));
    return sheet.answer(line);
  }

  /** What the dial lays down as it is set, against the label. */
  private Reply compared() {
    Quantity set = request.amount("dial_setting").orElseThrow();
    Quantity spray = request.amount("spray_rate").orElseThrow();
    Step down = Working.of("label_rate", set).times(spray).as(rate.low().unit());
    Step right = setting();
    sheet.steps(List.of(down, right));
    String shown = sheet.figure("converted", right.result());
    MixWords.cautions(request, sheet, Optional.of(rate));
    Ratio times = down.result().ratioTo(rate.low());
    Ratio off = times.minus(Ratio.ONE);
    if ((off.signum() < 0 ? off.negate() : off).compareTo(CLOSE) <= 0) {
      return sheet.answer("Yes, right: that lays down " + Shown.of(down.result()) + ".");
    }
    if (off.signum() > 0) {
      sheet.caution("above-label");
    }
    return sheet.answer(
        (off.signum() > 0 ? "Too much: that" : "Too little: that")
            + " lays down "
            + Shown.of(down.result())
            + ", "
            + Shown.number(times)
            + " times the label's "
            + Shown.of(rate.low())
            + ". Set the dial to "
            + shown
            + ".");
  }
}
