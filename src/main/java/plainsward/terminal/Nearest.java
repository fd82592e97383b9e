package plainsward.terminal;

import java.util.List;
import java.util.Optional;

/** The word of a list that was probably meant: the one with the fewest letters to change. */
final class Nearest {
  private static final int MOST_CHANGES = 3;

  private Nearest() {}

  /** The nearest word, at most three changes off; of two equally near the first. */
  static Optional<String> to(String word, List<String> known) {
    int least = MOST_CHANGES + 1;
    Optional<String> nearest = Optional.empty();
    for (String candidate : known) {
      boolean far = Math.abs(candidate.length() - word.length()) > MOST_CHANGES;
      int changes = far ? least : changes(word, candidate);
      if (changes < least) {
        least = changes;
        nearest = Optional.of(candidate);
      }
    }
    return nearest;
  }

  private static int changes(String from, String to) {
    int[] row = new int[to.length() + 1];
    for (int j = 0; j <= to.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= from.length(); i++) {
      int corner = row[0];
      row[0] = i;
      for (int j = 1; j <= to.length(); j++) {
        int kept = corner + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
        corner = row[j];
        row[j] = Math.min(kept, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[to.length()];
  }
}
