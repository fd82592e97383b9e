package plainsward.reading;

import java.util.List;
import java.util.Set;

/**
 * A hose-end sprayer with a dial: "dial goes oz per gal" is the measure that the answer is wanted
 * in, "1 to 8 oz per gal" are the marks on it, "hose end at 2 oz per gal" is how it is set. None of
 * them is the label's strength, and a hose has no tank.
 */
final class Dials {
  private static final Set<String> DIAL = Set.of("dial", "dialed", "hoseend");
  private static final Set<String> MARKS = Set.of("to", "-", "thru", "through");

  private static final Set<String> TOPS = Set.of("goes", "up", "max", "tops", "maxes", "from");

  private final Passage passage;

  Dials(Passage passage) {
    this.passage = passage;
  }

  /** Tells what is on the dial from what is on the label. */
  void join(List<Fact> all) {
    int at = place();
    if (at < 0) {
      return;
    }
    all.add(Fact.of("dial", "dial", passage.word(at), at));
    boolean perArea = false;
    for (Fact fact : all) {
      perArea |= fact.name().equals("label_rate");
    }
    for (int i = all.size() - 1; i >= 0; i--) {
      Fact fact = all.get(i);
      if (fact.name().equals("old_strength") && isScale(fact)) {
        all.remove(i);
      } else if (fact.name().equals("strength")) {
        strength(all, i, perArea);
      }
    }
    hasNoTank(all);
  }

  private int place() {
    for (int i = 0; i < passage.tokens().size(); i++) {
      boolean hose = passage.in(i, Set.of("hose")) && passage.after(i + 1, 2, Set.of("end"));
      if (passage.in(i, DIAL) || hose || passage.word(i).equals("hose-end")) {
        return i;
      }
    }
    return -1;
  }

  private void strength(List<Fact> all, int i, boolean perArea) {
    Fact fact = all.get(i);
    boolean number = passage.isNumber(fact.at()) || NumberWords.isNumberWord(word(fact));
    if (!number) {
      String unit = fact.amount().unit().code();
      all.set(i, Fact.of("wanted", unit, fact.said(), fact.at()));
    } else if (isScale(fact)) {
      all.remove(i);
    } else if (perArea) {
      all.set(i, fact.as("dial_setting"));
    }
  }

  private String word(Fact fact) {
    return passage.word(fact.at());
  }

  /** "1 to 8 oz per gal": the marks of the dial. */
  private boolean isScale(Fact fact) {
    return fact.high().isPresent()
        || passage.in(fact.at() + 1, MARKS)
        || passage.before(fact.at(), 3, TOPS);
  }

  private void hasNoTank(List<Fact> all) {
    Fact output = null;
    for (Fact fact : all) {
      output = fact.name().equals("spray_rate") ? fact : output;
    }
    for (int i = all.size() - 1; i >= 0 && output != null; i--) {
      Fact tank = all.get(i);
      boolean inside = tank.at() >= output.at() && tank.at() < passage.end(output);
      if (tank.name().equals("tank") && inside) {
        all.remove(i);
      }
    }
  }
}
