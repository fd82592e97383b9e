package plainsward.handbook;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.NumericDocValues;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.CollectionStatistics;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.TermStatistics;
import org.apache.lucene.search.similarities.Similarity.SimScorer;
import org.apache.lucene.util.BytesRef;

/**
 * The exact scores of some documents in a field, whether or not a search found them by it; each
 * stem is looked up once.
 */
final class StemScores {
  private final IndexSearcher searcher;
  private final String field;
  private final int[] documents;
  private final CollectionStatistics all;
  private final long[] norms;
  private final Map<String, float[]> known = new HashMap<>();

  /** Will score these documents, which must be in rising order. */
  StemScores(IndexSearcher searcher, String field, int[] documents) throws IOException {
    this.searcher = searcher;
    this.field = field;
    this.documents = documents;
    this.all = searcher.collectionStatistics(field);
    this.norms = norms();
  }

  /** Each document's score for one thing: that of its best way, 0 if it has none. */
  float[] of(Sought sought) throws IOException {
    float[] best = new float[documents.length];
    for (Sought.Way way : sought.ways()) {
      float[] scores = of(way.stems());
      for (int i = 0; i < best.length; i++) {
        best[i] = Math.max(best[i], scores[i] * way.boost() * sought.worth());
      }
    }
    return best;
  }

  private float[] of(List<String> stems) throws IOException {
    float[] sum = of(stems.get(0));
    for (String stem : stems.subList(1, stems.size())) {
      sum = both(sum, of(stem));
    }
    return sum;
  }

  private static float[] both(float[] one, float[] other) {
    float[] sum = new float[one.length];
    for (int i = 0; i < sum.length; i++) {
      sum[i] = one[i] > 0 && other[i] > 0 ? one[i] + other[i] : 0;
    }
    return sum;
  }

  private float[] of(String stem) throws IOException {
    float[] scores = known.get(stem);
    if (scores == null) {
      scores = new float[documents.length];
      score(new Term(field, stem), scores);
      known.put(stem, scores);
    }
    return scores;
  }

  private void score(Term term, float[] scores) throws IOException {
    int found = searcher.getIndexReader().docFreq(term);
    if (found == 0 || all == null) {
      return;
    }
    // How often a stem stands in all notes together is not asked by BM25: any count from the number
    // of documents up will do.
    TermStatistics of = new TermStatistics(new BytesRef(term.text()), found, found);
    SimScorer scorer = searcher.getSimilarity().scorer(1, all, of);
    Matches.each(
        searcher.getLeafContexts(),
        documents,
        term,
        (i, postings) -> scores[i] = scorer.score(postings.freq(), norms[i]));
  }

  /** What the index keeps of each document's length; read once, in order, as that is quickest. */
  private long[] norms() throws IOException {
    long[] read = new long[documents.length];
    int i = 0;
    for (LeafReaderContext leaf : searcher.getLeafContexts()) {
      NumericDocValues values = leaf.reader().getNormValues(field);
      int end = leaf.docBase + leaf.reader().maxDoc();
      for (; i < documents.length && documents[i] < end; i++) {
        boolean has = values != null && values.advanceExact(documents[i] - leaf.docBase);
        read[i] = has ? values.longValue() : 1;
      }
    }
    return read;
  }
}
