package plainsward.handbook;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.IndexSearcher;

/**
 * Ranks notes for a question: the score of the note as a whole plus that of its closest sample
 * question, both BM25.
 */
final class Ranking {
  private static final float ASKED_SHARE = 0.2f;
  private static final float PREFERRED = 1.2f;

  private final Shelf shelf;
  private final IndexSearcher searcher;
  private final Candidates candidates;

  Ranking(Shelf shelf) {
    this.shelf = shelf;
    this.searcher = shelf.searcher();
    this.candidates = new Candidates(shelf);
  }

  /** The best notes first; of two equal ones, the one that stands first in the index. */
  List<Ranked> rank(List<Sought> sought, Search options) throws IOException {
    if (sought.isEmpty()) {
      return List.of();
    }
    int[] notes = candidates.find(sought, options);
    Tally whole = tally(sought, Fields.WORDS, notes);
    boolean[] preferred = preferred(notes, options);
    int[][] questions = new int[notes.length][];
    for (int i = 0; i < notes.length; i++) {
      questions[i] = candidates.questions(notes[i]);
    }
    Tally asked = tally(sought, Fields.ASKED, flat(questions));
    List<Ranked> ranked = new ArrayList<>();
    int first = 0;
    for (int i = 0; i < notes.length; i++) {
      int best = asked.best(first, first + questions[i].length);
      first += questions[i].length;
      float fit = whole.score(i) + ASKED_SHARE * asked.score(best);
      float lift = preferred[i] ? PREFERRED : 1;
      ranked.add(new Ranked(notes[i], fit * lift, fit, whole.covered(i)));
    }
    ranked.sort(Comparator.comparingDouble((Ranked r) -> -r.rank()));
    return ranked.subList(0, Math.min(options.most(), ranked.size()));
  }

  private Tally tally(List<Sought> sought, String field, int[] documents) throws IOException {
    StemScores scores = new StemScores(searcher, field, documents);
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

  private boolean[] preferred(int[] notes, Search options) throws IOException {
    boolean[] preferred = new boolean[notes.length];
    for (String topic : options.prefer()) {
      Matches.each(
          searcher.getLeafContexts(),
          notes,
          new Term(Fields.TOPIC, topic),
          (i, postings) -> preferred[i] = true);
    }
    return preferred;
  }

  private static int[] flat(int[][] questions) {
    return IntStream.range(0, questions.length).flatMap(i -> IntStream.of(questions[i])).toArray();
  }
}
