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
    int second = secondProduct();
    for (int i = 0; i < Math.min(prices.size(), 2); i++) {
      List<Fact> own = i == 0 ? facts(0, second) : facts(second, Integer.MAX_VALUE);
      Optional<Quantity> rate = rate(prices.get(i), own, i + 1);
      if (rate.isEmpty()) {
        return perMeasure(prices, second)
            .orElseGet(
                () ->
                    sheet.ask(
                        "For each of the two: the price, how much is in it, and the label's rate or the area "
                            + "it covers?",
                        "container",
                        "label_rate"));
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

  /** Where the second product begins: what was told first of the one is told first of the other. */
  private int secondProduct() {
    String first = "";
    for (Fact fact : request.turn().all()) {
      String kind = kind(fact);
      if (!first.isEmpty() && kind.equals(first)) {
        return fact.at();
      }
      first = first.isEmpty() ? kind : first;
    }
    return Integer.MAX_VALUE;
  }

  /** Of which of the things that are told of each product a fact is; empty where of none. */
  private static String kind(Fact fact) {
    if (fact.value().isEmpty()) {
      return "";
    }
    Dimension of = fact.amount().dimension();
    return fact.name().equals("price")
        ? "price"
        : of.equals(Dimension.VOLUME) || of.equals(Dimension.MASS)
            ? "content"
            : fact.name().matches("label_rate|spray_rate|strength") ? "rate" : "";
  }

  private List<Fact> facts(int from, int to) {
    return request.turn().all().stream()
        .filter(f -> f.at() >= from && f.at() < to && f.value().isPresent())
        .toList();
  }

  /** A quart against a gallon of one product: what a measure of each costs. */
  private Optional<Reply> perMeasure(List<Fact> prices, int second) {
    Optional<Quantity> one = content(prices.get(0), facts(0, second));
    Optional<Quantity> other =
        prices.size() < 2
            ? Optional.empty()
            : content(prices.get(1), facts(second, Integer.MAX_VALUE));
    boolean alike =
        one.isPresent()
            && other.isPresent()
            && one.get().dimension().equals(other.get().dimension())
            && request.turn().of("label_rate").isEmpty();
    if (!alike) {
      return Optional.empty();
    }
    Unit measure = measure(one.get());
    List<Quantity> each = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      Quantity price = prices.get(i).amount();
      Step step =
          Working.of("cost_rate", price)
              .over(i == 0 ? one.get() : other.get())
              .as(price.unit().per(measure));
      sheet.steps(List.of(step));
      each.add(step.result());
    }
    int cheaper = each.get(0).compareTo(each.get(1)) <= 0 ? 0 : 1;
    sheet.word("cheaper", plainsward.units.Shown.of(cheaper == 0 ? one.get() : other.get()));
    sheet.say(
        "That holds for one and the same product. Of two products, the label's rates decide: what "
            + "counts is the cost per area.");
    return Optional.of(
        sheet.answer(
            "The one at "
                + prices.get(cheaper).said()
                + " is cheaper: "
                + plainsward.units.Shown.of(each.get(cheaper))
                + " against "
                + plainsward.units.Shown.of(each.get(1 - cheaper))
                + "."));
  }

  private static Unit measure(Quantity one) {
    boolean metric = one.unit().code().matches("m?L|k?g");
    boolean weight = one.dimension().equals(Dimension.MASS);
    return metric ? Unit.of(weight ? "kg" : "L") : Unit.of(weight ? "[lb_av]" : "[foz_us]");
  }

  private static Optional<Quantity> content(Fact price, List<Fact> own) {
    return own.stream()
        .filter(f -> f != price)
        .map(Fact::amount)
        .filter(q -> q.dimension().equals(Dimension.VOLUME) || q.dimension().equals(Dimension.MASS))
        .findFirst();
  }

  /** The cost per area of the product of which these facts are. */
  private Optional<Quantity> rate(Fact price, List<Fact> own, int number) {
    Unit per = CostTopic.perArea(request, price.amount());
    Optional<Quantity> content = content(price, own);
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
