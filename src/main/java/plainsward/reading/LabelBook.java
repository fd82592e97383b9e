package plainsward.reading;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import plainsward.trade.Row;

/** What words on a label are about ({@code label-fields}); read when a label is first told. */
final class LabelBook {
  /**
   * What a phrase speaks for.
   *
   * @param field the field of a label
   * @param item its word, or empty
   * @param takes what it wants beside it: {@code time}, {@code speed}, {@code length} or {@code
   *     word} for nothing
   */
  record Cue(String field, String item, String takes) {}

  private static final class Held {
    static final List<Row> ROWS = PhraseColumn.LABEL_FIELDS.rows();
    static final PhraseBook<Cue> BOOK =
        PhraseBook.of(PhraseColumn.LABEL_FIELDS, n -> cue(ROWS.get(n)));
  }

  private LabelBook() {}

  private static Cue cue(Row row) {
    return new Cue(row.text("field"), row.optional("item").orElse(""), row.text("takes"));
  }

  /** The phrases in a text. */
  static List<PhraseBook.Found<Cue>> cues(List<Token> tokens) {
    return Held.BOOK.find(tokens);
  }

  /** The phrases about one of these fields. */
  static List<PhraseBook.Found<Cue>> of(List<PhraseBook.Found<Cue>> cues, String... fields) {
    Set<String> wanted = Set.of(fields);
    return cues.stream()
        .filter(c -> wanted.contains(c.meaning().field()))
        .collect(Collectors.toList());
  }
}
