package plainsward.terminal;

/**
 * The characters that drawings are made of. Shapes alone tell things apart, never a colour.
 *
 * @param isAscii whether only ASCII can be shown
 */
record Ink(boolean isAscii) {

  /** Filled. */
  String full() {
    return isAscii ? "#" : "█";
  }

  /** Half filled. */
  String half() {
    return isAscii ? "=" : "▒";
  }

  /** Hardly filled. */
  String faint() {
    return isAscii ? "." : "░";
  }

  /** Ground that is left out. */
  String out() {
    return isAscii ? "x" : "╳";
  }

  /** A line across. */
  String across() {
    return isAscii ? "-" : "─";
  }

  /** A line that is yet to come. */
  String dotted() {
    return isAscii ? "." : "·";
  }

  /** An upright wall. */
  String wall() {
    return isAscii ? "|" : "│";
  }

  /** The lower left corner. */
  String lowerLeft() {
    return isAscii ? "+" : "└";
  }

  /** The lower right corner. */
  String lowerRight() {
    return isAscii ? "+" : "┘";
  }

  /** An arrow to the left. */
  String arrow() {
    return isAscii ? "<-" : "←";
  }
}
