package plainsward.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class CleanTextTest {

  @Test
  void ordinaryTextOfAnyScriptIsKept() {
    String text = "4,000 sq ft × 1.5 = 6; 10 m², 29 °C, カキドオシ, 🌱, é";
    assertEquals(text, CleanText.line(text));
  }

  @Test
  void escapeSequencesGoAsAWhole() {
    assertEquals("ab", CleanText.line("a\u001b[1;31mb"));
    assertEquals("ab", CleanText.line("a\u009b31mb"));
    assertEquals("ab", CleanText.line("a\u001b]0;title\u0007b"));
    assertEquals("ab", CleanText.line("a\u001b]8;;http://x\u001b\\b"));
    assertEquals("ab", CleanText.line("a\u001bPq#0\u001b\\b"));
    assertEquals("ab", CleanText.line("a\u001b(0b"));
    assertEquals("a", CleanText.line("a\u001b"));
    assertEquals("a", CleanText.line("a\u001b["));
  }

  @Test
  void controlsOverridesAndInvisibleCharactersGo() {
    assertEquals("abcdef", CleanText.line("a\u0000b\u0008c\u202ed\u2066e\u200b\ufefff\u007f"));
    assertEquals("x\uFFFDy", CleanText.line("x\ud800y"));
  }

  @Test
  void lineEndsBecomeSpacesOrStayOne() {
    assertEquals("a b c d e", CleanText.line("a\nb\r\nc\rd\u2028e"));
    assertEquals("a\nb\nc\nd\ne", CleanText.paragraphs("a\nb\r\nc\rd\u2029e"));
    assertEquals("a b", CleanText.line("a\tb"));
  }

  @Test
  void nothingHarmfulIsEverLeft() {
    Random random = new Random(7);
    String pool =
        "ab \n\r\t\u001b[]P\\0;m\u0007\u009b\u009d\u009c\u202e\u2069\ud83c\udf31\u0085\u061c";
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int j = random.nextInt(12); j >= 0; j--) {
        text.append(pool.charAt(random.nextInt(pool.length())));
      }
      String clean = CleanText.line(text.toString());
      assertTrue(clean.codePoints().allMatch(CleanTextTest::isHarmless), () -> "left of " + text);
      assertEquals(clean, CleanText.line(clean));
    }
  }

  static boolean isHarmless(int c) {
    int type = Character.getType(c);
    return type != Character.CONTROL
        && type != Character.FORMAT
        && type != Character.SURROGATE
        && type != Character.LINE_SEPARATOR
        && type != Character.PARAGRAPH_SEPARATOR;
  }
}
