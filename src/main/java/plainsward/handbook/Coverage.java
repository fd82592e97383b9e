package plainsward.handbook;

/** How much of what is sought some notes name, by weight. */
final class Coverage {
  private final double[] covered;
  private double all;

  Coverage(int notes) {
    covered = new double[notes];
  }

  /** Adds one thing sought: each note's score for it, its weight, and the trust in it. */
  void add(float[] scores, double weight, float trust) {
    all += weight;
    for (int i = 0; i < scores.length; i++) {
      if (scores[i] > 0) {
        covered[i] += weight * trust;
      }
    }
  }

  /** The share of what is sought that a note names, 0 to 1. */
  double of(int note) {
    return all == 0 ? 0 : covered[note] / all;
  }
}
