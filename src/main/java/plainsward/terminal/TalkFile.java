package plainsward.terminal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import java.util.Optional;

/**
 * Takes a talk down with the time of each turn, and writes it as Markdown into the folder {@code
 * talks} of the home folder when that is wanted. It holds the last 500 turns of one caller.
 */
final class TalkFile {
  private static final int MOST_TURNS = 500;
  private static final int MOST_FILES = 100;
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE, MMMM d, yyyy", Locale.US);
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.US);
  private static final DateTimeFormatter NAME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmm", Locale.US);

  private final Optional<Path> home;
  private final Clock clock;
  private final Deque<Turn> turns = new ArrayDeque<>();
  private boolean isCut;

  private record Turn(LocalDateTime at, String said, String told) {}

  /**
   * Nothing taken down yet.
   *
   * @param home the home folder, where there is one
   * @param clock tells the time of each turn
   */
  TalkFile(Optional<Path> home, Clock clock) {
    this.home = home;
    this.clock = clock;
  }

  /** Another caller: what was taken down before is not theirs. */
  void begin() {
    turns.clear();
    isCut = false;
  }

  /** Takes a turn down. */
  void add(String said, String told) {
    turns.add(new Turn(LocalDateTime.now(clock), said, told));
    if (turns.size() > MOST_TURNS) {
      turns.remove();
      isCut = true;
    }
  }

  /** Writes the talk into a new file, and says in one sentence where it is or why it isn't. */
  String save() {
    if (turns.isEmpty()) {
      return "There is no talk to save yet.";
    }
    if (home.isEmpty()) {
      return "There is no home folder to save it in; name one with --home.";
    }
    Path folder = home.get().resolve("talks");
    try {
      Files.createDirectories(folder);
      return "Saved this talk in " + written(folder) + ".";
    } catch (IOException refused) {
      return "The folder " + folder + " can't be written to, so the talk is not saved.";
    }
  }

  private Path written(Path folder) throws IOException {
    String name = LocalDateTime.now(clock).format(NAME);
    for (int i = 1; i < MOST_FILES; i++) {
      Path file = folder.resolve(name + (i == 1 ? "" : "-" + i) + ".md");
      try {
        byte[] text = markdown().getBytes(StandardCharsets.UTF_8);
        return Files.write(file, text, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
      } catch (FileAlreadyExistsException taken) {
        continue;
      }
    }
    throw new IOException("every name for this minute is taken");
  }

  private String markdown() {
    StringBuilder text = new StringBuilder("# A talk with Plainsward\n\n");
    text.append(turns.getFirst().at().format(DAY)).append(".");
    text.append(isCut ? " The first turns are left out.\n" : "\n");
    for (Turn turn : turns) {
      text.append("\n## ").append(turn.at().format(TIME)).append("\n\n");
      for (String line : CleanText.paragraphs(turn.said()).strip().split("\n", -1)) {
        text.append("> ").append(line).append('\n');
      }
      text.append("\n~~~~\n").append(turn.told()).append("\n~~~~\n");
    }
    return text.toString();
  }
}
