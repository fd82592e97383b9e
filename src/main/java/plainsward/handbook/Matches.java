package plainsward.handbook;

import java.io.IOException;
import java.util.List;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.PostingsEnum;
import org.apache.lucene.index.Term;

/** Goes through those of some documents that hold a term. */
final class Matches {
  /** Hears of a document that holds the term. */
  @FunctionalInterface
  interface Each {
    /** The document at an index of the given ones; the postings stand at it. */
    void at(int index, PostingsEnum postings) throws IOException;
  }

  private Matches() {}

  /** Tells of each document that holds the term; the documents must be in rising order. */
  static void each(List<LeafReaderContext> leaves, int[] documents, Term term, Each each)
      throws IOException {
    int next = 0;
    for (LeafReaderContext leaf : leaves) {
      int end = next;
      while (end < documents.length && documents[end] < leaf.docBase + leaf.reader().maxDoc()) {
        end++;
      }
      PostingsEnum postings = end > next ? leaf.reader().postings(term, PostingsEnum.FREQS) : null;
      for (int i = next; postings != null && i < end; i++) {
        int wanted = documents[i] - leaf.docBase;
        if (postings.docID() < wanted) {
          postings.advance(wanted);
        }
        if (postings.docID() == wanted) {
          each.at(i, postings);
        }
      }
      next = end;
    }
  }
}
