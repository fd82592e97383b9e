package plainsward.reading;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import plainsward.trade.Row;
import plainsward.trade.Rows;

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
    static final PhraseBook<Cue> BOOK = load();
  }

  private LabelBook() {}

  private static PhraseBook<Cue> load() {
    PhraseBook<Cue> book = new PhraseBook<>();
    for (Row row : Rows.of("label-fields")) {
      Cue cue = new Cue(row.text("field"), row.optional("item").orElse(""), row.text("takes"));
      row.texts("say").forEach(phrase -> book.add(phrase, cue));
    }
    return book;
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
