package plainsward.terminal;

import java.util.List;
import plainsward.reply.Reply;
import plainsward.reply.Telling;

/**
 * A reply as plain text: no colour, no drawing, a paragraph a line, an empty line before a part.
 */
final class PlainText {
  private static final int COLUMNS = 80;

  private PlainText() {}

  /** The whole reply, or the three sentences of it. */
  static String of(Reply reply, boolean brief) {
    return brief || reply.telling() == Telling.IN_SHORT
        ? BriefText.of(reply)
        : String.join(
            "\n", Fit.rows(ReplyLines.of(reply).stream().map(PlainText::asOneRow).toList()));
  }

  /** What of the reply takes no more than a screen of 80 columns, and the rest of it. */
  static Page page(Reply reply, boolean brief) {
    return brief || reply.telling() == Telling.IN_SHORT
        ? new Page(BriefText.paragraphs(reply), List.of())
        : Fit.page(reply, ReplyLines.of(reply), PlainText::laid, Hints.TALK, ScreenText.MOST_ROWS);
  }

  /** How high a line would stand is asked only where a page must be filled. */
  private static Laid asOneRow(Line line) {
    return new Laid(line, List.of(line.text()), 1);
  }

  private static Laid laid(Line line) {
    String text = line.text();
    int height = Math.max(1, LineBreaker.lines(text, COLUMNS, 0).size());
    return new Laid(line, List.of(text), height);
  }
}
