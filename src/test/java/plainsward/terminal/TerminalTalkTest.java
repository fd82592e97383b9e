package plainsward.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.jline.reader.LineReader;
import org.jline.reader.impl.history.DefaultHistory;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.impl.DumbTerminal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import plainsward.reply.Kind;
import plainsward.reply.ReplyBuilder;

@Timeout(60)
class TerminalTalkTest {
  private static final Palette PLAIN = new Palette(false, false, false);
  private static final Answering ECHO =
      said -> {
        if (said.equals("fail")) {
          throw new IllegalStateException("on purpose");
        }
        return new ReplyBuilder(Kind.ANSWER).headline("<" + said.replace("\n", "/") + ">").build();
      };

  private boolean good;

  private String talk(String typed, Answering talk, int columns, Optional<Path> history)
      throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayInputStream in = new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8));
    try (Terminal terminal = new DumbTerminal("test", "dumb", in, out, StandardCharsets.UTF_8)) {
      terminal.setSize(new Size(columns, 24));
      good = talk(terminal, talk, history).run();
    }
    return out.toString(StandardCharsets.UTF_8).replace("\r", "");
  }

  private static TerminalTalk talk(Terminal terminal, Answering talk, Optional<Path> history) {
    Showing showing = new ScreenShowing(terminal, PLAIN, false);
    Turns turns = new Turns(talk, showing, new TalkFile(Optional.empty(), Ran.MAY_FIRST));
    LineReader reader =
        TalkReader.on(terminal, talk, new DefaultHistory(), history, Optional.empty());
    return new TerminalTalk(reader, turns, showing, next -> {});
  }

  private String talk(String typed) throws IOException {
    return talk(typed, ECHO, 80, Optional.empty());
  }

  @Test
  void theGreetingIsThreeLinesThatTellHowToBeginAndHowToLeave() throws IOException {
    String screen = talk("");
    assertTrue(screen.startsWith(HelpText.greeting() + "\n\n"), screen);
    assertEquals(3, HelpText.greeting().lines().count());
    assertTrue(HelpText.greeting().contains("help"));
    assertTrue(HelpText.greeting().contains("quit"));
  }

  @Test
  void aLineIsATurnAndEndOfInputLeaves() throws IOException {
    String screen = talk("one\ntwo\n");
    assertTrue(screen.contains("<one>") && screen.contains("<two>"), screen);
    assertTrue(good);
  }

  @Test
  void theLastLineNeedsNoEnd() throws IOException {
    assertTrue(talk("one\ntwo").contains("<two>"));
  }

  @Test
  void quotesBackslashesAndExclamationMarksMeanNothing() throws IOException {
    assertTrue(talk("don't \"stop\\ it! !!\n").contains("<don't \"stop\\ it! !!>"));
  }

  @Test
  void leavingWordsLeave() throws IOException {
    for (String word : new String[] {"quit", "exit", "bye", "  QUIT "}) {
      assertFalse(talk(word + "\nafter\n").contains("<after>"), word);
    }
  }

  @Test
  void anEmptyLineIsPassedOver() throws IOException {
    assertFalse(talk("\n   \n").contains("<"));
  }

  @Test
  void helpShowsExamplesWithinTheWidth() throws IOException {
    String screen = talk("help\n", ECHO, 40, Optional.empty());
    assertTrue(screen.contains("Mix a tank"), screen);
    for (String row : screen.split("\n", -1)) {
      assertTrue(LineBreaker.columns(row) <= 40, row);
    }
  }

  @Test
  void theHelpIsNoLongerThanAScreen() {
    assertTrue(HelpText.examples().lines().count() <= ScreenText.MOST_ROWS);
    assertTrue(HelpText.examples().lines().allMatch(line -> line.length() <= 80));
  }

  @Test
  void moreShowsWhatWasKeptBackUntilAllIsShown() throws IOException {
    Answering long_ = said -> SampleReplies.tooLong();
    String screen = talk("what is it\nmore\nmore\nmore\n", long_, 80, Optional.empty());
    for (int i = 1; i <= 12; i++) {
      assertTrue(screen.contains("number " + i + "."), "caution " + i);
      assertTrue(screen.contains("Sign " + i + ":"), "sign " + i);
    }
    assertTrue(screen.contains("That was all of it."), screen);
  }

  @Test
  void aTurnThatFailsDoesNotEndTheTalk() throws IOException {
    String screen = talk("fail\non\n");
    assertTrue(screen.contains("The program itself failed"), screen);
    assertTrue(screen.contains("<on>"), screen);
    assertFalse(good);
  }

  @Test
  void controlCGivesUpTheLineAndTheTalkGoesOn() throws Exception {
    PipedInputStream in = new PipedInputStream();
    PipedOutputStream keys = new PipedOutputStream(in);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Terminal terminal = new DumbTerminal("test", "dumb", in, out, StandardCharsets.UTF_8)) {
      terminal.setSize(new Size(80, 24));
      TerminalTalk talk = talk(terminal, ECHO, Optional.empty());
      Thread talking = new Thread(talk::run, "talking");
      talking.start();
      awaitText(out, "ask: ");
      type(keys, "given up");
      awaitRead(in);
      terminal.raise(Terminal.Signal.INT);
      awaitPrompts(out, 2);
      type(keys, "kept\n");
      awaitText(out, "<kept>");
      keys.close();
      talking.join(20_000);
      assertFalse(talking.isAlive());
    }
    assertFalse(out.toString(StandardCharsets.UTF_8).contains("<given up"));
  }

  private static void type(PipedOutputStream keys, String text) throws IOException {
    keys.write(text.getBytes(StandardCharsets.UTF_8));
    keys.flush();
  }

  private static void awaitText(ByteArrayOutputStream out, String text) throws Exception {
    await(() -> out.toString(StandardCharsets.UTF_8).contains(text));
  }

  private static void awaitPrompts(ByteArrayOutputStream out, int count) throws Exception {
    await(() -> out.toString(StandardCharsets.UTF_8).split("ask: ", -1).length > count);
  }

  /** A dumb terminal does not echo, so that what was typed only shows by being gone. */
  private static void awaitRead(PipedInputStream in) throws Exception {
    await(
        () -> {
          try {
            return in.available() == 0;
          } catch (IOException closed) {
            return true;
          }
        });
    Thread.sleep(300);
  }

  private static void await(BooleanSupplier reached) throws Exception {
    for (int i = 0; i < 1000 && !reached.getAsBoolean(); i++) {
      Thread.sleep(20);
    }
    assertTrue(reached.getAsBoolean());
  }

  @Test
  void whatWasTypedIsKeptInAFileOfTheOwnersOwn(@TempDir Path folder) throws Exception {
    Path data = folder.resolve("a").resolve("b");
    Optional<Path> file = KeptHistory.in(Optional.of(data));
    talk("kept question\n", ECHO, 80, file);
    assertTrue(Files.readString(file.orElseThrow()).contains("kept question"));
    assertEquals(file, KeptHistory.in(Optional.of(data)));
  }

  @Test
  void aFolderThatCannotBeWrittenIsToldInOneSentence(@TempDir Path folder) throws IOException {
    Path file = Files.createFile(folder.resolve("file"));
    Unreadable told =
        assertThrows(Unreadable.class, () -> KeptHistory.in(Optional.of(file.resolve("data"))));
    assertTrue(told.getMessage().endsWith("nothing typed here will be kept."), told.getMessage());
  }
}
