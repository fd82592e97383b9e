package plainsward.handbook;

/** The documents that hold a stem in a field, in rising order, with the BM25 score of each. */
final class Postings {
  static final Postings NONE = new Postings(new int[0], new float[0]);

  /** How many times longer than what is wanted a list must be for steps to be quicker. */
  private static final int MUCH_LONGER = 16;

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

  /** Raises what stands for each of some documents to its score here times a boost. */
  void raise(Places wanted, float boost, float[] best) {
    if (documents.length > MUCH_LONGER * wanted.count()) {
      raiseInSteps(wanted.documents(), boost, best);
      return;
    }
    for (int i = 0; i < documents.length; i++) {
      int place = wanted.of(documents[i]);
      if (place >= 0) {
        best[place] = Math.max(best[place], scores[i] * boost);
      }
    }
  }

  /** Steps that double leave out most of a list that is much the longer. */
  private void raiseInSteps(int[] wanted, float boost, float[] best) {
    int here = 0;
    int there = 0;
    while (here < documents.length && there < wanted.length) {
      if (documents[here] < wanted[there]) {
        here = reach(documents, here, wanted[there]);
      } else if (documents[here] > wanted[there]) {
        there = reach(wanted, there, documents[here]);
      } else {
        best[there] = Math.max(best[there], scores[here++] * boost);
        there++;
      }
    }
  }

  /** The first place behind {@code from} whose document is the wanted one or a later one. */
  private static int reach(int[] rising, int from, int wanted) {
    int low = from;
    int step = 1;
    while (low + step < rising.length && rising[low + step] < wanted) {
      low += step;
      step *= 2;
    }
    int high = Math.min(rising.length, low + step);
    low++;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (rising[middle] < wanted) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
