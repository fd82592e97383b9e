package plainsward.talk;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Slips of the finger in words: two letters changed over, one left out, one doubled. In "tbsp"
 * there are none: with a letter less it is the other spoon, and nobody could tell.
 */
final class Slips {
  private static final Pattern WORD = Pattern.compile("(?!(?i)tbsp)\\b[A-Za-z]{4,}");
  private static final int MOST = 2;

  private Slips() {}

  /** The text with one or two slips in its longer words. */
  static String in(Random random, String text) {
    String typed = text;
    for (int i = random.nextInt(MOST); i >= 0; i--) {
      List<MatchResult> words = new ArrayList<>(WORD.matcher(typed).results().toList());
      if (words.isEmpty()) {
        return typed;
      }
      MatchResult word = words.get(random.nextInt(words.size()));
      int at = word.start() + 1 + random.nextInt(word.end() - word.start() - 2);
      typed = slipped(random, typed, at);
    }
    return typed;
  }

  private static String slipped(Random random, String text, int at) {
    String before = text.substring(0, at);
    String after = text.substring(at + 1);
    char letter = text.charAt(at);
    return switch (random.nextInt(3)) {
      case 0 -> before + after.charAt(0) + letter + after.substring(1);
      case 1 -> before + after;
      default -> before + letter + letter + after;
    };
  }
}
