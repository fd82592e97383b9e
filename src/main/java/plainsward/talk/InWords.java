package plainsward.talk;

import java.util.Optional;
import java.util.Set;
import plainsward.handbook.Handbook;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.reply.Reply;
import plainsward.topics.NoteTopic;
import plainsward.topics.Request;

/** What the handbook answers where no sum and no topic's cue is found. */
final class InWords {
  private static final int SHORT = 9;

  private InWords() {}

  /** Whether a note of the user's own may answer, whatever it is about. */
  static boolean mayBeOwn(Facts turn, Handbook handbook) {
    return handbook.hasOwn() && !DoseFacts.areAmong(turn.all());
  }

  /** Whether words are outside the trade. */
  static boolean areOutside(Facts turn) {
    boolean ours = turn.has("weed") || turn.has("active");
    return !ours && TradeWords.areOutside(turn.tokens());
  }

  /**
   * What the handbook says of the words alone, or, for a fragment, with the question before it.
   *
   * @param before the words of that question, or empty
   * @param topics what the last reply was about
   */
  static Optional<Reply> of(Request request, String before, Set<String> topics) {
    Facts turn = request.turn();
    if (DoseFacts.orGroundAreAmong(turn.all()) || isTold(turn)) {
      return Optional.empty();
    }
    boolean fragment = turn.tokens().size() <= SHORT && !before.isEmpty();
    if (!fragment && !TradeWords.areIn(turn.tokens())) {
      return Optional.empty();
    }
    return fragment
        ? NoteTopic.anywhere(request, before + " " + turn.text(), topics)
        : NoteTopic.anywhere(request, turn.text(), Set.of());
  }

  /** Whether a label is told, by its form or by an amount of its own. */
  private static boolean isTold(Facts turn) {
    boolean form = turn.says("ready-to-use") || turn.says("concentrate");
    if (form && turn.asks().isEmpty()) {
      return true;
    }
    for (Fact fact : turn.all()) {
      if (!turn.labels().isEmpty() && fact.value().isPresent()) {
        return true;
      }
    }
    return false;
  }
}
