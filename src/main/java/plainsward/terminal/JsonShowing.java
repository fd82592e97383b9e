package plainsward.terminal;

import java.util.List;
import plainsward.reply.Reply;

/**
 * Replies as lines of JSON.
 *
 * @param length how much of a reply's text there is
 */
record JsonShowing(Length length) implements Showing {

  @Override
  public Page page(Reply reply) {
    return new Page(List.of(JsonLine.of(reply, length)), List.of());
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
