package plainsward.handbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads out of a question what is to be sought: each of its words or phrases, with its synonyms
 * and, if no note knows the word, the words that were likely meant. Any text at all is read.
 */
final class QuestionReader {
  private static final int MOST_CHARACTERS = 4_000;
  private static final int MOST_WORDS = 400;
  private static final int MOST_SOUGHT = 60;

  private final Shelf shelf;
  private final Synonyms synonyms;

  QuestionReader(Shelf shelf) {
    this.shelf = shelf;
    this.synonyms = shelf.synonyms();
  }

  /** What the text speaks of, each thing once, at most 60 of them. */
  List<Sought> read(String text) {
    List<LoneWords.Typed> typed = typed(text);
    List<String> words = words(typed);
    List<Sought> found = new ArrayList<>();
    int next = 0;
    while (next < words.size() && found.size() < MOST_SOUGHT) {
      next = take(typed, words, next, found);
    }
    return found;
  }

  private List<LoneWords.Typed> typed(String text) {
    String start = text.substring(0, Math.min(text.length(), MOST_CHARACTERS));
    List<String> words = Words.of(start);
    int most = Math.min(words.size(), MOST_WORDS);
    List<LoneWords.Typed> typed = new ArrayList<>(most);
    for (int i = 0; i < most; i++) {
      typed.add(shelf.loneWords().mended(words.get(i)));
    }
    return typed;
  }

  private static List<String> words(List<LoneWords.Typed> typed) {
    List<String> words = new ArrayList<>(typed.size());
    for (LoneWords.Typed each : typed) {
      words.add(each.word());
    }
    return words;
  }

  private int take(List<LoneWords.Typed> typed, List<String> words, int at, List<Sought> into) {
    Optional<Synonyms.Match> match = synonyms.at(words, at);
    if (match.isPresent()) {
      int end = at + match.get().length();
      List<Sought.Way> ways = shelf.phraseWays().of(words.subList(at, end), match.get());
      put(into, new Sought(ways, Sought.Kind.THING, trust(typed.subList(at, end))));
      return end;
    }
    Optional<List<Sought.Way>> joined = joined(words, at);
    if (joined.isPresent()) {
      put(into, new Sought(joined.get(), Sought.Kind.THING, 1));
      return at + 2;
    }
    String word = words.get(at);
    if (!Words.isStop(word)) {
      put(into, shelf.loneWords().sought(word));
    }
    return at + 1;
  }

  /** The same thing is sought once; a few looks are quicker than the hash of all its ways. */
  private static void put(List<Sought> into, Sought sought) {
    for (Sought each : into) {
      if (each.ways().equals(sought.ways())) {
        return;
      }
    }
    into.add(sought);
  }

  private static float trust(List<LoneWords.Typed> typed) {
    float least = 1;
    for (LoneWords.Typed each : typed) {
      least = Math.min(least, each.trust());
    }
    return least;
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
}
