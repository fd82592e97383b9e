package plainsward.handbook;

import java.util.BitSet;
import java.util.Collection;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.apache.lucene.index.IndexReader;

/**
 * What is known of notes for a search. A note is a document and each of its sample questions one
 * right behind it; the fields are those of {@link Fields}.
 */
interface NoteLists {
  /** How many documents there are. */
  int size();

  /** How many of them are notes. */
  int notes();

  /** Who holds a stem in a field; the field must be one of stems. */
  Postings postings(String field, String stem);

  /** How many documents hold a stem in a field. */
  int count(String field, String stem);

  /** As {@link Postings#raise}, for those who hold a stem in a field. */
  void raise(String field, String stem, Places wanted, float boost, float[] best);

  /** The notes of any of some topics and their questions; nothing where no topic is given. */
  Optional<BitSet> ofTopics(Set<String> codes);

  /** Where a document stands in its block, as {@link Fields#PLACE} says. */
  int place(int document);

  /** The note of a note's document. */
  Note note(int document);

  /** The first document of a note of this id from one on. */
  OptionalInt find(String id, int from);

  /** The stems that notes hold. */
  Collection<String> stems();

  /** The Lucene index of the same notes, to be read together with others. */
  IndexReader reader();
}
