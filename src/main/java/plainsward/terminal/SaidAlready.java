package plainsward.terminal;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Whether a sentence says again what others said, in much the same words. */
final class SaidAlready {
  /** A word of fewer letters carries no matter of its own; of a longer one so many tell it. */
  private static final int LETTERS = 4;

  /** So much of a sentence's words, of 100, make it the same again. */
  private static final int SAME = 50;

  private SaidAlready() {}

  /** Whether most words of a sentence stand in the sentences before it. */
  static boolean in(String sentence, List<String> before) {
    Set<String> said = new HashSet<>();
    for (String one : before) {
      said.addAll(words(one));
    }
    Set<String> words = words(sentence);
    int again = 0;
    for (String word : words) {
      again += said.contains(word) ? 1 : 0;
    }
    return !words.isEmpty() && again * 100 >= SAME * words.size();
  }

  private static Set<String> words(String sentence) {
    Set<String> words = new HashSet<>();
    StringBuilder word = new StringBuilder();
    String lower = sentence.toLowerCase(Locale.ROOT) + " ";
    for (int i = 0; i < lower.length(); i++) {
      if (Character.isLetter(lower.charAt(i))) {
        word.append(lower.charAt(i));
      } else if (word.length() > 0) {
        if (word.length() >= LETTERS) {
          words.add(word.substring(0, LETTERS));
        }
        word.setLength(0);
      }
    }
    return words;
  }
}
