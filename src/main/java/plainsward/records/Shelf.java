package plainsward.records;

import java.util.List;
import java.util.Optional;

/**
 * All things of one kind, each by its name.
 *
 * @param <T> the kind of thing
 */
interface Shelf<T> {
  /** All, by name. */
  List<T> all();

  /** The one of this name; case and spacing don't count. */
  Optional<T> find(String name);

  /** Keeps it, in place of one of the same name. */
  void put(T thing);

  /** Forgets the one of this name; false where there is none. */
  boolean remove(String name);

  /** A sentence for each file that could not be read. */
  List<String> problems();
}
