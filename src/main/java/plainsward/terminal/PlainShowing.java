package plainsward.terminal;

import plainsward.reply.Reply;

/**
 * Replies as plain text, a paragraph a line.
 *
 * @param brief whether every reply is given in short
 */
record PlainShowing(boolean brief) implements Showing {

  @Override
  public Page page(Reply reply) {
    return PlainText.page(reply, brief);
  }

  @Override
  public String own(String text) {
    return text;
  }
}
