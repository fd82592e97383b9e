package plainsward.terminal;

import java.util.ArrayList;
import java.util.List;
import org.jline.utils.WCWidth;

/** Breaks lines at spaces so that they fit a width counted in columns, wide characters as two. */
final class LineBreaker {
  /** The narrowest that lines are broken to. */
  static final int NARROWEST = 40;

  /** The widest that lines grow. */
  static final int WIDEST = 120;

  private final int width;
  private final List<String> lines = new ArrayList<>();
  private StringBuilder line = new StringBuilder();
  private int column;

  private LineBreaker(int width) {
    this.width = width;
  }

  /** A width that lines may have: what the terminal has, but 40 to 120. */
  static int fitting(int columns) {
    return Math.max(NARROWEST, Math.min(WIDEST, columns));
  }

  /**
   * The lines that a text makes. A word is parted only where it is longer than a line.
   *
   * @param hang how many columns all lines but the first are indented
   */
  static List<String> lines(String text, int width, int hang) {
    if (columns(text) <= width) {
      return List.of(text.stripTrailing());
    }
    LineBreaker breaker = new LineBreaker(width);
    int indent = spaces(text, 0);
    breaker.begin(Math.min(indent, width / 2));
    int at = indent;
    while (at < text.length()) {
      int start = at + spaces(text, at);
      int stop = text.indexOf(' ', start);
      int end = stop < 0 ? text.length() : stop;
      breaker.add(start - at, text.substring(start, end), hang);
      at = end;
    }
    breaker.end();
    return breaker.lines;
  }

  /** How many lines a text makes, as {@link #lines} with no hang. */
  static int height(String text, int width) {
    if (!isPlain(text)) {
      return Math.max(1, lines(text, width, 0).size());
    }
    if (text.length() <= width) {
      return 1;
    }
    int rows = 0;
    int at = spaces(text, 0);
    int column = Math.min(at, width / 2);
    boolean blank = true;
    while (at < text.length()) {
      int start = at + spaces(text, at);
      int stop = text.indexOf(' ', start);
      int end = stop < 0 ? text.length() : stop;
      if (!blank && column + end - at > width) {
        rows++;
        column = 0;
        blank = true;
      } else if (!blank) {
        column += start - at;
      }
      column += end - start;
      if (column > width) {
        rows += (column - 1) / width;
        column = (column - 1) % width + 1;
      }
      blank &= end == start;
      at = end;
    }
    return Math.max(1, blank ? rows : rows + 1);
  }

  /** Whether every character takes one column, as nearly always. */
  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < ' ' || c > '~') {
        return false;
      }
    }
    return true;
  }

  /** How many columns a text takes. */
  static int columns(String text) {
    return isPlain(text) ? text.length() : text.codePoints().map(LineBreaker::columns).sum();
  }

  private static int columns(int c) {
    return Math.max(0, WCWidth.wcwidth(c));
  }

  private void begin(int indent) {
    line = new StringBuilder(" ".repeat(indent));
    column = indent;
  }

  private void end() {
    if (!line.toString().isBlank()) {
      lines.add(line.toString().stripTrailing());
    }
  }

  private static int spaces(String text, int from) {
    int end = from;
    while (end < text.length() && text.charAt(end) == ' ') {
      end++;
    }
    return end - from;
  }

  /** Adds a word with the gap before it, or the word alone at the start of a new line. */
  private void add(int gap, String word, int hang) {
    boolean starts = line.toString().isBlank();
    if (!starts && column + gap + columns(word) > width) {
      end();
      begin(hang);
    } else if (!starts) {
      line.append(" ".repeat(gap));
      column += gap;
    }
    word.codePoints().forEach(c -> put(c, hang));
  }

  /** Puts a character down, in a new line where it would stand past the edge. */
  private void put(int c, int hang) {
    int wide = columns(c);
    if (column + wide > width) {
      end();
      begin(hang);
    }
    line.appendCodePoint(c);
    column += wide;
  }
}
