package plainsward.reading;

import java.util.ArrayList;
import java.util.List;
import plainsward.trade.Row;
import plainsward.trade.Rows;

/** The names of the trade tables as people say them: weeds, grasses, active ingredients ... */
final class NameBook {
  private static final NameBook SHIPPED = new NameBook();

  record Name(NameKind kind, String id) {}

  private final PhraseBook<Name> book = new PhraseBook<>();

  private NameBook() {
    boolean packed = Rows.arePacked(NameRows.TABLE);
    for (Row row : packed ? Rows.of(NameRows.TABLE) : NameRows.made()) {
      Name name = new Name(NameKind.valueOf(row.text("kind")), row.text("id"));
      for (String phrase : row.texts("say")) {
        book.add(phrase, name);
      }
    }
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
