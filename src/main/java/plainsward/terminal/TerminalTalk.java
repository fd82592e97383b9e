package plainsward.terminal;

import java.util.Optional;
import java.util.function.Consumer;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;

/**
 * The conversation with a person at a terminal. A pasted text of several lines is one turn; Ctrl-C
 * gives up the line, Ctrl-D leaves.
 */
final class TerminalTalk {
  private final Terminal terminal;
  private final LineReader reader;
  private final Turns turns;
  private final Showing showing;
  private final Consumer<Optional<String>> between;
  private boolean good = true;

  /**
   * A conversation.
   *
   * @param between hears, before each turn, the next step that the last reply named
   */
  TerminalTalk(
      LineReader reader, Turns turns, Showing showing, Consumer<Optional<String>> between) {
    this.terminal = reader.getTerminal();
    this.reader = reader;
    this.turns = turns;
    this.showing = showing;
    this.between = between;
  }

  /**
   * Greets, then talks until the user leaves.
   *
   * @return whether every turn got a reply
   */
  boolean run() {
    show(showing.own(HelpText.greeting()));
    between.accept(Optional.empty());
    boolean stays = true;
    while (stays) {
      stays = turn();
    }
    return good;
  }

  private boolean turn() {
    try {
      return heard(reader.readLine(TalkReader.PROMPT));
    } catch (UserInterruptException givenUp) {
      return true;
    } catch (EndOfFileException left) {
      String half = left.getPartialLine();
      if (half != null && !half.isBlank()) {
        heard(half);
      }
      return false;
    }
  }

  private boolean heard(String said) {
    Turns.Told told = turns.hear(said);
    good &= told.isGood();
    if (!told.text().isEmpty()) {
      show(told.text());
      between.accept(told.next());
    }
    return !told.leaves();
  }

  private void show(String text) {
    terminal.writer().print(text + "\n\n");
    terminal.writer().flush();
  }
}
