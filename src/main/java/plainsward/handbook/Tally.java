package plainsward.handbook;

/**
 * For some documents, the sum of the scores of all that is sought, and how much of it they name.
 */
final class Tally {
  private final float[] scores;
  private final double[] covered;
  private double all;

  Tally(int documents) {
    scores = new float[documents];
    covered = new double[documents];
  }

  /** Adds one thing sought: each document's score for it, its weight, and the trust in it. */
  void add(float[] each, double weight, float trust) {
    all += weight;
    for (int i = 0; i < each.length; i++) {
      scores[i] += each[i];
      covered[i] += each[i] > 0 ? weight * trust : 0;
    }
  }

  /** The document with the highest score from one up to another; -1 if there is none. */
  int best(int from, int to) {
    int best = -1;
    for (int i = from; i < to; i++) {
      if (best < 0 || scores[i] > scores[best]) {
        best = i;
      }
    }
    return best;
  }

  /** A document's sum, 0 for document -1. */
  float score(int document) {
    return document < 0 ? 0 : scores[document];
  }

  /** The share of what is sought that a document names, by weight, 0 to 1. */
  double covered(int document) {
    return document < 0 || all == 0 ? 0 : covered[document] / all;
  }
}
