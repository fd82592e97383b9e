package plainsward.reading;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;
import plainsward.units.Units;

/**
 * An amount of spray and the ground that it does, however the two are joined: "did 600 sq ft with
 * 2.5 gal", "it takes me 4 gal to do 3k", "1,800 sq ft out of one 2 gal fill", "a tank does 4,400".
 * They say what the sprayer lays down; taken for a lawn and a tank they would give a wrong dose.
 */
final class CoverPairs {
  private static final Set<String> AFTER = Set.of("after", "lasted", "lasts");
  private static final Set<String> SPRAY =
      Set.of("volume", "tank", "spray_volume", "catch_volume", "container", "product_amount");
  private static final Set<String> GROUND = Set.of("area", "test_area");
  private static final Set<String> DOSE = Set.of("label_rate", "strength", "area", "shape");
  private static final Set<String> DONE =
      Set.of("did", "covered", "sprayed", "treated", "got", "done", "finished");
  private static final Set<String> DOES =
      Set.of(
          "do", "does", "cover", "covers", "spray", "treat", "treats", "get", "gets", "reach",
          "reaches", "handle", "handles", "lasts");
  private static final Set<String> BY = Set.of("with", "using", "on", "in", "for");
  private static final Set<String> OUT_OF = Set.of("out", "from", "per");
  private static final Set<String> WHOLE = Set.of("one", "full", "each", "every", "single");
  private static final Set<String> FILLER =
      Set.of("of", "a", "an", "the", "my", "just", "about", "only", "exactly", "roughly", "around");
  private static final Set<String> SPRAYERS =
      Set.of("sprayer", "backpack", "knapsack", "pump", "rig", "can", "handheld");
  private static final Set<String> FILLS =
      Set.of("tank", "tankful", "fill", "load", "full", "sprayer", "backpack", "sprayerful");
  private static final Set<String> TAKES =
      Set.of(
          "down", "lost", "dropped", "takes", "took", "take", "uses", "used", "use", "needs",
          "needed", "through", "goes");
  private static final Set<String> ARTICLES =
      Set.of("a", "an", "one", "each", "per", "every", "my", "the", "full", "whole", "single");
  private static final Set<String> ADVERBS = Set.of("only", "just", "really", "usually", "now");
  private static final Set<String> IT = Set.of("it", "which", "that", "and");
  private static final Set<String> EMPTY =
      Set.of("empties", "empty", "emptied", "dry", "out", "gone", "done", "finishes", "finished");
  private static final Set<String> PER_GALLON =
      Set.of("per", "/", "to", "a", "each", "from", "with");
  private static final Set<String> GALLON = Set.of("gallon", "gal");
  private static final Set<String> LITRE = Set.of("litre", "liter");
  private static final Set<String> PER_FILL = Set.of("per", "/");
  private static final Set<String> PRONOUN = Set.of("it", "that", "one", "her");
  private static final Set<String> WITH = Set.of("with", "using", "from", "of", "on");
  private static final int NEAR = 5;

  private final Passage passage;

  CoverPairs(Passage passage) {
    this.passage = passage;
  }

  /** Joins what belongs together. */
  void join(List<Fact> all) {
    perGallon(all);
    for (Fact ground : List.copyOf(all)) {
      if (isAmount(ground, GROUND)) {
        Optional<Fact> spray =
            all.stream().filter(f -> isSpray(f) && belong(f, ground)).findFirst();
        if (spray.isPresent()) {
          paired(all, spray.get(), ground);
        } else if (isOfOneFill(ground)) {
          filled(all, ground);
        }
      }
    }
  }

  /** "covers 500 sq ft per gallon", "800 to the gallon": what a gallon is laid on. */
  private void perGallon(List<Fact> all) {
    for (int i = 0; i < all.size(); i++) {
      Fact ground = all.get(i);
      if (!isAmount(ground, GROUND) || !passage.in(passage.end(ground), PER_GALLON)) {
        continue;
      }
      int at = passage.end(ground) + 1;
      int unit = passage.in(at, ARTICLES) ? at + 1 : at;
      Optional<Unit> one = gallon(passage.word(unit));
      if (one.isPresent() && Facts.named(all, Set.of("spray_rate")).isEmpty()) {
        Quantity rate = Rates.per(Quantity.of(1, one.get()), ground.amount());
        String said = passage.said(ground.at(), unit + 1);
        all.set(i, Fact.of("spray_rate", rate, said, ground.at()));
        all.removeIf(f -> f.name().equals("wanted") && f.at() == unit);
      }
    }
  }

  private Optional<Unit> gallon(String word) {
    boolean litre = LITRE.contains(word);
    if (!litre && !GALLON.contains(word)) {
      return Optional.empty();
    }
    Unit gallon = passage.system() == UnitSystem.IMPERIAL ? Units.IMPERIAL_GALLON : Units.GALLON;
    return Optional.of(litre ? Units.LITRE : gallon);
  }

  private static boolean isAmount(Fact fact, Set<String> roles) {
    return roles.contains(fact.name()) && fact.value().isPresent() && fact.high().isEmpty();
  }

  private static boolean isSpray(Fact fact) {
    return isAmount(fact, SPRAY)
        && fact.amount().dimension().equals(Dimension.VOLUME)
        && fact.amount().unit().factor().toDouble() > 0.9;
  }

  private boolean belong(Fact spray, Fact ground) {
    if (isEmptied(spray, ground)) {
      return true;
    }
    return spray.at() < ground.at()
        ? isTakenFor(spray, ground)
        : isDoneWith(ground, spray) && passage.isOneSentence(ground.at(), spray.at());
  }

  /** "my 4 gal backpack empties in 3,100 sq ft", "ran out at 6,500 sq ft with a 15 gallon tank". */
  private boolean isEmptied(Fact spray, Fact ground) {
    int from = Math.min(passage.end(spray), passage.end(ground));
    int to = Math.max(spray.at(), ground.at());
    boolean emptied =
        (passage.before(ground.at(), NEAR, EMPTY)
                || passage.after(passage.end(ground), NEAR, Set.of("dry", "empty")))
            && (spray.at() < ground.at()
                || passage.before(spray.at(), 4, WITH) && to - from <= NEAR);
    return emptied && passage.isOneSentence(Math.min(spray.at(), ground.at()), to);
  }

  /** "it takes me 4 gal to do 3k", "went through 4 gal of water on 3k". */
  private boolean isTakenFor(Fact spray, Fact ground) {
    int from = passage.end(spray);
    boolean takes =
        passage.before(spray.at(), 3, TAKES) && passage.isOneSentence(spray.at(), ground.at());
    boolean joined = false;
    for (int i = from; i < ground.at(); i++) {
      boolean link =
          BY.contains(passage.word(i)) || DOES.contains(passage.word(i)) || passage.in(i, AFTER);
      joined |= link || passage.in(i, Set.of("over"));
      if (!link && !FILLER.contains(passage.word(i)) && !passage.in(i, MIX)) {
        return false;
      }
    }
    return takes && joined;
  }

  private static final Set<String> MIX =
      Set.of("water", "spray", "mix", "to", "over", "tank", "fill", "load", "it", "tankful");

  /** "did 600 sq ft with 2.5 gal", "1,800 sq ft out of one 2 gal fill"; one is a whole one. */
  private boolean isDoneWith(Fact ground, Fact spray) {
    boolean by = false;
    boolean outOf = false;
    boolean one = false;
    for (int i = passage.end(ground); i < spray.at(); i++) {
      by |= passage.in(i, BY);
      outOf |= passage.in(i, OUT_OF);
      one |= passage.in(i, WHOLE);
      if (!passage.in(i, BY)
          && !passage.in(i, OUT_OF)
          && !passage.in(i, WHOLE)
          && !passage.in(i, FILLER)) {
        return false;
      }
    }
    boolean sprayer = passage.after(passage.end(spray), 2, SPRAYERS) && !outOf;
    boolean done = passage.before(ground.at(), NEAR, DONE) && !isPlanned(ground);
    boolean does = passage.before(ground.at(), NEAR, DOES);
    return outOf && (done || does) || by && done && !sprayer || by && does && one;
  }

  private boolean isPlanned(Fact ground) {
    return passage.before(ground.at(), NEAR, Set.of("gotta", "need", "to", "have"));
  }

  private void paired(List<Fact> all, Fact spray, Fact ground) {
    all.remove(spray);
    all.remove(ground);
    boolean dose = all.stream().anyMatch(f -> DOSE.contains(f.name()));
    if (!dose) {
      all.add(spray.as("catch_volume"));
      all.add(ground.as("test_area"));
      return;
    }
    int from = Math.min(spray.at(), ground.at());
    int to = Math.max(passage.end(spray), passage.end(ground));
    Quantity rate = Rates.per(spray.amount(), ground.amount());
    all.add(Fact.of("spray_rate", rate, passage.said(from, to), from));
    boolean tank =
        spray.name().equals("tank") || passage.in(passage.end(spray), FILLS) || isTankOf(all);
    if (tank && all.stream().noneMatch(f -> f.name().equals("tank"))) {
      all.add(spray.as("tank"));
    }
  }

  /** Where a load is asked for and no tank is told, the fill that was told of is the tank. */
  private static boolean isTankOf(List<Fact> all) {
    return all.stream().noneMatch(f -> SPRAY.contains(f.name()));
  }

  /** "a tank does 4,400", "I get 4,400 out of a tank". */
  private boolean isOfOneFill(Fact ground) {
    int verb = ground.at() - 1;
    while (verb > 0 && passage.in(verb, FILLER)) {
      verb--;
    }
    int noun = passage.in(verb - 1, ADVERBS) ? verb - 2 : verb - 1;
    boolean before =
        (passage.in(verb, DOES) || passage.in(verb, DONE))
            && (passage.in(noun, FILLS) && passage.in(noun - 1, ARTICLES)
                || passage.in(noun, IT) && passage.before(noun, NEAR, FILLS));
    int i = passage.end(ground);
    boolean out = passage.in(i, OUT_OF) || passage.in(i, Set.of("a", "each", "to", "on"));
    while (passage.in(i, OUT_OF)
        || passage.in(i, FILLER)
        || passage.in(i, WHOLE)
        || passage.in(i, Set.of("to", "on"))) {
      i++;
    }
    boolean perFill = passage.in(passage.end(ground), PER_FILL) && passage.in(i, FILLS);
    boolean ofIt =
        passage.in(passage.end(ground), OUT_OF)
            && passage.in(i, PRONOUN)
            && passage.before(ground.at(), NEAR, DOES);
    boolean after =
        perFill
            || ofIt
            || out
                && passage.in(i, FILLS)
                && !passage.in(i, SPRAYERS)
                && passage.before(ground.at(), NEAR, DOES);
    return before || after;
  }

  private void filled(List<Fact> all, Fact ground) {
    Optional<Fact> tank = all.stream().filter(f -> f.name().equals("tank")).findFirst();
    all.remove(ground);
    all.add(
        tank.map(
                t ->
                    Fact.of(
                        "spray_rate",
                        Rates.per(t.amount(), ground.amount()),
                        t.said() + " does " + ground.said(),
                        ground.at()))
            .orElse(ground.as("area_per_fill")));
  }
}
