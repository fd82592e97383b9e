package plainsward.handbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What single words of questions mean to some notes: how they are spelled, and what is sought for
 * them. Kept, as people use the same few thousand words over and over; words with digits are not,
 * for there is no end of them. Any number of threads may ask.
 */
final class LoneWords {
  private static final int MOST_KEPT = 10_000;
  private static final int SHORTEST_PART = 3;
  private static final float PARTS_BOOST = 0.8f;
  private static final float SLIP_TRUST = 0.7f;

  private final Shelf shelf;
  private final Map<String, Typed> typed = new ConcurrentHashMap<>();
  private final Map<String, Sought> sought = new ConcurrentHashMap<>();

  /**
   * A word as it was likely meant.
   *
   * @param word the word
   * @param trust how surely it was meant, over 0 to 1
   */
  record Typed(String word, float trust) {}

  LoneWords(Shelf shelf) {
    this.shelf = shelf;
  }

  /** The word, or the one near it that was likely meant. */
  Typed mended(String word) {
    Typed known = typed.get(word);
    if (known == null) {
      boolean digits = hasDigit(word);
      known = digits || isKnown(word) ? new Typed(word, 1) : nearest(word);
      keep(typed, word, known, digits);
    }
    return known;
  }

  /** What is sought for a word alone, whatever stands beside it. */
  Sought sought(String word) {
    Sought known = sought.get(word);
    if (known == null) {
      String stem = Words.stem(word);
      boolean has = shelf.knows(stem);
      known = new Sought(ways(word, stem, has), kind(word), has ? 1 : SLIP_TRUST);
      keep(sought, word, known, hasDigit(word));
    }
    return known;
  }

  /** A full store is emptied, so that the words that are in use find their way back. */
  private static <T> void keep(Map<String, T> store, String word, T known, boolean isEndless) {
    if (store.size() >= MOST_KEPT) {
      store.clear();
    }
    if (!isEndless) {
      store.put(word, known);
    }
  }

  private boolean isKnown(String word) {
    return Words.isStop(word) || shelf.synonyms().knows(word) || shelf.knows(Words.stem(word));
  }

  private Typed nearest(String word) {
    List<String> near = shelf.words().near(word);
    return near.isEmpty() ? new Typed(word, 1) : new Typed(near.get(0), SLIP_TRUST);
  }

  private Sought.Kind kind(String word) {
    if (isNumber(word)) {
      return Sought.Kind.NUMBER;
    }
    return shelf.synonyms().isLight(word) ? Sought.Kind.LIGHT : Sought.Kind.THING;
  }

  private List<Sought.Way> ways(String word, String stem, boolean has) {
    List<Sought.Way> ways = new ArrayList<>();
    ways.add(new Sought.Way(List.of(stem), 1));
    if (!has && !hasDigit(stem)) {
      ways.addAll(parts(word));
      for (String near : shelf.stems().near(stem)) {
        ways.add(new Sought.Way(List.of(near), SLIP_TRUST));
      }
    }
    return ways;
  }

  /** One word that notes write as two, such as 'grubworms'. */
  private List<Sought.Way> parts(String word) {
    for (int i = SHORTEST_PART; i <= word.length() - SHORTEST_PART; i++) {
      String one = Words.stem(word.substring(0, i));
      String other = Words.stem(word.substring(i));
      if (shelf.knows(one) && shelf.knows(other)) {
        return List.of(new Sought.Way(List.of(one, other), PARTS_BOOST));
      }
    }
    return List.of();
  }

  private static boolean isNumber(String word) {
    for (int i = 0; i < word.length(); i++) {
      if (!Character.isDigit(word.charAt(i))) {
        return false;
      }
    }
    return true;
  }

  private static boolean hasDigit(String word) {
    for (int i = 0; i < word.length(); i++) {
      if (Character.isDigit(word.charAt(i))) {
        return true;
      }
    }
    return false;
  }
}
