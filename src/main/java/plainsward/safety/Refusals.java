package plainsward.safety;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plainsward.reading.Facts;
import plainsward.reading.PhraseBook;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.trade.Row;
import plainsward.trade.Rows;

/**
 * The second guard: what must not be done, whatever else the words say. The phrases, what lifts
 * them, and what helps instead stand in the table {@code refusals}.
 */
public final class Refusals {
  private static final List<Row> ROWS = Rows.of("refusals");
  private static final PhraseBook<String> ASKED = new PhraseBook<>();
  private static final Map<String, PhraseBook<String>> LIFTED = new HashMap<>();

  static {
    for (Row row : ROWS) {
      String id = row.text("id");
      row.texts("say").forEach(phrase -> ASKED.add(phrase, id));
      PhraseBook<String> lifted = new PhraseBook<>();
      row.texts("unless").forEach(phrase -> lifted.add(phrase, id));
      LIFTED.put(id, lifted);
    }
  }

  private Refusals() {}

  /** The refusal that the words call for, or nothing. */
  public static Optional<Reply> check(Facts turn) {
    List<String> asked =
        ASKED.find(turn.tokens()).stream().map(PhraseBook.Found::meaning).distinct().toList();
    for (Row row : ROWS) {
      String id = row.text("id");
      if (asked.contains(id) && !LIFTED.get(id).isIn(turn.tokens())) {
        return Optional.of(reply(row));
      }
    }
    return Optional.empty();
  }

  private static Reply reply(Row row) {
    ReplyBuilder reply =
        new ReplyBuilder(Kind.DECLINE).headline(row.text("headline")).say(row.text("instead"));
    row.texts("topics").forEach(reply::topic);
    row.texts("cautions").forEach(id -> reply.caution(Cautions.of(id)));
    return reply.build();
  }
}
