package plainsward.handbook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Known words near to a mistyped one: the first letter kept, one slip in words of four to seven
 * letters and two in longer ones, where a slip is a letter too many, too few, another letter, or
 * two neighbours swapped (optimal string alignment distance).
 */
final class Spellings {
  private static final int SHORTEST = 4;
  private static final int LONG = 8;
  private static final int MOST_FOUND = 3;

  private final Map<Character, List<String>> byFirst = new HashMap<>();

  Spellings(Collection<String> known) {
    for (String word : known) {
      if (word.length() >= SHORTEST - 1 && Character.isLetter(word.charAt(0))) {
        byFirst.computeIfAbsent(word.charAt(0), k -> new ArrayList<>()).add(word);
      }
    }
  }

  /** The nearest known words, all equally near; none if none is near enough. */
  List<String> near(String word) {
    List<String> found = new ArrayList<>();
    if (word.length() < SHORTEST) {
      return found;
    }
    int most = word.length() < LONG ? 1 : 2;
    for (String known : byFirst.getOrDefault(word.charAt(0), List.of())) {
      int slips = slips(word, known, most);
      if (slips < most) {
        found.clear();
        most = slips;
      }
      if (slips <= most && found.size() < MOST_FOUND) {
        found.add(known);
      }
    }
    return found;
  }

  /** How many slips make one word of the other; anything over {@code most} if more than that. */
  static int slips(String a, String b, int most) {
    if (Math.abs(a.length() - b.length()) > most) {
      return most + 1;
    }
    int[] before = new int[b.length() + 1];
    int[] above = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      above[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] row = row(a, b, i, above, before);
      before = above;
      above = row;
    }
    return above[b.length()];
  }

  private static int[] row(String a, String b, int i, int[] above, int[] before) {
    int[] row = new int[b.length() + 1];
    row[0] = i;
    for (int j = 1; j <= b.length(); j++) {
      int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
      row[j] = Math.min(above[j - 1] + change, Math.min(above[j], row[j - 1]) + 1);
      if (isSwap(a, b, i, j)) {
        row[j] = Math.min(row[j], before[j - 2] + 1);
      }
    }
    return row;
  }

  private static boolean isSwap(String a, String b, int i, int j) {
    return i > 1
        && j > 1
        && a.charAt(i - 1) == b.charAt(j - 2)
        && a.charAt(i - 2) == b.charAt(j - 1);
  }
}
