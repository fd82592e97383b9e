package plainsward.terminal;

import java.util.List;

/**
 * A line as it is laid out for a width.
 *
 * @param line the line
 * @param rows what is written for it
 * @param height how many rows of a screen it takes, at least 1
 */
record Laid(Line line, List<String> rows, int height) {

  /** Whether it begins something within its part. */
  boolean isTitle() {
    return line.look() == Line.Look.TITLE;
  }
}
