package plainsward.handbook;

import java.util.List;

/**
 * One thing that a question speaks of, with the ways in which a note may name it.
 *
 * @param ways the ways, the question's own first; a note names the thing if it has any of them
 * @param kind what sort of thing it is
 * @param trust how surely this is what was meant, over 0 to 1
 */
record Sought(List<Way> ways, Kind kind, float trust) {
  private static final float LIGHT = 0.8f;
  private static final float NUMBER = 0.4f;

  /** What sort of thing it is. */
  enum Kind {
    /** A word or phrase of the matter. */
    THING,
    /** A word that says little about the matter, such as a courtesy. */
    LIGHT,
    /** A number, of which a question's own is seldom the one that a note has. */
    NUMBER
  }

  /**
   * One way to name it.
   *
   * @param stems the stems that must all be there
   * @param boost what a match counts, over 0 to 1
   */
  record Way(List<String> stems, float boost) {}

  /** What a document's score for it counts. */
  float worth() {
    return switch (kind) {
      case THING -> 1;
      case LIGHT -> LIGHT;
      case NUMBER -> NUMBER;
    };
  }
}
