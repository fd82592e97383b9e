package plainsward.reading;

import java.util.List;
import java.util.Map;
import java.util.Set;
import plainsward.units.UnitSystem;

/**
 * A text with what was found in it so far: tokens, cue words, and the measures its writer thinks
 * in.
 */
final class Passage {
  private final String text;
  private final List<Token> tokens;
  private final UnitSystem system;
  private final Cues cues;

  Passage(String text, List<Token> tokens, UnitSystem system) {
    this.text = text;
    this.tokens = tokens;
    this.system = system;
    this.cues = RoleBook.shipped().cues(tokens);
  }

  List<Token> tokens() {
    return tokens;
  }

  UnitSystem system() {
    return system;
  }

  String word(int i) {
    return i >= 0 && i < tokens.size() ? tokens.get(i).norm() : "";
  }

  /** Whether a number in digits stands there. */
  boolean isNumber(int i) {
    return i >= 0 && i < tokens.size() && tokens.get(i).isNumber();
  }

  /** Whether a word stands there. */
  boolean isWord(int i) {
    return i >= 0 && i < tokens.size() && tokens.get(i).isWord();
  }

  boolean in(int i, Set<String> words) {
    return words.contains(word(i));
  }

  /** Whether one of these words stands in the text. */
  boolean hasWord(Set<String> words) {
    for (Token token : tokens) {
      if (words.contains(token.norm())) {
        return true;
      }
    }
    return false;
  }

  /** The words from one token to before another. */
  String said(int from, int to) {
    if (from >= to || from >= tokens.size()) {
      return "";
    }
    int last = Math.min(to, tokens.size()) - 1;
    return text.substring(tokens.get(from).start(), tokens.get(last).end());
  }

  /** The token after the last one of what was said of a fact. */
  int end(Fact fact) {
    int last = tokens.get(fact.at()).start() + fact.said().length();
    int i = fact.at() + 1;
    while (i < tokens.size() && tokens.get(i).end() <= last) {
      i++;
    }
    return i;
  }

  /** Whether no sentence ends between two places. */
  boolean isOneSentence(int from, int to) {
    for (int i = from; i < to && i < tokens.size(); i++) {
      if (tokens.get(i).endsSentence()) {
        return false;
      }
    }
    return true;
  }

  /** The weight of each role for a quantity of a kind at a place. */
  Map<String, Integer> weights(String of, int from, int to) {
    return cues.weights(of, from, to);
  }

  /** The role that the cues speak for most, or {@code usual} where none does. */
  String role(String of, int from, int to, String usual) {
    String loudest = usual;
    int most = Integer.MIN_VALUE;
    for (Map.Entry<String, Integer> each : weights(of, from, to).entrySet()) {
      int weight = each.getValue();
      if (weight > most || weight == most && each.getKey().compareTo(loudest) > 0) {
        loudest = each.getKey();
        most = weight;
      }
    }
    return loudest;
  }

  /** Whether one of these words stands up to {@code reach} tokens before a place. */
  boolean before(int place, int reach, Set<String> words) {
    for (int i = place - 1; i >= 0 && i >= place - reach; i--) {
      if (words.contains(tokens.get(i).norm())) {
        return true;
      }
      if (tokens.get(i).endsSentence()) {
        return false;
      }
    }
    return false;
  }

  /** Whether one of these words stands up to {@code reach} tokens from a place on. */
  boolean after(int place, int reach, Set<String> words) {
    for (int i = place; i < tokens.size() && i < place + reach; i++) {
      if (words.contains(tokens.get(i).norm())) {
        return true;
      }
      if (tokens.get(i).endsSentence()) {
        return false;
      }
    }
    return false;
  }
}
