package plainsward.reading;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Unit;
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
          "n",
          "rig");
  private static final Set<String> AT = Set.of("at", "mixed");
  private static final Set<String> MADE =
      Set.of("mixed", "mix", "mixes", "made", "batched", "filled", "loaded", "mixing");
  private static final Set<String> LABEL =
      Set.of(
          "label",
          "bottle",
          "jug",
          "sheet",
          "says",
          "calls",
          "wants",
          "supposed",
          "should",
          "directions",
          "leaflet");
  private static final Set<String> VOLUMES =
      Set.of("left_in_tank", "spray_volume", "tank", "volume", "makes_volume", "catch_volume");
  private static final Set<String> STRENGTHS = Set.of("strength", "label_rate", "number");
  private static final int MOST_BETWEEN = 24;
  private static final Quantity LEAST = Quantity.of(64, Units.FL_OZ);

  private final Passage passage;

  InTank(Passage passage) {
    this.passage = passage;
  }

  /** Calls the product that is in the tank so, and the volume that it is in the tank. */
  void join(List<Fact> all) {
    if (all.size() < 2) {
      return;
    }
    if (mixedAtStrength(all)) {
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

  /**
   * "50 gal left mixed at 0.75 oz per gal, wants 1.5", "mixed 100 gal at 1 oz per gal but the label
   * says 0.75": so much product is in it, and the label's figure is the other one.
   */
  private boolean mixedAtStrength(List<Fact> all) {
    Fact volume = only(all, VOLUMES);
    Fact first = volume == null ? null : mixedAt(all, volume);
    Fact label = first == null ? null : labelAfter(all, first);
    boolean left = volume != null && volume.name().equals("left_in_tank");
    if (label == null || !left && !isMade(volume) || !left && !isOfLabel(label)) {
      return false;
    }
    Quantity product = volume.amount().times(first.amount(), first.amount().unit().above());
    String said = passage.said(volume.at(), passage.end(first));
    all.set(all.indexOf(volume), volume.as("tank"));
    all.set(all.indexOf(first), Fact.of("in_hand", product, said, first.at()));
    all.set(all.indexOf(label), likeMixed(label, first));
    return true;
  }

  /** The strength that stands right after a volume, as the one that it was mixed at. */
  private Fact mixedAt(List<Fact> all, Fact volume) {
    for (Fact fact : all) {
      boolean after = fact.at() > volume.at() && fact.at() - passage.end(volume) <= MOST_BETWEEN;
      if (fact.name().equals("strength") && fact.high().isEmpty() && after) {
        return passage.before(fact.at(), 2, AT) ? fact : null;
      }
    }
    return null;
  }

  /** The last figure after a strength that can be held against it. */
  private static Fact labelAfter(List<Fact> all, Fact first) {
    Fact found = null;
    for (Fact fact : all) {
      boolean figure = STRENGTHS.contains(fact.name()) && fact.high().isEmpty();
      found = figure && fact.at() > first.at() && isAlike(fact, first) ? fact : found;
    }
    return found;
  }

  private static boolean isAlike(Fact figure, Fact first) {
    boolean bare = figure.name().equals("number") || figure.leavesOpen("per");
    Unit top = figure.amount().unit();
    return bare
        || figure.amount().dimension().equals(first.amount().dimension())
        || figure.name().equals("label_rate")
            && top.above().dimension().equals(first.amount().unit().above().dimension());
  }

  private boolean isMade(Fact volume) {
    return passage.before(volume.at(), 4, MADE)
        || passage.after(passage.end(volume), 4, MADE) && volume.name().equals("tank");
  }

  private boolean isOfLabel(Fact figure) {
    return passage.before(figure.at(), 4, LABEL);
  }

  /** A bare figure beside a strength is per the same volume. */
  private static Fact likeMixed(Fact figure, Fact first) {
    boolean bare = figure.name().equals("number") || figure.leavesOpen("per");
    return bare
        ? first
            .as("strength")
            .saidAs(figure.said(), figure.at())
            .with(new Quantity(figure.amount().value(), first.amount().unit()), Optional.empty())
        : figure;
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
    boolean told = from == 1 && passage.in(0, PUT) && passage.hasWord(LABEL);
    return told || passage.before(from, 4, PUT) && passage.before(from, 5, SOMEBODY);
  }
}
