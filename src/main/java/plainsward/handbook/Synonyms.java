package plainsward.handbook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Other words for the same thing, looked up in the words of a question as they were typed. A plural
 * is looked up as its singular, an ending 'ie' as 'y'; the longest phrase wins.
 */
final class Synonyms {
  private static final String SAME = "same";
  private static final String LIGHT = "light";

  private final Map<String, Set<String>> others = new LinkedHashMap<>();
  private final Map<String, List<List<String>>> stems = new ConcurrentHashMap<>();
  private final Set<String> light = new LinkedHashSet<>();
  private final Set<String> words = new LinkedHashSet<>();
  private final Map<String, Integer> longest = new HashMap<>();

  /**
   * A phrase of the table that stands in a question.
   *
   * @param length how many words it takes up
   * @param others the other ways to say it, each as its stems
   */
  record Match(int length, List<List<String>> others) {}

  /** Lets each of {@code said} stand for each of {@code meant} too. */
  void add(Collection<String> said, Collection<String> meant) {
    for (String phrase : said) {
      List<String> of = Words.of(phrase);
      if (of.isEmpty()) {
        continue;
      }
      Set<String> alternatives = others.computeIfAbsent(key(of), k -> new LinkedHashSet<>());
      meant.stream().map(m -> String.join(" ", Words.of(m))).forEach(alternatives::add);
      alternatives.remove(String.join(" ", of));
      words.addAll(of);
      longest.merge(singular(of.get(0)), of.size(), Math::max);
    }
  }

  /** Marks words that say nothing about the matter of a question. */
  void addLight(Collection<String> said) {
    said.forEach(word -> Words.of(word).forEach(light::add));
  }

  /** Whether the word says nothing about the matter. */
  boolean isLight(String word) {
    return light.contains(word);
  }

  /** Whether the word stands in any phrase that can be said, or is light. */
  boolean knows(String word) {
    return words.contains(word) || light.contains(word) || words.contains(singular(word));
  }

  /** The words of all phrases that can be said. */
  Set<String> words() {
    return words;
  }

  /** The longest phrase of the table that begins at a word. */
  Optional<Match> at(List<String> question, int from) {
    int most = longest.getOrDefault(singular(question.get(from)), 0);
    for (int n = Math.min(most, question.size() - from); n > 0; n--) {
      String key = key(question.subList(from, from + n));
      Set<String> found = others.get(key);
      if (found != null) {
        return Optional.of(new Match(n, stemsOf(key, found)));
      }
    }
    return Optional.empty();
  }

  private List<List<String>> stemsOf(String key, Set<String> phrases) {
    return stems.computeIfAbsent(
        key,
        k -> phrases.stream().map(phrase -> Words.stemsOf(List.of(phrase.split(" ")))).toList());
  }

  private static String key(List<String> words) {
    StringBuilder key = new StringBuilder();
    for (String word : words) {
      key.append(key.length() == 0 ? "" : " ").append(singular(word));
    }
    return key.toString();
  }

  private static String singular(String word) {
    int n = word.length();
    if (n > 4 && (word.endsWith("ies") || word.endsWith("ie"))) {
      return word.substring(0, word.lastIndexOf("ie")) + "y";
    }
    boolean plural = n > 3 && word.endsWith("s") && !word.endsWith("ss") && !word.endsWith("us");
    return plural ? word.substring(0, n - 1) : word;
  }

  /** The table as lines of fields with tabs between, quick to read at start. */
  List<String> toLines() {
    List<String> lines = new ArrayList<>();
    others.forEach(
        (said, means) -> lines.add(SAME + "\t" + said + "\t" + String.join("\t", means)));
    lines.add(LIGHT + "\t" + String.join("\t", light));
    return lines;
  }

  /** Reads back what {@link #toLines} made. */
  static Synonyms ofLines(Iterable<String> lines) {
    Synonyms made = new Synonyms();
    for (String line : lines) {
      List<String> fields = List.of(line.split("\t"));
      if (fields.get(0).equals(SAME)) {
        made.restore(fields.get(1), fields.subList(2, fields.size()));
      } else {
        made.light.addAll(fields.subList(1, fields.size()));
      }
    }
    return made;
  }

  private void restore(String key, List<String> means) {
    List<String> said = List.of(key.split(" "));
    others.put(key, new LinkedHashSet<>(means));
    words.addAll(said);
    longest.merge(said.get(0), said.size(), Math::max);
  }
}
