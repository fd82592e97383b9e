package plainsward.topics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.dosing.TankJob;
import plainsward.dosing.TankMix;
import plainsward.reading.Fact;
import plainsward.reading.Token;
import plainsward.reply.Reply;
import plainsward.units.Quantity;
import plainsward.units.Shown;

/** Two pieces of ground, each with a rate of its own: "front 2.5k at 1.1 oz/k, back 4k at 1.5". */
final class LawnRates {
  private static final Set<String> TO = Set.of("on", "for", "in", "the", "my");

  private final Request request;
  private final Sheet sheet;
  private final List<Fact> areas = new ArrayList<>();
  private final List<Fact> rates = new ArrayList<>();

  LawnRates(Request request, Sheet sheet) {
    this.request = request;
    this.sheet = sheet;
    request.turn().of("area").stream().filter(f -> f.value().isPresent()).forEach(areas::add);
    rates.addAll(request.turn().of("label_rate"));
  }

  /** The product for each piece and for all; empty where it is not told which rate is whose. */
  Optional<Reply> reply(LabelRate last) {
    boolean single = rates.stream().allMatch(r -> r.high().isEmpty());
    boolean told = areas.size() == 2 && rates.size() == 2 && single;
    if (!told || !areNamed() && !areInTurn()) {
      return Optional.empty();
    }
    StringBuilder line = new StringBuilder();
    Quantity all = null;
    for (int i = 0; i < areas.size(); i++) {
      Fact area = areas.get(i);
      TankMix mix = TankMix.of(TankJob.start().onArea(area.amount()).atRate(rates.get(i).amount()));
      Quantity product = mix.product().orElseThrow();
      sheet.steps(mix.steps());
      all = all == null ? product : all.plus(product);
      line.append(area.owner().isEmpty() ? Shown.of(area.amount()) : "the " + area.owner())
          .append(" takes ")
          .append(Shown.notAbove(sheet.fitted(product)))
          .append(i == 0 ? ", " : ": ");
    }
    request.all("area");
    request.all("label_rate");
    String total = sheet.figure("product_total", all);
    MixWords.cautions(request, sheet, Optional.of(last));
    String each = line.toString();
    return Optional.of(
        sheet.answer(
            each.substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                + each.substring(1)
                + total
                + " in all."));
  }

  /** "1.1 oz/k front, 1.5 oz/k back": each rate has the name of its piece after it. */
  private boolean areNamed() {
    List<Fact> sorted = new ArrayList<>();
    for (Fact area : areas) {
      for (Fact rate : rates) {
        String place = placeAfter(rate);
        if (!place.isEmpty() && (" " + area.owner()).endsWith(" " + place)) {
          sorted.add(rate);
        }
      }
    }
    if (sorted.size() == rates.size()) {
      rates.clear();
      rates.addAll(sorted);
      return true;
    }
    return false;
  }

  /** The name right after a rate: "on the back", "front". */
  private String placeAfter(Fact rate) {
    List<Token> tokens = request.turn().tokens();
    int end = tokens.get(rate.at()).start() + rate.said().length();
    int i = rate.at() + 1;
    while (i < tokens.size() && (tokens.get(i).end() <= end || TO.contains(tokens.get(i).norm()))) {
      i++;
    }
    return i < tokens.size() ? tokens.get(i).norm() : "";
  }

  /** Ground, rate, ground, rate; or rate, ground, rate, ground. */
  private boolean areInTurn() {
    int a = areas.get(0).at();
    int b = rates.get(0).at();
    int c = areas.get(1).at();
    int d = rates.get(1).at();
    return a < b && b < c && c < d || b < a && a < d && d < c;
  }
}
