package plainsward.handbook;

/** The documents that hold a stem in a field, in rising order, with the BM25 score of each. */
final class Postings {
  static final Postings NONE = new Postings(new int[0], new float[0]);

  private final int[] documents;
  private final float[] scores;

  Postings(int[] documents, float[] scores) {
    this.documents = documents;
    this.scores = scores;
  }

  int size() {
    return documents.length;
  }

  int document(int i) {
    return documents[i];
  }

  float score(int i) {
    return scores[i];
  }

  /**
   * Raises what stands for each of some documents to its score here times a boost; those must be in
   * rising order. Steps that double make it quick whichever of the two lists is the longer.
   */
  void raise(int[] wanted, float boost, float[] best) {
    int at = 0;
    for (int i = 0; i < wanted.length && at < documents.length; i++) {
      at = reach(wanted[i], at);
      if (at < documents.length && documents[at] == wanted[i]) {
        best[i] = Math.max(best[i], scores[at] * boost);
      }
    }
  }

  /** The first place from {@code from} on whose document is the wanted one or a later one. */
  private int reach(int wanted, int from) {
    int low = from;
    int step = 1;
    while (low + step < documents.length && documents[low + step] < wanted) {
      low += step;
      step *= 2;
    }
    int high = Math.min(documents.length, low + step);
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (documents[middle] < wanted) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
