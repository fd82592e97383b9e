package plainsward.terminal;

import java.nio.file.Path;
import java.util.Optional;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;

/**
 * The conversation with a person at a terminal. A pasted text of several lines is one turn; Ctrl-C
 * gives up the line, Ctrl-D leaves.
 */
final class TerminalTalk {
  private static final String PROMPT = "ask: ";
  private static final int HISTORY = 1000;

  private final Terminal terminal;
  private final Turns turns;
  private final Showing showing;
  private final LineReader reader;
  private boolean good = true;

  /**
   * A conversation.
   *
   * @param history the file of what was typed before; empty where nothing is kept
   */
  TerminalTalk(
      Terminal terminal, Answering talk, Showing showing, TalkFile file, Optional<Path> history) {
    this.terminal = terminal;
    this.turns = new Turns(talk, showing, file);
    this.showing = showing;
    LineReaderBuilder builder =
        LineReaderBuilder.builder()
            .terminal(terminal)
            .appName("plainsward")
            .parser(new WholeLine())
            .variable(LineReader.HISTORY_SIZE, HISTORY)
            .variable(LineReader.HISTORY_FILE_SIZE, HISTORY)
            .variable(LineReader.SECONDARY_PROMPT_PATTERN, "")
            .variable(LineReader.BELL_STYLE, "none")
            .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
            .option(LineReader.Option.DISABLE_HIGHLIGHTER, true);
    history.ifPresent(kept -> builder.variable(LineReader.HISTORY_FILE, kept));
    this.reader = builder.build();
  }

  /**
   * Greets, then talks until the user leaves.
   *
   * @return whether every turn got a reply
   */
  boolean run() {
    show(showing.own(HelpText.greeting()));
    boolean stays = true;
    while (stays) {
      stays = turn();
    }
    return good;
  }

  private boolean turn() {
    try {
      return heard(reader.readLine(PROMPT));
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
    }
    return !told.leaves();
  }

  private void show(String text) {
    terminal.writer().print(text + "\n\n");
    terminal.writer().flush();
  }
}
