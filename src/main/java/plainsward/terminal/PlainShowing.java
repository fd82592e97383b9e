package plainsward.terminal;

import java.util.List;
import plainsward.reply.Reply;

/**
 * Replies as plain text, a paragraph a line.
 *
 * @param brief whether every reply is given in short
 */
record PlainShowing(boolean brief) implements Showing {

  @Override
  public Page page(Reply reply) {
    return brief ? new Page(List.of(PlainText.of(reply, true)), List.of()) : PlainText.page(reply);
  }

  @Override
  public String own(String text) {
    return text;
  }
}
