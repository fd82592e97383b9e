package plainsward.reading;

import java.util.List;
import java.util.Set;

/** Words that say that something is not so. */
public final class Denials {
  private static final int FURTHEST = 4;

  private static final Set<String> DENYING =
      Set.of(
          "not", "isnt", "arent", "aint", "wasnt", "without", "nor", "neither", "no", "doesnt",
          "dont", "never", "lacks");

  /** Words that may stand between a denial and what it denies. */
  private static final Set<String> BETWEEN =
      Set.of(
          "a",
          "an",
          "the",
          "any",
          "my",
          "your",
          "really",
          "actually",
          "just",
          "like",
          "very",
          "all",
          "that",
          "so",
          "have",
          "has",
          "got",
          "get",
          "show",
          "look",
          "looks",
          "even",
          "quite",
          "regular",
          "real",
          "ordinary",
          "feel");

  private Denials() {}

  /** Whether what begins at a token is denied by the words right before it. */
  public static boolean areBefore(List<Token> tokens, int from) {
    for (int i = from - 1; i >= Math.max(0, from - FURTHEST); i--) {
      String word = tokens.get(i).norm();
      if (DENYING.contains(word)) {
        return true;
      }
      if (!BETWEEN.contains(word)) {
        return false;
      }
    }
    return false;
  }
}
