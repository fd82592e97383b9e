package plainsward.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import plainsward.reply.Reply;

/**
 * Screens compared to the letter with the files of {@code src/test/resources/terminal/screens};
 * {@code -Dscreens=write} writes them anew.
 */
class ScreenTextTest {
  private static final Path SCREENS = Path.of("src/test/resources/terminal/screens");
  private static final String HINT = Hints.TALK.more();
  private static final Palette DRAWN = new Palette(false, false, true);

  private static final Map<String, Reply> REPLIES =
      new TreeMap<>(
          Map.of(
              "mix", SampleReplies.mix(),
              "lawn", SampleReplies.lawn(),
              "days", SampleReplies.days(),
              "hours", SampleReplies.hours(),
              "range", SampleReplies.range(),
              "dates", SampleReplies.dates(),
              "ask", SampleReplies.ask(),
              "emergency", SampleReplies.emergency(),
              "long", SampleReplies.tooLong(),
              "hostile", SampleReplies.hostile()));

  private static Map<String, String> screens() {
    Map<String, String> screens = new TreeMap<>();
    REPLIES.forEach(
        (name, reply) -> {
          for (int columns : new int[] {40, 80, 120}) {
            String screen = new ScreenText(DRAWN, columns, Hints.TALK).page(reply, false).text();
            screens.put(name + "." + columns + ".txt", screen + "\n");
          }
          screens.put(name + ".plain.txt", PlainText.of(reply, Length.WHOLE) + "\n");
        });
    Palette ascii = new Palette(false, true, true);
    Palette colour = new Palette(true, false, true);
    Reply mix = SampleReplies.mix();
    screens.put(
        "mix.ascii.txt", new ScreenText(ascii, 80, Hints.TALK).page(mix, false).text() + "\n");
    String painted = new ScreenText(colour, 80, Hints.TALK).page(mix, false).text();
    screens.put("mix.colour.txt", painted.replace("\u001b", "<ESC>") + "\n");
    return screens;
  }

  @Test
  void everyScreenIsAsItsFileShows() throws IOException {
    Map<String, String> screens = screens();
    if ("write".equals(System.getProperty("screens"))) {
      for (Map.Entry<String, String> screen : screens.entrySet()) {
        Files.writeString(SCREENS.resolve(screen.getKey()), screen.getValue());
      }
    }
    for (Map.Entry<String, String> screen : screens.entrySet()) {
      String kept = Files.readString(SCREENS.resolve(screen.getKey()));
      assertEquals(kept, screen.getValue(), screen.getKey());
    }
    try (Stream<Path> files = Files.list(SCREENS)) {
      List<String> names = files.map(f -> f.getFileName().toString()).sorted().toList();
      assertEquals(List.copyOf(screens.keySet()), names);
    }
  }

  @Test
  void screensAreTheSameInAnyLocale() {
    Map<String, String> usual = screens();
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertEquals(usual, screens());
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void noScreenIsLongerThan40RowsOrWiderThanTheTerminal() {
    for (Reply reply : REPLIES.values()) {
      for (int columns = 40; columns <= 120; columns++) {
        Page page = new ScreenText(DRAWN, columns, Hints.TALK).page(reply, false);
        assertTrue(page.shown().size() <= ScreenText.MOST_ROWS);
        for (String row : page.shown()) {
          assertTrue(LineBreaker.columns(row) <= columns, row);
        }
      }
    }
  }

  @Test
  void atMostFourCautionsAreShownAndTheRestIsKept() {
    Page page = new ScreenText(DRAWN, 80, Hints.TALK).page(SampleReplies.tooLong(), false);
    assertEquals(4, page.shown().stream().filter(row -> row.contains("Mind the thing")).count());
    assertEquals(8, page.rest().stream().filter(row -> row.contains("Mind the thing")).count());
    assertEquals(HINT, page.shown().get(page.shown().size() - 1));
  }

  @Test
  void nothingIsLostBetweenTheScreenAndItsRest() {
    Page page = new ScreenText(DRAWN, 80, Hints.TALK).page(SampleReplies.tooLong(), false);
    StringBuilder all = new StringBuilder(page.text());
    while (!page.rest().isEmpty()) {
      page = page.turned(20);
      assertTrue(page.shown().size() <= 20);
      all.append('\n').append(page.text());
    }
    for (int i = 1; i <= 12; i++) {
      assertTrue(all.toString().contains("Sign " + i + ":"), "sign " + i);
      assertTrue(all.toString().contains("step " + i + " of"), "step " + i);
      assertTrue(all.toString().contains("number " + i + "."), "caution " + i);
    }
  }

  @Test
  void inAnEmergencyNoCautionIsKeptBack() {
    Page page = new ScreenText(DRAWN, 80, Hints.TALK).page(SampleReplies.emergency(), false);
    assertTrue(page.text().contains("Step 5 matters."));
    assertEquals(List.of(), page.rest());
  }

  @Test
  void asciiScreensHoldNothingElse() {
    Palette ascii = new Palette(false, true, true);
    for (Reply reply : REPLIES.values()) {
      String text = new ScreenText(ascii, 80, Hints.TALK).page(reply, false).text();
      assertTrue(text.chars().allMatch(c -> c == '\n' || c >= ' ' && c < 0x7f), text);
    }
  }

  @Test
  void theOnlyEscapeSequencesAreTheScreensOwnColours() {
    Palette colour = new Palette(true, false, true);
    for (Reply reply : REPLIES.values()) {
      String text = new ScreenText(colour, 80, Hints.TALK).page(reply, false).text();
      String bare = text.replaceAll("\u001b\\[[0-9;]*m", "").replace("\n", "");
      assertTrue(bare.codePoints().allMatch(CleanTextTest::isHarmless), bare);
    }
  }

  @Test
  void coloursNeedATerminalThatIsNotDumbAndNobodyAgainstThem() {
    assertTrue(around(Map.of("TERM", "xterm"), true).isColourful());
    assertFalse(around(Map.of("TERM", "xterm"), false).isColourful());
    assertFalse(around(Map.of("TERM", "dumb"), true).isColourful());
    assertFalse(around(Map.of("NO_COLOR", "1"), true).isColourful());
    assertFalse(Palette.of(around(Map.of(), true), true).isColourful());
  }

  private static Surroundings around(Map<String, String> environment, boolean isTerminal) {
    Surroundings usual = Ran.around(Ran.ECHO);
    return new Surroundings(
        environment, usual.clock(), isTerminal, usual.charset(), usual.opening());
  }
}
