package plainsward.reading;

import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;

/**
 * One part of a phrase.
 *
 * @param kind what it takes
 * @param words the whole words, or the tag of a name
 * @param prefixes the beginnings of words
 */
record PhrasePart(Kind kind, Set<String> words, Set<String> prefixes) {

  enum Kind {
    WORDS,
    NUMBER,
    ANY,
    NAME,
    GAP,
    START,
    END
  }

  /** Any of some whole words or of some beginnings of words. */
  static PhrasePart ofWords(Collection<String> words, Collection<String> prefixes) {
    return new PhrasePart(Kind.WORDS, new TreeSet<>(words), new TreeSet<>(prefixes));
  }

  /** A name of a kind of the trade tables. */
  static PhrasePart ofName(String tag) {
    return new PhrasePart(Kind.NAME, Set.of(tag), Set.of());
  }

  /** A part that needs no words. */
  static PhrasePart of(Kind kind) {
    return new PhrasePart(kind, Set.of(), Set.of());
  }
}
