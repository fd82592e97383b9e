package plainsward.handbook;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Ranks notes for a question: the score of the note as a whole plus that of its closest sample
 * question, both BM25.
 */
final class Ranking {
  private static final float ASKED_SHARE = 0.2f;
  private static final float PREFERRED = 1.2f;

  private static final BitSet NONE = new BitSet();

  private final Shelf shelf;
  private final NoteLists index;

  Ranking(Shelf shelf) {
    this.shelf = shelf;
    this.index = shelf.index();
  }

  /** The best notes first; of two equal ones, the one that stands first in the index. */
  List<Ranked> rank(List<Sought> sought, Search options) {
    if (sought.isEmpty()) {
      return List.of();
    }
    int[] notes = new Candidates(shelf).find(sought, options);
    int[] starts = new int[notes.length + 1];
    for (int i = 0; i < notes.length; i++) {
      starts[i + 1] = starts[i] - index.place(notes[i]);
    }
    Tally whole = tally(sought, Fields.WORDS, notes);
    Tally asked = tally(sought, Fields.ASKED, questions(notes, starts));
    BitSet preferred = index.ofTopics(options.prefer()).orElse(NONE);
    List<Ranked> ranked = new ArrayList<>(options.most() + 1);
    for (int i = 0; i < notes.length; i++) {
      float fit = whole.score(i) + ASKED_SHARE * asked.best(starts[i], starts[i + 1]);
      float rank = fit * (preferred.get(notes[i]) ? PREFERRED : 1);
      int at = ranked.size();
      while (at > 0 && ranked.get(at - 1).rank() < rank) {
        at--;
      }
      if (at < options.most()) {
        ranked.add(at, new Ranked(notes[i], rank, fit, whole.covered(i)));
      }
      if (ranked.size() > options.most()) {
        ranked.remove(options.most());
      }
    }
    return ranked;
  }

  /** The documents of the notes' sample questions, which stand right behind each note's own. */
  private static int[] questions(int[] notes, int[] starts) {
    int[] questions = new int[starts[notes.length]];
    for (int i = 0; i < notes.length; i++) {
      for (int at = starts[i]; at < starts[i + 1]; at++) {
        questions[at] = notes[i] + 1 + at - starts[i];
      }
    }
    return questions;
  }

  private Tally tally(List<Sought> sought, String field, int[] documents) {
    StemScores scores = new StemScores(index, field, new Places(documents, index.size()));
    Tally tally = new Tally(documents.length);
    for (Sought each : sought) {
      tally.add(scores.of(each), weight(each), each.trust());
    }
    return tally;
  }

  /** How much the thing tells notes apart; nothing for words of no matter. */
  private double weight(Sought sought) {
    return sought.kind() == Sought.Kind.THING ? shelf.weight(sought.ways().get(0).stems()) : 0;
  }
}
