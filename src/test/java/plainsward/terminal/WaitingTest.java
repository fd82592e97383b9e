package plainsward.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(30)
class WaitingTest {
  private final ByteArrayOutputStream shown = new ByteArrayOutputStream();
  private final Out err = new Out(new PrintStream(shown, true, StandardCharsets.UTF_8));

  private String shown() {
    return shown.toString(StandardCharsets.UTF_8);
  }

  private void await(String text) throws InterruptedException {
    for (int i = 0; i < 500 && !shown().contains(text); i++) {
      Thread.sleep(20);
    }
    assertTrue(shown().contains(text), shown());
  }

  @Test
  void whatIsOverAtOnceShowsNothing() {
    Waiting.on(err, "reading", true, () -> true).close();
    assertEquals("", shown());
  }

  @Test
  void whatTakesLongShowsHowFarItIsAndWipesItOff() throws InterruptedException {
    try (Waiting waiting = Waiting.on(err, "reading your notes", true, () -> true)) {
      waiting.at(500, 2000);
      await("\r[#####...............] reading your notes, 500 of 2,000");
      waiting.at(1234, 0);
      await("reading your notes, 1,234 done");
    }
    String end = shown().substring(shown().lastIndexOf("\r", shown().length() - 2));
    assertTrue(end.isBlank() && end.endsWith("\r"), end);
  }

  @Test
  void forAScreenReaderItIsSaidOnce() throws InterruptedException {
    try (Waiting waiting = Waiting.on(err, "reading your notes", false, () -> true)) {
      await("Please wait");
      waiting.at(5, 10);
      Thread.sleep(500);
    }
    assertEquals("Please wait: reading your notes.\n", shown());
  }

  @Test
  void withoutATerminalNothingIsShown() throws InterruptedException {
    try (Waiting waiting = Waiting.on(err, "reading", true, () -> false)) {
      Thread.sleep(900);
      waiting.at(1, 2);
    }
    assertEquals("", shown());
  }
}
