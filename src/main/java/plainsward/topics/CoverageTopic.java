package plainsward.topics;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.dosing.Coverage;
import plainsward.dosing.Dilution;
import plainsward.dosing.Step;
import plainsward.dosing.Working;
import plainsward.reply.Reply;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Shown;
import plainsward.units.Unit;
import plainsward.units.Units;

/** How far a tank of spray or a container of product goes. */
public final class CoverageTopic implements Topic {
  private static final Set<String> TWICE = Set.of("twice");
  private static final Set<String> BOTTLES = Set.of("bottles", "jugs", "both", "them");

  @Override
  public String code() {
    return "coverage";
  }

  @Override
  public Reply reply(Request request) {
    Sheet sheet = new Sheet(request, "coverage");
    Optional<Quantity> product = product(request);
    if (product.isPresent()) {
      return ofProduct(request, sheet, product.get());
    }
    Optional<Quantity> spray = spray(request);
    if (spray.isPresent()) {
      Coverage coverage = Coverage.ofSpray(spray.get(), Sprayer.rate(request, sheet));
      Reply reply = told(request, sheet, coverage, Shown.of(spray.get()) + " of spray");
      if (request.turn().has("strength") && spray.get().dimension().equals(Dimension.VOLUME)) {
        return mixedToo(request, sheet, reply, spray.get());
      }
      boolean asked = request.turn().asks("mix") && request.amount("tank").equals(spray);
      return asked
          ? sheet.answer(reply.headline() + FullTank.product(request, sheet, coverage.area()))
          : reply;
    }
    return sheet.ask(Asking.question("container"), "container");
  }

  /** The product for the volume whose ground is asked for, where its strength was told with it. */
  private static Reply mixedToo(Request request, Sheet sheet, Reply reply, Quantity spray) {
    Quantity strength = request.amount("strength").orElseThrow();
    boolean percent = strength.unit().equals(Units.PERCENT);
    Unit unit =
        !percent
            ? strength.unit().above()
            : spray.unit().code().endsWith("L") ? Units.MILLILITRE : Units.FL_OZ;
    Dilution mix = Dilution.of(spray, strength, unit);
    String shown = sheet.steps(mix.steps()).figure("product_total", mix.product());
    return sheet.answer(reply.headline() + " It takes " + shown + " of product.");
  }

  private static Optional<Quantity> product(Request request) {
    boolean several = request.turn().hasWord(BOTTLES);
    if (several && request.all("container").size() > 1) {
      return request.all("container").stream().map(Known::amount).reduce(Quantity::plus);
    }
    return request
        .amount("container")
        .or(() -> request.amount("product_amount"))
        .or(() -> request.amount("bag"));
  }

  private static Optional<Quantity> spray(Request request) {
    if (request.has("tank_part") && request.has("tank")) {
      Quantity part = request.amount("tank_part").orElseThrow();
      return request.amount("tank").map(t -> t.times(part.value()));
    }
    return request
        .amount("left_in_tank")
        .or(() -> request.amount("spray_volume"))
        .or(() -> request.amount("volume"))
        .or(() -> request.amount("tank"));
  }

  private static Reply ofProduct(Request request, Sheet sheet, Quantity amount) {
    Optional<LabelRate> rate = LabelRate.of(request);
    if (rate.isEmpty()) {
      return sheet.ask(Asking.question("label_rate"), "label_rate");
    }
    Quantity low = rate.get().low();
    Quantity matched = matched(amount, rate.get());
    Optional<Unit> volume = request.wanted(Units.GALLON);
    if (!rate.get().isPerArea() && volume.isPresent()) {
      return makes(request, sheet, matched, low, volume.get());
    }
    Coverage coverage =
        rate.get().isPerArea()
            ? Coverage.ofProduct(matched, low)
            : Coverage.ofProductAtStrength(matched, low, Sprayer.rate(request, sheet));
    if (LabelRate.isOunceTaken(request)) {
      sheet.caution("ounce-kind");
    }
    return told(request, sheet, coverage, Shown.of(amount));
  }

  /** "16 oz bottle, 2 tbsp a gal, how many gallons does it make". */
  private static Reply makes(
      Request request, Sheet sheet, Quantity product, Quantity strength, Unit unit) {
    Dilution mix = Dilution.using(product, strength, unit);
    String shown = sheet.steps(mix.steps()).figure("spray_total", mix.volume());
    MixWords.cautions(request, sheet, LabelRate.of(request));
    return sheet.answer(Shown.of(product) + " makes " + shown + " of mix.");
  }

  /** "a 2 lb jar at 0.4 oz per thousand": ounces of a weighed product are weight. */
  private static Quantity matched(Quantity amount, LabelRate rate) {
    boolean weighed = rate.isByWeight();
    return weighed && amount.unit().equals(Units.FL_OZ)
        ? new Quantity(amount.value(), Units.OUNCE)
        : amount;
  }

  private static Reply told(Request request, Sheet sheet, Coverage coverage, String what) {
    String area = sheet.figure("area_covered", coverage.area());
    if (request.has("tank")) {
      sheet.figure("area_per_fill", coverage.area());
    }
    sheet.steps(coverage.steps()).caution("read-label");
    Optional<Quantity> lawn =
        request.wants("lawns")
            ? request.amount("lawn_each").or(() -> Ground.of(request))
            : Optional.empty();
    if (lawn.isPresent() && coverage.area().dimension().equals(Dimension.AREA)) {
      return lawns(sheet, coverage.area(), lawn.get(), area + ", " + what);
    }
    Optional<Quantity> ground = request.wants("times") ? Ground.of(request) : Optional.empty();
    if (ground.isPresent() && coverage.area().dimension().equals(Dimension.AREA)) {
      return times(sheet, coverage.area(), ground.get(), what);
    }
    String enough =
        Ground.of(request).map(grass -> verdict(request, grass, coverage.area())).orElse("");
    return sheet.answer("It goes " + area + ": " + what + "." + enough);
  }

  /** How many whole lawns that is. */
  private static Reply lawns(Sheet sheet, Quantity covered, Quantity lawn, String what) {
    Step lawns = Working.of("lawns", covered).over(lawn).roundedDown(Units.ONE);
    sheet.steps(List.of(lawns));
    return sheet.answer(
        Shown.number(lawns.result().value())
            + " lawns of "
            + Shown.of(lawn)
            + ": it goes "
            + what
            + ".");
  }

  /** How often the ground can be done with it, in whole times. */
  private static Reply times(Sheet sheet, Quantity covered, Quantity ground, String what) {
    Step times = Working.of("times", covered).over(ground).roundedDown(Units.ONE);
    String shown = sheet.steps(List.of(times)).figure("times", times.result());
    return sheet.answer(
        shown + " times on " + Shown.of(ground) + ": " + what + " goes " + Shown.of(covered) + ".");
  }

  private static String verdict(Request request, Quantity lawn, Quantity covered) {
    boolean twice = request.turn().hasWord(TWICE);
    Quantity ground = twice ? lawn.plus(lawn) : lawn;
    boolean enough = covered.dimension().equals(Dimension.AREA) && covered.compareTo(ground) >= 0;
    return enough
        ? " Yes, that is enough for " + Shown.of(lawn) + (twice ? " twice." : ".")
        : " No, that is not enough for " + Shown.of(lawn) + (twice ? " twice." : ".");
  }
}
