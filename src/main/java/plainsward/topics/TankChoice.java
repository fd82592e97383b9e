package plainsward.topics;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.dosing.Dilution;
import plainsward.reply.Reply;
import plainsward.units.Shown;

/** Two tanks of different sizes, told in one breath. */
final class TankChoice {
  private static final Set<String> EACH = Set.of("each", "both");

  private final Request request;
  private final Sheet sheet;

  TankChoice(Request request, Sheet sheet) {
    this.request = request;
    this.sheet = sheet;
  }

  /** Whether two tanks of different sizes were told and none of them chosen. */
  static boolean isOpen(Request request) {
    List<Known> tanks = request.all("tank");
    boolean chosen = request.turn().has("tank") && request.turn().of("tank").size() != 2;
    return tanks.size() == 2
        && !chosen
        && !request.says("correction")
        && !tanks.get(0).amount().isSameAmount(tanks.get(1).amount());
  }

  /** What each tank takes where it is asked for all of them; else which one is meant. */
  Reply reply(LabelRate rate) {
    return !rate.isPerArea() && areAllAsked() ? forEach(rate) : asked();
  }

  private boolean areAllAsked() {
    return request.says("both") || request.turn().hasWord(EACH);
  }

  /** "4 gal and 15 gal, how much in each": the product for each tank. */
  private Reply forEach(LabelRate rate) {
    StringBuilder line = new StringBuilder();
    int count = 0;
    for (Known tank : request.all("tank")) {
      Dilution mix = Dilution.of(tank.amount(), rate.low());
      String shown = Shown.notAbove(sheet.steps(mix.steps()).fitted(mix.product()));
      line.append(line.isEmpty() ? "" : "; ")
          .append(Shown.of(tank.amount()))
          .append(": ")
          .append(shown);
      count++;
      sheet.figure("product_per_fill_" + count, mix.product());
    }
    MixWords.cautions(request, sheet, Optional.of(rate));
    return sheet.answer(line.append('.').toString());
  }

  private Reply asked() {
    String tanks =
        String.join(" or ", request.all("tank").stream().map(k -> Shown.of(k.amount())).toList());
    return sheet.ask("Which tank is it for: " + tanks + "?", "tank");
  }
}
