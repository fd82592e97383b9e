package plainsward.handbook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import plainsward.trade.ByteReader;
import plainsward.trade.PackedWords;

/**
 * Other words for the same thing, looked up in the words of a question as they were typed. A plural
 * is looked up as its singular, an ending 'ie' as 'y'; the longest phrase wins. {@link
 * SynonymMaker} packs them, so that they are ready at once: the phrases by number, the words with
 * what they are, the first words with the length of the longest phrase, where each phrase's other
 * ways stand, and all words of phrases, a line each.
 */
final class Synonyms {
  /** A word that stands in a phrase. */
  static final int SAID = 1;

  /** A word that says nothing about the matter. */
  static final int LIGHT = 2;

  /** The parts of the bytes. */
  static final int PARTS = 5;

  private final byte[] bytes;
  private final PackedWords phrases;
  private final PackedWords words;
  private final PackedWords firsts;
  private final int ways;
  private final int lines;
  private final int end;
  private final Map<String, Match> known = new ConcurrentHashMap<>();

  /**
   * A phrase of the table that stands in a question.
   *
   * @param length how many words it takes up
   * @param others the other ways to say it, each as its stems
   */
  record Match(int length, List<List<String>> others) {}

  /** What {@link SynonymMaker} packed. */
  Synonyms(byte[] packed) {
    bytes = packed;
    phrases = new PackedWords(packed, ByteReader.three(bytes, 0));
    words = new PackedWords(packed, ByteReader.three(bytes, 3));
    firsts = new PackedWords(packed, ByteReader.three(bytes, 6));
    ways = ByteReader.three(bytes, 9);
    lines = ByteReader.three(bytes, 12);
    end = packed.length;
  }

  /** Whether the word says nothing about the matter. */
  boolean isLight(String word) {
    return is(word, LIGHT);
  }

  /** Whether the word stands in any phrase that can be said, or is light. */
  boolean knows(String word) {
    return is(word, SAID | LIGHT) || is(singular(word), SAID);
  }

  private boolean is(String word, int what) {
    int known = words.find(word);
    return known != PackedWords.NONE && (known & what) != 0;
  }

  /** The words of all phrases that can be said. */
  List<String> words() {
    return ByteReader.lines(bytes, lines, end);
  }

  /** The longest phrase of the table that begins at a word. */
  Optional<Match> at(List<String> question, int from) {
    int most = firsts.find(singular(question.get(from)));
    for (int n = Math.min(most, question.size() - from); n > 0; n--) {
      Optional<Match> match = match(key(question.subList(from, from + n)), n);
      if (match.isPresent()) {
        return match;
      }
    }
    return Optional.empty();
  }

  /** The phrase of a key of so many words; those that were said are kept. */
  private Optional<Match> match(String key, int length) {
    Match match = known.get(key);
    if (match == null) {
      int phrase = phrases.find(key);
      if (phrase == PackedWords.NONE) {
        return Optional.empty();
      }
      int place = ByteReader.three(bytes, ways + 3 * phrase);
      match = new Match(length, Collections.unmodifiableList(read(place)));
      known.put(key, match);
    }
    return Optional.of(match);
  }

  private List<List<String>> read(int place) {
    int count = ByteReader.one(bytes, place);
    int at = place + 1;
    List<List<String>> all = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      List<String> stems = new ArrayList<>(2);
      int length = ByteReader.one(bytes, at++);
      for (int k = 0; k < length; k++) {
        stems.add(ByteReader.text(bytes, at));
        at += 1 + ByteReader.one(bytes, at);
      }
      all.add(stems);
    }
    return all;
  }

  /** Words as a phrase is looked up. */
  static String key(List<String> words) {
    if (words.size() == 1) {
      return singular(words.get(0));
    }
    StringBuilder key = new StringBuilder();
    for (String word : words) {
      key.append(key.length() == 0 ? "" : " ").append(singular(word));
    }
    return key.toString();
  }

  /** The singular of a plural; of 'ie' at an end 'y'. */
  static String singular(String word) {
    int n = word.length();
    if (n > 4 && (word.endsWith("ies") || word.endsWith("ie"))) {
      return word.substring(0, word.lastIndexOf("ie")) + "y";
    }
    boolean plural = n > 3 && word.endsWith("s") && !word.endsWith("ss") && !word.endsWith("us");
    return plural ? word.substring(0, n - 1) : word;
  }
}
