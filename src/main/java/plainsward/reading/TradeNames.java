package plainsward.reading;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plainsward.trade.Rows;

/** The names of the trade tables: as people write them, and their ids. */
public final class TradeNames {
  private TradeNames() {}

  /** The id of a grass that a text names, or nothing. */
  public static Optional<String> grass(String text) {
    return NameBook.shipped().names(Tokenizer.tokens(Cleaner.clean(text))).stream()
        .map(PhraseBook.Found::meaning)
        .filter(name -> name.kind() == NameKind.GRASS)
        .map(NameBook.Name::id)
        .findFirst();
  }

  /** All names of weeds, grasses, active ingredients, products and wetting agents, each once. */
  public static List<String> all() {
    return Stream.of("weeds", "grasses", "actives", "kinds", "adjuvants")
        .flatMap(table -> Rows.of(table).stream())
        .map(row -> row.text("name"))
        .distinct()
        .toList();
  }
}
