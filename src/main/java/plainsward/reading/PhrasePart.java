package plainsward.reading;

import java.util.Collection;
import java.util.List;
import java.util.Set;

/** One part of a phrase. */
final class PhrasePart {
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

  private final Kind kind;
  private final String[] words;
  private final String[] prefixes;

  private PhrasePart(Kind kind, Collection<String> words, Collection<String> prefixes) {
    this.kind = kind;
    this.words = words.toArray(String[]::new);
    this.prefixes = prefixes.toArray(String[]::new);
  }

  /** Any of some whole words or of some beginnings of words. */
  static PhrasePart ofWords(Set<String> words, Collection<String> prefixes) {
    return new PhrasePart(Kind.WORDS, words, prefixes);
  }

  /** A name of a kind of the trade tables. */
  static PhrasePart ofName(String tag) {
    return new PhrasePart(Kind.NAME, List.of(tag), List.of());
  }

  /** A part that needs no words. */
  static PhrasePart of(Kind kind) {
    return new PhrasePart(kind, List.of(), List.of());
  }

  Kind kind() {
    return kind;
  }

  /** The whole words, or the tag of a name. */
  List<String> words() {
    return List.of(words);
  }

  List<String> prefixes() {
    return List.of(prefixes);
  }

  /** Whether it takes just one token, and takes it by its normal form alone. */
  boolean isOfOneWord() {
    return kind == Kind.WORDS || kind == Kind.NUMBER;
  }

  boolean matches(Token token) {
    return switch (kind) {
      case NUMBER -> isNumber(token);
      case ANY -> token.kind() != Token.Kind.SIGN;
      case WORDS -> isWord(token.norm()) || begins(token.norm());
      case NAME -> isWord(token.tag());
      case GAP, START, END -> false;
    };
  }

  static boolean isNumber(Token token) {
    return token.isNumber() || NumberWords.isNumberWord(token.norm());
  }

  /** Most words do not match, and their hashes, which strings keep, tell so without a look. */
  private boolean isWord(String said) {
    int hash = said.hashCode();
    for (String word : words) {
      if (word.hashCode() == hash && word.equals(said)) {
        return true;
      }
    }
    return false;
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
