package plainsward.terminal;

import java.util.List;
import plainsward.reply.Reply;

/**
 * Replies as lines of JSON, whole.
 *
 * @param brief whether a reply's text is three sentences at most
 */
record JsonShowing(boolean brief) implements Showing {

  @Override
  public Page page(Reply reply) {
    return new Page(List.of(JsonLine.of(reply, brief)), List.of());
  }

  @Override
  public String own(String text) {
    return text;
  }

  @Override
  public boolean isForPeople() {
    return false;
  }
}
