package plainsward.trade;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Unit;

/** The spellings of every unit, from the table {@code measures}. */
public final class MeasureWords {
  private static final MeasureWords SHIPPED = new MeasureWords();
  private final Map<String, MeasureWord> byWords = new HashMap<>();
  private final Map<String, Integer> longest = new HashMap<>();

  private MeasureWords() {
    for (Row row : Rows.of("measures")) {
      Unit us = Unit.of(row.text("code"));
      MeasureWord word =
          new MeasureWord(
              us,
              row.optional("imperial").map(Unit::of).orElse(us),
              row.optional("metric").map(Unit::of).orElse(us),
              row.optional("doubt").orElse(""),
              row.optional("dry").map(Unit::of));
      row.texts("say").forEach(spelling -> add(spelling, word));
    }
  }

  private void add(String spelling, MeasureWord word) {
    String key = key(spelling);
    byWords.put(key, word);
    int space = key.indexOf(' ');
    String first = space < 0 ? key : key.substring(0, space);
    int words = 1;
    for (; space >= 0; space = key.indexOf(' ', space + 1)) {
      words++;
    }
    longest.put(first, Math.max(longest(first), words));
  }

  /** A spelling as it is looked up: its words and signs with one space between. */
  private static String key(String spelling) {
    StringBuilder spaced = new StringBuilder();
    String text = spelling.toLowerCase(Locale.ROOT);
    int before = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      int kind = kind(c);
      if (kind != 0 && kind != before && spaced.length() > 0) {
        spaced.append(' ');
      }
      if (kind != 0) {
        spaced.append(c);
      }
      before = kind;
    }
    return spaced.toString();
  }

  private static int kind(char c) {
    boolean gap = c == '.' || Character.isWhitespace(c);
    return gap ? 0 : Character.isLetter(c) ? 1 : Character.isDigit(c) ? 2 : 3 + c;
  }

  /** The table that ships with the program. */
  public static MeasureWords shipped() {
    return SHIPPED;
  }

  /** The unit of these words with one space between, such as {@code "sq ft"}. */
  public Optional<MeasureWord> find(String words) {
    return Optional.ofNullable(byWords.get(words));
  }

  /** The number of words and signs of the longest spelling that begins so; 0 if none does. */
  public int longest(String first) {
    return longest.getOrDefault(first, 0);
  }

  /** All spellings, for completing and for correcting typos. */
  public Set<String> spellings() {
    return byWords.keySet();
  }
}
