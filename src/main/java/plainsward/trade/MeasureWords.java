package plainsward.trade;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Unit;

/** The spellings of every unit, from the table {@code measures}. */
public final class MeasureWords {
  /** The name under which the build packs the spellings with their rows. */
  public static final String PACKED_SPELLINGS = "measure-spellings";

  /** The name under which it packs first words with how many follow at most. */
  public static final String PACKED_FIRSTS = "measure-firsts";

  private static final String TABLE = "measures";
  private static final MeasureWords SHIPPED = new MeasureWords();

  private final List<Row> rows = Rows.of(TABLE);
  private final MeasureWord[] made = new MeasureWord[rows.size()];
  private final PackedWords spellings;
  private final PackedWords firsts;

  private MeasureWords() {
    boolean packed = Rows.arePacked(PACKED_SPELLINGS);
    spellings = words(packed ? Rows.packed(PACKED_SPELLINGS) : PackedWords.packed(rowOf(rows)));
    firsts = words(packed ? Rows.packed(PACKED_FIRSTS) : PackedWords.packed(longest(rows)));
  }

  private static PackedWords words(byte[] bytes) {
    return new PackedWords(bytes, 0);
  }

  /** The spellings with their rows, from the table's own file, for the build to keep. */
  public static byte[] packedSpellings() {
    return PackedWords.packed(rowOf(JsonRows.of(TABLE)));
  }

  /** The first words with how many follow at most, from the table's own file. */
  public static byte[] packedFirsts() {
    return PackedWords.packed(longest(JsonRows.of(TABLE)));
  }

  /** All spellings as they are looked up, from the table's own file. */
  public static Set<String> spellings() {
    return rowOf(JsonRows.of(TABLE)).keySet();
  }

  private static Map<String, Integer> rowOf(List<Row> rows) {
    Map<String, Integer> all = new LinkedHashMap<>();
    for (int i = 0; i < rows.size(); i++) {
      for (String spelling : rows.get(i).texts("say")) {
        all.put(key(spelling), i);
      }
    }
    return all;
  }

  private static Map<String, Integer> longest(List<Row> rows) {
    Map<String, Integer> longest = new HashMap<>();
    for (String spelling : rowOf(rows).keySet()) {
      String[] words = spelling.split(" ");
      longest.merge(words[0], words.length, Math::max);
    }
    return longest;
  }

  private static MeasureWord word(Row row) {
    Unit us = Unit.of(row.text("code"));
    return new MeasureWord(
        us,
        row.optional("imperial").map(Unit::of).orElse(us),
        row.optional("metric").map(Unit::of).orElse(us),
        row.optional("doubt").orElse(""),
        row.optional("dry").map(Unit::of));
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
    int row = spellings.find(words);
    return row == PackedWords.NONE ? Optional.empty() : Optional.of(word(row));
  }

  /** Two threads may both make a word; they are alike, and one of them stays. */
  private MeasureWord word(int row) {
    MeasureWord word = made[row];
    if (word == null) {
      word = word(rows.get(row));
      made[row] = word;
    }
    return word;
  }

  /** The number of words and signs of the longest spelling that begins so; 0 if none does. */
  public int longest(String first) {
    return Math.max(0, firsts.find(first));
  }
}
