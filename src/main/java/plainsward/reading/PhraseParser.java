package plainsward.reading;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Takes a phrase of a data file apart into the flat sequences that it stands for. */
final class PhraseParser {
  private final String phrase;
  private int at;

  private PhraseParser(String phrase) {
    this.phrase = phrase;
  }

  static List<List<PhrasePart>> parse(String phrase) {
    PhraseParser parser = new PhraseParser(phrase);
    List<List<PhrasePart>> sequences = parser.choice();
    if (parser.at < phrase.length()) {
      throw parser.fault("a closing bracket too many");
    }
    sequences.removeIf(List::isEmpty);
    if (sequences.isEmpty()) {
      throw parser.fault("it is empty");
    }
    return sequences;
  }

  private List<List<PhrasePart>> choice() {
    List<List<PhrasePart>> all = sequence();
    while (at < phrase.length() && phrase.charAt(at) == '|') {
      at++;
      all.addAll(sequence());
    }
    return all;
  }

  private List<List<PhrasePart>> sequence() {
    List<List<PhrasePart>> all = new ArrayList<>();
    all.add(List.of());
    while (at < phrase.length()) {
      char c = phrase.charAt(at);
      if (c == ')' || c == ']' || c == '|') {
        break;
      }
      if (c == ' ') {
        at++;
      } else if (c == '(') {
        all = product(all, mergedWords(bracket(')')));
      } else if (c == '[') {
        List<List<PhrasePart>> inside = mergedWords(bracket(']'));
        inside.add(List.of());
        all = product(all, inside);
      } else {
        all = product(all, List.of(List.of(part(word()))));
      }
    }
    return all;
  }

  private List<List<PhrasePart>> bracket(char closing) {
    at++;
    List<List<PhrasePart>> inside = choice();
    if (at >= phrase.length() || phrase.charAt(at) != closing) {
      throw fault("a bracket is not closed");
    }
    at++;
    return inside;
  }

  /** Single words of a choice become one part, so that a choice of ten words is one sequence. */
  private static List<List<PhrasePart>> mergedWords(List<List<PhrasePart>> choices) {
    Set<String> words = new HashSet<>();
    List<String> prefixes = new ArrayList<>();
    List<List<PhrasePart>> rest = new ArrayList<>();
    for (List<PhrasePart> one : choices) {
      if (one.size() == 1 && one.get(0).kind() == PhrasePart.Kind.WORDS) {
        words.addAll(one.get(0).words());
        prefixes.addAll(one.get(0).prefixes());
      } else {
        rest.add(one);
      }
    }
    if (!words.isEmpty() || !prefixes.isEmpty()) {
      rest.add(List.of(PhrasePart.ofWords(words, prefixes)));
    }
    return rest;
  }

  private static List<List<PhrasePart>> product(
      List<List<PhrasePart>> left, List<List<PhrasePart>> right) {
    List<List<PhrasePart>> all = new ArrayList<>();
    for (List<PhrasePart> a : left) {
      for (List<PhrasePart> b : right) {
        List<PhrasePart> joined = new ArrayList<>(a);
        joined.addAll(b);
        all.add(joined);
      }
    }
    return all;
  }

  private String word() {
    int from = at;
    while (at < phrase.length() && " ()[]|".indexOf(phrase.charAt(at)) < 0) {
      at++;
    }
    return phrase.substring(from, at);
  }

  private static PhrasePart part(String word) {
    if (word.startsWith("@")) {
      return PhrasePart.ofName(word.substring(1));
    }
    return switch (word) {
      case "#" -> PhrasePart.of(PhrasePart.Kind.NUMBER);
      case "_" -> PhrasePart.of(PhrasePart.Kind.ANY);
      case "*" -> PhrasePart.of(PhrasePart.Kind.GAP);
      case "^" -> PhrasePart.of(PhrasePart.Kind.START);
      case "$" -> PhrasePart.of(PhrasePart.Kind.END);
      default ->
          word.endsWith("~")
              ? PhrasePart.ofWords(Set.of(), List.of(word.substring(0, word.length() - 1)))
              : PhrasePart.ofWords(Set.of(word.replace("'", "")), List.of());
    };
  }

  private IllegalArgumentException fault(String why) {
    return new IllegalArgumentException("the phrase \"" + phrase + "\" cannot be read: " + why);
  }
}
