package plainsward.handbook;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Set;

/** Ranks notes for a question, by how well they fit and by their topics. Not thread-safe. */
final class Ranking {
  private static final float PREFERRED = 1.2f;

  private static final BitSet NONE = new BitSet();

  private final Shelf shelf;
  private final List<Sought> sought;
  private Set<String> required = Set.of();
  private Fits known;

  Ranking(Shelf shelf, List<Sought> sought) {
    this.shelf = shelf;
    this.sought = sought;
  }

  /** The best notes first; of two equal ones, the one that stands first in the index. */
  List<Ranked> rank(Search options) {
    if (sought.isEmpty()) {
      return List.of();
    }
    Fits fits = fits(options.require());
    BitSet preferred = shelf.index().ofTopics(options.prefer()).orElse(NONE);
    List<Ranked> ranked = new ArrayList<>(options.most() + 1);
    for (int i = 0; i < fits.count(); i++) {
      float rank = fits.fit(i) * (preferred.get(fits.note(i)) ? PREFERRED : 1);
      int at = ranked.size();
      while (at > 0 && ranked.get(at - 1).rank() < rank) {
        at--;
      }
      if (at < options.most()) {
        ranked.add(at, new Ranked(fits.note(i), rank, fits.fit(i), fits.covered(i)));
      }
      if (ranked.size() > options.most()) {
        ranked.remove(options.most());
      }
    }
    return ranked;
  }

  /** A question is mostly searched for twice with no condition: the topics put first differ. */
  private Fits fits(Set<String> require) {
    if (known == null || !required.equals(require)) {
      known = new Fits(shelf, sought, require);
      required = require;
    }
    return known;
  }
}
