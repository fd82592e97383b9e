package plainsward.terminal;

/**
 * One line of a reply before it is wrapped and painted.
 *
 * @param part which part of the reply it belongs to
 * @param look how it is painted
 * @param text the words, already harmless
 * @param hang how many columns the lines that it wraps into are indented
 * @param beside what is drawn at the right of the words, never painted; together they are no wider
 *     than the screen
 */
record Line(Part part, Look look, String text, int hang, String beside) {

  /** A line with nothing drawn beside it. */
  Line(Part part, Look look, String text, int hang) {
    this(part, look, text, hang, "");
  }

  /** The parts of a reply, in the order in which they stand on the screen. */
  enum Part {
    /** The headline. */
    HEADLINE,
    /** What goes in each load. */
    LOADS,
    /** What else there is to say. */
    BODY,
    /** What is drawn. */
    DRAWING,
    /** Figures that no sentence has named. */
    FIGURES,
    /** How it was worked out. */
    WORKING,
    /** What was read and assumed. */
    GIVEN,
    /** The cautions. */
    CAUTIONS,
    /** The notes that it rests on. */
    NOTES,
    /** A next question. */
    NEXT
  }

  /** How a line is painted. */
  enum Look {
    /** The most important line. */
    STRONG,
    /** A headline that warns. */
    ALARM,
    /** The title of a part. */
    TITLE,
    /** Ordinary words. */
    PLAIN,
    /** Words in the background. */
    QUIET,
    /** A caution. */
    CAUTION,
    /** Tells that something is kept back. */
    HINT,
    /** A row of a drawing, which is never broken. */
    DRAWN
  }

  /** A line of this part, plain and not indented. */
  static Line of(Part part, String text) {
    return new Line(part, Look.PLAIN, text, 0);
  }

  /** A title of this part. */
  static Line title(Part part, String text) {
    return new Line(part, Look.TITLE, text, 0);
  }

  /** A line under a title: indented by two, and by four where it wraps. */
  static Line item(Part part, Look look, String text) {
    return new Line(part, look, "  " + text, 4);
  }
}
