package plainsward.handbook;

import java.util.List;

/**
 * One thing that a question speaks of, with the ways in which a note may name it.
 *
 * @param ways the ways; a note names the thing if it has any of them
 * @param light whether it says little about the matter (a number, a word of courtesy)
 */
record Sought(List<Way> ways, boolean light) {

  /**
   * One way to name it.
   *
   * @param stems the stems that must all be there
   * @param trust how surely this is what was meant, over 0 to 1
   */
  record Way(List<String> stems, float trust) {}

  /** The trust in the best way. */
  float trust() {
    return (float) ways.stream().mapToDouble(Way::trust).max().orElse(0);
  }
}
