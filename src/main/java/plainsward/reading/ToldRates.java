package plainsward.reading;

import java.util.List;
import java.util.Set;

/**
 * A rate that somebody used or took, beside the label's own: "44 oz/acre as 44 oz/thousand", "8 oz
 * per 100 gal, label says 8 oz per 10 gal, is he right". The two are held against each other; the
 * one that was taken is no rate to mix at.
 */
final class ToldRates {
  private static final Set<String> AS = Set.of("as", "like");
  private static final Set<String> INSTEAD = Set.of("instead", "rather");
  private static final Set<String> SAME = Set.of("same", "equal", "equals");
  private static final Set<String> LABEL =
      Set.of(
          "label",
          "bottle",
          "jug",
          "sheet",
          "directions",
          "leaflet",
          "should",
          "supposed",
          "meant",
          "shouldve");
  private static final Set<String> RIGHT = Set.of("right", "correct", "ok", "okay", "wrong");
  private static final Set<String> FOR = Set.of("for");
  private static final int NEAR = 4;

  private final Passage passage;

  ToldRates(Passage passage) {
    this.passage = passage;
  }

  /** Calls the one that was taken so, where the words tell which of the two it is. */
  void join(List<Fact> all) {
    List<Fact> rates = Facts.named(all, Triggers.RATES);
    if (passage.hasWord(SAME) || !areAlike(rates.get(0), rates.get(1))) {
      return;
    }
    Fact taken = taken(rates.get(0), rates.get(1));
    if (taken != null && taken.high().isEmpty()) {
      all.set(all.indexOf(taken), taken.as("taken_rate"));
    }
  }

  /** The same number per another ground, or two strengths of which one is asked to be right. */
  private boolean areAlike(Fact first, Fact second) {
    boolean single = first.high().isEmpty() || second.high().isEmpty();
    boolean kind = first.amount().dimension().equals(second.amount().dimension());
    boolean top = first.amount().unit().above().equals(second.amount().unit().above());
    boolean below = !first.amount().unit().equals(second.amount().unit());
    boolean number = first.amount().value().equals(second.amount().value());
    boolean slip = number && top && below;
    boolean asked = passage.hasWord(RIGHT) || passage.hasWord(INSTEAD);
    return single && kind && (slip || first.name().equals("strength") && asked);
  }

  private Fact taken(Fact first, Fact second) {
    for (int i = passage.end(first); i < second.at(); i++) {
      if (passage.in(i, INSTEAD)) {
        return first;
      }
      if (passage.in(i, AS)) {
        return second;
      }
    }
    if (passage.before(second.at(), NEAR, LABEL)) {
      return first;
    }
    boolean asked = passage.in(second.at() - 1, FOR) && passage.hasWord(RIGHT);
    return asked ? first : passage.before(first.at(), NEAR, LABEL) ? second : null;
  }
}
