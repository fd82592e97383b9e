package plainsward.reading;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * All that was understood of one turn.
 *
 * @param text the cleaned text
 * @param tokens its tokens, names tagged
 * @param all the facts in the order said
 * @param asks what is asked, loudest first
 * @param signs what else the words say, such as {@code start-over} or {@code again}
 * @param lawns lawns that are named, whether or not with an area
 * @param labels nicknames of labels that are named
 */
public record Facts(
    String text,
    List<Token> tokens,
    List<Fact> all,
    List<Ask> asks,
    Set<String> signs,
    List<String> lawns,
    List<String> labels) {

  /** Copies the lists. */
  public Facts {
    tokens = List.copyOf(tokens);
    all = List.copyOf(all);
    asks = List.copyOf(asks);
    signs = Set.copyOf(signs);
    lawns = List.copyOf(lawns);
    labels = List.copyOf(labels);
  }

  /** The facts of a role, in the order said. */
  public List<Fact> of(String name) {
    return all.stream().filter(f -> f.name().equals(name)).toList();
  }

  /** The first fact of a role. */
  public Optional<Fact> first(String name) {
    for (Fact fact : all) {
      if (fact.name().equals(name)) {
        return Optional.of(fact);
      }
    }
    return Optional.empty();
  }

  /** Whether any fact has this role. */
  public boolean has(String name) {
    return first(name).isPresent();
  }

  /** Whether the words say this. */
  public boolean says(String sign) {
    return signs.contains(sign);
  }

  /** Whether this topic is asked. */
  public boolean asks(String topic) {
    for (Ask ask : asks) {
      if (ask.topic().equals(topic)) {
        return true;
      }
    }
    return false;
  }

  /** Whether one of these words stands in the text. */
  public boolean hasWord(Set<String> words) {
    for (Token token : tokens) {
      if (words.contains(token.norm())) {
        return true;
      }
    }
    return false;
  }

  /** Whether there is nothing to read: no word and no number. */
  public boolean isEmpty() {
    return tokens.stream().allMatch(t -> t.kind() == Token.Kind.SIGN);
  }
}
