package plainsward.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plainsward.trade.Row;

/** What phrases ask ({@code asks}) and what else they say ({@code signs}). */
final class AskBook {
  private static final AskBook SHIPPED = new AskBook();

  private record Cue(String topic, String want, int weight) {}

  private record Wish(String topic, String want, String clause) {}

  private final List<Row> askRows = PhraseColumn.ASKS.rows();
  private final List<Row> signRows = PhraseColumn.SIGNS.rows();
  private final PhraseBook<Cue> asks = PhraseBook.of(PhraseColumn.ASKS, n -> cue(askRows.get(n)));
  private final PhraseBook<String> signs =
      PhraseBook.of(PhraseColumn.SIGNS, n -> signRows.get(n).text("sign"));

  private AskBook() {}

  private static Cue cue(Row row) {
    return new Cue(
        row.text("topic"),
        row.optional("want").orElse(""),
        row.number("weight").orElseThrow().intValue());
  }

  static AskBook shipped() {
    return SHIPPED;
  }

  /** What is asked, loudest first; of one topic the loudest phrase with a wanted figure counts. */
  List<Ask> asks(String text, List<Token> tokens) {
    Map<Wish, Ask> loudest = new HashMap<>();
    Clauses clauses = new Clauses(text, tokens);
    for (PhraseBook.Found<Cue> found : asks.find(tokens)) {
      Cue cue = found.meaning();
      String clause = clauses.around(found.from());
      Ask ask = new Ask(cue.topic, cue.want, cue.weight, found.from(), clause);
      loudest.merge(
          new Wish(cue.topic, cue.want, clause), ask, (a, b) -> a.weight() >= b.weight() ? a : b);
    }
    List<Ask> sorted = new ArrayList<>(loudest.values());
    sorted.sort(AskBook::byLoudness);
    return sorted;
  }

  private static int byLoudness(Ask one, Ask other) {
    if (one.weight() != other.weight()) {
      return Integer.compare(other.weight(), one.weight());
    }
    return one.from() != other.from()
        ? Integer.compare(one.from(), other.from())
        : one.topic().compareTo(other.topic());
  }

  /** What the words say besides. */
  Set<String> signs(List<Token> tokens) {
    return signs.meaningsIn(tokens);
  }
}
