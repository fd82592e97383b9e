package plainsward.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
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
      Choices choices = ChoiceReader.read(new String[0]);
      good = new TerminalTalk(terminal, talk, PLAIN, choices, history).run();
    } catch (WrongUse impossible) {
      throw new IllegalStateException(impossible);
    }
    return out.toString(StandardCharsets.UTF_8).replace("\r", "");
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
