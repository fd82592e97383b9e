package plainsward.reading;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Quantity;
import plainsward.units.Unit;

/** "3 oz per gal was wrong its 3 tsp": the rate that is taken back, and what it is instead. */
final class WrongThenRight {
  private static final Set<String> RATES = Set.of("label_rate", "strength");
  private static final Set<String> AMOUNTS =
      Set.of("product_amount", "catch_volume", "container", "volume");

  private final Passage passage;

  WrongThenRight(Passage passage) {
    this.passage = passage;
  }

  /** Puts the right one in the place of the wrong one. */
  void join(List<Fact> all) {
    if (all.size() < 2) {
      return;
    }
    for (int i = 0; i + 1 < all.size(); i++) {
      Fact wrong = all.get(i);
      Fact right = all.get(i + 1);
      if (!RATES.contains(wrong.name()) || right.value().isEmpty() || !isTakenBack(wrong, right)) {
        continue;
      }
      Optional<Fact> rate = rate(wrong, right);
      if (rate.isPresent()) {
        all.set(i + 1, rate.get());
        all.remove(i);
        return;
      }
    }
  }

  private boolean isTakenBack(Fact wrong, Fact right) {
    for (int i = passage.end(wrong); i < right.at(); i++) {
      if (passage.in(i, Triggers.WRONG)) {
        return true;
      }
    }
    return false;
  }

  private static Optional<Fact> rate(Fact wrong, Fact right) {
    Unit old = wrong.amount().unit();
    if (RATES.contains(right.name())) {
      return Optional.of(right);
    }
    boolean number = right.name().equals("number");
    if (!number && !AMOUNTS.contains(right.name()) || old.below().isEmpty()) {
      return Optional.empty();
    }
    Unit unit = number ? old : right.amount().unit().per(old.below().orElseThrow());
    Quantity low = new Quantity(right.amount().value(), unit);
    return Optional.of(wrong.with(low, Optional.empty()).saidAs(right.said(), right.at()));
  }
}
