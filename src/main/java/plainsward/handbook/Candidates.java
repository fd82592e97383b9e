package plainsward.handbook;

import java.io.IOException;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.NumericDocValues;
import org.apache.lucene.index.ReaderUtil;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.search.TopDocs;
import org.apache.lucene.search.TopScoreDocCollectorManager;

/**
 * The notes worth a closer look: those that fit best as a whole, and those of which one sample
 * question fits best.
 */
final class Candidates {
  private static final int MOST = 40;
  private static final int MOST_QUESTIONS = 60;
  // How many hits are counted before Lucene may pass over documents that can't reach the top.
  private static final int COUNTED = 200;

  private final Shelf shelf;
  private final IndexSearcher searcher;
  private final List<LeafReaderContext> leaves;

  Candidates(Shelf shelf) {
    this.shelf = shelf;
    this.searcher = shelf.searcher();
    this.leaves = searcher.getLeafContexts();
  }

  /** The documents of notes, in rising order. */
  int[] find(List<Sought> sought, Search options) throws IOException {
    TreeSet<Integer> notes = new TreeSet<>();
    for (ScoreDoc hit : top(Queries.any(sought, Fields.WORDS, options.require()), MOST)) {
      notes.add(hit.doc);
    }
    Query asked = Queries.any(sought, Fields.ASKED, options.require());
    for (ScoreDoc hit : top(asked, MOST_QUESTIONS)) {
      notes.add(hit.doc - (int) place(hit.doc));
    }
    notes.removeIf(shelf::isHidden);
    return notes.stream().mapToInt(Integer::intValue).toArray();
  }

  /** The documents of a note's sample questions. */
  int[] questions(int note) throws IOException {
    return IntStream.rangeClosed(note + 1, note - (int) place(note)).toArray();
  }

  private ScoreDoc[] top(Query query, int most) throws IOException {
    int all = Math.max(1, searcher.getIndexReader().maxDoc());
    TopDocs found =
        searcher.search(query, new TopScoreDocCollectorManager(Math.min(most, all), null, COUNTED));
    return found.scoreDocs;
  }

  private long place(int document) throws IOException {
    LeafReaderContext leaf = leaves.get(ReaderUtil.subIndex(document, leaves));
    NumericDocValues places = leaf.reader().getNumericDocValues(Fields.PLACE);
    return places.advanceExact(document - leaf.docBase) ? places.longValue() : 0;
  }
}
