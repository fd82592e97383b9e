package plainsward.reading;

import java.util.Optional;

/** The ids that the trade tables have for names as people write them. */
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
}
