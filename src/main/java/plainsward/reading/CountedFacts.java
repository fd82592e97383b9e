package plainsward.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;

/** So many of a thing: "two 4 gallon tanks", "31 paces by 22 paces". */
final class CountedFacts {
  private static final Set<String> PACED = Set.of("paced", "paces", "stepped", "steps", "strides");
  private static final Set<String> LOADS =
      Set.of("tanks", "tankfuls", "loads", "fills", "batches", "cans", "backpacks", "buckets");
  private static final Set<String> LASTS =
      Set.of("lasts", "lasted", "last", "covers", "does", "did");
  private static final Set<String> PRICE = Set.of("price");
  private static final Set<String> ALL = Set.of("lawns_all");
  private static final Set<String> EACH = Set.of("lawn_each");
  private static final Set<String> STEPS = Set.of("paces", "steps", "strides", "pace");
  private static final Set<String> BY = Set.of("by", "x", "times");
  private static final Set<String> AND = Set.of("and");
  private static final Set<String> VOLUMES = Set.of("tank", "volume", "spray_volume", "area");

  private final Passage passage;

  CountedFacts(Passage passage) {
    this.passage = passage;
  }

  /** Takes the counts into the facts that they count. */
  void join(List<Fact> all) {
    tanks(all);
    new Fleets(passage).join(all);
    lasting(all);
    paces(all);
    tankOfStrength(all);
  }

  /** "the quart is $45 and lasts me 12 lawns at 5k": what a container does, and one lawn. */
  private void lasting(List<Fact> all) {
    boolean sold = !Facts.named(all, PRICE).isEmpty() && !Facts.named(all, ALL).isEmpty();
    if (!sold || !passage.hasWord(LASTS)) {
      return;
    }
    List<Fact> each = Facts.named(all, EACH);
    List<Fact> areas = Facts.named(all, Set.of("area"));
    if (each.size() == 1 && areas.size() == 1 && passage.before(areas.get(0).at(), 3, LASTS)) {
      all.set(all.indexOf(areas.get(0)), areas.get(0).as("bag_area"));
      all.add(each.get(0).as("area"));
    }
  }

  /** "two 4 gallon tanks" and "3 tanks of 4 gal" are so much spray in all. */
  private void tanks(List<Fact> all) {
    Optional<Fact> tank =
        all.stream()
            .filter(f -> f.name().equals("tank") || f.name().equals("volume"))
            .filter(this::isPlural)
            .findFirst();
    boolean told = all.stream().anyMatch(f -> f.name().equals("spray_volume"));
    if (tank.isEmpty() || told) {
      return;
    }
    int place = tank.get().at() - 1;
    while (passage.in(place, LOADS) || passage.in(place, Set.of("of", "full"))) {
      place--;
    }
    Optional<Integer> count = count(place);
    if (count.isPresent() && count.get() > 1) {
      int at = place;
      Quantity spray = tank.get().amount().times(Ratio.of(count.get()));
      String said = passage.said(at, passage.end(tank.get()));
      all.removeIf(f -> f.name().equals("number") && f.at() == at);
      all.replaceAll(f -> f.equals(tank.get()) ? f.as("tank") : f);
      all.add(Fact.of("spray_volume", spray, said, at));
    }
  }

  private boolean isPlural(Fact tank) {
    return passage.after(passage.end(tank), 2, LOADS) || passage.before(tank.at(), 3, LOADS);
  }

  private Optional<Integer> count(int place) {
    if (place < 0 || place >= passage.tokens().size()) {
      return Optional.empty();
    }
    Token token = passage.tokens().get(place);
    if (token.isNumber() && token.norm().length() <= 3 && token.norm().indexOf('.') < 0) {
      return Optional.of(Integer.valueOf(token.norm()));
    }
    return Optional.ofNullable(NumberWords.SMALL.get(token.norm()));
  }

  /** "31 paces by 22 paces, a pace is 2.5 ft". */
  private void paces(List<Fact> all) {
    Optional<Fact> pace = all.stream().filter(f -> f.name().equals("pace")).findFirst();
    if (pace.isPresent() && passage.hasWord(PACED)) {
      all.replaceAll(f -> isPaced(f) ? inPaces(f, pace.get().amount()) : f);
    }
    List<Fact> steps =
        all.stream()
            .filter(f -> f.name().equals("number") && passage.after(f.at() + 1, 3, STEPS))
            .toList();
    boolean sides =
        pace.isPresent()
            && steps.size() == 2
            && (passage.in(steps.get(1).at() - 1, BY) || passage.in(steps.get(1).at() - 1, AND));
    if (!sides) {
      return;
    }
    List<Quantity> lengths = new ArrayList<>();
    steps.forEach(s -> lengths.add(pace.get().amount().times(s.amount().value())));
    int from = steps.get(0).at();
    String said = passage.said(from, passage.end(steps.get(1)));
    all.removeAll(steps);
    all.add(Fact.shape("rectangle", lengths, said, from));
  }

  /** "I paced 40 by 62": sides with no unit said. */
  private static boolean isPaced(Fact fact) {
    return fact.name().equals("shape") && fact.leavesOpen("side-unit");
  }

  private static Fact inPaces(Fact piece, Quantity pace) {
    List<Quantity> sides = piece.sides().stream().map(side -> pace.times(side.value())).toList();
    String form = piece.word().orElseThrow();
    return Fact.shape(form, sides, piece.said(), piece.at()).of(piece.owner());
  }

  /** "8 ounces per hundred gallons, in 25": gallons again. */
  private void tankOfStrength(List<Fact> all) {
    Optional<Unit> per =
        all.stream()
            .filter(f -> f.name().equals("strength") || f.name().equals("adjuvant_rate"))
            .flatMap(f -> f.amount().unit().below().stream())
            .filter(u -> u.dimension().equals(Dimension.VOLUME))
            .findFirst();
    boolean told = all.stream().anyMatch(f -> VOLUMES.contains(f.name()));
    if (per.isEmpty() || told) {
      return;
    }
    Unit unit = per.get().single();
    all.replaceAll(
        f ->
            f.name().equals("number") && passage.in(f.at() - 1, Set.of("in", "into"))
                ? f.as("tank").with(new Quantity(f.amount().value(), unit), f.high())
                : f);
  }
}
