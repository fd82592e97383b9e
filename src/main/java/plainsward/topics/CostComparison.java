package plainsward.topics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainsward.dosing.Step;
import plainsward.dosing.Working;
import plainsward.reading.Fact;
import plainsward.reply.Reply;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Unit;

/** Two products side by side: what each costs per area, and which is cheaper. */
final class CostComparison {
  private final Request request;
  private final Sheet sheet;

  CostComparison(Request request, Sheet sheet) {
    this.request = request;
    this.sheet = sheet;
  }

  Reply reply() {
    List<Fact> prices = request.turn().of("price");
    List<Quantity> rates = new ArrayList<>();
    for (int i = 0; i < Math.min(prices.size(), 2); i++) {
      int end = i + 1 < prices.size() ? prices.get(i + 1).at() : Integer.MAX_VALUE;
      Optional<Quantity> rate = rate(prices.get(i), end, i + 1);
      if (rate.isEmpty()) {
        return sheet.ask(
            "For each of the two: the price, how much is in it, and the label's rate or the area "
                + "it covers?",
            "container",
            "label_rate");
      }
      rates.add(rate.get());
    }
    return rates.size() < 2 ? sheet.ask(Asking.question("price"), "price") : told(prices, rates);
  }

  private Reply told(List<Fact> prices, List<Quantity> rates) {
    int cheaper = rates.get(0).compareTo(rates.get(1)) <= 0 ? 0 : 1;
    String name = name(prices, cheaper);
    sheet.word("cheaper", name);
    StringBuilder line = new StringBuilder("The " + name + " is cheaper: ");
    line.append(plainsward.units.Shown.of(rates.get(cheaper)))
        .append(" against ")
        .append(plainsward.units.Shown.of(rates.get(1 - cheaper)))
        .append('.');
    Optional<Quantity> ground = Ground.of(request);
    ground.ifPresent(
        g -> {
          Step job =
              Working.of("cost_total", rates.get(cheaper))
                  .times(g)
                  .as(prices.get(cheaper).amount().unit());
          line.append(" Your lawn would take ")
              .append(sheet.steps(List.of(job)).figure("cost_total", job.result()))
              .append(" of it.");
        });
    return sheet.answer(line.toString());
  }

  /** The name given to a product: the word before its price. */
  private String name(List<Fact> prices, int which) {
    int at = prices.get(which).at() - 1;
    while (at >= 0) {
      String word = request.turn().tokens().get(at).norm();
      if (word.matches("is|s|costs|for|at|the|a|,|:|are|was")) {
        at--;
      } else {
        return word.matches("[.;?!]") ? "one at " + prices.get(which).said() : word;
      }
    }
    return "one at " + prices.get(which).said();
  }

  /** The cost per area of the product whose facts stand between its price and the next. */
  private Optional<Quantity> rate(Fact price, int end, int number) {
    List<Fact> own =
        request.turn().all().stream()
            .filter(f -> f.at() >= price.at() && f.at() < end && f.value().isPresent())
            .toList();
    Unit per = CostTopic.perArea(request, price.amount());
    Optional<Quantity> content =
        own.stream()
            .filter(f -> f != price)
            .map(Fact::amount)
            .filter(
                q -> q.dimension().equals(Dimension.VOLUME) || q.dimension().equals(Dimension.MASS))
            .findFirst();
    Optional<Quantity> laid =
        own.stream()
            .filter(f -> f.name().equals("label_rate") || f.name().equals("spray_rate"))
            .map(Fact::amount)
            .findFirst();
    Optional<Step> step = Optional.empty();
    if (content.isPresent() && laid.isPresent()) {
      step =
          Optional.of(
              Working.of("cost_rate_" + number, price.amount())
                  .over(content.get())
                  .times(laid.get())
                  .as(per));
    } else {
      Optional<Quantity> area =
          own.stream().filter(f -> f.name().contains("area")).map(Fact::amount).findFirst();
      if (area.isPresent()) {
        step =
            Optional.of(Working.of("cost_rate_" + number, price.amount()).over(area.get()).as(per));
      } else if (laid.isPresent()) {
        step =
            Optional.of(
                Working.of("cost_rate_" + number, price.amount())
                    .over(Quantity.of(1, laid.get().unit().above()))
                    .times(laid.get())
                    .as(per));
      }
    }
    step.ifPresent(s -> sheet.steps(List.of(s)).figure("cost_rate_" + number, s.result()));
    return step.map(Step::result);
  }
}
