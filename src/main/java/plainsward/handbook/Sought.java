package plainsward.handbook;

import java.util.List;

/**
 * One thing that a question speaks of, with the ways in which a note may name it.
 *
 * @param ways the ways; a note names the thing if it has any of them
 * @param kind what sort of thing it is
 */
record Sought(List<Way> ways, Kind kind) {

  /**
   * One way to name it.
   *
   * @param stems the stems that must all be there
   * @param trust how surely this is what was meant, over 0 to 1
   */
  record Way(List<String> stems, float trust) {}

  private static final float LIGHT = 0.6f;

  /** What sort of thing it is. */
  enum Kind {
    /** A word or phrase of the matter. */
    THING,
    /** A word that says little about the matter: a number, a courtesy. */
    LIGHT
  }

  /** What a document's score for it counts. */
  float worth() {
    return switch (kind) {
      case THING -> 1;
      case LIGHT -> LIGHT;
    };
  }

  /** The trust in the best way. */
  float trust() {
    return (float) ways.stream().mapToDouble(Way::trust).max().orElse(0);
  }
}
