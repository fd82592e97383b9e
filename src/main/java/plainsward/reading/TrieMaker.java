package plainsward.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import plainsward.trade.ByteMaker;
import plainsward.trade.PackedWords;

/** Makes the bytes of a {@link PhraseTrie} of the phrases of one book or of many. */
final class TrieMaker {
  private final List<Node> roots = new ArrayList<>();
  private final List<Integer> meanings = new ArrayList<>();
  private final Map<String, Integer> tags = new TreeMap<>();
  private final Map<String, Integer> words = new TreeMap<>();
  private final Map<String, Integer> prefixes = new TreeMap<>();
  private final ByteMaker out = new ByteMaker(TrieLayout.HEAD);

  /** What may follow the parts so far, and the sequences that end here. */
  private static final class Node {
    final Map<PhrasePart, Node> next = new LinkedHashMap<>();
    final List<Integer> ends = new ArrayList<>();
  }

  /** A way on by a label. */
  private record Way(int label, int node) {}

  /** Begins the next book; the first has number 0. */
  void book() {
    roots.add(new Node());
  }

  /**
   * Adds a phrase to the book last begun.
   *
   * @param meaning the number of what it means
   * @throws IllegalArgumentException if the phrase is broken
   */
  void add(String phrase, int meaning) {
    for (List<PhrasePart> parts : PhraseParser.parse(phrase)) {
      Node node = roots.get(roots.size() - 1);
      for (PhrasePart part : parts) {
        node = node.next.computeIfAbsent(part, p -> new Node());
      }
      node.ends.add(meanings.size());
      meanings.add(meaning);
    }
  }

  /** The whole as bytes. */
  byte[] bytes() {
    roots.forEach(this::collect);
    int label = TrieLayout.TAGS;
    for (Map<String, Integer> kind : List.of(tags, words, prefixes)) {
      for (Map.Entry<String, Integer> each : kind.entrySet()) {
        each.setValue(label++);
      }
    }
    Map<Integer, List<Way>> byLabel = new TreeMap<>();
    for (int book = 0; book < roots.size(); book++) {
      for (Map.Entry<PhrasePart, Node> each : roots.get(book).next.entrySet()) {
        int node = node(each.getValue());
        for (int first : labels(each.getKey())) {
          byLabel.computeIfAbsent(first, l -> new ArrayList<>()).add(new Way(book, node));
        }
      }
    }
    roots(byLabel, label);
    out.part(PackedWords.packed(words));
    out.part(PackedWords.packed(prefixes));
    out.head(prefixes.keySet().stream().mapToInt(String::length).min().orElse(1));
    out.head(prefixes.keySet().stream().mapToInt(String::length).max().orElse(0));
    out.part();
    out.one(tags.size());
    tags.keySet().forEach(out::text);
    out.part();
    meanings.forEach(out::two);
    return out.all();
  }

  private void collect(Node node) {
    for (Map.Entry<PhrasePart, Node> each : node.next.entrySet()) {
      PhrasePart part = each.getKey();
      part.words().forEach(w -> (part.kind() == PhrasePart.Kind.NAME ? tags : words).put(w, 0));
      part.prefixes().forEach(p -> prefixes.put(p, 0));
      collect(each.getValue());
    }
  }

  private List<Integer> labels(PhrasePart part) {
    return switch (part.kind()) {
      case NUMBER -> List.of(TrieLayout.NUMBER);
      case ANY -> List.of(TrieLayout.ANY);
      case GAP -> List.of(TrieLayout.GAP);
      case START -> List.of(TrieLayout.START);
      case END -> List.of(TrieLayout.END);
      case NAME -> part.words().stream().map(tags::get).toList();
      case WORDS -> {
        List<Integer> all = new ArrayList<>();
        part.words().forEach(word -> all.add(words.get(word)));
        part.prefixes().forEach(prefix -> all.add(prefixes.get(prefix)));
        yield all;
      }
    };
  }

  /** Writes a node, those that follow it first; where it stands. */
  private int node(Node node) {
    List<Way> special = new ArrayList<>();
    List<Way> spoken = new ArrayList<>();
    for (Map.Entry<PhrasePart, Node> each : node.next.entrySet()) {
      int next = node(each.getValue());
      boolean plain = each.getKey().kind() == PhrasePart.Kind.WORDS;
      labels(each.getKey()).forEach(label -> (plain ? spoken : special).add(new Way(label, next)));
    }
    spoken.sort((a, b) -> Integer.compare(a.label, b.label));
    int at = out.size();
    out.one(node.ends.size());
    node.ends.forEach(out::two);
    out.one(special.size());
    out.two(spoken.size());
    special.forEach(this::way);
    spoken.forEach(this::way);
    return at;
  }

  private void way(Way way) {
    out.two(way.label);
    out.three(way.node);
  }

  private void roots(Map<Integer, List<Way>> byLabel, int labels) {
    int[] places = new int[labels];
    byLabel.forEach(
        (label, ways) -> {
          places[label] = out.size();
          out.two(ways.size());
          for (Way way : ways) {
            out.one(way.label);
            out.three(way.node);
          }
        });
    out.part();
    for (int place : places) {
      out.three(place);
    }
  }
}
