package plainsward.terminal;

import java.util.List;

/**
 * Puts drawings into a reply: drawn where they can be, else told in a sentence.
 *
 * @param ink what is drawn with
 * @param width how many columns there are; 0 where nothing is drawn
 */
record Pen(Ink ink, int width) {
  /** Tells every drawing in a sentence. */
  static final Pen WORDS = new Pen(new Ink(true), 0);

  /** Whether it draws. */
  boolean draws() {
    return width > 0;
  }

  /** The lines that a drawing makes; none where there is no room for it. */
  List<Line> lines(Line.Part part, Drawing drawing) {
    return draws()
        ? drawing.rows(ink, width).stream()
            .map(row -> new Line(part, Line.Look.DRAWN, row, 0))
            .toList()
        : List.of(Line.of(part, drawing.sentence()));
  }
}
