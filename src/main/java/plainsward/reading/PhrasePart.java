package plainsward.reading;

import java.util.List;
import java.util.Set;

/**
 * One part of a phrase.
 *
 * @param kind what it matches
 * @param words whole words, for {@code WORDS}
 * @param prefixes beginnings of words, for {@code WORDS}
 */
record PhrasePart(Kind kind, Set<String> words, List<String> prefixes) {
  /** The most tokens that a gap skips. */
  static final int WIDEST_GAP = 4;

  enum Kind {
    WORDS,
    NUMBER,
    ANY,
    NAME,
    GAP,
    START,
    END
  }

  boolean matches(Token token) {
    return switch (kind) {
      case NUMBER -> isNumber(token);
      case ANY -> token.kind() != Token.Kind.SIGN;
      case WORDS -> words.contains(token.norm()) || begins(token.norm());
      case NAME -> words.contains(token.tag());
      case GAP, START, END -> false;
    };
  }

  static boolean isNumber(Token token) {
    return token.isNumber() || NumberWords.isNumberWord(token.norm());
  }

  private boolean begins(String word) {
    for (String prefix : prefixes) {
      if (word.startsWith(prefix)) {
        return true;
      }
    }
    return false;
  }
}
