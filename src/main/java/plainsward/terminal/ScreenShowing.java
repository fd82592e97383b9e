package plainsward.terminal;

import org.jline.terminal.Terminal;
import plainsward.reply.Reply;

/**
 * Replies on the screen of a terminal. The width is asked for anew at every reply, since windows
 * change.
 *
 * @param terminal the terminal
 * @param palette what it can show
 * @param brief whether every reply is given in short
 */
record ScreenShowing(Terminal terminal, Palette palette, boolean brief) implements Showing {
  private static final int USUAL_COLUMNS = 80;

  @Override
  public Page page(Reply reply) {
    return screen().page(reply, brief);
  }

  @Override
  public String own(String text) {
    return screen().own(text);
  }

  private ScreenText screen() {
    int columns = terminal.getSize().getColumns();
    return new ScreenText(palette, columns > 0 ? columns : USUAL_COLUMNS, Hints.TALK);
  }
}
