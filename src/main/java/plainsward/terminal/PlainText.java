package plainsward.terminal;

import java.util.ArrayList;
import java.util.List;
import plainsward.reply.Reply;
import plainsward.reply.Telling;

/**
 * A reply as plain text: no colour, no drawing, a paragraph a line, an empty line before a part.
 */
final class PlainText {
  private static final int COLUMNS = 80;
  private static final int BADLY_BROKEN = 60;

  private PlainText() {}

  /** So much of the reply, where no more can be asked for. */
  static String of(Reply reply, Length length) {
    if (length == Length.SHORT || reply.telling() == Telling.IN_SHORT) {
      return BriefText.of(reply);
    }
    List<Line> lines = ReplyLines.of(reply);
    return length == Length.WHOLE || mayFit(lines)
        ? String.join("\n", Fit.rows(asRows(lines)))
        : Fit.page(reply, lines, PlainText::laid, Hints.PLAIN, ScreenText.MOST_ROWS).text();
  }

  /** Whether lines fit on a screen even if every long one breaks badly, with a blank for each. */
  private static boolean mayFit(List<Line> lines) {
    int rows = 0;
    for (Line line : lines) {
      rows += 1 + line.text().length() / BADLY_BROKEN + (line.look() == Line.Look.TITLE ? 1 : 0);
    }
    return rows + Line.Part.values().length <= ScreenText.MOST_ROWS;
  }

  /** What of the reply takes no more than a screen of 80 columns, and the rest of it. */
  static Page page(Reply reply, boolean brief) {
    return brief || reply.telling() == Telling.IN_SHORT
        ? new Page(BriefText.paragraphs(reply), List.of())
        : Fit.page(reply, ReplyLines.of(reply), PlainText::laid, Hints.TALK, ScreenText.MOST_ROWS);
  }

  /** How high a line would stand is asked only where a page must be filled. */
  private static List<Laid> asRows(List<Line> lines) {
    List<Laid> rows = new ArrayList<>(lines.size());
    for (Line line : lines) {
      rows.add(new Laid(line, List.of(line.text()), 1));
    }
    return rows;
  }

  private static Laid laid(Line line) {
    String text = line.text();
    return new Laid(line, List.of(text), LineBreaker.height(text, COLUMNS));
  }
}
