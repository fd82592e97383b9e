package plainsward.reading;

import java.util.ArrayList;
import java.util.List;
import plainsward.trade.JsonRows;
import plainsward.trade.Row;
import plainsward.trade.Rows;

/**
 * The columns of the trade tables that hold phrases, a {@link PhraseBook} each; the meaning of a
 * phrase is the number of its row.
 */
public enum PhraseColumn {
  /** What phrases ask. */
  ASKS("asks", "say"),
  /** What they say besides. */
  SIGNS("signs", "say"),
  /** What stands after a quantity of a role. */
  AFTER_ROLES("roles", "after"),
  /** What stands before it. */
  BEFORE_ROLES("roles", "before"),
  /** Names of weeds, grasses, products. */
  NAMES(NameRows.TABLE, "say"),
  /** Somebody or something exposed. */
  EXPOSURE("exposure", "say"),
  /** Words beside it that tell who and what. */
  EXPOSURE_WORDS("exposure", "words"),
  /** What must not be done. */
  REFUSALS("refusals", "say"),
  /** What lifts a refusal. */
  LIFTED_REFUSALS("refusals", "unless"),
  /** What calls for a caution. */
  CAUTIONS("caution-cues", "say"),
  /** What makes it needless. */
  LIFTED_CAUTIONS("caution-cues", "unless"),
  /** What is outside the trade. */
  OUTSIDE("outside", "say"),
  /** What is about the trade. */
  TRADE("trade-words", "say"),
  /** How a weed looks. */
  TRAITS("traits", "said"),
  /** What a label tells. */
  LABEL_FIELDS("label-fields", "say"),
  /** What stands in and near a lawn. */
  LAWN_NOTES("lawn-notes", "say");

  /** The name under which the build packs the phrases of all columns. */
  public static final String PACKED = "phrases";

  private final String table;
  private final String column;

  PhraseColumn(String table, String column) {
    this.table = table;
    this.column = column;
  }

  private static final class Shipped {
    static final PhraseTrie TRIE =
        new PhraseTrie(Rows.arePacked(PACKED) ? Rows.packed(PACKED) : packed());
  }

  static PhraseTrie shipped() {
    return Shipped.TRIE;
  }

  /** The rows of the table, in the order that meanings are numbered by. */
  public List<Row> rows() {
    return this != NAMES || Rows.arePacked(table) ? Rows.of(table) : NameRows.made();
  }

  /** The phrases of all columns as {@link #PACKED} bytes, made from the tables' own files. */
  public static byte[] packed() {
    TrieMaker maker = new TrieMaker();
    for (PhraseColumn each : values()) {
      maker.book();
      List<Row> rows = each == NAMES ? NameRows.made() : JsonRows.of(each.table);
      for (int i = 0; i < rows.size(); i++) {
        for (String phrase : each.phrases(rows.get(i))) {
          maker.add(phrase, i);
        }
      }
    }
    return maker.bytes();
  }

  private List<String> phrases(Row row) {
    if (this != TRAITS) {
      return row.texts(column);
    }
    List<String> phrases = new ArrayList<>();
    TraitPhrases.add(phrases, row.text("trait"));
    row.texts(column).forEach(said -> TraitPhrases.add(phrases, said));
    return phrases;
  }
}
