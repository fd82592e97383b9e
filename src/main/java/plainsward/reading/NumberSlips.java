package plainsward.reading;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import plainsward.trade.MeasureWords;

/**
 * Mends numbers that a slip of the finger broke: letters in place of digits ("l0", "O.5", "4,OOO"),
 * a stray space ("1 .5", "2 ,500"), "1e3". What can't be told for sure ("1, 5 oz", "11/2 oz",
 * "2,5000") becomes {@link Spelling#UNREAD}, so that no half of it is ever taken for the number.
 */
final class NumberSlips extends TokenWalk {
  private static final int MOST_LETTERS = 3;
  private static final int SMALL_DIGITS = 2;
  private static final int GROUP = 3;
  private static final int MOST_UNIT = 4;

  /** Words after which an amount is told, so that a number there is the head of it. */
  private static final Set<String> BEFORE =
      Set.of(
          "at",
          "is",
          "its",
          "says",
          "said",
          "say",
          "rate",
          "use",
          "using",
          "used",
          "about",
          "for",
          "with",
          "put",
          "down",
          "apply",
          "applying",
          "mix",
          "are",
          "around",
          "only",
          "just",
          "of",
          "do",
          "=",
          ":",
          ",",
          ".",
          "on");

  private static final Set<String> PER = Set.of("per", "/", "a", "an", "to", "every", "each");
  private static final Set<String> BELOW = Set.of("2", "3", "4", "8", "16", "32");

  private final List<Token> kept;

  private NumberSlips(List<Token> tokens) {
    super(tokens);
    this.kept = new ArrayList<>(tokens.size());
  }

  /** The tokens with every broken number mended or marked. */
  static List<Token> mended(List<Token> tokens) {
    for (Token token : tokens) {
      if (token.isNumber()) {
        return new NumberSlips(tokens).mended();
      }
    }
    return tokens;
  }

  private List<Token> mended() {
    int i = 0;
    while (i < tokens.size()) {
      int to = isNumber(i) || looksLikeDigits(i) || isPointHead(i) ? slip(i) : 0;
      if (to == 0) {
        kept.add(tokens.get(i));
        to = i + 1;
      }
      i = to;
    }
    return kept;
  }

  /** The place after a slip that begins here, once it is mended or marked; else 0. */
  private int slip(int i) {
    int to = letters(i);
    if (to > 0 || !isNumber(i)) {
      return to;
    }
    to = power(i);
    to = to > 0 ? to : signs(i);
    to = to > 0 ? to : spaced(i);
    return to > 0 ? to : doubtful(i);
  }

  /** "l0", "1O", "O.5", "4,OOO": letters that look like digits in a tight run with digits. */
  private int letters(int i) {
    if (i > 0 && isTight(i) && tokens.get(i - 1).isWord()) {
      return 0;
    }
    if (isOne(i)) {
      return isNumber(i - 1) ? unread(i, i + 3) : read(i, i + 1, "1");
    }
    int to = i;
    boolean digits = false;
    boolean word = false;
    while ((to == i || isTight(to)) && (isNumber(to) || isPoint(to) || isDigitLetters(i, to))) {
      digits |= isNumber(to);
      word |= looksLikeDigits(to);
      to++;
    }
    to -= isPoint(to - 1) ? 1 : 0;
    if (digits && isNoughtsAndUnit(to)) {
      return unread(i, to + 1);
    }
    if (!digits || !word) {
      return 0;
    }
    if (isPower(to)) {
      return unread(i, to + 2);
    }
    String value = digits(i, to);
    boolean plain = isUnit(to) || value.endsWith("00") || i > 0 && PER.contains(word(i - 1));
    if (!plain && word(to - 1).equals("i")) {
      return 0;
    }
    return plain && isWritten(value) ? read(i, to, value.replace(",", "")) : unread(i, to);
  }

  /** The l of "l/2 oz", "l 1/2 oz" and "l acre", the I of "I-1/4 oz". */
  private boolean isOne(int i) {
    if (!looksLikeDigits(i) || tokens.get(i).said().length() > 1) {
      return false;
    }
    if (is(i, "l") && !isNumber(i - 1) && !isTight(i + 1) && isUnit(i + 1)) {
      return true;
    }
    boolean dash = is(i + 1, "-") && isTight(i + 1) && isTight(i + 2);
    boolean hyphen = (dash || is(i + 1, "&")) && isNumber(i + 2);
    boolean mixed = isNumber(i + 1) && !isTight(i + 1) && !isNumber(i - 1);
    int slash = hyphen ? i + 3 : mixed ? i + 2 : i + 1;
    return is(slash, "/")
        && isTight(slash)
        && isTight(slash + 1)
        && BELOW.contains(word(slash + 1));
  }

  /** The l that ends "2l" is a litre's, except where another unit follows. */
  private boolean isDigitLetters(int from, int i) {
    boolean goesOn = isTight(i + 1) && (isNumber(i + 1) || looksLikeDigits(i + 1));
    boolean litre = i > from && is(i, "l") && !goesOn && !isUnit(i + 1);
    return looksLikeDigits(i) && !litre;
  }

  /** "83OOsquare feet": letters like noughts that are one word with the unit. */
  private boolean isNoughtsAndUnit(int i) {
    if (!isTight(i)
        || !tokens.get(i).isWord()
        || word(i).charAt(0) != 'o' && word(i).charAt(0) != 'l') {
      return false;
    }
    String rest = word(i);
    while ((rest.startsWith("o") || rest.equals(word(i)))
        && MeasureWords.shipped().longest(rest) == 0) {
      rest = rest.substring(1);
    }
    return rest.length() < word(i).length() && MeasureWords.shipped().longest(rest) > 0;
  }

  private boolean looksLikeDigits(int i) {
    if (i >= tokens.size() || !tokens.get(i).isWord()) {
      return false;
    }
    String said = tokens.get(i).said();
    for (int k = 0; k < said.length(); k++) {
      if (k >= MOST_LETTERS || "OoIl".indexOf(said.charAt(k)) < 0) {
        return false;
      }
    }
    return true;
  }

  private String digits(int from, int to) {
    StringBuilder digits = new StringBuilder();
    for (int k = from; k < to; k++) {
      digits.append(tokens.get(k).said());
    }
    return digits
        .toString()
        .replace('O', '0')
        .replace('o', '0')
        .replace('I', '1')
        .replace('l', '1');
  }

  /** Whether it is written as a number is: commas before groups of three, one point. */
  private static boolean isWritten(String digits) {
    int point = digits.indexOf('.');
    String whole = point < 0 ? digits : digits.substring(0, point);
    boolean onePoint = point < 0 || digits.indexOf('.', point + 1) < 0;
    boolean lateComma = point >= 0 && digits.indexOf(',', point) >= 0;
    int comma = whole.indexOf(',');
    boolean grouped = comma < 0 || comma <= GROUP && whole.length() % (GROUP + 1) == comma;
    for (int k = comma; grouped && k >= 0 && k < whole.length(); k += GROUP + 1) {
      grouped = whole.charAt(k) == ',' && whole.indexOf(',', k + 1) != k + 1;
    }
    return onePoint && !lateComma && grouped;
  }

  /** "1e3 sq ft": a number and a power of ten, where a unit follows. */
  private int power(int i) {
    boolean form =
        is(i + 1, "e")
            && isTight(i + 1)
            && isNumber(i + 2)
            && isTight(i + 2)
            && word(i + 2).length() == 1;
    if (!form) {
      return 0;
    }
    if (!isUnit(i + 3)) {
      return unread(i, i + 3);
    }
    BigDecimal value = new BigDecimal(word(i)).scaleByPowerOfTen(word(i + 2).charAt(0) - '0');
    return read(i, i + 3, value.toPlainString());
  }

  /** "2,5000 sq ft", "2.5.0 oz", "1..5 oz": figures and signs in a row that make no number. */
  private int signs(int i) {
    if (is(i + 1, "'") && isTight(i + 1) && isTight(i + 2) && isGroup(i + 2)) {
      return read(i, i + 3, word(i) + word(i + 2));
    }
    int to = i + 1;
    boolean point = false;
    while (isPoint(to) && isTight(to) && isTight(to + 1) && isNumber(to + 1)) {
      point |= is(to, ".");
      to += 2;
    }
    if (to > i + 1 && isPower(to)) {
      return unread(i, to + 2);
    }
    if (to == i + 1 || !isUnit(to)) {
      return 0;
    }
    boolean misgrouped =
        to == i + 3 && word(i).length() <= GROUP && word(i + 2).length() > GROUP && !point;
    return point || misgrouped ? unread(i, to) : 0;
  }

  /** Whether three figures stand there, as behind the mark of "10'000". */
  private boolean isGroup(int i) {
    return isNumber(i) && tokens.get(i).said().length() == GROUP && isWhole(i);
  }

  /** "1 .5 oz", "1 . 5 oz", "2 ,500 sq ft", "10 00 sq ft": a slip of the space bar. */
  private int spaced(int i) {
    if (!isWhole(i) || word(i).length() > GROUP) {
      return 0;
    }
    boolean small = word(i).length() <= SMALL_DIGITS;
    if (isNumber(i + 1)) {
      return beforeNumber(i, small);
    }
    boolean power = isPoint(i + 1) && isNumber(i + 2) && isPower(i + 3);
    if (power && small && !isTight(i + 2)) {
      return unread(i, i + 5);
    }
    boolean measured = isUnit(i + 3) || isThousand(i + 3);
    return isPoint(i + 1) && isNumber(i + 2) && measured ? aroundSign(i, small) : 0;
  }

  private boolean isThousand(int i) {
    return is(i, "k") && isTight(i);
  }

  /** Whether the "e3" of "2.5e3" stands there. */
  private boolean isPower(int i) {
    return is(i, "e") && isTight(i) && isNumber(i + 1) && isTight(i + 1);
  }

  /** "1 .5 oz", "10 00 sq ft", "9 700 sq ft". */
  private int beforeNumber(int i, boolean small) {
    String next = tokens.get(i + 1).said();
    if (small && next.startsWith(".")) {
      return isPower(i + 2) ? unread(i, i + 4) : read(i, i + 2, word(i) + word(i + 1));
    }
    boolean noughts = next.startsWith("0") && isWhole(i + 1) && next.length() > 1 && isUnit(i + 2);
    boolean group = small && next.length() == GROUP && isWhole(i + 1) && isSquare(i + 2);
    return noughts || group ? unread(i, i + 2) : 0;
  }

  private int aroundSign(int i, boolean small) {
    boolean apart = !isTight(i + 1);
    boolean told = i == 0 || BEFORE.contains(word(i - 1));
    String next = word(i + 2);
    if (is(i + 1, ".")) {
      boolean join = small && isWhole(i + 2) && (apart || is(i, "0"));
      boolean unsure = small && !apart && !isTight(i + 2) && told;
      return join ? read(i, i + 3, word(i) + "." + next) : unsure ? unread(i, i + 3) : 0;
    }
    if (apart && isTight(i + 2)) {
      return next.length() == GROUP ? read(i, i + 3, word(i) + next) : unread(i, i + 3);
    }
    boolean group = next.length() == GROUP && isSquare(i + 3);
    boolean thousand = isThousand(i + 3);
    boolean listed = isTight(i + 2) || !(told || thousand);
    return !listed && (group || small && (thousand || isTight(i + 3) || isPer(i + 3)))
        ? unread(i, i + 3)
        : 0;
  }

  /** Whether the unit that begins there is per something, with or without a space before "per". */
  private boolean isPer(int i) {
    boolean per = PER.contains(word(i + 1)) || PER.contains(word(i + 2));
    for (int k = i; k <= i + MOST_UNIT; k++) {
      per |= is(k, "/") || word(k).endsWith("per");
    }
    return per;
  }

  /** "25,00 sq ft", "4.000 sq ft", "11/2 oz": what may be one number or quite another. */
  private int doubtful(int i) {
    String said = tokens.get(i).said();
    int point = word(i).indexOf('.');
    if (point > 0 && isSquare(i + 1)) {
      boolean comma = said.indexOf('.') < 0;
      boolean grouped = point <= GROUP && said.length() - point == GROUP + 1 && !said.contains(",");
      return comma || grouped && !said.startsWith("0") ? unread(i, i + 1) : 0;
    }
    boolean slash = is(i + 1, "/") && isTight(i + 1) && isTight(i + 2) && isUnit(i + 3);
    boolean improper =
        slash
            && isWhole(i)
            && word(i).length() <= SMALL_DIGITS
            && BELOW.contains(word(i + 2))
            && Integer.parseInt(word(i)) >= Integer.parseInt(word(i + 2));
    return improper && (i == 0 || !is(i - 1, "/")) ? unread(i, i + 3) : 0;
  }

  private int read(int from, int to, String value) {
    String plain = value.startsWith(".") ? "0" + value : value;
    kept.add(joined(from, to, Token.Kind.NUMBER, plain));
    return to;
  }

  private int unread(int from, int to) {
    kept.add(joined(from, to, Token.Kind.WORD, Spelling.UNREAD));
    return to;
  }

  private Token joined(int from, int to, Token.Kind kind, String norm) {
    StringBuilder said = new StringBuilder(tokens.get(from).said());
    for (int k = from + 1; k < to; k++) {
      said.append(isTight(k) ? "" : " ").append(tokens.get(k).said());
    }
    Token first = tokens.get(from);
    int end = tokens.get(to - 1).end();
    return new Token(kind, said.toString(), norm, first.start(), end, first.apart(), "");
  }

  private boolean isUnit(int i) {
    if (i >= tokens.size()) {
      return false;
    }
    Token token = tokens.get(i);
    String norm = token.norm();
    boolean letter = token.isWord() && norm.length() == 1 && token.apart();
    String unit = norm.endsWith("per") ? norm.substring(0, norm.length() - 3) : norm;
    return !letter && MeasureWords.shipped().longest(unit) > 0;
  }

  private boolean isWhole(int i) {
    String said = tokens.get(i).said();
    return said.indexOf('.') < 0 && said.indexOf(',') < 0;
  }

  private boolean isPointHead(int i) {
    return is(i, ".") && isTight(i + 1) && looksLikeDigits(i + 1);
  }

  private boolean isPoint(int i) {
    return is(i, ".") || is(i, ",");
  }
}
