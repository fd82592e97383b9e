package plainsward.terminal;

import java.nio.charset.Charset;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import plainsward.talk.Conversation;
import plainsward.talk.Setting;

/**
 * What the program finds around itself, so that a test can say what that is.
 *
 * @param environment the environment variables
 * @param clock tells today's date
 * @param isTerminal whether a person sits at both ends: input and output are a terminal
 * @param charset what the terminal can show
 * @param opening opens a conversation in a setting
 */
record Surroundings(
    Map<String, String> environment,
    Clock clock,
    boolean isTerminal,
    Charset charset,
    Function<Setting, Answering> opening) {

  /** Terminals that have but a few colours, or none. */
  private static final Set<String> POOR = Set.of("dumb", "linux", "ansi", "vt100", "vt220");

  /** Those of this process. */
  static Surroundings real() {
    return new Surroundings(
        System.getenv(),
        new HereClock(),
        Console.isTerminal(),
        Console.charset(),
        setting -> new Talking(new Conversation(setting)));
  }

  /** An environment variable that is set to something. */
  Optional<String> variable(String name) {
    return Optional.ofNullable(environment.get(name)).filter(v -> !v.isEmpty());
  }

  /** Whether colours may be used: a terminal that has enough of them, and nobody said NO_COLOR. */
  boolean isColourful() {
    return isTerminal
        && variable("NO_COLOR").isEmpty()
        && !POOR.contains(variable("TERM").orElse(""));
  }

  /**
   * The folder of what is remembered from one run to the next: the one chosen, else the XDG data
   * folder's {@code plainsward}; empty where not even a home folder is known.
   */
  Optional<Path> dataFolder(Optional<Path> chosen) {
    if (chosen.isPresent()) {
      return chosen;
    }
    try {
      Optional<Path> xdg = variable("XDG_DATA_HOME").map(Path::of).filter(Path::isAbsolute);
      return xdg.or(() -> variable("HOME").map(home -> Path.of(home, ".local", "share")))
          .map(folder -> folder.resolve("plainsward"));
    } catch (InvalidPathException notAFolder) {
      return Optional.empty();
    }
  }
}
