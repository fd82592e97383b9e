package plainsward.handbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The ways in which some notes may name what a phrase of the synonym table means. Kept, as {@link
 * LoneWords} are. Any number of threads may ask.
 */
final class PhraseWays {
  private static final int MOST_KEPT = 10_000;
  private static final float SYNONYM_BOOST = 0.8f;

  private final Shelf shelf;
  private final Map<List<String>, List<Sought.Way>> kept = new ConcurrentHashMap<>();

  PhraseWays(Shelf shelf) {
    this.shelf = shelf;
  }

  /** The ways of a phrase that was typed in these words, its own first. */
  List<Sought.Way> of(List<String> words, Synonyms.Match match) {
    List<Sought.Way> known = kept.get(words);
    if (known == null) {
      known = made(words, match);
      if (kept.size() < MOST_KEPT) {
        kept.put(List.copyOf(words), known);
      }
    }
    return known;
  }

  private List<Sought.Way> made(List<String> words, Synonyms.Match match) {
    List<String> own = Words.stemsOf(words);
    double most = shelf.knowsAll(own) ? shelf.weight(own) : Double.MAX_VALUE;
    List<Sought.Way> ways = new ArrayList<>();
    ways.add(new Sought.Way(own, 1));
    for (List<String> stems : match.others()) {
      // A rare synonym of a common word must not count more than the word itself.
      double share = Math.min(1, most / shelf.weight(stems));
      ways.add(new Sought.Way(stems, SYNONYM_BOOST * (float) share));
    }
    return ways;
  }
}
