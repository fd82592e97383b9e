package plainsward.reading;

import java.util.Set;

/**
 * The user's own names, so that they are found when said again.
 *
 * @param lawns names of lawns, lower-case
 * @param labels nicknames of labels, lower-case
 */
public record Vocabulary(Set<String> lawns, Set<String> labels) {
  /** No names yet. */
  public static final Vocabulary NONE = new Vocabulary(Set.of(), Set.of());

  /** Copies the sets. */
  public Vocabulary {
    lawns = Set.copyOf(lawns);
    labels = Set.copyOf(labels);
  }
}
