package plainsward.talk;

import java.util.List;
import plainsward.reading.PhraseBook;
import plainsward.reading.PhraseColumn;
import plainsward.reading.Token;

/** Words that show that a question is about lawns, weeds or spraying at all. */
final class TradeWords {
  private static final PhraseBook<Integer> WORDS = PhraseBook.of(PhraseColumn.TRADE, n -> n);
  private static final PhraseBook<Integer> OUTSIDE = PhraseBook.of(PhraseColumn.OUTSIDE, n -> n);

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
