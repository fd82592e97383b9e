package plainsward.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import plainsward.reading.Token;

/** Who stands where in a turn, and what is only feared. A letter a word: see {@link #marked}. */
class MarkedTest {
  /**
   * Words by a letter each: i if, c can, b break, d doer, s stuff, x the act, a full stop, else.
   */
  private static Marked marked(String letters) {
    List<Token> tokens = new ArrayList<>();
    for (char c : letters.toCharArray()) {
      String said = String.valueOf(c);
      Token.Kind kind = c == '.' ? Token.Kind.SIGN : Token.Kind.WORD;
      tokens.add(new Token(kind, said, said, 0, 1, true, ""));
    }
    Marked marked = new Marked(tokens);
    for (int i = 0; i < letters.length(); i++) {
      switch (letters.charAt(i)) {
        case 'i' -> marked.mark(Part.IF, i, i + 1);
        case 'c' -> marked.mark(Part.CAN, i, i + 1);
        case 'b' -> marked.mark(Part.BREAK, i, i + 1);
        case 'd' -> marked.mark(Part.PERSON, i, i + 1);
        case 's' -> marked.mark(Part.STUFF, i, i + 1);
        default -> {}
      }
    }
    return marked;
  }

  private static boolean isSupposed(String letters) {
    return marked(letters).isSupposed(letters.indexOf('x'), letters.indexOf('d'));
  }

  @Test
  void theNextThingIsOfTheSameSentence() {
    assertEquals(2, marked("xws").next(0));
    assertEquals(2, marked("xws").next(2));
    assertEquals(-1, marked("xw.s").next(0));
    assertEquals(-1, marked("xw").next(0));
  }

  @Test
  void aPartIsLookedForInTheWholeSentenceAndNoFurther() {
    assertTrue(marked("swx").hasAround(2, Part.STUFF.bit));
    assertTrue(marked("xws").hasAround(0, Part.STUFF.bit));
    assertTrue(marked("s").hasAround(0, Part.STUFF.bit));
    assertFalse(marked("s.x.s").hasAround(2, Part.STUFF.bit));
    assertFalse(marked("www").hasAround(1, Part.STUFF.bit));
  }

  @Test
  void whatIsSaidPlainlyIsNotSupposed() {
    assertFalse(isSupposed("dx"));
    assertFalse(isSupposed("x"));
    assertFalse(isSupposed("dxi"));
  }

  @Test
  void anIfBeforeTheDoerSupposesIt() {
    assertTrue(isSupposed("idx"));
    assertTrue(isSupposed("iwwwdx"));
    assertFalse(isSupposed("iwwwwdx"));
    assertFalse(isSupposed("i.dx"));
    assertFalse(isSupposed("ibdx"));
  }

  @Test
  void aWordOfCanStandsCloserToTheDoer() {
    assertTrue(isSupposed("cdx"));
    assertTrue(isSupposed("cwdx"));
    assertFalse(isSupposed("cwwdx"));
  }

  @Test
  void betweenDoerAndActEitherSupposesIt() {
    assertTrue(isSupposed("dix"));
    assertTrue(isSupposed("dcx"));
    assertTrue(isSupposed("diwwwx"));
    assertFalse(isSupposed("diwwwwx"));
    assertFalse(isSupposed("di.x"));
  }

  @Test
  void withoutDoerTheyStandCloserToTheAct() {
    assertTrue(isSupposed("ix"));
    assertTrue(isSupposed("cwwx"));
    assertFalse(isSupposed("cwwwx"));
    assertTrue(isSupposed("iwwwx"));
    assertFalse(isSupposed("i.x"));
    assertFalse(isSupposed("ibx"));
  }
}
