package plainsward.talk;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import plainsward.reading.Facts;

/** Which of several lawns of one turn are meant: "front 2k, back 4k, only doing the front". */
final class OnlyLawns {
  private static final Set<String> ONLY = Set.of("only", "just");
  private static final Set<String> NOT =
      Set.of("not", "skip", "skipping", "except", "without", "leave", "leaving", "forget", "minus");
  private static final Set<String> BETWEEN =
      Set.of(
          "the",
          "my",
          "do",
          "doing",
          "spray",
          "spraying",
          "treat",
          "treating",
          "for",
          "want",
          "need",
          "to",
          "and",
          "&",
          "+",
          "this",
          "time",
          "im",
          "i",
          "we",
          "out",
          "off",
          "n",
          "today");

  private OnlyLawns() {}

  /** The lawns that are named after "only", or all but those after "skip"; else all of them. */
  static List<String> of(Facts turn, List<String> lawns) {
    List<String> only = after(turn, lawns, ONLY);
    if (!only.isEmpty()) {
      return only;
    }
    List<String> rest = new ArrayList<>(lawns);
    rest.removeAll(after(turn, lawns, NOT));
    return rest.isEmpty() ? lawns : rest;
  }

  /** Whether some of these lawns are named as the only ones. */
  static boolean areNamed(Facts turn, List<String> lawns) {
    return !after(turn, lawns, ONLY).isEmpty();
  }

  private static List<String> after(Facts turn, List<String> lawns, Set<String> words) {
    List<String> found = new ArrayList<>();
    for (int i = 0; i < turn.tokens().size(); i++) {
      if (!turn.isWord(i, words)) {
        continue;
      }
      int k = i + 1;
      while (k < turn.tokens().size()) {
        String word = turn.tokens().get(k).norm();
        if (lawns.contains(word)) {
          found.add(word);
        } else if (!BETWEEN.contains(word)) {
          break;
        }
        k++;
      }
    }
    return found;
  }
}
