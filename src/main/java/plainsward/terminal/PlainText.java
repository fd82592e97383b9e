package plainsward.terminal;

import java.util.ArrayList;
import java.util.List;
import plainsward.reply.Reply;

/**
 * A reply as plain text: no colour, no drawing, a paragraph a line, an empty line before a part.
 */
final class PlainText {
  private PlainText() {}

  /** The whole reply, or the three sentences of it. */
  static String of(Reply reply, boolean brief) {
    return brief ? BriefText.of(reply) : String.join("\n", lines(reply));
  }

  private static List<String> lines(Reply reply) {
    List<String> lines = new ArrayList<>();
    Line.Part before = null;
    for (Line line : ReplyLines.of(reply)) {
      boolean parted = before != null && (before != line.part() || line.look() == Line.Look.TITLE);
      if (parted) {
        lines.add("");
      }
      lines.add(line.text());
      before = line.part();
    }
    return lines;
  }
}
