package plainsward.terminal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;
import plainsward.reply.Reply;

/**
 * The conversation with a person at a terminal. A pasted text of several lines is one turn; Ctrl-C
 * gives up the line, Ctrl-D leaves. The width is asked for anew at every reply, since windows
 * change.
 */
final class TerminalTalk {
  private static final String PROMPT = "ask: ";
  private static final String MORE_HINT = "There is more: type more.";
  private static final int HISTORY = 1000;
  private static final int USUAL_COLUMNS = 80;

  private final Terminal terminal;
  private final Answering talk;
  private final Palette palette;
  private final Choices choices;
  private final LineReader reader;
  private Page page = new Page(List.of(), List.of());
  private boolean good = true;

  /**
   * A conversation.
   *
   * @param history the file of what was typed before; empty where nothing is kept
   */
  TerminalTalk(
      Terminal terminal, Answering talk, Palette palette, Choices choices, Optional<Path> history) {
    this.terminal = terminal;
    this.talk = talk;
    this.palette = palette;
    this.choices = choices;
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
    history.ifPresent(file -> builder.variable(LineReader.HISTORY_FILE, file));
    this.reader = builder.build();
  }

  /**
   * Greets, then talks until the user leaves.
   *
   * @return whether every turn got a reply
   */
  boolean run() {
    show(screen().own(HelpText.greeting()));
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
    if (said.isBlank()) {
      return true;
    }
    LocalWord word = LocalWord.of(said);
    switch (word) {
      case QUIT -> {
        return false;
      }
      case HELP -> show(screen().own(HelpText.examples()));
      case MORE -> more();
      case NONE -> answer(said);
    }
    return true;
  }

  /** The rest of the last reply, a screen at a time. */
  private void more() {
    if (page.rest().isEmpty()) {
      show("That was all of it.");
      return;
    }
    page = page.turned(ScreenText.MOST_ROWS - 2);
    show(page.rest().isEmpty() ? page.text() : page.text() + "\n\n" + MORE_HINT);
  }

  private void answer(String said) {
    try {
      Reply reply = talk.answer(said);
      page = choices.brief() ? screen().brief(reply) : screen().page(reply);
      show(page.text());
    } catch (RuntimeException | StackOverflowError fault) {
      good = false;
      show(screen().own(Fault.sentence(fault)));
    }
  }

  private ScreenText screen() {
    int columns = terminal.getSize().getColumns();
    return new ScreenText(palette, columns > 0 ? columns : USUAL_COLUMNS, MORE_HINT);
  }

  private void show(String text) {
    terminal.writer().print(text + "\n\n");
    terminal.writer().flush();
  }
}
