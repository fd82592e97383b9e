package plainsward.reading;

import java.text.Normalizer;
import java.util.regex.Pattern;

/**
 * Makes typed text plain: no control characters, escape sequences or direction overrides, one kind
 * of quote, dash and fraction. Very long text is cut, because nobody asks a question that long.
 */
public final class Cleaner {
  /** The most characters of a question that are read. */
  public static final int MOST = 10_000;

  /** Made when first wanted: most questions are plain letters. */
  private static final class Odd {
    static final Pattern ESCAPES = Pattern.compile("\u001b\\[[0-9;?]{0,20}[ -/]{0,4}[@-~]");
    static final Pattern HIDDEN =
        Pattern.compile(
            "[\\u0000-\\u0008\\u000b-\\u001f\\u007f-\\u009f\\u200b-\\u200f\\u202a-\\u202e"
                + "\\u2060-\\u206f\\ufeff\\ufff9-\\uffff]");

    /** The thin or unbreakable space that parts thousands: it joins the digits to one number. */
    static final Pattern GROUPED =
        Pattern.compile("(?<=[0-9])[\\u00a0\\u2009\\u202f](?=[0-9]{3}(?![0-9]))");
  }

  private Cleaner() {}

  /** The text as it is read; line breaks stay. */
  public static String clean(String typed) {
    String text = typed.length() > MOST ? typed.substring(0, MOST) : typed;
    if (isPlain(text)) {
      return text;
    }
    text = Odd.ESCAPES.matcher(text).replaceAll("");
    text = Odd.HIDDEN.matcher(text).replaceAll(" ");
    text = parted(text);
    text = Odd.GROUPED.matcher(text).replaceAll("");
    text = Normalizer.normalize(text, Normalizer.Form.NFKC);
    return sameSigns(text);
  }

  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c > 126 || (c < 32 && c != '\n' && c != '\t')) {
        return false;
      }
    }
    return true;
  }

  /** Keeps "1½" from becoming "11/2" when the fraction sign is taken apart. */
  private static String parted(String text) {
    StringBuilder parted = new StringBuilder(text.length() + 8);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean fraction = (c >= '\u00bc' && c <= '\u00be') || (c >= '\u2150' && c <= '\u215e');
      if (fraction && i > 0 && Character.isDigit(text.charAt(i - 1))) {
        parted.append(' ');
      }
      parted.append(c);
      if (fraction) {
        parted.append(' ');
      }
    }
    return parted.toString();
  }

  private static String sameSigns(String text) {
    StringBuilder same = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      same.append(
          switch (c) {
            case '\u2018', '\u2019', '\u02bc', '\u2032', '`', '\u00b4' -> '\'';
            case '\u201c', '\u201d', '\u2033', '\u201e' -> '"';
            case '\u2010', '\u2011', '\u2012', '\u2013', '\u2014', '\u2212' -> '-';
            case '\u00d7', '\u2715', '\u22c5' -> 'x';
            case '\u2044', '\u2215', '\u00f7' -> '/';
            case '\r', '\t' -> ' ';
            default -> c;
          });
    }
    return same.toString();
  }
}
