package plainsward.handbook;

import java.io.IOException;
import java.util.List;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.Scorer;
import org.apache.lucene.search.Weight;

/** The exact scores that a query gives to some documents, whether or not it found them. */
final class DocumentScores {
  private final IndexSearcher searcher;
  private final int[] documents;

  /** Will score these documents, which must be in rising order. */
  DocumentScores(IndexSearcher searcher, int[] documents) {
    this.searcher = searcher;
    this.documents = documents;
  }

  /** A score for each document, 0 where the query doesn't match. */
  float[] of(Query query) throws IOException {
    float[] scores = new float[documents.length];
    Weight weight = searcher.createWeight(searcher.rewrite(query), ScoreMode.COMPLETE, 1);
    List<LeafReaderContext> leaves = searcher.getLeafContexts();
    int at = 0;
    for (LeafReaderContext leaf : leaves) {
      int end = at;
      while (end < documents.length && documents[end] < leaf.docBase + leaf.reader().maxDoc()) {
        end++;
      }
      if (end > at) {
        score(weight.scorer(leaf), leaf.docBase, at, end, scores);
      }
      at = end;
    }
    return scores;
  }

  private void score(Scorer scorer, int base, int from, int to, float[] scores) throws IOException {
    if (scorer == null) {
      return;
    }
    DocIdSetIterator matches = scorer.iterator();
    for (int i = from; i < to; i++) {
      int wanted = documents[i] - base;
      if (matches.docID() < wanted) {
        matches.advance(wanted);
      }
      if (matches.docID() == wanted) {
        scores[i] = scorer.score();
      }
    }
  }
}
