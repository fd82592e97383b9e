package plainsward.reading;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Units;

/**
 * A part of what is told: "half of a 4 gal tank", "10% of 40 gal at 1 oz per gal", "the back is a
 * third of 9k, only the back". The whole taken for the part would be a dose too large.
 */
final class Parts {
  private static final String PART = "part_of";
  private static final Set<String> VOLUMES =
      Set.of("tank", "volume", "spray_volume", "makes_volume", "bare_tank");
  private static final Set<String> RATES = Set.of("strength", "label_rate");
  private static final Set<String> GROUND = Set.of("area", "shape");
  private static final Set<String> PLACES =
      Set.of(
          "back",
          "front",
          "side",
          "rear",
          "backs",
          "fronts",
          "sides",
          "backyard",
          "frontyard",
          "other",
          "left",
          "right");
  private static final Set<String> WHOLE =
      Set.of("both", "whole", "all", "entire", "everything", "total");
  private static final Set<String> BUT = Set.of("but", "except", "besides");
  private static final Set<String> THAT = Set.of("that", "it", "this");
  private static final Set<String> ONLY = Set.of("only", "just", "the", "my", "for");
  private static final int MOST_BETWEEN = 3;

  /** A smaller per cent of a volume is a strength. */
  private static final Ratio LEAST_PER_CENT = Ratio.of(5);

  private static final Ratio HUNDRED = Ratio.of(100);

  private final Passage passage;

  Parts(Passage passage) {
    this.passage = passage;
  }

  /** Takes each part for one of a tank or of a lawn; one of anything else is left out. */
  void join(List<Fact> all) {
    for (int i = all.size() - 1; i >= 0; i--) {
      Fact part = all.get(i);
      boolean cent = isPerCent(part);
      if (!cent && !part.name().equals(PART)) {
        continue;
      }
      Fact whole = whole(all, part);
      if (whole != null && whole.name().equals("container")) {
        Quantity less = whole.amount().times(share(part).value());
        all.set(all.indexOf(whole), whole.with(less, whole.high()));
      } else if (whole != null && VOLUMES.contains(whole.name())) {
        ofTank(all, part, whole);
      } else if (whole != null) {
        ofLawn(all, part);
      }
      all.removeIf(f -> f.name().equals(PART) && f.at() == part.at());
    }
  }

  private boolean isPerCent(Fact part) {
    return part.name().equals("strength")
        && part.amount().unit().equals(Units.PERCENT)
        && part.high().isEmpty()
        && part.amount().value().compareTo(LEAST_PER_CENT) >= 0
        && passage.in(passage.end(part), Set.of("of"));
  }

  private static Quantity share(Fact part) {
    Ratio value = part.amount().value();
    return Quantity.number(part.name().equals(PART) ? value : value.dividedBy(HUNDRED));
  }

  /** What it is a part of: the tank or the ground that stands right after it, or the only one. */
  private Fact whole(List<Fact> all, Fact part) {
    int end = passage.end(part);
    Fact ground = null;
    for (Fact fact : all) {
      boolean area = GROUND.contains(fact.name());
      boolean right = fact.at() >= end && fact.at() - end <= MOST_BETWEEN;
      if (right && (area || fact.name().equals("container") || VOLUMES.contains(fact.name()))) {
        return fact;
      }
      ground = area && fact.at() < part.at() ? fact : ground;
    }
    return passage.in(end, Set.of("of")) ? null : ground;
  }

  private void ofTank(List<Fact> all, Fact part, Fact tank) {
    boolean rate = false;
    for (Fact fact : all) {
      rate |= fact != part && RATES.contains(fact.name());
    }
    if (rate || part.name().equals(PART)) {
      Fact laid = laidBy(all, tank);
      all.set(all.indexOf(tank), tank.as("tank"));
      if (laid == null) {
        all.set(all.indexOf(part), part.as("tank_part").with(share(part), Optional.empty()));
      } else {
        Quantity less = laid.amount().times(share(part).value());
        all.set(all.indexOf(laid), laid.with(less, Optional.empty()));
        all.remove(part);
      }
    }
  }

  /** "half of the 4 gal backpack did 1500": what the whole tank would lay down there. */
  private static Fact laidBy(List<Fact> all, Fact tank) {
    for (Fact fact : all) {
      if (fact.name().equals("spray_rate") && fact.at() == tank.at()) {
        return fact;
      }
    }
    return null;
  }

  /** "the back is half of 7k": meant where it is the only one spoken of, asked about otherwise. */
  private void ofLawn(List<Fact> all, Fact part) {
    if (isAllBut(passage.end(part))) {
      Quantity rest = Quantity.number(Ratio.ONE.minus(share(part).value()));
      all.set(all.indexOf(part), part.as("lawn_part").with(rest, Optional.empty()));
      return;
    }
    int place = place(part.at());
    boolean meant = place < 0 || isMeant(passage.word(place), passage.end(part));
    if (passage.hasWord(WHOLE) && !meant) {
      return;
    }
    String role = meant ? "lawn_part" : "told_part";
    all.set(all.indexOf(part), part.as(role).with(share(part), Optional.empty()));
    all.replaceAll(f -> GROUND.contains(f.name()) ? f.of("") : f);
  }

  /** "do everything but that": the rest is meant. */
  private boolean isAllBut(int from) {
    for (int i = from; i + 1 < passage.tokens().size(); i++) {
      if (passage.in(i, BUT) && passage.in(i + 1, THAT) && passage.before(i, 3, WHOLE)) {
        return true;
      }
    }
    return false;
  }

  /** Where the name of a piece of ground stands before a part of it, or -1. */
  private int place(int part) {
    for (int i = part - 1; i >= 0 && i >= part - 4; i--) {
      if (passage.in(i, PLACES)) {
        return i;
      }
    }
    return -1;
  }

  /** "only the back", "for the back": that piece again, after it was told. */
  private boolean isMeant(String place, int from) {
    String bare = place.endsWith("s") ? place.substring(0, place.length() - 1) : place;
    for (int i = from; i < passage.tokens().size(); i++) {
      boolean again = passage.word(i).startsWith(bare);
      if (again && (passage.before(i, 2, ONLY) || passage.after(i + 1, 1, ONLY))) {
        return true;
      }
    }
    return false;
  }
}
