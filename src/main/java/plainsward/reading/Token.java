package plainsward.reading;

/**
 * A word, a number or a sign, with its place in the cleaned text.
 *
 * @param kind which of the three
 * @param said as it stands in the text
 * @param norm lower-case, without apostrophes, typos of trade words mended
 * @param start the first character's place
 * @param end the place after the last character
 * @param apart whether white space (or the start) stands before it
 * @param tag the kind of name that it is part of ({@code weed}, {@code adjuvant} ...), or empty
 */
public record Token(
    Kind kind, String said, String norm, int start, int end, boolean apart, String tag) {

  /** Words, numbers in digits, and single signs. */
  public enum Kind {
    /** Letters. */
    WORD,
    /** Digits, as {@code 1,000} or {@code .75}. */
    NUMBER,
    /** One sign, as {@code /} or {@code ,}. */
    SIGN
  }

  /** Whether it is this word or sign. */
  public boolean is(String wanted) {
    return norm.equals(wanted);
  }

  /** Whether it is a number in digits. */
  public boolean isNumber() {
    return kind == Kind.NUMBER;
  }

  /** Whether it is a word. */
  public boolean isWord() {
    return kind == Kind.WORD;
  }

  /** Whether a sentence ends here. */
  public boolean endsSentence() {
    return kind == Kind.SIGN && (is(".") || is("?") || is("!") || is("\n") || is(";"));
  }

  /** The token with another normal form. */
  public Token as(String normal) {
    return new Token(kind, said, normal, start, end, apart, tag);
  }

  /** The token marked as part of a name. */
  public Token tagged(String name) {
    return new Token(kind, said, norm, start, end, apart, name);
  }
}
