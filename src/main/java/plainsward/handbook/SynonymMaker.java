package plainsward.handbook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plainsward.trade.ByteMaker;
import plainsward.trade.PackedWords;

/** Gathers synonyms and packs them as {@link Synonyms} reads them. */
final class SynonymMaker {
  private final Map<String, Set<String>> others = new LinkedHashMap<>();
  private final Set<String> light = new LinkedHashSet<>();
  private final Set<String> words = new LinkedHashSet<>();
  private final Map<String, Integer> longest = new HashMap<>();

  /** Lets each of {@code said} stand for each of {@code meant} too. */
  void add(Collection<String> said, Collection<String> meant) {
    for (String phrase : said) {
      List<String> of = Words.of(phrase);
      if (of.isEmpty()) {
        continue;
      }
      String key = Synonyms.key(of);
      Set<String> alternatives = others.computeIfAbsent(key, k -> new LinkedHashSet<>());
      meant.stream().map(m -> String.join(" ", Words.of(m))).forEach(alternatives::add);
      alternatives.remove(String.join(" ", of));
      List<String> looked = List.of(key.split(" "));
      words.addAll(looked);
      longest.merge(looked.get(0), looked.size(), Math::max);
    }
  }

  /** Marks words that say nothing about the matter of a question. */
  void addLight(Collection<String> said) {
    said.forEach(word -> light.addAll(Words.of(word)));
  }

  /** All of it. */
  byte[] packed() {
    ByteMaker out = new ByteMaker(Synonyms.PARTS);
    Map<String, Integer> numbers = new LinkedHashMap<>();
    others.keySet().forEach(key -> numbers.put(key, numbers.size()));
    out.part(PackedWords.packed(numbers));
    Map<String, Integer> known = new LinkedHashMap<>();
    words.forEach(word -> known.put(word, Synonyms.SAID));
    light.forEach(word -> known.merge(word, Synonyms.LIGHT, (a, b) -> a | b));
    out.part(PackedWords.packed(known));
    out.part(PackedWords.packed(longest));
    List<byte[]> ways = new ArrayList<>();
    others.values().forEach(phrases -> ways.add(ways(phrases)));
    out.part();
    int at = out.size() + 3 * ways.size();
    for (byte[] each : ways) {
      out.three(at);
      at += each.length;
    }
    ways.forEach(out::bytes);
    out.part();
    words.forEach(out::line);
    return out.all();
  }

  private static byte[] ways(Set<String> phrases) {
    ByteMaker out = new ByteMaker(0);
    out.one(phrases.size());
    for (String phrase : phrases) {
      List<String> stems = Words.stemsOf(List.of(phrase.split(" ")));
      out.one(stems.size());
      stems.forEach(out::text);
    }
    return out.all();
  }
}
