package plainsward.safety;

import java.util.List;
import plainsward.reading.Token;

/** The words of a turn with the parts that each may play, and who stands where among them. */
final class Marked {
  private static final long DOERS =
      Part.set(
          Part.PERSON,
          Part.SELF,
          Part.OTHER,
          Part.ANIMAL,
          Part.BODY,
          Part.EYE,
          Part.MOUTH,
          Part.PLANT,
          Part.MACHINE,
          Part.SAFE,
          Part.FISH);
  private static final long NOUNS =
      Part.set(
          Part.STUFF,
          Part.GEAR,
          Part.IT,
          Part.PLANT,
          Part.SAFE,
          Part.FOOD,
          Part.BODY,
          Part.EYE,
          Part.MOUTH,
          Part.CLOTHES,
          Part.THING,
          Part.PERSON,
          Part.ANIMAL);

  /** How far from who does it a word stands that takes it back. */
  private static final int NEAR = 4;

  private final List<Token> tokens;
  private final long[] parts;

  Marked(List<Token> tokens) {
    this.tokens = tokens;
    this.parts = new long[tokens.size()];
  }

  void mark(Part part, int from, int to) {
    for (int i = from; i < to; i++) {
      parts[i] |= part.bit;
    }
  }

  /** Whether a word may play one of the parts; none does outside the turn. */
  boolean is(int at, long wanted) {
    return at >= 0 && at < parts.length && (parts[at] & wanted) != 0;
  }

  /** Whether a sentence ends here, or the turn. */
  boolean ends(int at) {
    return at < 0 || at >= parts.length || tokens.get(at).endsSentence();
  }

  /** The nearest word of these parts before a place in its sentence, at most so far; else -1. */
  int before(int at, long wanted, int most) {
    for (int i = at - 1; i >= at - most && !ends(i); i--) {
      if (is(i, wanted)) {
        return i;
      }
    }
    return -1;
  }

  /** Who does or feels it: the nearest named before, unless behind "with", "by" and the like. */
  int doer(int at) {
    for (int i = at - 1; !ends(i); i--) {
      if (is(i, DOERS) && !isBehindPreposition(i)) {
        return i;
      }
    }
    return -1;
  }

  private boolean isBehindPreposition(int at) {
    int i = at - 1;
    while (is(i, Part.OWN.bit | Part.GEAR.bit)) {
      i--;
    }
    return is(i, Part.PREP.bit);
  }

  /** The first thing named from a place on in its sentence; else -1. */
  int next(int from) {
    for (int i = from; !ends(i); i++) {
      if (is(i, NOUNS)) {
        return i;
      }
    }
    return -1;
  }

  /** Whether the sentence of a place has a word of these parts. */
  boolean hasAround(int at, long wanted) {
    for (int i = at; !ends(i); i--) {
      if (is(i, wanted)) {
        return true;
      }
    }
    for (int i = at + 1; !ends(i); i++) {
      if (is(i, wanted)) {
        return true;
      }
    }
    return false;
  }

  /** Whether it is only feared, asked or denied: "if she drank it", "no rash", "make him sick". */
  boolean isSupposed(int act, int doer) {
    int first = doer < 0 ? act : doer;
    for (int i = act - 1; i > doer && i >= act - NEAR && !is(i, Part.BREAK.bit); i--) {
      if (ends(i)) {
        return false;
      }
      if (is(i, Part.IF.bit | Part.CAN.bit) && i + (doer < 0 ? NEAR - 1 : NEAR) >= act) {
        return true;
      }
    }
    for (int i = first - 1; i >= first - NEAR && !ends(i) && !is(i, Part.BREAK.bit); i--) {
      if (is(i, Part.IF.bit) || is(i, Part.CAN.bit) && doer >= 0 && i + 2 >= first) {
        return true;
      }
    }
    return false;
  }
}
