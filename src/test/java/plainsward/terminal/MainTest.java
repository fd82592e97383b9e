package plainsward.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MainTest {

  @Test
  void aQuestionIsAnsweredAndTheStatusIsNought() {
    assertEquals(new Ran(0, "how much?|2026-05-01|us\n", ""), Ran.echo("", "how much?"));
  }

  @Test
  void severalWordsAreOneQuestion() {
    assertEquals("how much now|2026-05-01|us\n", Ran.echo("", "how", "much", "now").out());
  }

  @ParameterizedTest
  @CsvSource({
    "--units=metric, q|2026-05-01|metric",
    "--units=IMPERIAL, q|2026-05-01|imperial",
    "--today=2024-02-29, q|2024-02-29|us",
    "--plain, q|2026-05-01|us",
    "--brief, q|2026-05-01|us",
    "--home=somewhere, q|2026-05-01|us",
    "--notes=corpus/labels, q|2026-05-01|us",
  })
  void anOptionGoesBeforeOrAfterTheQuestion(String option, String answer) {
    assertEquals(new Ran(0, answer + "\n", ""), Ran.echo("", option, "q"));
    assertEquals(new Ran(0, answer + "\n", ""), Ran.echo("", "q", option));
    String[] parted = (option + "=").split("=", 3);
    if (!parted[1].isEmpty()) {
      assertEquals(answer + "\n", Ran.echo("", parted[0], parted[1], "q").out());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "-5 degrees tonight",
    "-5",
    "-.5 F",
    "-- --json",
  })
  void wordsThatOnlyLookLikeOptionsBelongToTheQuestion(String question) {
    String[] args = question.startsWith("-- ") ? question.split(" ") : new String[] {question};
    assertEquals(question.replace("-- ", "") + "|2026-05-01|us\n", Ran.echo("", args).out());
  }

  @ParameterizedTest
  @CsvSource({
    "--unts=us, 'There is no option \"--unts\". Did you mean --units?'",
    "--qwertyuiop, 'There is no option \"--qwertyuiop\".'",
    "-x, 'There is no option \"-x\".'",
    "--units, '--units needs us, metric or imperial after it.'",
    "--units=furlongs, '--units takes us, metric or imperial, not \"furlongs\".'",
    "--today=2026-02-30, '--today takes a date such as 2026-05-01, not \"2026-02-30\".'",
    "--today=tomorrow, '--today takes a date such as 2026-05-01, not \"tomorrow\".'",
    "--today, '--today needs a date, YYYY-MM-DD after it.'",
    "--home, '--home needs a folder after it.'",
    "--json=yes, '--json takes no value.'",
  })
  void wrongUseIsToldInOneSentenceWithStatusTwo(String option, String sentence) {
    Ran ran = Ran.echo("", option);
    assertEquals(new Ran(2, "", sentence + " \"plainsward --help\" tells more.\n"), ran);
  }

  @Test
  void aQuestionBesideABatchIsWrongUse() {
    assertEquals(2, Ran.echo("", "--batch", "-", "and a question").status());
  }

  @Test
  void controlCharactersOfAWrongOptionDoNotReachTheScreen() {
    String err = Ran.echo("", "--\u001b[2Jx").err();
    assertFalse(err.contains("\u001b"), err);
  }

  @Test
  void helpAndVersionAreToldOnStandardOutput() {
    Ran help = Ran.echo("", "--help");
    assertEquals(0, help.status());
    for (String option : Option.names()) {
      assertTrue(help.out().contains(option), option);
    }
    Ran version = Ran.echo("", "--version");
    assertEquals(0, version.status());
    assertTrue(version.out().matches("plainsward \\S.*\n"), version.out());
  }

  @Test
  void aFileThatIsNotThereIsToldInOneSentenceWithStatusOne(@TempDir Path folder) {
    String file = folder.resolve("none.txt").toString();
    Ran ran = Ran.echo("", "--batch", file);
    assertEquals(new Ran(1, "", "The file " + file + " can't be opened.\n"), ran);
    assertEquals(1, Ran.echo("", "--batch", folder.toString()).status());
    assertEquals(1, Ran.echo("", "--batch", "a\0b").status());
    assertEquals(1, Ran.echo("", "--notes", file, "q").status());
  }

  @Test
  void inputThatBreaksOffIsToldWithStatusOne() {
    Ran ran =
        Ran.into(
            OutputStream.nullOutputStream(), Ran.around(Ran.ECHO), new BreakingInput(), "--batch");
    assertEquals(new Ran(1, "", "The input can't be read to its end.\n"), ran);
  }

  @Test
  void whatTakesMoreThanAScreenIsToldWhenMoreIsAsked() {
    String[] question = {
      "--plain", "lawn 60 by 70 ft, 1.5 oz per thousand, 0.25% surfactant, 2 gallon tank, how much"
    };
    String screen = Ran.real("", question).out();
    String whole = Ran.real("", question[0], "--more", question[1]).out();
    assertTrue(screen.contains("add --more"), screen);
    assertFalse(whole.contains("--more"), whole);
    assertTrue(whole.contains("Next, you could ask: ") && whole.length() > screen.length(), whole);
  }

  @Test
  void anEmptyQuestionGetsAReply() {
    Ran ran = Ran.real("", "--json", "");
    assertEquals(0, ran.status());
    assertEquals("unsure", JsonTree.object(ran.out()).get("kind"));
  }

  @Test
  void aVeryLongQuestionGetsAReply() {
    String question = "how much clover is too much ".repeat(3_600);
    Ran ran = Ran.real("", "--json", question);
    assertEquals(0, ran.status());
    assertTrue(JsonTree.object(ran.out()).containsKey("kind"));
  }

  @Test
  void aFaultOfTheProgramIsOneSentenceWithStatusOne() {
    Ran ran = Ran.with(Ran.FAILING, new byte[0], "please fail");
    assertEquals(1, ran.status());
    assertEquals("", ran.out());
    assertTrue(ran.err().startsWith("The program itself failed"), ran.err());
    assertEquals(1, ran.err().lines().count());
  }

  @Test
  void pipedLinesAreTurnsOfOneConversationWithAnEmptyLineBetween() {
    Ran ran = Ran.echo("one\r\n\n  \ntwo", "--plain");
    assertEquals(new Ran(0, "one|2026-05-01|us\n\ntwo|2026-05-01|us\n", ""), ran);
  }

  @ParameterizedTest
  @CsvSource({"quit", "exit", "bye", "Quit "})
  void aWordOfLeavingEndsThePipedConversation(String word) {
    assertEquals("one|2026-05-01|us\n", Ran.echo("one\n" + word + "\ntwo\n").out());
  }

  @Test
  void pipedHelpShowsExamplesByTask() {
    assertEquals(HelpText.examples() + "\n", Ran.echo("help").out());
  }

  @Test
  void pipedTurnsAsJsonAreALineEach() {
    Ran ran = Ran.echo("one\ntwo\n", "--json");
    assertEquals(2, ran.lines().length);
    assertEquals("two|2026-05-01|us", JsonTree.object(ran.lines()[1]).get("headline"));
  }

  @Test
  void aTurnThatFailsDoesNotEndThePipedConversation() {
    Ran ran = Ran.with(Ran.FAILING, "fail\ngo on\n".getBytes(StandardCharsets.UTF_8));
    assertEquals(1, ran.status());
    assertTrue(ran.out().endsWith("go on|2026-05-01|us\n"), ran.out());
  }

  @Test
  void aClosedPipeEndsQuietly() {
    for (String[] args : new String[][] {{"q"}, {"--batch"}, {}}) {
      InputStream in =
          new ByteArrayInputStream("line\n".repeat(200_000).getBytes(StandardCharsets.UTF_8));
      Ran ran = Ran.into(new ClosedOutput(), Ran.around(Ran.ECHO), in, args);
      assertTrue(ran.status() <= 1);
      assertEquals("", ran.err());
    }
  }

  @Test
  void theSameIsSaidWhateverTheLocale() {
    String question = "lawn 12,345 sq ft, label 1.25 fl oz per 1000, tank is 2.5 gal";
    Ran usual = Ran.real("", question);
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertEquals(usual, Ran.real("", question));
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      assertEquals(usual, Ran.real("", question));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void lettersLostToTheLocaleAreReadAgainFromTheCommandLine() {
    byte[] kept = "java\0-jar\0x.jar\0--units\0us\00010 m²\0".getBytes(StandardCharsets.UTF_8);
    String[] typed = Arguments.last(kept, new String[] {"--units", "us", "10 m\uFFFD\uFFFD"});
    assertEquals("10 m²", typed[2]);
    assertEquals("--units", typed[0]);
  }

  /** Breaks off after a line. */
  private static final class BreakingInput extends InputStream {
    private int at;

    @Override
    public int read() throws IOException {
      if (at == 5) {
        throw new IOException("broken off");
      }
      return "line\n".charAt(at++);
    }

    @Override
    public int read(byte[] buffer, int from, int most) throws IOException {
      buffer[from] = (byte) read();
      return 1;
    }
  }

  /** A pipe whose reader has gone. */
  static final class ClosedOutput extends OutputStream {
    @Override
    public void write(int b) throws IOException {
      throw new IOException("Broken pipe");
    }
  }
}
