package plainsward.handbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads out of a question what is to be sought: each of its words or phrases, with its synonyms
 * and, if no note knows the word, the words that were likely meant. Any text at all is read.
 */
final class QuestionReader {
  private static final int MOST_CHARACTERS = 4_000;
  private static final int MOST_WORDS = 400;
  private static final int MOST_SOUGHT = 60;
  private static final int SHORTEST_PART = 3;
  private static final float SYNONYM_BOOST = 0.8f;
  private static final float SLIP_TRUST = 0.7f;

  private final Shelf shelf;
  private final Synonyms synonyms;

  private record Typed(String word, float trust) {}

  QuestionReader(Shelf shelf) {
    this.shelf = shelf;
    this.synonyms = shelf.synonyms();
  }

  /** What the text speaks of, each thing once, at most 60 of them. */
  List<Sought> read(String text) {
    List<Typed> typed = typed(text);
    List<String> words = typed.stream().map(Typed::word).toList();
    Map<List<Sought.Way>, Sought> found = new LinkedHashMap<>();
    int next = 0;
    while (next < words.size() && found.size() < MOST_SOUGHT) {
      next = take(typed, words, next, found);
    }
    return List.copyOf(found.values());
  }

  private List<Typed> typed(String text) {
    String start = text.substring(0, Math.min(text.length(), MOST_CHARACTERS));
    List<String> words = Words.of(start);
    return words.subList(0, Math.min(words.size(), MOST_WORDS)).stream().map(this::mended).toList();
  }

  private Typed mended(String word) {
    if (isKnown(word) || hasDigit(word)) {
      return new Typed(word, 1);
    }
    List<String> near = shelf.words().near(word);
    return near.isEmpty() ? new Typed(word, 1) : new Typed(near.get(0), SLIP_TRUST);
  }

  private boolean isKnown(String word) {
    return Words.isStop(word) || synonyms.knows(word) || shelf.knows(Words.stem(word));
  }

  private int take(
      List<Typed> typed, List<String> words, int at, Map<List<Sought.Way>, Sought> into) {
    Optional<Synonyms.Match> match = synonyms.at(words, at);
    if (match.isPresent()) {
      int end = at + match.get().length();
      List<Typed> phrase = typed.subList(at, end);
      put(into, ofMatch(phrase, match.get()), Sought.Kind.THING, trust(phrase));
      return end;
    }
    Optional<List<Sought.Way>> joined = joined(words, at);
    if (joined.isPresent()) {
      put(into, joined.get(), Sought.Kind.THING, 1);
      return at + 2;
    }
    String word = words.get(at);
    if (!Words.isStop(word)) {
      put(into, ofWord(word), kind(word), trust(word));
    }
    return at + 1;
  }

  private static void put(
      Map<List<Sought.Way>, Sought> into, List<Sought.Way> ways, Sought.Kind kind, float trust) {
    into.putIfAbsent(ways, new Sought(ways, kind, trust));
  }

  private List<Sought.Way> ofMatch(List<Typed> typed, Synonyms.Match match) {
    List<String> own = Words.stemsOf(typed.stream().map(Typed::word).toList());
    boolean known = own.stream().allMatch(shelf::knows);
    double most = known ? shelf.weight(own) : Double.MAX_VALUE;
    List<Sought.Way> ways = new ArrayList<>();
    ways.add(new Sought.Way(own, 1));
    for (List<String> stems : match.others()) {
      // A rare synonym of a common word must not count more than the word itself.
      double share = Math.min(1, most / shelf.weight(stems));
      ways.add(new Sought.Way(stems, SYNONYM_BOOST * (float) share));
    }
    return ways;
  }

  private Sought.Kind kind(String word) {
    if (word.chars().allMatch(Character::isDigit)) {
      return Sought.Kind.NUMBER;
    }
    return synonyms.isLight(word) ? Sought.Kind.LIGHT : Sought.Kind.THING;
  }

  private float trust(String word) {
    return shelf.knows(Words.stem(word)) ? 1 : SLIP_TRUST;
  }

  private static float trust(List<Typed> typed) {
    return (float) typed.stream().mapToDouble(Typed::trust).min().orElse(1);
  }

  /** Two words that notes write as one, such as 'crab grass'. */
  private Optional<List<Sought.Way>> joined(List<String> words, int at) {
    if (at + 1 >= words.size() || Words.isStop(words.get(at)) || Words.isStop(words.get(at + 1))) {
      return Optional.empty();
    }
    String one = Words.stem(words.get(at) + words.get(at + 1));
    if (!shelf.knows(one)) {
      return Optional.empty();
    }
    return Optional.of(
        List.of(
            new Sought.Way(List.of(one), 1),
            new Sought.Way(Words.stemsOf(words.subList(at, at + 2)), 1)));
  }

  private List<Sought.Way> ofWord(String word) {
    String stem = Words.stem(word);
    List<Sought.Way> ways = new ArrayList<>();
    ways.add(new Sought.Way(List.of(stem), 1));
    if (!shelf.knows(stem) && !hasDigit(stem)) {
      ways.addAll(parts(word));
      shelf.stems().near(stem).forEach(n -> ways.add(new Sought.Way(List.of(n), SLIP_TRUST)));
    }
    return ways;
  }

  /** One word that notes write as two, such as 'grubworms'. */
  private List<Sought.Way> parts(String word) {
    for (int i = SHORTEST_PART; i <= word.length() - SHORTEST_PART; i++) {
      List<String> halves =
          List.of(Words.stem(word.substring(0, i)), Words.stem(word.substring(i)));
      if (halves.stream().allMatch(shelf::knows)) {
        return List.of(new Sought.Way(halves, SYNONYM_BOOST));
      }
    }
    return List.of();
  }

  private static boolean hasDigit(String word) {
    return word.chars().anyMatch(Character::isDigit);
  }
}
