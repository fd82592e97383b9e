package plainsward.topics;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import plainsward.dosing.Fills;
import plainsward.dosing.Load;
import plainsward.dosing.TankMix;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;

/** The figures and the sentences of a mix. */
final class MixWords {
  private static final List<String> COUNTS =
      List.of("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten");

  private final Request request;
  private final Sheet sheet;
  private final TankMix mix;
  private final Optional<Quantity> high;

  MixWords(Request request, Sheet sheet, TankMix mix, Optional<Quantity> high) {
    this.request = request;
    this.sheet = sheet;
    this.mix = mix;
    this.high = high;
  }

  /** Sets all figures. */
  void figures() {
    Ratio end = highFactor();
    for (Map.Entry<String, Quantity> figure : mix.figures().entrySet()) {
      boolean product = figure.getKey().startsWith("product");
      Optional<Quantity> top =
          product && high.isPresent()
              ? Optional.of(figure.getValue().times(end))
              : Optional.empty();
      sheet.range(figure.getKey(), figure.getValue(), top);
    }
  }

  private Ratio highFactor() {
    return high.isPresent() && mix.product().isPresent()
        ? high.get().ratioTo(mix.product().get())
        : Ratio.ONE;
  }

  private String amount(Quantity product) {
    Quantity low = sheet.fitted(product);
    return high.isPresent() ? Shown.range(low, low.times(highFactor())) : Shown.notAbove(low);
  }

  /** The number first. */
  String headline() {
    if (mix.product().isEmpty()) {
      return withoutProduct();
    }
    StringBuilder line = new StringBuilder("Use " + amount(mix.product().get()));
    line.append(mix.fills().isPresent() ? " in all" : " of product in all");
    mix.fills().ifPresent(fills -> line.append(loads(fills)));
    line.append('.');
    mix.adjuvant()
        .ifPresent(
            a ->
                line.append(" Wetting agent: ")
                    .append(sheetAmount(a))
                    .append(" in all")
                    .append(adjuvantEach())
                    .append('.'));
    if (high.isPresent()) {
      line.append(
          " The label gives a range; the low end is for small, tender weeds or tender grass.");
    }
    return line.toString();
  }

  private String adjuvantEach() {
    return mix.fills()
        .filter(f -> f.count() > 1)
        .flatMap(f -> f.each().adjuvant())
        .map(a -> ", " + sheetAmount(a) + " in each full tank")
        .orElse("");
  }

  private String sheetAmount(Quantity amount) {
    return Shown.notAbove(sheet.fitted(amount));
  }

  private String withoutProduct() {
    StringBuilder line = new StringBuilder();
    mix.adjuvant()
        .ifPresent(
            a ->
                line.append("Use ")
                    .append(sheetAmount(a))
                    .append(" of wetting agent in all")
                    .append(adjuvantEach())
                    .append(". "));
    mix.spray().ifPresent(s -> line.append("Mix ").append(Shown.of(s)).append(" of spray in all"));
    mix.fills()
        .ifPresent(
            f ->
                line.append(": ")
                    .append(count(f.count(), f.count() == 1 ? "load" : "loads"))
                    .append(
                        f.endsInPart() && f.count() > 1
                            ? ", the last of " + Shown.of(f.last().volume())
                            : ""));
    return line.append('.').toString();
  }

  /** ": 3 fl oz in each of two 2 gal fills", and the last part load. */
  private String loads(Fills fills) {
    Load each = fills.each();
    Load last = fills.last();
    String inLast = last.product().map(this::amount).orElse("");
    if (fills.count() == 1) {
      return ", in one load of " + Shown.of(last.volume());
    }
    String inEach = each.product().map(this::amount).orElse("");
    if (!fills.endsInPart()) {
      return ": "
          + inEach
          + " in each of "
          + count(fills.count(), Shown.of(each.volume()) + " fills");
    }
    String full =
        fills.full() == 1
            ? inEach + " in the full " + Shown.of(each.volume())
            : inEach
                + " in each of "
                + count(fills.full(), "full " + Shown.of(each.volume()) + " fills");
    return ": " + full + ", then " + inLast + " in the last " + Shown.of(last.volume());
  }

  private static String count(long n, String what) {
    return (n < COUNTS.size() ? COUNTS.get((int) n) : Shown.number(Ratio.of(n))) + " " + what;
  }

  /** What every dose of a pesticide carries, and what its doubts call for. */
  static void cautions(Request request, Sheet sheet, Optional<LabelRate> rate) {
    sheet.caution("read-label");
    boolean pouredDry = rate.isPresent() && LabelRate.isDry(request) && !rate.get().isByWeight();
    if (rate.isPresent() && LabelRate.isOunceTaken(request) || pouredDry) {
      sheet.caution("ounce-kind");
    }
    Unusual.check(request, sheet, rate);
    GrassWords.caution(request, sheet);
    sheet.caution("wear-gear");
  }
}
