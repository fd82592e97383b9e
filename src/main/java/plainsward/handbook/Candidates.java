package plainsward.handbook;

import static java.util.Comparator.comparingLong;

import java.io.IOException;
import java.util.ArrayList;
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
  private static final int MOST = 30;
  private static final int MOST_QUESTIONS = 40;
  // How many hits are counted before Lucene may pass over documents that can't reach the top.
  private static final int COUNTED = 200;
  private static final int FEWEST_SOUGHT = 2;
  private static final int MOST_ENTRIES = 20_000;

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
    for (ScoreDoc hit : top(query(sought, Fields.WORDS, options), MOST)) {
      notes.add(hit.doc);
    }
    for (ScoreDoc hit : top(query(sought, Fields.ASKED, options), MOST_QUESTIONS)) {
      notes.add(hit.doc - (int) place(hit.doc));
    }
    notes.removeIf(shelf::isHidden);
    return notes.stream().mapToInt(Integer::intValue).toArray();
  }

  /**
   * The rarest of what is sought, as far as that can be gone through in time: in a small handbook
   * everything, in a huge one not the words that a large part of the notes hold.
   */
  private Query query(List<Sought> sought, String field, Search options) {
    List<Sought> rarest = new ArrayList<>();
    long entries = 0;
    for (Sought each : sought.stream().sorted(comparingLong(s -> entries(s, field))).toList()) {
      entries += entries(each, field);
      if (rarest.size() < FEWEST_SOUGHT || entries <= MOST_ENTRIES) {
        rarest.add(each);
      }
    }
    return Queries.any(rarest, field, options.require());
  }

  private long entries(Sought sought, String field) {
    return sought.ways().stream()
        .flatMap(way -> way.stems().stream())
        .mapToLong(stem -> shelf.documentsWith(field, stem))
        .sum();
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
