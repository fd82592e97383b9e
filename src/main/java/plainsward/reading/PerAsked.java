package plainsward.reading;

import java.util.List;
import java.util.Set;
import plainsward.units.Unit;
import plainsward.units.Units;

/** "18 oz per acre = ? per 1000", "what is 1.5 pt/acre per thousand": a rate in another ground. */
final class PerAsked {
  private static final Set<String> RATES = Set.of("label_rate", "spray_rate", "spread_rate");
  private static final Set<String> PER = Set.of("per", "/", "a");
  private static final Set<String> THOUSAND = Set.of("thousand", "k", "1000", "m");
  private static final Set<String> ACRE = Set.of("acre", "ac");

  private final Passage passage;

  PerAsked(Passage passage) {
    this.passage = passage;
  }

  /** The one rate that is told, where nothing but units is told beside it. */
  private static Fact lone(List<Fact> all) {
    Fact rate = null;
    for (Fact fact : all) {
      if (RATES.contains(fact.name()) && rate == null) {
        rate = fact;
      } else if (!fact.name().equals("wanted")) {
        return null;
      }
    }
    return rate;
  }

  /** "whats that per thousand in oz": ounces, else the rate's own measure. */
  private static Unit above(List<Fact> all, Fact rate) {
    Unit own = rate.amount().unit().above();
    for (Fact fact : all) {
      Unit unit = fact.name().equals("wanted") ? Unit.of(fact.word().orElseThrow()) : own;
      if (unit != own && unit.dimension().equals(own.dimension())) {
        return unit;
      }
    }
    return own;
  }

  /** Adds the unit that a lone rate is wanted in. */
  void join(List<Fact> all) {
    Fact rate = lone(all);
    if (rate == null) {
      return;
    }
    int end = passage.end(rate);
    boolean acre = rate.amount().unit().below().filter(Units.ACRE::equals).isPresent();
    for (int i = 0; i + 1 < passage.tokens().size(); i++) {
      boolean outside = i + 1 < rate.at() || i >= end;
      boolean other = passage.in(i + 1, acre ? THOUSAND : ACRE);
      if (outside && other && passage.in(i, PER)) {
        Unit ground = acre ? Units.THOUSAND_SQUARE_FEET : Units.ACRE;
        Unit unit = above(all, rate).per(ground);
        all.removeIf(f -> f.name().equals("wanted"));
        all.add(Fact.of("wanted", unit.code(), passage.said(i, i + 2), i));
        return;
      }
    }
  }
}
