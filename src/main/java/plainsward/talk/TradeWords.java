package plainsward.talk;

import java.util.List;
import plainsward.reading.PhraseBook;
import plainsward.reading.Token;
import plainsward.trade.Row;
import plainsward.trade.Rows;

/** Words that show that a question is about lawns, weeds or spraying at all. */
final class TradeWords {
  private static final PhraseBook<Boolean> WORDS = new PhraseBook<>();
  private static final PhraseBook<Boolean> OUTSIDE = new PhraseBook<>();

  static {
    for (Row row : Rows.of("outside")) {
      row.texts("say").forEach(phrase -> OUTSIDE.add(phrase, true));
    }
    for (Row row : Rows.of("trade-words")) {
      row.texts("say").forEach(phrase -> WORDS.add(phrase, true));
    }
  }

  private TradeWords() {}

  /** Whether the words ask for something outside the trade. */
  static boolean areOutside(List<Token> tokens) {
    return OUTSIDE.isIn(tokens);
  }

  /** Whether one of them stands in the text, or a name of the trade tables does. */
  static boolean areIn(List<Token> tokens) {
    return tokens.stream().anyMatch(t -> !t.tag().isEmpty()) || WORDS.isIn(tokens);
  }
}
