package plainsward.topics;

import java.util.List;
import java.util.Optional;
import plainsward.dosing.Dilution;
import plainsward.dosing.Step;
import plainsward.dosing.Strength;
import plainsward.reply.Reply;
import plainsward.units.Quantity;
import plainsward.units.Shown;

/** The product in what is left of a mix. */
final class MixLeftOver {
  private final Request request;
  private final Sheet sheet;

  MixLeftOver(Request request, Sheet sheet) {
    this.request = request;
    this.sheet = sheet;
  }

  /** Whether the product in the rest of a mix is what is asked for. */
  static boolean isAsked(Request request) {
    boolean other = request.turn().has("area") || request.turn().has("shape");
    return request.has("mix_left") && !other;
  }

  Reply reply(Optional<LabelRate> rate) {
    Quantity left = request.amount("mix_left").orElseThrow();
    sheet.work(request.get("mix_left").orElseThrow().fact().said() + ": " + Shown.of(left));
    if (rate.isEmpty()) {
      sheet.figure("spray_total", left);
      return sheet.ask(
          "How strong is the mix: so many ounces per gallon, or how much went into how much water?",
          "strength",
          "label_rate");
    }
    Quantity strength = rate.get().low();
    if (rate.get().isPerArea()) {
      Step made =
          Strength.ofRate(
              strength, Sprayer.rate(request, sheet), strength.unit().above().per(left.unit()));
      sheet.steps(List.of(made));
      strength = made.result();
    }
    Dilution mix = Dilution.of(left, strength);
    String product = sheet.steps(mix.steps()).figure("product_total", mix.product());
    sheet.figure("spray_total", left);
    MixWords.cautions(request, sheet, rate);
    return sheet.answer(product + " of product is still in the " + Shown.of(left) + " left.");
  }
}
