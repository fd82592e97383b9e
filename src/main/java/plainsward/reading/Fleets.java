package plainsward.reading;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Units;

/**
 * Several lawns at once: "11 lawns about 5,500 each", "9 lawns at 6k", "6 houses, front 2k and back
 * 3k each". The ground of all is the area; the ground of one stays known beside it as {@code
 * lawn_each}, and a count whose ground is told in another turn as {@code lawn_count}.
 */
final class Fleets {
  private static final Set<String> LAWNS =
      Set.of(
          "lawns",
          "yards",
          "houses",
          "homes",
          "properties",
          "lots",
          "stops",
          "customers",
          "clients",
          "jobs",
          "accounts",
          "units",
          "plots");
  private static final Set<String> EACH = Set.of("each", "apiece", "per", "ea", "average", "avg");
  private static final Set<String> MEAN =
      Set.of("each", "averaging", "average", "averages", "averaged", "avg", "ave", "avgs");
  private static final Set<String> OF = Set.of("of", "at", "@");
  private static final Set<String> ABOUT =
      Set.of("about", "around", "roughly", "approx", "~", "approximately", "some", "like", "maybe");
  private static final Set<String> ALL =
      Set.of("total", "all", "altogether", "together", "combined", "sum");
  private static final Set<String> TIMES = Set.of("x", "times", "@", "at", "of", "-");
  private static final Ratio LEAST = Ratio.of(500);
  private static final Ratio MOST = Ratio.of(1_000);

  private static final int NEAR = 3;

  private final Passage passage;
  private boolean paired;

  /** Where the lawns begin that are counted by now. */
  private int done = Integer.MAX_VALUE;

  Fleets(Passage passage) {
    this.passage = passage;
  }

  /** Takes the counts of lawns into the ground that they count. */
  void join(List<Fact> all) {
    paired = areCountedAlike(all);
    int found = 0;
    for (int i = all.size() - 1; i >= 0; i--) {
      boolean fresh = i < all.size() && passage.end(all.get(i)) <= done;
      if (fresh && (crossed(all, i) || someOf(all, i) || counted(all, i))) {
        found++;
      }
    }
    if (found > 0) {
      if (found > 1) {
        all.removeIf(f -> f.name().equals("lawn_each") || f.name().equals("lawns_all"));
      }
      return;
    }
    for (int i = 0; i < all.size(); i++) {
      if (isCount(all.get(i)) && !isOneOfMany(all.get(i))) {
        all.set(i, all.get(i).as("lawn_count"));
      }
    }
  }

  /** "8 lawns at 4k and 5 lawns at 7k": each size has its count. */
  private boolean areCountedAlike(List<Fact> all) {
    int counts = 0;
    int areas = 0;
    for (Fact fact : all) {
      counts += isCount(fact) ? 1 : 0;
      areas += isArea(fact) ? 1 : 0;
    }
    return counts == areas;
  }

  /** Whether the words say that this area is one lawn's. */
  private boolean isEach(Fact area) {
    boolean all =
        passage.before(area.at(), 2, ABOUT) && passage.before(area.at(), 3, Set.of("all"));
    return all || passage.after(passage.end(area), 2, EACH) || passage.before(area.at(), 3, MEAN);
  }

  private static boolean isArea(Fact fact) {
    return fact.name().equals("area") && fact.value().isPresent() && fact.high().isEmpty();
  }

  /** A whole number of lawns, above one. */
  private boolean isCount(Fact fact) {
    int next = fact.name().equals("number") ? passage.end(fact) : 0;
    return next > 0
        && (passage.in(next, LAWNS) || passage.isWord(next) && passage.in(next + 1, LAWNS))
        && isMany(fact);
  }

  private static boolean isMany(Fact fact) {
    Ratio many = fact.value().map(Quantity::value).orElse(Ratio.ONE);
    return fact.high().isEmpty()
        && many.isWhole()
        && many.compareTo(Ratio.ONE) > 0
        && many.compareTo(MOST) <= 0;
  }

  /** "4 of my 5 lawns": the five are not the ones meant. */
  private boolean isOneOfMany(Fact count) {
    return passage.before(count.at(), 3, Set.of("of"));
  }

  /** "11 lawns about 5,500 each": eleven times as much ground, its pieces added first. */
  private boolean counted(List<Fact> all, int i) {
    Fact area = all.get(i);
    if (!isArea(area)) {
      return false;
    }
    Fact count = countBefore(all, area);
    if (count == null || isOneOfMany(count) || !isEach(area) && !isPlainlyEach(all, count, area)) {
      if (isEach(area)) {
        all.add(area.as("lawn_each"));
      }
      return false;
    }
    Quantity each = area.amount();
    for (int k = all.size() - 1; k >= 0; k--) {
      Fact piece = all.get(k);
      boolean beside = piece != area && isArea(piece) && piece.at() > count.at();
      if (beside && piece.at() < area.at() && passage.isOneSentence(piece.at(), area.at())) {
        each = each.plus(piece.amount());
        all.remove(k);
      }
    }
    put(all, area, each, count.amount().value(), count.at());
    all.remove(count);
    return true;
  }

  private Fact countBefore(List<Fact> all, Fact area) {
    Fact last = null;
    for (Fact fact : all) {
      if (isCount(fact) && fact.at() < area.at() && !isOneOfMany(fact)) {
        last = fact;
      }
      boolean yards = fact.name().equals("length") && passage.in(passage.end(fact) - 1, LAWNS);
      if (yards && isEach(area) && fact.at() < area.at() && isMany(fact)) {
        last = fact;
      }
    }
    return last == null ? worded(area) : last;
  }

  /** "eight stops": a small count in words that nothing else has read as a number. */
  private Fact worded(Fact area) {
    for (int i = area.at() - 1; i > 0; i--) {
      Integer many = passage.in(i, LAWNS) ? NumberWords.SMALL.get(passage.word(i - 1)) : null;
      if (many != null && many > 1) {
        return Fact.of("number", Quantity.number(Ratio.of(many)), passage.word(i - 1), i - 1);
      }
    }
    return null;
  }

  /** "9 lawns at 6k", where one area is told and not as that of all together. */
  private boolean isPlainlyEach(List<Fact> all, Fact count, Fact area) {
    int at = area.at() - 1;
    while (passage.in(at, ABOUT)) {
      at--;
    }
    boolean linked = passage.in(at, OF) && passage.in(at - 1, LAWNS) && count.at() >= at - 3;
    if (!linked || passage.after(passage.end(area), 3, ALL)) {
      return false;
    }
    for (Fact other : all) {
      int between = other.at() - passage.end(area);
      boolean listed = between < NEAR && other.at() > count.at();
      if (!paired && other != area && isArea(other) && listed) {
        return false;
      }
    }
    return true;
  }

  /** "8 5k lawns", "8 x 5k lawns": so many of that size. */
  private boolean crossed(List<Fact> all, int i) {
    Fact fact = all.get(i);
    boolean sides = fact.name().equals("shape") && fact.sides().size() == 2;
    if (!passage.in(passage.end(fact), LAWNS) || !sides && !isArea(fact)) {
      return false;
    }
    if (sides) {
      Ratio many = fact.sides().get(0).value();
      Ratio size = fact.sides().get(1).value();
      boolean counts = fact.leavesOpen("side-unit") && size.compareTo(LEAST) >= 0;
      if (counts && many.isWhole() && many.compareTo(MOST) <= 0) {
        Quantity each = new Quantity(size, Units.SQUARE_FOOT);
        Fact area = Fact.of("area", each, fact.said(), fact.at()).doubting(List.of("square"));
        all.set(i, area);
        put(all, area, each, many, fact.at());
        return true;
      }
      return false;
    }
    Fact count = i > 0 ? all.get(i - 1) : fact;
    boolean beside = count.name().equals("number") && isMany(count) && fact.at() > count.at();
    int between = beside ? fact.at() - passage.end(count) : 2;
    if (between == 0 || between == 1 && passage.in(fact.at() - 1, TIMES)) {
      put(all, fact, fact.amount(), count.amount().value(), count.at());
      all.remove(count);
      return true;
    }
    return false;
  }

  /** "3 of my 4 lawns are 5k": three of them together. */
  private boolean someOf(List<Fact> all, int i) {
    Fact area = all.get(i);
    int are = area.at() - 1;
    if (!isArea(area) || !passage.in(are, Set.of("are", "is")) || !passage.in(are - 1, LAWNS)) {
      return false;
    }
    int of = passage.in(are - 4, Set.of("of")) ? are - 4 : are - 3;
    for (Fact few : all) {
      boolean counts = few.name().equals("number") && isMany(few) && passage.end(few) == of;
      if (counts && passage.in(of, Set.of("of"))) {
        int from = few.at();
        put(all, area, area.amount(), few.amount().value(), from);
        all.removeIf(f -> f.name().equals("number") && f.at() >= from && f.at() < are);
        return true;
      }
    }
    return false;
  }

  /** Puts the ground of all in the place of one's, which stays known beside it. */
  private void put(List<Fact> all, Fact area, Quantity each, Ratio many, int from) {
    Fact sum = area.with(each.times(many), Optional.empty());
    String said = passage.said(from, passage.end(area));
    all.set(all.indexOf(area), sum.saidAs(said, from).of(""));
    all.add(area.as("lawn_each").with(each, Optional.empty()).of(""));
    all.add(sum.as("lawns_all").saidAs(said, from).of(""));
    done = from;
  }
}
