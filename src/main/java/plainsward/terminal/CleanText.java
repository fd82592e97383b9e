package plainsward.terminal;

import java.util.regex.Pattern;

/**
 * Takes out of a text whatever could steer a terminal or turn the reading direction: control
 * characters, whole escape sequences, direction overrides and other invisible format characters.
 * Half surrogate pairs become U+FFFD.
 */
final class CleanText {
  /**
   * Escape sequences: CSI with its parameters, the string kinds up to their end, the short ones.
   */
  private static final class Escapes {
    static final Pattern ALL =
        Pattern.compile(
            "(?:\\x1b\\[|\\x9b)[0-?]*[ -/]*[@-~]?"
                + "|(?:\\x1b[\\]PX^_]|[\\x9d\\x90\\x98\\x9e\\x9f])[^\\x07\\x1b\\x9c\\n]*"
                + "(?:\\x07|\\x1b\\\\|\\x9c)?"
                + "|\\x1b[ -/]*[0-~]?");
  }

  private CleanText() {}

  /** One line: whatever would break it becomes a space. */
  static String line(String text) {
    return cleaned(text, false);
  }

  /** Paragraphs: line ends are kept, as {@code \n}. */
  static String paragraphs(String text) {
    return cleaned(text, true);
  }

  private static String cleaned(String text, boolean keepsLines) {
    if (isClean(text, keepsLines)) {
      return text;
    }
    String bare = isEscaped(text) ? Escapes.ALL.matcher(text).replaceAll("") : text;
    StringBuilder clean = new StringBuilder(bare.length());
    int i = 0;
    while (i < bare.length()) {
      int c = bare.codePointAt(i);
      i += Character.charCount(c);
      boolean crlf = c == '\r' && i < bare.length() && bare.charAt(i) == '\n';
      if (!crlf) {
        add(clean, c, keepsLines);
      }
    }
    return clean.toString();
  }

  private static void add(StringBuilder clean, int c, boolean keepsLines) {
    if (isBreak(c)) {
      clean.append(keepsLines ? '\n' : ' ');
    } else if (c == '\t') {
      clean.append(' ');
    } else if (Character.getType(c) == Character.SURROGATE) {
      clean.append('\uFFFD');
    } else if (!isHidden(c)) {
      clean.appendCodePoint(c);
    }
  }

  private static boolean isBreak(int c) {
    return c == '\n' || c == '\r' || c == 0x85 || c == 0x2028 || c == 0x2029;
  }

  private static boolean isHidden(int c) {
    int type = Character.getType(c);
    return type == Character.CONTROL || type == Character.FORMAT;
  }

  private static boolean isEscaped(String text) {
    return text.chars().anyMatch(c -> c == 0x1b || c >= 0x80 && c < 0xa0);
  }

  private static boolean isClean(String text, boolean keepsLines) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean plain = c >= ' ' && c < 0x7f || c == '\n' && keepsLines;
      if (!plain && (c < 0xa0 || isDoubtful(c))) {
        return false;
      }
    }
    return true;
  }

  private static boolean isDoubtful(char c) {
    return Character.isSurrogate(c) || isHidden(c) || isBreak(c);
  }
}
