package plainsward.terminal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.jline.reader.History;
import org.jline.reader.LineReader;
import org.jline.reader.impl.history.DefaultHistory;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;

/** Opens the terminal for a conversation and gives it back as it was. */
final class TerminalSession {
  private final Choices choices;
  private final Surroundings around;
  private final Desk desk;
  private final Out messages;

  TerminalSession(Choices choices, Surroundings around, Desk desk, Out messages) {
    this.choices = choices;
    this.around = around;
    this.desk = desk;
    this.messages = messages;
  }

  /**
   * Talks until the user leaves.
   *
   * @return whether every turn got a reply
   * @throws Unreadable where the terminal can't be opened
   */
  boolean run() throws Unreadable {
    Optional<Path> history = history();
    try (Terminal terminal = opened()) {
      return talked(terminal, history);
    } catch (IOException broken) {
      throw new Unreadable("The terminal can't be opened.");
    }
  }

  private boolean talked(Terminal terminal, Optional<Path> kept) throws Unreadable {
    Palette palette = Palette.of(around, choices.plain());
    Answering talk = desk.open();
    Showing showing = new ScreenShowing(terminal, palette, choices.brief());
    TalkFile file = new TalkFile(around.dataFolder(choices.home()), around.clock());
    Turns turns = new Turns(talk, showing, file);
    History history = new DefaultHistory();
    if (choices.plain() || terminal.getType().startsWith(Terminal.TYPE_DUMB)) {
      LineReader reader = TalkReader.on(terminal, talk, history, kept, Optional.empty());
      return new TerminalTalk(reader, turns, showing, next -> {}).run();
    }
    Suggestions likely = new Suggestions(talk, history);
    QuantityHighlighter marks =
        new QuantityHighlighter(likely, choices.units(), desk.today(), palette);
    LineReader reader = TalkReader.on(terminal, talk, history, kept, Optional.of(marks));
    try (Live live = new Live(terminal, talk, palette, likely)) {
      return new TerminalTalk(reader, turns, showing, live::refresh).run();
    }
  }

  /** Asking the terminal how it counts joined characters can take seconds where none answers. */
  private static Terminal opened() throws IOException {
    return TerminalBuilder.builder()
        .name("plainsward")
        .system(true)
        .dumb(true)
        .graphemeCluster(false)
        .build();
  }

  private Optional<Path> history() {
    try {
      return KeptHistory.in(around.dataFolder(choices.home()));
    } catch (Unreadable refused) {
      messages.line(CleanText.line(refused.getMessage()));
      messages.flush();
      return Optional.empty();
    }
  }
}
