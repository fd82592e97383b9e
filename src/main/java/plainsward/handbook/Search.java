package plainsward.handbook;

import java.util.Set;

/**
 * What to search for beside the words.
 *
 * @param most the most hits to return, 1 to 100
 * @param prefer topics whose notes come first where the words leave it open
 * @param require topics of which a note must have at least one; empty for no such condition
 */
public record Search(int most, Set<String> prefer, Set<String> require) {
  private static final int LARGEST = 100;

  /** Checks the number and keeps own copies. */
  public Search {
    if (most < 1 || most > LARGEST) {
      throw new IllegalArgumentException("most must be 1 to " + LARGEST + ", not " + most);
    }
    prefer = Set.copyOf(prefer);
    require = Set.copyOf(require);
  }

  /** The first {@code most} hits among all notes. */
  public static Search first(int most) {
    return new Search(most, Set.of(), Set.of());
  }

  /** The same, with notes of these topics put forward. */
  public Search preferring(Set<String> topics) {
    return new Search(most, topics, require);
  }

  /** The same, among notes of these topics only. */
  public Search requiring(Set<String> topics) {
    return new Search(most, prefer, topics);
  }
}
