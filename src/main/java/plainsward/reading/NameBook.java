package plainsward.reading;

import java.util.ArrayList;
import java.util.List;
import plainsward.trade.Row;

/** The names of the trade tables as people say them: weeds, grasses, active ingredients ... */
final class NameBook {
  private static final NameBook SHIPPED = new NameBook();

  record Name(NameKind kind, String id) {}

  private final List<Row> rows = PhraseColumn.NAMES.rows();
  private final PhraseBook<Name> book = PhraseBook.of(PhraseColumn.NAMES, n -> name(rows.get(n)));

  private NameBook() {}

  private static Name name(Row row) {
    return new Name(NameKind.valueOf(row.text("kind")), row.text("id"));
  }

  static NameBook shipped() {
    return SHIPPED;
  }

  /** The names in the text, the longer one where two overlap. */
  List<PhraseBook.Found<Name>> names(List<Token> tokens) {
    List<PhraseBook.Found<Name>> kept = new ArrayList<>();
    int end = 0;
    for (PhraseBook.Found<Name> found : book.find(tokens)) {
      if (found.from() >= end) {
        kept.add(found);
        end = found.to();
      }
    }
    return kept;
  }
}
