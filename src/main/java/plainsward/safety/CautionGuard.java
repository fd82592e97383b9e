package plainsward.safety;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
  private static final BitSet NONE = new BitSet();
  private static final Map<String, BitSet> BY_TOPIC = new HashMap<>();
  private static final List<Cue> CUES = cues();
  private static final PhraseBook<Integer> WORDS = PhraseBook.of(PhraseColumn.CAUTIONS, n -> n);
  private static final PhraseBook<Integer> UNLESS =
      PhraseBook.of(PhraseColumn.LIFTED_CAUTIONS, n -> n);

  /**
   * A row of the table.
   *
   * @param of topics to which the words count; empty for all
   * @param caution the id of the caution
   */
  private record Cue(List<String> of, String caution) {}

  private CautionGuard() {}

  /** The cues; those that main topics call for, whatever is said, are noted by topic. */
  private static List<Cue> cues() {
    List<Cue> cues = new ArrayList<>();
    for (Row row : PhraseColumn.CAUTIONS.rows()) {
      for (String topic : row.texts("topics")) {
        BY_TOPIC.computeIfAbsent(topic, t -> new BitSet()).set(cues.size());
      }
      cues.add(new Cue(row.texts("of"), row.text("caution")));
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
    BitSet called = said.isEmpty() ? NONE : ofWords(said, reply);
    String topic = reply.topics().isEmpty() ? "" : reply.topics().get(0);
    BitSet ofTopic = BY_TOPIC.getOrDefault(topic, NONE);
    ReplyBuilder guarded = null;
    for (int i = 0; i < CUES.size(); i++) {
      if ((ofTopic.get(i) || called.get(i)) && !lifted.contains(i)) {
        guarded = guarded == null ? ReplyBuilder.from(reply) : guarded;
        guarded.caution(Cautions.of(CUES.get(i).caution));
      }
    }
    return guarded == null ? reply : guarded.build();
  }

  /** The cues that are said, as far as they count to what the reply is about. */
  private static BitSet ofWords(Set<Integer> said, Reply reply) {
    BitSet called = new BitSet(CUES.size());
    for (int i : said) {
      List<String> of = CUES.get(i).of;
      if (of.isEmpty() || !Collections.disjoint(of, reply.topics())) {
        called.set(i);
      }
    }
    return called;
  }
}
