package plainsward.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import plainsward.reading.PhraseBook;
import plainsward.reading.PhraseColumn;
import plainsward.reading.Token;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.trade.Row;

/**
 * The third guard: an answer carries the cautions that its own matter plainly calls for, by its
 * topic or by the words of the question. The cues stand in the table {@code caution-cues}.
 */
public final class CautionGuard {
  private static final List<Row> ROWS = PhraseColumn.CAUTIONS.rows();
  private static final PhraseBook<Integer> WORDS = PhraseBook.of(PhraseColumn.CAUTIONS, n -> n);
  private static final PhraseBook<Integer> UNLESS =
      PhraseBook.of(PhraseColumn.LIFTED_CAUTIONS, n -> n);

  private CautionGuard() {}

  /** The reply with the cautions that it calls for; only answers and questions back get them. */
  public static Reply guarded(Reply reply, List<Token> question) {
    if (reply.kind() != Kind.ANSWER && reply.kind() != Kind.ASK) {
      return reply;
    }
    List<String> found = new ArrayList<>();
    Set<Integer> said = WORDS.meaningsIn(question);
    Set<Integer> lifted = UNLESS.meaningsIn(question);
    for (int i = 0; i < ROWS.size(); i++) {
      if (applies(i, reply, said) && !lifted.contains(i)) {
        found.add(ROWS.get(i).text("caution"));
      }
    }
    ReplyBuilder guarded = ReplyBuilder.from(reply);
    found.forEach(id -> guarded.caution(Cautions.of(id)));
    return guarded.build();
  }

  private static boolean applies(int i, Reply reply, Set<Integer> said) {
    Row row = ROWS.get(i);
    String main = reply.topics().isEmpty() ? "" : reply.topics().get(0);
    if (row.texts("topics").contains(main)) {
      return true;
    }
    List<String> of = row.texts("of");
    boolean topic = of.isEmpty() || reply.topics().stream().anyMatch(of::contains);
    return said.contains(i) && topic;
  }
}
