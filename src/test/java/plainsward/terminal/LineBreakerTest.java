package plainsward.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LineBreakerTest {

  @Test
  void linesBreakAtSpacesAndHang() {
    assertEquals(
        List.of("  one two", "    three", "    four"),
        LineBreaker.lines("  one two three four", 10, 4));
  }

  @Test
  void aLineThatFitsKeepsItsSpaces() {
    assertEquals(List.of("  1. Water    2 gal"), LineBreaker.lines("  1. Water    2 gal", 40, 4));
  }

  @Test
  void onlyAWordLongerThanTheLineIsParted() {
    assertEquals(
        List.of("ab", "  cdefgh", "  ijklmn", "  op"),
        LineBreaker.lines("ab cdefghijklmnop", 8, 2));
    assertEquals(
        List.of("x".repeat(40), "x".repeat(40), "x"), LineBreaker.lines("x".repeat(81), 40, 0));
  }

  @Test
  void theHeightIsHowManyLinesThereAre() {
    Random random = new Random(11);
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      int pieces = random.nextInt(14);
      for (int k = 0; k < pieces; k++) {
        text.append(" ".repeat(random.nextInt(4))).append("x".repeat(random.nextInt(30)));
      }
      int width = 10 + random.nextInt(20);
      int lines = Math.max(1, LineBreaker.lines(text.toString(), width, 0).size());
      assertEquals(lines, LineBreaker.height(text.toString(), width), "'" + text + "' " + width);
    }
    assertEquals(3, LineBreaker.height("カ".repeat(50), 40));
  }

  @Test
  void wideCharactersTakeTwoColumnsAndJoinedMarksNone() {
    assertEquals(10, LineBreaker.columns("カキドオシ"));
    assertEquals(1, LineBreaker.columns("e\u0301"));
    for (String line : LineBreaker.lines("カ".repeat(95), 40, 2)) {
      assertTrue(LineBreaker.columns(line) <= 40, line);
    }
  }

  @Test
  void widthsStayBetween40And120() {
    assertEquals(40, LineBreaker.fitting(3));
    assertEquals(77, LineBreaker.fitting(77));
    assertEquals(120, LineBreaker.fitting(500));
  }

  @Test
  void nothingToBreakIsOneEmptyLine() {
    assertEquals(List.of(""), LineBreaker.lines("", 40, 2));
    assertEquals(List.of(), LineBreaker.lines(" ".repeat(90), 40, 2));
  }
}
