package plainsward.topics;

import plainsward.dosing.Step;
import plainsward.dosing.Working;
import plainsward.reading.Fact;
import plainsward.reply.Reply;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;
import plainsward.units.Units;

/** A rate that was taken or used, held against the label's own. */
final class RateCheck {
  private static final Ratio CLOSE = Ratio.of("0.03");
  private static final String MISHAP =
      "If it is down already: keep off the grass, water it deeply where the label allows it, put "
          + "nothing more down, and call the maker's number on the label.";

  private final Request request;

  RateCheck(Request request) {
    this.request = request;
  }

  /** Whether a rate was taken for the label's in this turn. */
  static boolean isAsked(Request request) {
    boolean label = request.turn().has("label_rate") || request.turn().has("strength");
    return request.turn().has("taken_rate") && label;
  }

  Reply reply() {
    boolean past = request.says("past");
    Sheet sheet = new Sheet(request, past ? "progress" : "convert");
    sheet.alsoTopic(past ? "convert" : "mix").caution("read-label");
    request.get("label_rate");
    request.get("strength");
    Fact fact =
        request.turn().first("label_rate").or(() -> request.turn().first("strength")).orElseThrow();
    Quantity taken = request.turn().first("taken_rate").orElseThrow().amount();
    Quantity label = nearest(fact, taken);
    Quantity right = label.in(taken.unit());
    Step times = Working.of("times", taken).over(label).as(Units.ONE);
    sheet.work(Shown.of(label) + " = " + Shown.of(right));
    sheet.steps(java.util.List.of(times)).figure("converted", right);
    if (fact.leavesOpen("ounce")) {
      sheet.caution("ounce-kind");
    }
    return sheet.answer(verdict(sheet, times.result().value(), taken, label, right));
  }

  /** The end of the label's range that the other lies nearest to; inside it that one itself. */
  private static Quantity nearest(Fact label, Quantity taken) {
    if (label.high().isEmpty() || taken.compareTo(label.amount()) <= 0) {
      return label.amount();
    }
    Quantity high = label.high().get();
    return taken.compareTo(high) >= 0 ? high : taken.in(high.unit());
  }

  private static String verdict(
      Sheet sheet, Ratio times, Quantity taken, Quantity label, Quantity right) {
    String same = right.unit().equals(label.unit()) ? "" : " is " + Shown.of(right);
    String is = ": the label's " + Shown.of(label) + same + ", against " + Shown.of(taken) + ".";
    Ratio off = times.minus(Ratio.ONE);
    if ((off.signum() < 0 ? off.negate() : off).compareTo(CLOSE) <= 0) {
      return "Yes, right: " + Shown.of(taken) + " is what the label gives.";
    }
    if (off.signum() > 0) {
      sheet.caution("above-label").say(MISHAP);
      return "No, " + Shown.number(times) + " times too strong" + is;
    }
    return "No, too weak by " + Shown.number(Ratio.ONE.dividedBy(times)) + " times" + is;
  }
}
