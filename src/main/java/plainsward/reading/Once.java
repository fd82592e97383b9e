package plainsward.reading;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;

/**
 * Reads each place of a text at most once: the readers that build on each other ask for the same
 * numbers and amounts many times over.
 *
 * @param <T> what is read
 */
final class Once<T> {
  private final List<Optional<T>> known;
  private final IntFunction<Optional<T>> reader;

  Once(int places, IntFunction<Optional<T>> reader) {
    this.known = new ArrayList<>(Collections.nCopies(places, null));
    this.reader = reader;
  }

  /** What begins at a place; nothing beyond the text. */
  Optional<T> at(int i) {
    if (i < 0 || i >= known.size()) {
      return Optional.empty();
    }
    Optional<T> read = known.get(i);
    if (read == null) {
      read = reader.apply(i);
      known.set(i, read);
    }
    return read;
  }
}
