package plainsward.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Cuts cleaned text into words, numbers and signs. */
final class Tokenizer {
  /** Expressions are made when first wanted: few numbers have a point and a comma. */
  private static final class Foreign {
    /** "1.500,50", as written on the Continent, and "12,34,567.89", as written in India. */
    static final Pattern NUMBER =
        Pattern.compile(
            "[0-9]{1,3}(\\.[0-9]{3})+,[0-9]{1,2}(?![0-9,.]?[0-9])"
                + "|[0-9]{1,2}(,[0-9]{2})+,[0-9]{3}\\.[0-9]+");
  }

  private final String text;
  private final List<Token> tokens = new ArrayList<>();
  private int at;
  private boolean apart = true;

  private Tokenizer(String text) {
    this.text = text;
  }

  static List<Token> tokens(String text) {
    Tokenizer tokenizer = new Tokenizer(text);
    while (tokenizer.at < text.length()) {
      tokenizer.next();
    }
    return tokenizer.tokens;
  }

  private void next() {
    char c = text.charAt(at);
    if (c == ' ' || c == '\t') {
      apart = true;
      at++;
    } else if (startsAddress()) {
      address();
    } else if (startsNumber()) {
      number();
    } else if (Character.isLetter(c)) {
      word();
    } else {
      add(Token.Kind.SIGN, at + 1);
    }
  }

  private char at(int index) {
    return index < text.length() && index >= 0 ? text.charAt(index) : ' ';
  }

  private boolean startsAddress() {
    return text.charAt(at) == 'h'
        && (text.startsWith("http://", at) || text.startsWith("https://", at));
  }

  /** The address of a page is one word: its digits count nothing. */
  private void address() {
    int end = at;
    while (end < text.length() && !Character.isWhitespace(text.charAt(end))) {
      end++;
    }
    add(Token.Kind.WORD, end);
  }

  private boolean startsNumber() {
    char c = text.charAt(at);
    if (isDigit(c)) {
      return true;
    }
    return c == '.'
        && isDigit(at(at + 1))
        && !isDigit(at(at - 1))
        && !Character.isLetter(at(at - 1));
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** The end of a number with both points and commas that stands here, or 0. */
  private int foreign() {
    int end = at;
    boolean point = false;
    boolean comma = false;
    for (char c = text.charAt(end); isDigit(c) || c == '.' || c == ','; c = at(++end)) {
      point |= c == '.';
      comma |= c == ',';
    }
    if (!point || !comma) {
      return 0;
    }
    Matcher number = Foreign.NUMBER.matcher(text).region(at, text.length());
    return number.lookingAt() ? number.end() : 0;
  }

  private void number() {
    int end = chemical();
    if (end > 0) {
      add(Token.Kind.WORD, end);
      return;
    }
    end = foreign();
    if (end > 0) {
      add(Token.Kind.NUMBER, end);
      return;
    }
    end = at;
    while (isDigit(at(end))) {
      end++;
    }
    if (end > at && isDotted(end)) {
      add(Token.Kind.NUMBER, end);
      return;
    }
    while (at(end) == ',' && threeDigits(end + 1)) {
      end += 4;
    }
    end = spaced(end);
    boolean point = at(end) == '.' || (at(end) == ',' && decimalComma(end));
    if (point && isDigit(at(end + 1))) {
      end++;
      while (isDigit(at(end))) {
        end++;
      }
    }
    add(Token.Kind.NUMBER, end);
  }

  /** Whether it is one of three or more numbers parted by points, as in "192.168.1.2". */
  private boolean isDotted(int end) {
    boolean last = at(at - 1) == '.' && isDigit(at(at - 2));
    if (at(end) != '.' || !isDigit(at(end + 1))) {
      return last;
    }
    int next = end + 1;
    while (isDigit(at(next))) {
      next++;
    }
    return last || at(next) == '.' && isDigit(at(next + 1));
  }

  /** "40 000", "2 500 000": thousands parted by spaces, where they can't be a list of numbers. */
  private int spaced(int first) {
    int end = first;
    while (at(end) == ' ' && threeDigits(end + 1)) {
      end += 4;
    }
    boolean sure = end > first && text.startsWith("000", end - 3);
    boolean grouped = first - at <= 3 && text.charAt(at) != '0';
    return sure && grouped ? end : first;
  }

  private boolean threeDigits(int from) {
    return isDigit(at(from))
        && isDigit(at(from + 1))
        && isDigit(at(from + 2))
        && !isDigit(at(from + 3));
  }

  /** "1,5" or "0,75": a decimal comma, where no thousands comma fits and no list goes on. */
  private boolean decimalComma(int comma) {
    int end = comma + 1;
    while (isDigit(at(end))) {
      end++;
    }
    int digits = end - comma - 1;
    boolean listed = at(end) == ',' || at(at - 1) == ',' && isDigit(at(at - 2));
    return digits >= 1 && digits <= 2 && !listed && comma - at <= 3;
  }

  /** Where an active ingredient's name that begins with a digit ends ("2,4-D"), or 0. */
  private int chemical() {
    if (!text.startsWith("2,4", at)
        && !text.startsWith("2.4", at)
        && !text.startsWith("2 4", at)
        && !text.startsWith("24", at)) {
      return 0;
    }
    int end = at + (text.startsWith("24", at) ? 2 : 3);
    if (at(end) == '-' || at(end) == ' ') {
      end++;
    }
    if (at(end) != 'd' && at(end) != 'D') {
      return 0;
    }
    end++;
    return Character.isLetter(at(end)) ? 0 : end;
  }

  private void word() {
    int end = at;
    while (Character.isLetter(at(end)) || (at(end) == '\'' && Character.isLetter(at(end + 1)))) {
      end++;
    }
    add(Token.Kind.WORD, end);
  }

  private void add(Token.Kind kind, int end) {
    String said = text.substring(at, end);
    String norm = said.toLowerCase(Locale.ROOT);
    if (kind == Token.Kind.WORD) {
      norm = isDigit(norm.charAt(0)) ? "2,4-d" : norm.replace("'", "");
    } else if (kind == Token.Kind.NUMBER) {
      norm = number(norm);
    }
    tokens.add(new Token(kind, said, norm, at, end, apart, ""));
    at = end;
    apart = kind == Token.Kind.SIGN && said.equals("\n");
  }

  private static String number(String digits) {
    int point = digits.indexOf('.');
    if (point >= 0 && digits.indexOf(',') > point) {
      return digits.replace(".", "").replace(',', '.');
    }
    int comma = digits.lastIndexOf(',');
    boolean decimal = comma >= 0 && digits.length() - comma - 1 != 3 && digits.indexOf('.') < 0;
    String joined = digits.replace(" ", "");
    return decimal ? joined.replace(',', '.') : joined.replace(",", "");
  }
}
