package plainsward.topics;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.dosing.Nutrient;
import plainsward.dosing.Step;
import plainsward.dosing.Working;
import plainsward.reply.Reply;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;
import plainsward.units.Unit;
import plainsward.units.Units;

/** Nitrogen and fertilizer: product for a target, and what a bag lays down. */
public final class FeedTopic implements Topic {
  private static final Set<String> SPLIT = Set.of("over", "total", "split", "year", "yr", "season");
  private static final Set<String> EACH = Set.of("each", "apiece");
  private static final Ratio MOST_AT_ONCE = Ratio.of(1);
  private static final Ratio LEAN = Ratio.of(5);

  @Override
  public String code() {
    return "feed";
  }

  @Override
  public Reply reply(Request request) {
    Sheet sheet = new Sheet(request, "feed").alsoTopic("spread");
    Optional<Quantity> analysis = request.amount("analysis");
    Optional<Quantity> target = target(request);
    if (analysis.isEmpty()) {
      return sheet.ask(Asking.question("analysis"), "analysis");
    }
    if (target.isEmpty() && request.has("label_rate")) {
      return laid(request, sheet, analysis.get());
    }
    if (target.isEmpty()) {
      return bagOnGround(request, sheet, analysis.get());
    }
    return forTarget(request, sheet, analysis.get(), target.get());
  }

  /** The target per area; a bare weight of nitrogen is meant per 1,000 sq ft, and said so. */
  private static Optional<Quantity> target(Request request) {
    return request
        .amount("nitrogen_target")
        .map(
            q ->
                q.dimension().equals(Dimension.MASS)
                    ? new Quantity(
                        q.value(),
                        q.unit()
                            .per(
                                q.unit().code().endsWith("g")
                                    ? Units.HUNDRED_SQUARE_METRES
                                    : Units.THOUSAND_SQUARE_FEET))
                    : q);
  }

  /** The product per area that a target of nitrogen takes, where both are known. */
  static Optional<Quantity> rateWanted(Request request) {
    Optional<Quantity> analysis = request.amount("analysis");
    return target(request)
        .filter(t -> analysis.isPresent())
        .map(t -> Nutrient.productFor(t, analysis.get()).result());
  }

  /** "1.5 lb over the year in 3 apps, how much each time": a part of it each time. */
  private static Quantity eachTime(Request request, Sheet sheet, Quantity target) {
    boolean split =
        request.turn().has("times")
            && request.turn().hasWord(SPLIT)
            && request.turn().hasWord(EACH)
            && request.amount("times").orElseThrow().signum() > 0;
    if (!split) {
      return target;
    }
    Ratio times = request.amount("times").orElseThrow().value();
    Quantity each = target.dividedBy(times);
    sheet.work(Shown.of(target) + " ÷ " + Shown.number(times) + " = " + Shown.of(each));
    return each;
  }

  private static Reply forTarget(Request request, Sheet sheet, Quantity analysis, Quantity all) {
    Quantity target = eachTime(request, sheet, all);
    Step rate = Nutrient.productFor(target, analysis);
    sheet.steps(List.of(rate));
    String each = sheet.figure("product_rate", rate.result());
    sheet.figure("nitrogen_rate", target);
    if (analysis.value().compareTo(LEAN) < 0) {
      sheet.say(
          "An analysis that low may be only a ratio of the three numbers; check that the bag "
              + "really says so.");
    }
    tooMuchAtOnce(sheet, target);
    Optional<Quantity> ground = Ground.of(request);
    if (ground.isEmpty()) {
      sheet.suggest("How much for my lawn? Tell me its size.");
      return sheet.answer(
          "Spread " + each + " of product for " + Shown.of(target) + " of nitrogen.");
    }
    sheet.steps(Ground.steps(request));
    Step total = total(rate.result(), ground.get());
    Step nitrogen =
        Working.of("nitrogen_total", target).times(ground.get()).as(total.result().unit());
    sheet.steps(List.of(total, nitrogen));
    String spread = sheet.figure("product_total", total.result());
    sheet.figure("nitrogen_total", nitrogen.result());
    return sheet.answer(
        "Spread "
            + spread
            + (target == all ? " in all, " : " each time, ")
            + each
            + "."
            + Bags.told(request, sheet, total.result()));
  }

  static Step total(Quantity rate, Quantity ground) {
    Unit unit = rate.unit().above();
    return Working.of("product_total", rate).times(ground).as(unit);
  }

  private static String held(String all, String each, Quantity rate) {
    return "The bag holds " + all + " of nitrogen, " + each + " over its area" + beyond(rate) + ".";
  }

  private static boolean isMuch(Quantity nitrogen) {
    return nitrogen.in(Units.POUND_PER_THOUSAND).value().compareTo(MOST_AT_ONCE) > 0;
  }

  private static String beyond(Quantity nitrogen) {
    return isMuch(nitrogen) ? ", more than the usual 1 lb per 1,000 sq ft at once" : "";
  }

  private static void tooMuchAtOnce(Sheet sheet, Quantity target) {
    if (isMuch(target)) {
      sheet.say(
          "More than about 1 lb of quick nitrogen per 1,000 sq ft at once can burn; split it, or "
              + "use a slow-release product. (Common practice, no source.)");
    }
  }

  private static Reply laid(Request request, Sheet sheet, Quantity analysis) {
    Quantity rate = request.amount("label_rate").orElseThrow();
    Step nitrogen = Nutrient.in(rate, analysis);
    String shown = sheet.steps(List.of(nitrogen)).figure("nitrogen_rate", nitrogen.result());
    sheet.figure("product_rate", rate);
    tooMuchAtOnce(sheet, nitrogen.result());
    Optional<Quantity> ground = Ground.of(request);
    ground.ifPresent(
        g -> {
          Step total = total(rate, g);
          sheet.steps(List.of(total)).figure("product_total", total.result());
          Bags.told(request, sheet, total.result());
        });
    return sheet.answer(
        "That lays down " + shown + " of nitrogen" + beyond(nitrogen.result()) + ".");
  }

  /** A whole bag on the lawn, or on the area that it is made for. */
  private static Reply bagOnGround(Request request, Sheet sheet, Quantity analysis) {
    Optional<Quantity> one = request.amount("bag").or(() -> request.amount("product_amount"));
    Optional<Quantity> bag =
        request.turn().has("bags_used")
            ? one.map(b -> b.times(request.amount("bags_used").orElseThrow().value()))
            : one;
    Optional<Quantity> ground = request.amount("bag_area").or(() -> Ground.of(request));
    if (bag.isEmpty() || ground.isEmpty()) {
      return sheet.ask(Asking.question("nitrogen_target"), "nitrogen_target");
    }
    Step nitrogen = Nutrient.in(bag.get(), analysis);
    Step rate =
        Working.of("nitrogen_rate", nitrogen.result())
            .over(ground.get())
            .as(Units.POUND_PER_THOUSAND);
    sheet.steps(List.of(nitrogen, rate));
    String all = sheet.figure("nitrogen_total", nitrogen.result());
    String each = sheet.figure("nitrogen_rate", rate.result());
    tooMuchAtOnce(sheet, rate.result());
    Optional<Quantity> lawn = Ground.of(request);
    String part = "";
    if (request.has("bag_area") && lawn.isPresent()) {
      Step share =
          Working.of("product_total", bag.get())
              .times(lawn.get())
              .over(ground.get())
              .as(bag.get().unit());
      part =
          " Your lawn takes "
              + sheet.steps(List.of(share)).figure("product_total", share.result())
              + " of it; a whole bag there would be too much.";
    }
    return sheet.answer(held(all, each, rate.result()) + part);
  }
}
