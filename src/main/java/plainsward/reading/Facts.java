package plainsward.reading;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** All that was understood of one turn; by role, so that a look-up does not depend on how much. */
public final class Facts {
  private final String text;
  private final List<Token> tokens;
  private final List<Fact> all;
  private final List<Ask> asks;
  private final Set<String> signs;
  private final List<String> lawns;
  private final List<String> labels;
  private final Map<String, List<Fact>> byRole = new HashMap<>();
  private Set<String> norms;

  /**
   * The facts of a turn.
   *
   * @param text the cleaned text
   * @param tokens its tokens, names tagged
   * @param all the facts in the order said
   * @param asks what is asked, loudest first
   * @param signs what else the words say, such as {@code start-over} or {@code again}
   * @param lawns lawns that are named, whether or not with an area
   * @param labels nicknames of labels that are named
   */
  public Facts(
      String text,
      List<Token> tokens,
      List<Fact> all,
      List<Ask> asks,
      Set<String> signs,
      List<String> lawns,
      List<String> labels) {
    this.text = text;
    this.tokens = List.copyOf(tokens);
    this.all = List.copyOf(all);
    this.asks = List.copyOf(asks);
    this.signs = Set.copyOf(signs);
    this.lawns = List.copyOf(lawns);
    this.labels = List.copyOf(labels);
    all.forEach(f -> byRole.computeIfAbsent(f.name(), k -> new ArrayList<>()).add(f));
  }

  /** The same turn with other facts. */
  public Facts with(List<Fact> others) {
    return new Facts(text, tokens, others, asks, signs, lawns, labels);
  }

  /** The cleaned text. */
  public String text() {
    return text;
  }

  /** Its tokens, names tagged. */
  public List<Token> tokens() {
    return tokens;
  }

  /** The facts in the order said. */
  public List<Fact> all() {
    return all;
  }

  /** What is asked, loudest first. */
  public List<Ask> asks() {
    return asks;
  }

  /** What else the words say, such as {@code start-over} or {@code again}. */
  public Set<String> signs() {
    return signs;
  }

  /** Lawns that are named, whether or not with an area. */
  public List<String> lawns() {
    return lawns;
  }

  /** Nicknames of labels that are named. */
  public List<String> labels() {
    return labels;
  }

  /** The facts of a role, in the order said. */
  public List<Fact> of(String name) {
    return List.copyOf(byRole.getOrDefault(name, List.of()));
  }

  /** The first fact of a role. */
  public Optional<Fact> first(String name) {
    List<Fact> named = byRole.get(name);
    return named == null ? Optional.empty() : Optional.of(named.get(0));
  }

  /** Whether any fact has this role. */
  public boolean has(String name) {
    return byRole.containsKey(name);
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

  /** Whether one of these words stands at a place of the text; outside it none does. */
  public boolean isWord(int i, Set<String> words) {
    return i >= 0 && i < tokens.size() && words.contains(tokens.get(i).norm());
  }

  /** Whether one of these words stands in the text. */
  public boolean hasWord(Set<String> words) {
    Set<String> said = norms;
    if (said == null) {
      said = new HashSet<>();
      for (Token token : tokens) {
        said.add(token.norm());
      }
      norms = said;
    }
    return !Collections.disjoint(said, words);
  }

  /** The facts of these roles; a plain loop, since every question comes here. */
  static List<Fact> named(List<Fact> all, Set<String> roles) {
    List<Fact> found = new ArrayList<>();
    for (Fact fact : all) {
      if (roles.contains(fact.name())) {
        found.add(fact);
      }
    }
    return found;
  }

  /** Whether there is nothing to read: no word and no number. */
  public boolean isEmpty() {
    return tokens.stream().allMatch(t -> t.kind() == Token.Kind.SIGN);
  }
}
