package plainsward.records;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/** Something in a file that is not what was expected, with its place in the file. */
final class FieldFault extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private static final int MOST_SHOWN = 40;

  private final boolean newer;

  private FieldFault(String message, boolean newer) {
    super(message);
    this.newer = newer;
  }

  /** Something else than expected at a path such as {@code rates[0].amount}. */
  static FieldFault at(String path, String expected, Object found) {
    return new FieldFault(place(path) + expected + " was expected, found " + shown(found), false);
  }

  /** Any other fault at a path; what is said ends without a full stop. */
  static FieldFault saying(String path, String what) {
    return new FieldFault(place(path) + what, false);
  }

  /** A file of a later version than this program knows. */
  static FieldFault newer(String path, int found, int known) {
    String what = "version " + found + " was written by a newer Plainsward; this one reads up to ";
    return new FieldFault(place(path) + what + known, true);
  }

  private static String place(String path) {
    return path.isEmpty() ? "" : clean(path) + ": ";
  }

  /** Whether the fault is only that the file is newer than this program. */
  boolean isNewer() {
    return newer;
  }

  /** A value as a sentence names it, short and without control characters. */
  static String shown(Object value) {
    if (value == null) {
      return "nothing";
    }
    if (value instanceof Map<?, ?>) {
      return "an object";
    }
    if (value instanceof List<?>) {
      return "a list";
    }
    if (value instanceof String text) {
      return '"' + shortened(text) + '"';
    }
    return shortened(value instanceof BigDecimal number ? number.toString() : value.toString());
  }

  private static String shortened(String text) {
    int[] first = text.codePoints().limit(MOST_SHOWN).toArray();
    return clean(new String(first, 0, first.length))
        + (text.codePointCount(0, text.length()) > MOST_SHOWN ? "…" : "");
  }

  /** Without what could steer a terminal: a field's name may hold anything. */
  private static String clean(String text) {
    StringBuilder clean = new StringBuilder();
    text.codePoints().forEach(c -> clean.appendCodePoint(Names.isHidden(c) ? '?' : c));
    return clean.toString();
  }
}
