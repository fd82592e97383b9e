package plainsward.safety;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Facts;
import plainsward.reading.PhraseBook;
import plainsward.reading.PhraseColumn;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.trade.Row;

/**
 * The second guard: what must not be done, whatever else the words say. The phrases, what lifts
 * them, and what helps instead stand in the table {@code refusals}.
 */
public final class Refusals {
  private static final List<Row> ROWS = PhraseColumn.REFUSALS.rows();
  private static final PhraseBook<Integer> ASKED = PhraseBook.of(PhraseColumn.REFUSALS, n -> n);
  private static final PhraseBook<Integer> LIFTED =
      PhraseBook.of(PhraseColumn.LIFTED_REFUSALS, n -> n);

  private Refusals() {}

  /** The refusal that the words call for, or nothing. */
  public static Optional<Reply> check(Facts turn) {
    Set<Integer> asked = ASKED.meaningsIn(turn.tokens());
    if (asked.isEmpty()) {
      return Optional.empty();
    }
    asked.removeAll(LIFTED.meaningsIn(turn.tokens()));
    return asked.stream().min(Integer::compare).map(row -> reply(ROWS.get(row)));
  }

  private static Reply reply(Row row) {
    ReplyBuilder reply =
        new ReplyBuilder(Kind.DECLINE).headline(row.text("headline")).say(row.text("instead"));
    row.texts("topics").forEach(reply::topic);
    row.texts("cautions").forEach(id -> reply.caution(Cautions.of(id)));
    return reply.build();
  }
}
