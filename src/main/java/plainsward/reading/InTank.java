package plainsward.reading;

import java.util.List;
import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Units;

/**
 * What is in the tank already: "in my tank: 10 gal water and 8 oz concentrate", "3 gal in it with 2
 * oz", "50 gal left mixed at 0.75 oz per gal". Taken for a bottle or a dose it would be reckoned
 * anew, as though the tank were empty.
 */
final class InTank {
  private static final Set<String> WATER =
      Set.of("tank", "volume", "spray_volume", "left_in_tank", "catch_volume", "content_left");
  private static final Set<String> PRODUCT = Set.of("product_amount", "container", "mass");
  private static final Set<String> THERE =
      Set.of("tank", "sprayer", "backpack", "rig", "it", "there", "theres", "jug", "bucket");
  private static final Set<String> IN = Set.of("in", "into", "inside", "has", "holds", "got");
  private static final Set<String> PUT =
      Set.of("put", "mixed", "poured", "added", "dumped", "used", "theres");
  private static final Set<String> SOMEBODY = Set.of("i", "we", "he", "she", "they");
  private static final Set<String> PLANNED =
      Set.of("should", "need", "needs", "goes", "much", "many", "to", "if", "can", "do", "would");
  private static final Set<String> JOINS =
      Set.of(
          "and",
          "with",
          "plus",
          "has",
          "of",
          "water",
          "in",
          "into",
          "my",
          "the",
          "a",
          "it",
          "there",
          ",",
          "tank",
          "sprayer",
          "&",
          "+",
          "already",
          "full",
          "backpack",
          "to",
          "got",
          "rig");
  private static final Set<String> AT = Set.of("at", "mixed");
  private static final int MOST_BETWEEN = 24;
  private static final Quantity LEAST = Quantity.of(64, Units.FL_OZ);

  private final Passage passage;

  InTank(Passage passage) {
    this.passage = passage;
  }

  /** Calls the product that is in the tank so, and the volume that it is in the tank. */
  void join(List<Fact> all) {
    if (leftAtStrength(all)) {
      return;
    }
    Fact water = null;
    Fact product = null;
    int amounts = 0;
    for (Fact fact : all) {
      amounts += isAmount(fact) ? 1 : 0;
      water = isAmount(fact) && isMuch(fact.amount()) ? fact : water;
      product = isAmount(fact) && !isMuch(fact.amount()) ? fact : product;
    }
    if (amounts != 2 || water == null || product == null) {
      return;
    }
    if (!areTogether(water, product) || !isThere(water, product)) {
      return;
    }
    all.set(all.indexOf(product), product.as("in_hand"));
    all.set(all.indexOf(water), water.as("tank"));
  }

  /** "50 gal left mixed at 0.75 oz per gal, wants 1.5": so much product is in it. */
  private boolean leftAtStrength(List<Fact> all) {
    Fact left = only(all, Set.of("left_in_tank"));
    if (left == null) {
      return false;
    }
    Fact first = null;
    Fact last = null;
    for (Fact fact : all) {
      if (fact.name().equals("strength") && fact.high().isEmpty()) {
        first = first == null ? fact : first;
        last = fact;
      }
    }
    boolean two = first != null && first != last && passage.before(first.at(), 2, AT);
    if (!two || !first.amount().dimension().equals(last.amount().dimension())) {
      return false;
    }
    if (first.at() < left.at() || first.at() - passage.end(left) > MOST_BETWEEN) {
      return false;
    }
    Quantity product = left.amount().times(first.amount(), first.amount().unit().above());
    String said = passage.said(left.at(), passage.end(first));
    all.set(all.indexOf(left), left.as("tank"));
    all.set(all.indexOf(first), Fact.of("in_hand", product, said, first.at()));
    return true;
  }

  private static boolean isAmount(Fact fact) {
    return (WATER.contains(fact.name()) || PRODUCT.contains(fact.name()))
        && fact.value().isPresent()
        && fact.high().isEmpty();
  }

  private static boolean isMuch(Quantity amount) {
    return amount.dimension().equals(Dimension.VOLUME) && amount.compareTo(LEAST) >= 0;
  }

  private static Fact only(List<Fact> all, Set<String> roles) {
    Fact found = null;
    for (Fact fact : all) {
      if (roles.contains(fact.name()) && fact.value().isPresent() && fact.high().isEmpty()) {
        if (found != null) {
          return null;
        }
        found = fact;
      }
    }
    return found;
  }

  private boolean areTogether(Fact water, Fact product) {
    boolean first = water.at() < product.at();
    int from = passage.end(first ? water : product);
    int to = first ? product.at() : water.at();
    for (int i = from; i < to; i++) {
      if (!passage.in(i, JOINS)) {
        return false;
      }
    }
    return passage.isOneSentence(from, to);
  }

  /** "in my tank", "in it", "i put": it is done, and not to be done. */
  private boolean isThere(Fact water, Fact product) {
    int from = Math.min(water.at(), product.at());
    int to = Math.max(passage.end(water), passage.end(product));
    for (int i = Math.max(0, from - 5); i < to + 4; i++) {
      boolean in = passage.in(i, IN) && passage.after(i + 1, 2, THERE);
      if (in && (i < from || i >= passage.end(product) || i > water.at())) {
        return !passage.before(from, 6, PLANNED)
            && (isPut(from) || !passage.before(from, 4, Set.of("put", "use")));
      }
    }
    return isPut(from) && !passage.before(from, 6, PLANNED);
  }

  private boolean isPut(int from) {
    return passage.before(from, 4, PUT) && passage.before(from, 5, SOMEBODY);
  }
}
