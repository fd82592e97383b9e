package plainsward.terminal;

import java.util.ArrayList;
import java.util.List;
import plainsward.reply.Reply;
import plainsward.reply.Telling;

/**
 * A reply for a terminal: wrapped, painted, and never more than a screen of it. What there is no
 * room for, the least needed first, is kept for "more".
 */
final class ScreenText {
  /** The most rows that are written at once. */
  static final int MOST_ROWS = 40;

  private final Palette palette;
  private final int width;
  private final Hints hints;

  /**
   * A screen.
   *
   * @param columns the terminal's width
   * @param hints tells how to see what was kept back
   */
  ScreenText(Palette palette, int columns, Hints hints) {
    this.palette = palette;
    this.width = LineBreaker.fitting(columns);
    this.hints = hints;
  }

  /** A paragraph of the program's own, wrapped line by line. */
  String own(String text) {
    List<String> lines = new ArrayList<>();
    for (String line : text.split("\n", -1)) {
      int indent = line.length() - line.stripLeading().length();
      lines.addAll(LineBreaker.lines(palette.shown(line), width, indent + 2));
    }
    return String.join("\n", lines);
  }

  /** The reply, or what is said of it in short. */
  Page page(Reply reply, boolean brief) {
    if (brief || reply.telling() == Telling.IN_SHORT) {
      return new Page(BriefText.paragraphs(reply).stream().map(this::own).toList(), List.of());
    }
    List<Line> lines = ReplyLines.of(reply, palette.pen(width));
    return Fit.page(reply, lines, this::laid, hints, MOST_ROWS);
  }

  /** All of the reply. */
  String whole(Reply reply) {
    List<Line> lines = ReplyLines.of(reply, palette.pen(width));
    return String.join("\n", Fit.rows(lines.stream().map(this::laid).toList()));
  }

  private Laid laid(Line line) {
    boolean drawn = line.look() == Line.Look.DRAWN;
    String text = palette.shown(line.text());
    List<String> broken = drawn ? List.of(text) : LineBreaker.lines(text, width, line.hang());
    List<String> rows =
        broken.stream()
            .map(row -> (palette.painted(line.look(), row) + line.beside()).stripTrailing())
            .toList();
    return new Laid(line, rows, rows.size());
  }
}
