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

  /** The highest sum of the documents from one up to another; 0 if there is none. */
  float best(int from, int to) {
    float best = 0;
    for (int i = from; i < to; i++) {
      best = Math.max(best, scores[i]);
    }
    return best;
  }

  /** A document's sum. */
  float score(int document) {
    return scores[document];
  }

  /** The share of what is sought that a document names, by weight, 0 to 1. */
  double covered(int document) {
    return all == 0 ? 0 : covered[document] / all;
  }
}
