package plainsward.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The real program, driven through transcripts in a real terminal, shows the screens that stand in
 * {@code terminal/sessions}. With {@code -Dscreens=write} they are written anew instead; read the
 * difference before it is kept. Skipped where there is no tmux.
 */
class SessionScreensTest {
  private static final Path SCREENS = Path.of("src/test/resources/terminal/sessions");
  private static final Path TALKS = Path.of("transcripts-demo");
  private static final boolean WRITE = "write".equals(System.getProperty("screens"));

  static Stream<Arguments> sessions() {
    return Stream.of("eye-splash", "feeding", "metric-lawn")
        .flatMap(talk -> Stream.of(40, 80, 120).map(columns -> Arguments.of(talk, columns)));
  }

  @BeforeAll
  static void needsTmux() {
    assumeTrue(Tmux.isHere(), "skipped: there is no tmux here to drive the program in");
  }

  @ParameterizedTest(name = "{0} at {1} columns")
  @MethodSource("sessions")
  void theScreensAreAsTheyStand(String talk, int columns, @TempDir Path home) throws Exception {
    Transcript transcript = Transcript.read(Files.readString(TALKS.resolve(talk + ".md")));
    Transcript.Sitting sitting = transcript.sittings().get(0);
    List<String> options = new ArrayList<>(sitting.arguments());
    options.remove("--plain");
    options.addAll(List.of("--home", home.toString()));
    String shown;
    try (Tmux terminal = Tmux.start(columns, options, home)) {
      terminal.await(1);
      for (Transcript.Turn turn : sitting.turns()) {
        terminal.say(turn.said());
      }
      shown = trimmed(terminal.all());
    }
    Path kept = SCREENS.resolve(talk + "." + columns + ".txt");
    if (WRITE) {
      Files.createDirectories(SCREENS);
      Files.writeString(kept, shown);
    } else {
      assertEquals(
          "", Differences.of(Files.readString(kept), shown), kept + " looks otherwise now");
    }
  }

  private static String trimmed(String screen) {
    return screen.lines().map(String::stripTrailing).collect(Collectors.joining("\n")).strip()
        + "\n";
  }
}
