package plainsward.reading;

import java.util.List;
import java.util.Set;

/** What looks at the tokens of a turn by their places; beyond either end there is nothing. */
abstract class TokenWalk {
  private static final Set<String> FEET = Set.of("sf", "sft");

  final List<Token> tokens;

  TokenWalk(List<Token> tokens) {
    this.tokens = tokens;
  }

  /** The normal form of the token there. */
  final String word(int i) {
    return i >= 0 && i < tokens.size() ? tokens.get(i).norm() : "";
  }

  /** Whether the token there is this word or sign. */
  final boolean is(int i, String word) {
    return i >= 0 && i < tokens.size() && tokens.get(i).is(word);
  }

  /** Whether a number in digits stands there. */
  final boolean isNumber(int i) {
    return i >= 0 && i < tokens.size() && tokens.get(i).isNumber();
  }

  /** Whether a token stands there with nothing between it and the one before. */
  final boolean isTight(int i) {
    return i < tokens.size() && !tokens.get(i).apart();
  }

  /** Whether a measure of ground that is told in squares begins there. */
  final boolean isSquare(int i) {
    boolean power = (is(i, "ft") || is(i, "m")) && is(i + 1, "2") && isTight(i + 1);
    String word = word(i);
    return power || word.startsWith("sq") || FEET.contains(word);
  }
}
