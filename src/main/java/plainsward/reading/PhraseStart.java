package plainsward.reading;

import java.util.ArrayList;
import java.util.List;

/**
 * The words that a phrase may begin with, told from its beginning alone: most phrases of a book are
 * about something else than the question, and reading them whole takes longer than a sum.
 */
final class PhraseStart {
  private final String phrase;
  private final List<String> words = new ArrayList<>(4);
  private int at;

  private PhraseStart(String phrase) {
    this.phrase = phrase;
  }

  /** The words; none where the phrase must be read to tell. */
  static List<String> words(String phrase) {
    PhraseStart start = new PhraseStart(phrase);
    return start.isTold() && isOneSequence(phrase) ? start.words : List.of();
  }

  private boolean isTold() {
    while (at < phrase.length() && phrase.charAt(at) == '[') {
      if (!group()) {
        return false;
      }
      while (at < phrase.length() && phrase.charAt(at) == ' ') {
        at++;
      }
    }
    return at < phrase.length() && (phrase.charAt(at) == '(' ? group() : word());
  }

  /** The first words of all choices of a bracket. */
  private boolean group() {
    do {
      at++;
      if (!word()) {
        return false;
      }
      toEndOfChoice();
    } while (at < phrase.length() && phrase.charAt(at) == '|');
    at++;
    return true;
  }

  private boolean word() {
    int from = at;
    while (at < phrase.length() && Character.isLetterOrDigit(phrase.charAt(at))) {
      at++;
    }
    if (at == from || at < phrase.length() && " |)]".indexOf(phrase.charAt(at)) < 0) {
      return false;
    }
    String word = phrase.substring(from, at);
    if (!words.contains(word)) {
      words.add(word);
    }
    return true;
  }

  private void toEndOfChoice() {
    int depth = 0;
    while (at < phrase.length()) {
      char c = phrase.charAt(at);
      if (depth == 0 && (c == '|' || c == ')' || c == ']')) {
        return;
      }
      depth += step(c);
      at++;
    }
  }

  private static int step(char c) {
    return c == '(' || c == '[' ? 1 : c == ')' || c == ']' ? -1 : 0;
  }

  /** Whether every choice of a phrase is in brackets. */
  private static boolean isOneSequence(String phrase) {
    int depth = 0;
    for (int i = phrase.indexOf('|') < 0 ? phrase.length() : 0; i < phrase.length(); i++) {
      char c = phrase.charAt(i);
      if (c == '|' && depth == 0) {
        return false;
      }
      depth += step(c);
    }
    return true;
  }
}
