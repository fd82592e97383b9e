package plainsward.handbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.MultiReader;

/** Notes that are open for searching: what is known of them, synonyms, and words for slips. */
final class Shelf {
  private static final int MOST_WEIGHTS = 1_000;

  private final NoteLists index;
  private final Synonyms synonyms;
  private final BitSet hidden;
  private final int noteCount;

  /** The weights of stems by how many notes name them, where that was asked; else 0. */
  private final double[] weights = new double[MOST_WEIGHTS];

  private final LoneWords loneWords = new LoneWords(this);
  private final PhraseWays phraseWays = new PhraseWays(this);
  private volatile Spellings stems;
  private volatile Spellings words;

  private Shelf(NoteLists index, Synonyms synonyms, BitSet hidden) {
    this.index = index;
    this.synonyms = synonyms;
    this.hidden = hidden;
    this.noteCount = index.notes();
  }

  static Shelf of(NoteLists index, Synonyms synonyms) {
    return new Shelf(index, synonyms, new BitSet());
  }

  /** This shelf and more notes; a note of {@code own} hides the one of the same id that is here. */
  Shelf with(IndexReader own) {
    int first = own.maxDoc();
    BitSet covered = new BitSet();
    for (int i = hidden.nextSetBit(0); i >= 0; i = hidden.nextSetBit(i + 1)) {
      covered.set(i + first);
    }
    for (String id : new StemIndex(own).terms(Fields.ID)) {
      index.find(id, 0).ifPresent(same -> covered.set(same + first));
    }
    try {
      IndexReader both = new MultiReader(own, index.reader());
      return new Shelf(new StemIndex(both), synonyms, covered);
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  /** The note of an id that is not hidden. */
  Optional<Note> note(String id) {
    OptionalInt found = index.find(id, 0);
    while (found.isPresent() && isHidden(found.getAsInt())) {
      found = index.find(id, found.getAsInt() + 1);
    }
    return found.isPresent() ? Optional.of(index.note(found.getAsInt())) : Optional.empty();
  }

  /** The lists of the stems. */
  NoteLists index() {
    return index;
  }

  Synonyms synonyms() {
    return synonyms;
  }

  /** The note of a document. */
  Note note(int document) {
    return index.note(document);
  }

  /** Whether the note of this document is hidden by a user's own. */
  boolean isHidden(int document) {
    return hidden.get(document);
  }

  /** How many notes name a stem. */
  int notesWith(String stem) {
    return documentsWith(Fields.WORDS, stem);
  }

  /** How many documents hold a stem in a field. */
  int documentsWith(String field, String stem) {
    return index.count(field, stem);
  }

  /** Whether any note names a stem. */
  boolean knows(String stem) {
    return notesWith(stem) > 0;
  }

  /** Whether each of some stems is named by any note. */
  boolean knowsAll(List<String> stems) {
    for (String stem : stems) {
      if (!knows(stem)) {
        return false;
      }
    }
    return true;
  }

  /** What single words of questions mean to these notes. */
  LoneWords loneWords() {
    return loneWords;
  }

  /** What phrases of questions mean to these notes. */
  PhraseWays phraseWays() {
    return phraseWays;
  }

  /** How much stems together tell notes apart: the sum of their inverse document frequencies. */
  double weight(List<String> stems) {
    double sum = 0;
    for (String stem : stems) {
      sum += weight(stem);
    }
    return sum;
  }

  private double weight(String stem) {
    int notes = notesWith(stem);
    if (notes >= weights.length) {
      return weight(notes);
    }
    if (weights[notes] == 0) {
      weights[notes] = weight(notes);
    }
    return weights[notes];
  }

  private double weight(int notes) {
    return Math.log1p((noteCount - notes + 0.5) / (notes + 0.5));
  }

  /** The stems that notes hold, to compare a mistyped one with; made at first need. */
  Spellings stems() {
    Spellings made = stems;
    if (made == null) {
      made = new Spellings(index.stems());
      stems = made;
    }
    return made;
  }

  /** The words of the synonym table, to compare a mistyped one with; made at first need. */
  Spellings words() {
    Spellings made = words;
    if (made == null) {
      made = new Spellings(synonyms.words());
      words = made;
    }
    return made;
  }
}
