package plainsward.terminal;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import plainsward.reply.Reply;

/** One run of the program, as it was chosen. */
final class Session {
  private static final int MOST_WORKERS = 4;

  private final Choices choices;
  private final Surroundings around;
  private final InputStream in;
  private final Out out;
  private final Out messages;

  Session(Choices choices, Surroundings around, InputStream in, PrintStream stream, Out messages) {
    this.choices = choices;
    this.around = around;
    this.in = in;
    this.out = new Out(stream);
    this.messages = messages;
  }

  /**
   * Does it.
   *
   * @return the exit status
   * @throws Unreadable where a file or folder that was named can't be read
   */
  int run() throws Unreadable {
    return switch (choices.way()) {
      case HELP -> told(HelpText.usage());
      case VERSION -> told(HelpText.version());
      case QUESTION -> told(look(desk().open().answer(choices.question())));
      case BATCH -> batch();
      case CONVERSATION -> conversation();
    };
  }

  private int told(String text) {
    out.line(text);
    out.flush();
    return out.isClosed() ? Main.FAULT : Main.GOOD;
  }

  /** A reply to a single question: as a screen shows it only where there is a screen. */
  private String look(Reply reply) {
    if (choices.json() || choices.plain() || !around.isTerminal()) {
      return piped(reply);
    }
    Palette palette = Palette.of(around, false);
    ScreenText screen = new ScreenText(palette, Columns.of(around), Hints.ONCE);
    return choices.length() == Length.WHOLE
        ? screen.whole(reply)
        : screen.page(reply, choices.brief()).text();
  }

  private String piped(Reply reply) {
    if (choices.json()) {
      return JsonLine.of(reply, choices.length());
    }
    return choices.brief()
        ? String.join("\n", BriefText.paragraphs(reply))
        : PlainText.of(reply, choices.length());
  }

  private int conversation() throws Unreadable {
    if (around.isTerminal() && !choices.json()) {
      return status(new TerminalSession(choices, around, desk(), messages).run());
    }
    try {
      Turns turns = new Turns(desk().open(), showing(), talkFile());
      return status(new PipedTalk(turns, out, choices.json() ? "" : "\n").run(in));
    } catch (IOException broken) {
      throw new Unreadable("The input can't be read to its end.");
    }
  }

  private Showing showing() {
    return choices.json() ? new JsonShowing(choices.length()) : new PlainShowing(choices.brief());
  }

  private TalkFile talkFile() {
    return new TalkFile(around.dataFolder(choices.home()), around.clock());
  }

  private int batch() throws Unreadable {
    Optional<String> file = choices.batchFile();
    if (file.isEmpty()) {
      return batch(in, "The input");
    }
    try (InputStream lines = Files.newInputStream(Path.of(file.get()))) {
      return batch(lines, "The file " + file.get());
    } catch (IOException | InvalidPathException missing) {
      throw new Unreadable("The file " + file.get() + " can't be opened.");
    }
  }

  private int batch(InputStream lines, String name) throws Unreadable {
    Desk desk = desk();
    try (Waiting waiting =
        Waiting.on(messages, "answering", !choices.plain(), Session::isWatchedAlone)) {
      Batch batch = new Batch(desk, out, choices.length(), workers());
      return status(batch.run(lines, done -> waiting.at(done, 0)));
    } catch (IOException broken) {
      throw new Unreadable(name + " can't be read to its end.");
    }
  }

  /** Whether somebody sees standard error, and not the answers on the same screen. */
  private static boolean isWatchedAlone() {
    return Console.isErrorTerminal() && !Console.isOutputTerminal();
  }

  private Desk desk() throws Unreadable {
    return new Desk(choices, around, OwnNotes.with(choices.notes(), messages, choices.plain()));
  }

  /** Lines that write to the same folder are answered one after the other, so that order counts. */
  private int workers() {
    int processors = Runtime.getRuntime().availableProcessors();
    return choices.home().isPresent() ? 1 : Math.max(1, Math.min(MOST_WORKERS, processors));
  }

  private static int status(boolean good) {
    return good ? Main.GOOD : Main.FAULT;
  }
}
