package plainsward.reading;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;
import plainsward.units.Units;

/** What is in the tank, what a test threw, how fast one goes. */
final class SprayerFacts {
  private static final Quantity THOUSAND = Quantity.of(1000, Units.SQUARE_FOOT);
  private static final Set<String> PER = Set.of("per", "/", "each", "every");
  private static final int CLOCKED = 4;
  private static final Set<String> GPA = Set.of("gpa");
  private static final int NEAR = 6;
  private static final Set<String> AIR = Set.of("wind", "winds", "gusts", "breeze", "windy");
  private static final Set<String> THAT = Set.of("that", "it", "this", "is");
  private static final Ratio LEAST_PACK = Ratio.of(3);
  private static final Ratio MOST_PACK = Ratio.of(6);
  private static final Set<String> TIMED = Set.of("per", "/", "a", "each", "every", "for", "on");
  private static final Set<String> ARTICLES = Set.of("a", "each", "every", "one");
  private static final Set<String> THOUSANDS = Set.of("thousand", "k", "1000", "m");
  private static final Set<String> TANKS =
      Set.of("tank", "sprayer", "rig", "backpack", "knapsack", "skid");
  private static final Set<String> TRUCKS = Set.of("truck", "ours", "mine", "trailer");
  private static final Set<String> GROUND = Set.of("area", "shape", "test_area");

  private final Passage passage;

  SprayerFacts(Passage passage) {
    this.passage = passage;
  }

  /** Puts together what belongs together. */
  void join(List<Fact> all) {
    timed(all);
    clocked(all);
    perThousand(all);
    leftInTank(all);
    holding(all);
    packs(all);
    gpaBefore(all);
    walking(all);
    catches(all);
  }

  /** "70 seconds per thousand": how long the ground takes, which was a test of the sprayer. */
  private void timed(List<Fact> all) {
    for (int i = 0; i < all.size(); i++) {
      Fact time = all.get(i);
      int per = time.name().endsWith("time") && time.value().isPresent() ? passage.end(time) : -1;
      int ground = passage.in(per + 1, ARTICLES) ? per + 2 : per + 1;
      if (per < 0 || !passage.in(per, TIMED) || !passage.in(ground, THOUSANDS)) {
        continue;
      }
      all.set(i, time.as("walk_time"));
      all.removeIf(f -> f.name().equals("area") && f.at() >= per && f.at() <= ground);
      all.add(Fact.of("test_area", THOUSAND, passage.said(per + 1, ground + 1), ground));
      return;
    }
  }

  /** "4 gpm, a thousand in 25 sec, 1.3 oz/k": what is laid down, where a dose is told too. */
  private void clocked(List<Fact> all) {
    if (all.size() < CLOCKED) {
      return;
    }
    List<Fact> flow = Facts.named(all, Set.of("nozzle_flow"));
    List<Fact> time = Facts.named(all, Set.of("walk_time"));
    List<Fact> dose = Facts.named(all, Set.of("label_rate", "strength"));
    if (flow.size() != 1 || time.size() != 1 || dose.isEmpty()) {
      return;
    }
    for (Fact ground : List.copyOf(all)) {
      boolean walked =
          GROUND.contains(ground.name())
              && ground.value().isPresent()
              && Math.abs(ground.at() - time.get(0).at()) <= NEAR
              && ground.amount().unit().equals(Units.SQUARE_FOOT);
      if (walked) {
        Quantity volume = flow.get(0).amount().times(time.get(0).amount(), Units.GALLON);
        all.removeAll(List.of(ground, flow.get(0), time.get(0)));
        String said = flow.get(0).said() + ", " + time.get(0).said() + " on " + ground.said();
        Quantity rate = Rates.per(volume, ground.amount());
        all.add(Fact.of("spray_rate", rate, said, flow.get(0).at()));
        return;
      }
    }
  }

  /** "what is that per 1000": no piece of ground, but what is asked for; so it was a test. */
  private void perThousand(List<Fact> all) {
    boolean asked =
        all.removeIf(
            f ->
                f.name().equals("area")
                    && f.value().isPresent()
                    && f.amount().isSameAmount(THOUSAND)
                    && (passage.in(f.at() - 1, PER)
                        || passage.in(f.at(), PER) && passage.in(f.at() - 1, THAT)));
    if (!asked) {
      return;
    }
    List<Fact> thrown =
        all.stream()
            .filter(f -> f.name().equals("product_amount") && isOf(f, Dimension.MASS))
            .toList();
    boolean ground = all.stream().anyMatch(f -> GROUND.contains(f.name()));
    if (thrown.size() == 1 && ground) {
      all.replaceAll(f -> f.equals(thrown.get(0)) ? f.as("test_amount") : f);
    }
  }

  private static boolean isOf(Fact fact, Dimension dimension) {
    return fact.value().isPresent() && fact.amount().dimension().equals(dimension);
  }

  /** "the truck holds 200": gallons. */
  private void holding(List<Fact> all) {
    boolean metric = passage.system() == UnitSystem.METRIC;
    boolean imperial = passage.system() == UnitSystem.IMPERIAL;
    Unit unit = metric ? Units.LITRE : imperial ? Units.IMPERIAL_GALLON : Units.GALLON;
    for (int i = 0; i < all.size(); i++) {
      Fact number = all.get(i);
      boolean holds =
          number.name().equals("number")
              && number.value().isPresent()
              && passage.in(number.at() - 1, Set.of("holds"))
              && (passage.in(number.at() - 2, TANKS) || passage.in(number.at() - 2, TRUCKS));
      if (holds && Facts.named(all, Set.of("tank")).isEmpty()) {
        Quantity size = new Quantity(number.amount().value(), unit);
        all.set(i, number.as("tank").with(size, number.high()).doubting(List.of("gallon")));
      }
    }
  }

  /** "4 gal pack": so few gallons on a back are a sprayer; a jug's pack is of something. */
  private void packs(List<Fact> all) {
    for (int i = 0; i < all.size(); i++) {
      Fact pack = all.get(i);
      int noun = pack.name().equals("container") ? passage.end(pack) : -1;
      boolean worn =
          noun > 0
              && passage.in(noun, Set.of("pack", "packs"))
              && !passage.in(noun + 1, Set.of("of"))
              && pack.value().filter(v -> v.unit().code().startsWith("[gal")).isPresent()
              && pack.amount().value().compareTo(LEAST_PACK) >= 0
              && pack.amount().value().compareTo(MOST_PACK) <= 0;
      if (worn && Facts.named(all, Set.of("price")).isEmpty()) {
        all.set(i, pack.as("tank"));
      }
    }
  }

  /** "gpa 40": the number stands after its unit. */
  private void gpaBefore(List<Fact> all) {
    for (int i = 0; i < all.size(); i++) {
      Fact number = all.get(i);
      if (number.name().equals("number") && passage.in(number.at() - 1, GPA)) {
        Quantity rate = new Quantity(number.amount().value(), Units.GALLON_PER_ACRE);
        all.set(i, number.as("spray_rate").with(rate, Optional.empty()));
      }
    }
  }

  /** "the tank has 12 gal left of 25": what is left is in the tank, and 25 is its size. */
  private void leftInTank(List<Fact> all) {
    for (int i = 0; i < all.size(); i++) {
      Fact left = all.get(i);
      boolean inTank =
          left.name().equals("content_left")
              && (passage.before(left.at(), 5, TANKS)
                  || passage.after(passage.end(left), 8, TANKS));
      if (!inTank) {
        continue;
      }
      all.set(i, left.as("left_in_tank"));
      int next = passage.end(left);
      next = passage.in(next, Set.of("left", "remaining")) ? next + 1 : next;
      int size = next + 1;
      if (passage.in(next, Set.of("of"))) {
        Unit unit = left.amount().unit();
        all.replaceAll(
            f ->
                f.name().equals("number") && f.at() == size
                    ? f.as("tank").with(new Quantity(f.amount().value(), unit), f.high())
                    : f);
      }
    }
  }

  /** "22 oz, 24 oz, 23 oz in 60 sec": what is listed before a catch was caught as well. */
  private void catches(List<Fact> all) {
    for (int i = all.size() - 1; i > 0; i--) {
      Fact last = all.get(i);
      Fact before = all.get(i - 1);
      boolean listed =
          last.name().equals("catch_volume")
              && before.name().equals("product_amount")
              && isOf(before, last.amount().dimension())
              && passage.in(passage.end(before), Set.of(",", "and", "&"))
              && last.at() - passage.end(before) <= 2;
      if (listed) {
        all.set(i - 1, before.as("catch_volume"));
      }
    }
  }

  /** Beside a nozzle's flow or spacing a speed is how fast one goes. */
  private void walking(List<Fact> all) {
    boolean boom =
        all.stream().anyMatch(f -> f.name().equals("nozzle_flow") || f.name().equals("spacing"));
    if (boom && !passage.hasWord(AIR)) {
      all.replaceAll(f -> f.name().equals("wind") ? f.as("walk_speed") : f);
    }
    if (boom) {
      all.replaceAll(f -> f.name().equals("speed") ? f.as("walk_speed") : f);
    }
  }
}
