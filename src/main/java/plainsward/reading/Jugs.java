package plainsward.reading;

import java.util.List;
import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;

/** Several containers of one size: "2 jugs 2.5 gal each", "three 32 oz bottles". */
final class Jugs {
  private static final Set<String> ROLES =
      Set.of("container", "volume", "product_amount", "tank", "spray_volume", "mass");
  private static final Set<String> EACH = Set.of("each", "apiece", "ea");
  private static final int MOST = 50;

  private final Passage passage;

  Jugs(Passage passage) {
    this.passage = passage;
  }

  /** Takes the count into the amount, where no price makes it one container's. */
  void join(List<Fact> all) {
    if (!Facts.named(all, Set.of("price")).isEmpty()) {
      return;
    }
    List<Fact> sized = Facts.named(all, ROLES);
    for (Fact fact : sized) {
      int count = isAmount(fact) ? count(fact) : -1;
      if (count < 0) {
        continue;
      }
      Integer many = many(count);
      if (many != null && many > 1 && many <= MOST) {
        Quantity together = fact.amount().times(Ratio.of(many));
        String said = passage.said(Math.min(count, fact.at()), passage.end(fact));
        all.set(all.indexOf(fact), fact.as("container").with(together, fact.high()));
        all.replaceAll(f -> f.at() == fact.at() ? f.saidAs(said, f.at()) : f);
        all.removeIf(f -> f.name().equals("number") && f.at() == count);
        return;
      }
    }
  }

  private static boolean isAmount(Fact fact) {
    return fact.value().isPresent()
        && fact.high().isEmpty()
        && (fact.amount().dimension().equals(Dimension.VOLUME)
            || fact.amount().dimension().equals(Dimension.MASS));
  }

  /** Where the count stands: "three 32 oz bottles", "2 jugs 2.5 gal each", "4 bottles of 16 oz". */
  private int count(Fact fact) {
    if (passage.in(passage.end(fact), Triggers.JUGS)) {
      return fact.at() - 1;
    }
    int noun =
        passage.in(fact.at() - 1, Set.of("of", "at", ",", "-")) ? fact.at() - 2 : fact.at() - 1;
    boolean of = noun < fact.at() - 1 || passage.in(passage.end(fact), EACH);
    return passage.in(noun, Triggers.JUGS) && of ? noun - 1 : -1;
  }

  private Integer many(int i) {
    String word = passage.word(i);
    if (passage.isNumber(i) && word.length() <= 2 && word.indexOf('.') < 0) {
      return Integer.valueOf(word);
    }
    return NumberWords.SMALL.get(word);
  }
}
