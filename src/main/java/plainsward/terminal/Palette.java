package plainsward.terminal;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Map;

/**
 * What a screen can show: colours or none, all characters or ASCII alone.
 *
 * @param isColourful whether there are colours
 * @param isAscii whether only ASCII can be shown
 * @param isDrawn whether there are drawings
 */
record Palette(boolean isColourful, boolean isAscii, boolean isDrawn) {
  private static final Map<Integer, String> NEAREST =
      Map.ofEntries(
          Map.entry((int) '×', "x"),
          Map.entry((int) '÷', "/"),
          Map.entry((int) '−', "-"),
          Map.entry((int) '–', "-"),
          Map.entry((int) '—', "-"),
          Map.entry((int) '→', "->"),
          Map.entry((int) '√', "sqrt"),
          Map.entry((int) 'π', "pi"),
          Map.entry((int) '≤', "<="),
          Map.entry((int) '≥', ">="),
          Map.entry((int) '≈', "~"),
          Map.entry((int) '±', "+/-"),
          Map.entry((int) '²', "2"),
          Map.entry((int) '³', "3"),
          Map.entry((int) '°', " deg "),
          Map.entry((int) '½', "1/2"),
          Map.entry((int) '¼', "1/4"),
          Map.entry((int) '¾', "3/4"),
          Map.entry((int) '£', "GBP "),
          Map.entry((int) '€', "EUR "),
          Map.entry((int) '‘', "'"),
          Map.entry((int) '’', "'"),
          Map.entry((int) '“', "\""),
          Map.entry((int) '”', "\""),
          Map.entry((int) '…', "..."),
          Map.entry((int) '•', "*"),
          Map.entry((int) '·', "*"),
          Map.entry(0xa0, " "),
          Map.entry(0x202f, " "));

  /** What the terminal around can show; nothing but words where that was chosen. */
  static Palette of(Surroundings around, boolean plain) {
    boolean ascii = !around.charset().equals(StandardCharsets.UTF_8);
    return new Palette(around.isColourful() && !plain, ascii, !plain);
  }

  /** The text in a look; the only place that makes escape sequences for replies. */
  String painted(Line.Look look, String text) {
    String code = isColourful && !text.isBlank() ? code(look) : "";
    return code.isEmpty() ? text : "\u001b[" + code + "m" + text + "\u001b[0m";
  }

  /**
   * Bold, and colours of the middle that stand out from black as well as from white (tested by the
   * contrast formula of WCAG 2.1).
   */
  static String code(Line.Look look) {
    return switch (look) {
      case STRONG -> "1";
      case ALARM -> "1;38;5;160";
      case TITLE -> "1;38;5;30";
      case CAUTION -> "38;5;130";
      case QUIET, HINT -> "38;5;243";
      case PLAIN, DRAWN -> "";
    };
  }

  /** What draws, on a screen of so many columns, or tells in words where nothing is drawn. */
  Pen pen(int width) {
    return isDrawn ? new Pen(new Ink(isAscii), width) : Pen.WORDS;
  }

  /** The text in characters that the screen has. */
  String shown(String text) {
    if (!isAscii || text.chars().allMatch(c -> c < 0x80)) {
      return text;
    }
    StringBuilder ascii = new StringBuilder();
    text.codePoints().forEach(c -> ascii.append(nearest(c)));
    return ascii.toString();
  }

  private static String nearest(int c) {
    if (c < 0x80) {
      return Character.toString(c);
    }
    String near = NEAREST.get(c);
    if (near != null) {
      return near;
    }
    String bare = Normalizer.normalize(Character.toString(c), Normalizer.Form.NFKD);
    String ascii = bare.replaceAll("[^\\x20-\\x7e]", "");
    return ascii.isEmpty() ? "?" : ascii;
  }
}
