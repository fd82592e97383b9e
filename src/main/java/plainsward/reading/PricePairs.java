package plainsward.reading;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Quantity;

/** What a price is for: "38 bucks for a quart", "the 64 oz jug runs me $42". */
final class PricePairs {
  private static final Set<String> CHARGED =
      Set.of("charging", "charge", "charged", "bill", "billing", "pay", "paid", "paying");
  private static final Set<String> AMOUNTS =
      Set.of(
          "volume", "tank", "spray_volume", "product_amount", "mass", "number", "bag", "container");
  private static final Set<String> BETWEEN =
      Set.of(
          "for",
          "a",
          "an",
          "the",
          "per",
          "each",
          "one",
          "is",
          "costs",
          "cost",
          "at",
          "runs",
          "me",
          "jug",
          "bottle",
          "container",
          "bag",
          "of",
          "was",
          "goes",
          "sells",
          "and",
          "it",
          "holds");

  private static final Set<String> VESSELS =
      Set.of("jug", "bottle", "bag", "container", "gallon", "quart", "pint", "case", "gal");
  private static final Set<String> NAMING =
      Set.of("concentrate", "product", "stuff", "herbicide", "killer", "weed", "my", "now", "here");

  private static final Set<String> MONEY =
      Set.of(
          "cheaper",
          "cheapest",
          "cost",
          "costs",
          "price",
          "prices",
          "deal",
          "value",
          "expensive",
          "paying",
          "paid",
          "pay",
          "save",
          "charging",
          "charge",
          "money",
          "pricier",
          "dearer");

  private static final Set<String> PRICE =
      Set.of("price", "priced", "cost", "costs", "paid", "costing");
  private static final Set<String> LINKS =
      Set.of("is", "was", "me", "us", "at", ":", "=", "about", "i");
  private static final Set<String> COUNTED =
      Set.of("per", "/", "%", "percent", "times", "x", "lawns", "jugs", "bottles", "bags", "of");

  private final Passage passage;

  PricePairs(Passage passage) {
    this.passage = passage;
  }

  /** Calls the amount that stands beside a price what it is: the container. */
  void join(List<Fact> all) {
    namedPrices(all);
    barePrices(all);
    pricesPerArea(all);
    for (Fact price : List.copyOf(all)) {
      if (!price.name().equals("price")) {
        continue;
      }
      for (int i = 0; i < all.size(); i++) {
        Fact amount = all.get(i);
        if (isStuff(amount) && (isJoined(price, amount) || isJoined(amount, price))) {
          all.set(i, amount.as("container"));
        }
      }
    }
    if (passage.hasWord(Triggers.SIZES)) {
      new BareSizes(passage).join(all);
    }
  }

  /** "price 38", "paid 45 for it": a number that is said to be a price, in dollars. */
  private void namedPrices(List<Fact> all) {
    for (int i = 0; i < all.size(); i++) {
      Fact number = all.get(i);
      int at = number.at() - 1;
      boolean bare = number.name().equals("number") && number.high().isEmpty();
      int word = passage.in(at, LINKS) ? at - 1 : at;
      if (bare && passage.in(word, PRICE) && !passage.in(passage.end(number), COUNTED)) {
        Quantity money = Quantity.of(number.amount().value(), "USD");
        all.set(i, number.as("price").with(money, Optional.empty()).doubting(List.of()).of(""));
      }
    }
  }

  /** "a pint at 24 or a gallon at 150, which is cheaper": numbers beside sizes are dollars. */
  private void barePrices(List<Fact> all) {
    if (!isAboutMoney() || !Facts.named(all, Set.of("price")).isEmpty()) {
      return;
    }
    for (int i = 0; i < all.size(); i++) {
      Fact number = all.get(i);
      boolean bare = number.name().equals("number") && number.high().isEmpty();
      if (bare && isPrice(all, i) || isOfVessel(number)) {
        Quantity money = Quantity.of(number.amount().value(), "USD");
        all.set(i, number.as("price").with(money, Optional.empty()).doubting(List.of()).of(""));
      }
    }
  }

  /** "4.50 per thousand", where money is spoken of, is no rate of a product. */
  private void pricesPerArea(List<Fact> all) {
    for (int i = 0; i < all.size(); i++) {
      Fact rate = all.get(i);
      boolean bare = rate.name().equals("label_rate") && rate.leavesOpen("unit");
      boolean charged = bare && passage.before(rate.at(), 2, CHARGED);
      if (charged || bare && isCents(rate) && isAboutMoney()) {
        all.set(i, rate.as("price_per_area"));
      }
    }
  }

  private static boolean isCents(Fact rate) {
    int point = rate.said().indexOf('.');
    return point > 0
        && rate.said().length() > point + 3
        && Character.isDigit(rate.said().charAt(point + 2))
        && !Character.isDigit(rate.said().charAt(point + 3));
  }

  private boolean isAboutMoney() {
    for (Token token : passage.tokens()) {
      if (MONEY.contains(token.norm())) {
        return true;
      }
    }
    return false;
  }

  /** "the jug is 150", where money is spoken of, is no ground. */
  private boolean isOfVessel(Fact area) {
    return area.name().equals("area")
        && area.leavesOpen("square")
        && passage.in(area.at() - 1, Set.of("is", "costs", "runs", "at"))
        && passage.in(area.at() - 2, VESSELS);
  }

  /** A number that a size goes before, or one with cents. */
  private boolean isPrice(List<Fact> all, int i) {
    Fact number = all.get(i);
    String said = number.said();
    int point = said.indexOf('.');
    boolean cents = point > 0 && said.length() - point == 3;
    boolean beside =
        i > 0
            && !all.get(i - 1).name().equals("number")
            && isStuff(all.get(i - 1))
            && passage.in(number.at() - 1, Set.of("at", "is", "costs", "for", "=", "runs"))
            && isOnlyNaming(passage.end(all.get(i - 1)), number.at() - 1);
    boolean before =
        i + 1 < all.size()
            && isStuff(all.get(i + 1))
            && passage.in(passage.end(number), Set.of("for", "a", "per"))
            && all.get(i + 1).at() - passage.end(number) <= 2;
    return cents || beside || before;
  }

  /** Whether the words between say only what it is: "1 qt of concentrate costs 38". */
  private boolean isOnlyNaming(int from, int to) {
    int other = 0;
    for (int i = from; i < to; i++) {
      other += BETWEEN.contains(passage.word(i)) || NAMING.contains(passage.word(i)) ? 0 : 1;
    }
    return from <= to + 1 && (other == 0 || to - from <= 1);
  }

  private static boolean isStuff(Fact fact) {
    return AMOUNTS.contains(fact.name())
        && fact.value().isPresent()
        && (fact.amount().dimension().equals(Dimension.VOLUME)
            || fact.amount().dimension().equals(Dimension.MASS));
  }

  private boolean isJoined(Fact first, Fact second) {
    int from = passage.end(first);
    if (from >= second.at()) {
      return from == second.at();
    }
    for (int i = from; i < second.at(); i++) {
      if (!passage.in(i, BETWEEN)) {
        return false;
      }
    }
    return true;
  }
}
