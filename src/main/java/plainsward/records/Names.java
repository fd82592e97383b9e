package plainsward.records;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The user's own names: what makes two of them the same, and the file name of one. */
final class Names {
  /** The most characters of a name. */
  static final int LONGEST = 80;

  private static final int LONGEST_FILE_NAME = 60;
  private static final Set<String> RESERVED = Set.of("con", "prn", "aux", "nul");

  private Names() {}

  /** Names with the same key are the same name: case and spacing don't count. */
  static String key(String name) {
    String key = name.strip().toLowerCase(Locale.ROOT);
    return isOddlySpaced(key) ? key.replaceAll("\\s+", " ") : key;
  }

  /** Whether there is white space but single spaces; told without an expression to be made. */
  private static boolean isOddlySpaced(String key) {
    for (int i = 0; i < key.length(); i++) {
      char c = key.charAt(i);
      if (c >= '\t' && c <= '\r' || c == ' ' && i > 0 && key.charAt(i - 1) == ' ') {
        return true;
      }
    }
    return false;
  }

  /** Whether a text can be a name: not blank, not too long, nothing hidden in it. */
  static boolean isName(String text) {
    if (text.isBlank() || text.length() > LONGEST) {
      return false;
    }
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      if (isHidden(text.codePointAt(i))) {
        return false;
      }
    }
    return true;
  }

  /** A name that is fit to be kept; others are a caller's mistake. */
  static String checked(String what, String name) {
    String clean = whole(name).strip();
    if (!isName(clean)) {
      throw new IllegalArgumentException(
          what + ": a name of 1 to " + LONGEST + " visible characters was expected");
    }
    return clean;
  }

  /** A remark that is fit to be kept: a blank one is none. */
  static Optional<String> remark(Optional<String> text) {
    return text.map(t -> whole(t).strip()).filter(t -> !t.isEmpty());
  }

  /** The text with halves of broken characters replaced, as a UTF-8 file would hold it. */
  private static String whole(String text) {
    return new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
  }

  /** Control characters, direction overrides and the like, which must not reach a screen. */
  static boolean isHidden(int c) {
    int type = Character.getType(c);
    return type == Character.CONTROL
        || type == Character.FORMAT
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR
        || type == Character.SURROGATE;
  }

  /**
   * A file name without its ending: plain letters, digits and hyphens, because every system can
   * store these whatever its locale.
   */
  static String fileName(String name) {
    String plain = Normalizer.normalize(key(name), Normalizer.Form.NFD);
    String slug = plain.replaceAll("\\p{M}", "").replaceAll("[^a-z0-9]+", "-");
    slug = slug.replaceAll("^-|-$", "");
    slug = slug.substring(0, Math.min(slug.length(), LONGEST_FILE_NAME));
    if (slug.isEmpty()) {
      return "unnamed";
    }
    boolean taken = RESERVED.contains(slug) || slug.matches("(com|lpt)[0-9]");
    return taken ? slug + "-" : slug;
  }
}
