package plainsward.talk;

import java.util.List;
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

  /** Amounts in fewer words than so many are an answer, and not a tale. */
  private static final int FEW_WORDS = 6;

  private static final double ALONE = 0.7;

  /** How sure a note must be where no word shows that lawns are spoken of (0 to 1). */
  private static final double WITHOUT_TRADE_WORDS = 0.72;

  /** How sure a note must be where figures of a dose stand in the question (0 to 1). */
  private static final double AMID_FIGURES = 0.93;

  /** How sure a note must be to be named as perhaps meant (0 to 1). */
  private static final double AT_ALL_NEAR = 0.15;

  /** The same where no word shows that lawns are spoken of. */
  private static final double SOMEWHAT_NEAR = 0.4;

  private static final int MOST_NEAR = 3;

  private InWords() {}

  /** Whether a note of the user's own may answer, whatever it is about. */
  static boolean mayBeOwn(Facts turn, Handbook handbook) {
    return handbook.hasOwn() && !DoseFacts.areAmong(turn.all());
  }

  /** Whether words are outside the trade; a rate never is, whatever is sprayed. */
  static boolean areOutside(Facts turn) {
    boolean ours = turn.has("weed") || turn.has("active") || turn.has("label_rate");
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
      return turn.says("question") ? NoteTopic.plainly(request, AMID_FIGURES) : Optional.empty();
    }
    if (turn.tokens().size() <= SHORT && !before.isEmpty()) {
      return NoteTopic.plainly(request, ALONE)
          .or(() -> NoteTopic.anywhere(request, before + " " + turn.text(), topics));
    }
    if (TradeWords.areIn(turn.tokens())) {
      return NoteTopic.anywhere(request, turn.text(), Set.of());
    }
    boolean amounts = turn.all().stream().anyMatch(fact -> fact.value().isPresent());
    boolean bare = amounts && !turn.says("question") && turn.tokens().size() < FEW_WORDS;
    return bare ? Optional.empty() : NoteTopic.plainly(request, WITHOUT_TRADE_WORDS);
  }

  /** The titles of notes that may be meant where none is sure, at most three. */
  static List<String> near(Request request) {
    boolean ours = TradeWords.areIn(request.turn().tokens());
    return NoteTopic.near(request, ours ? AT_ALL_NEAR : SOMEWHAT_NEAR, MOST_NEAR);
  }

  /** Whether a label is told, by its form or by an amount of its own. */
  private static boolean isTold(Facts turn) {
    boolean form = turn.says("ready-to-use") || turn.says("concentrate");
    if (form && turn.asks().isEmpty() && !turn.says("question")) {
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
