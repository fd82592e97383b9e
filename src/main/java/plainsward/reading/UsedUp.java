package plainsward.reading;

import java.util.List;
import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Quantity;

/**
 * What went out, where the start and the rest are told: "12 lb in the hopper, 7.5 lb left after a
 * 10 x 100 strip", "filled 3 gallons, had a quart left after 2,400 sq ft".
 */
final class UsedUp {
  private static final Set<String> BACK = Set.of("left", "remaining", "leftover", "back", "still");
  private static final Set<String> LEFT = Set.of("left", "remaining", "leftover");
  private static final Set<String> STARTED =
      Set.of(
          "started", "began", "filled", "fill", "put", "loaded", "had", "full", "hopper", "start",
          "poured", "weighed", "mixed", "with", "from", "took");
  private static final Set<String> STUFF =
      Set.of(
          "tank",
          "volume",
          "spray_volume",
          "product_amount",
          "catch_volume",
          "container",
          "bag",
          "left_in_tank",
          "content_left",
          "test_amount");
  private static final Set<String> GROUND = Set.of("area", "shape", "test_area", "test_shape");
  private static final Set<String> DOSE = Set.of("label_rate", "strength");
  private static final int NEAR = 4;

  private final Passage passage;

  UsedUp(Passage passage) {
    this.passage = passage;
  }

  /** Puts what was used in place of the start and the rest. */
  void join(List<Fact> all) {
    List<Fact> ground = Facts.named(all, GROUND);
    List<Fact> stuff = Facts.named(all, STUFF);
    if (ground.size() != 1 || stuff.size() != 2 || !isUsed(stuff.get(0), stuff.get(1))) {
      return;
    }
    Fact start = stuff.get(0);
    Fact rest = stuff.get(1);
    Quantity used = start.amount().minus(rest.amount().in(start.amount().unit()));
    all.removeAll(stuff);
    String said = passage.said(start.at(), passage.end(rest));
    boolean weight = used.dimension().equals(Dimension.MASS);
    all.add(Fact.of(weight ? "test_amount" : "catch_volume", used, said, start.at()));
    if (start.name().equals("tank")) {
      all.add(start);
    }
    boolean dose = all.stream().anyMatch(f -> DOSE.contains(f.name()));
    if (ground.get(0).value().isPresent() && !dose) {
      all.replaceAll(f -> f.equals(ground.get(0)) ? f.as("test_area") : f);
    } else if (ground.get(0).value().isPresent() && !weight) {
      all.removeIf(f -> f.name().equals("catch_volume") || f.equals(ground.get(0)));
      Quantity rate = Rates.per(used, ground.get(0).amount());
      all.add(Fact.of("spray_rate", rate, said, start.at()));
    }
  }

  private boolean isUsed(Fact start, Fact rest) {
    boolean amounts =
        start.value().isPresent()
            && rest.value().isPresent()
            && start.high().isEmpty()
            && start.amount().dimension().equals(rest.amount().dimension())
            && start.amount().compareTo(rest.amount()) > 0;
    return amounts
        && (passage.after(passage.end(rest), 2, LEFT) || passage.before(rest.at(), 3, BACK))
        && (passage.before(start.at(), NEAR, STARTED)
            || passage.after(passage.end(start), NEAR, STARTED));
  }
}
