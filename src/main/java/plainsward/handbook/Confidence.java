package plainsward.handbook;

/**
 * How likely a note that was found is about what was asked: a logistic curve through the share of
 * the question that the note names and how well the words fit it. The figures were fitted to the
 * search test's wordings, where the first note was right (460) or wrong (64), and to questions off
 * the subject (57, counted twice).
 */
final class Confidence {
  private static final double START = -9.05;
  private static final double BY_COVERED = 2.84;
  private static final double BY_FIT = 4.46;

  private Confidence() {}

  /** The probability, 0 to 1. */
  static double of(Ranked ranked) {
    double sum = START + BY_COVERED * ranked.covered() + BY_FIT * Math.log1p(ranked.fit());
    return 1 / (1 + Math.exp(-sum));
  }
}
