package plainsward.reading;

import java.util.List;
import java.util.Set;
import plainsward.units.Dimension;

/** What a price is for: "38 bucks for a quart", "the 64 oz jug runs me $42". */
final class PricePairs {
  private static final Set<String> AMOUNTS =
      Set.of("volume", "tank", "spray_volume", "product_amount", "mass", "number", "bag");
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

  private final Passage passage;

  PricePairs(Passage passage) {
    this.passage = passage;
  }

  /** Calls the amount that stands beside a price what it is: the container. */
  void join(List<Fact> all) {
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
