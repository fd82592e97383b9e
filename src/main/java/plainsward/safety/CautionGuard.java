package plainsward.safety;

import java.util.ArrayList;
import java.util.Collections;
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
  private static final List<Cue> CUES = cues();
  private static final PhraseBook<Integer> WORDS = PhraseBook.of(PhraseColumn.CAUTIONS, n -> n);
  private static final PhraseBook<Integer> UNLESS =
      PhraseBook.of(PhraseColumn.LIFTED_CAUTIONS, n -> n);

  /**
   * A row of the table.
   *
   * @param topics main topics that call for the caution whatever is said
   * @param of topics to which the words count; empty for all
   * @param caution the id of the caution
   */
  private record Cue(List<String> topics, List<String> of, String caution) {}

  private CautionGuard() {}

  private static List<Cue> cues() {
    List<Cue> cues = new ArrayList<>();
    for (Row row : PhraseColumn.CAUTIONS.rows()) {
      cues.add(new Cue(row.texts("topics"), row.texts("of"), row.text("caution")));
    }
    return cues;
  }

  /** The reply with the cautions that it calls for; only answers and questions back get them. */
  public static Reply guarded(Reply reply, List<Token> question) {
    if (reply.kind() != Kind.ANSWER && reply.kind() != Kind.ASK) {
      return reply;
    }
    Set<Integer> said = WORDS.meaningsIn(question);
    Set<Integer> lifted = UNLESS.meaningsIn(question);
    ReplyBuilder guarded = null;
    for (int i = 0; i < CUES.size(); i++) {
      if (applies(CUES.get(i), reply, said.contains(i)) && !lifted.contains(i)) {
        guarded = guarded == null ? ReplyBuilder.from(reply) : guarded;
        guarded.caution(Cautions.of(CUES.get(i).caution));
      }
    }
    return guarded == null ? reply : guarded.build();
  }

  private static boolean applies(Cue cue, Reply reply, boolean isSaid) {
    if (!reply.topics().isEmpty() && cue.topics.contains(reply.topics().get(0))) {
      return true;
    }
    return isSaid && (cue.of.isEmpty() || !Collections.disjoint(cue.of, reply.topics()));
  }
}
