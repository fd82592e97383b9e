package plainsward.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import plainsward.trade.JsonRows;
import plainsward.trade.MeasureWords;
import plainsward.trade.PackedWords;
import plainsward.trade.Row;
import plainsward.trade.Rows;

/**
 * The words that typos are mended by, from the table {@code typos} and the spellings of measures,
 * in a form that the build can pack.
 */
public final class SpellingWords {
  /** The name under which the build packs the known slips, each with its row. */
  public static final String SLIPS = "typos-slips";

  /** The name under which it packs the words that are known, each with what it is. */
  public static final String KNOWN = "typos-known";

  /** The name of the table of the words that others may be mended to, by first letter. */
  public static final String BY_FIRST = "typos-by-first";

  private static final String TABLE = "typos";
  private static final int SHORTEST = 5;
  private static final int MENDED_TO = 1;
  private static final int ITS_OWN = 2;

  private final List<Row> typos;
  private final PackedWords slips;
  private final PackedWords known;
  private final List<Row> byFirst;

  SpellingWords() {
    boolean packed = Rows.arePacked(KNOWN);
    typos = Rows.of(TABLE);
    slips = new PackedWords(packed ? Rows.packed(SLIPS) : slips(), 0);
    known = new PackedWords(packed ? Rows.packed(KNOWN) : known(), 0);
    byFirst = packed ? Rows.of(BY_FIRST) : byFirst();
  }

  /** The known slips, from the table's own file. */
  public static byte[] slips() {
    Map<String, Integer> slips = new LinkedHashMap<>();
    List<Row> rows = JsonRows.of(TABLE);
    for (int i = 0; i < rows.size(); i++) {
      for (String slip : rows.get(i).texts("slips")) {
        slips.put(slip, i);
      }
    }
    return PackedWords.packed(slips);
  }

  /** The words that are known, from the tables' own files. */
  public static byte[] known() {
    Map<String, Integer> known = new LinkedHashMap<>();
    mendedTo().forEach(word -> known.put(word, MENDED_TO));
    for (Row row : JsonRows.of(TABLE)) {
      row.texts("others").forEach(word -> known.merge(word, ITS_OWN, (a, b) -> a | b));
    }
    return PackedWords.packed(known);
  }

  /** The words that others may be mended to, from the tables' own files. */
  public static List<Row> byFirst() {
    Map<String, List<String>> words = new TreeMap<>();
    for (String word : mendedTo()) {
      words.computeIfAbsent(word.substring(0, 1), k -> new ArrayList<>()).add(word);
    }
    List<Row> rows = new ArrayList<>();
    words.forEach(
        (first, all) ->
            rows.add(
                new Row(
                    BY_FIRST, rows.size(), Map.of("first", first, "words", new Row.Texts(all)))));
    return rows;
  }

  private static TreeSet<String> mendedTo() {
    TreeSet<String> words = new TreeSet<>();
    for (Row row : JsonRows.of(TABLE)) {
      if (row.flag("mend")) {
        words.add(row.text("word"));
      }
    }
    for (String spelling : MeasureWords.spellings()) {
      if (spelling.indexOf(' ') < 0 && spelling.length() >= SHORTEST) {
        words.add(spelling);
      }
    }
    return words;
  }

  /** The word that a known slip stands for, or null. */
  String slip(String word) {
    int row = slips.find(word);
    return row == PackedWords.NONE ? null : typos.get(row).text("word");
  }

  /** Whether others are mended to this word. */
  boolean isMendedTo(String word) {
    int what = known.find(word);
    return what != PackedWords.NONE && (what & MENDED_TO) != 0;
  }

  /** Whether it is a word of its own, however near another. */
  boolean isItsOwn(String word) {
    int what = known.find(word);
    return what != PackedWords.NONE && (what & ITS_OWN) != 0;
  }

  /** The words of this first letter that others may be mended to. */
  List<String> of(char first) {
    for (Row row : byFirst) {
      if (row.text("first").charAt(0) == first) {
        return row.texts("words");
      }
    }
    return List.of();
  }
}
