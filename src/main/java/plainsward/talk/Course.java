package plainsward.talk;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Facts;
import plainsward.reading.Token;
import plainsward.reply.Reply;

/** How a talk runs: what was asked, answered and left open in the turns before this one. */
final class Course {
  private static final int LATELY = 4;

  /** What was asked back. */
  Pending pending = Pending.NOTHING;

  /** The request that was answered last. */
  Pending last = Pending.NOTHING;

  /** Its answer. */
  Optional<Reply> lastAnswer = Optional.empty();

  /** The last reply of any kind. */
  Optional<Reply> lastReply = Optional.empty();

  /** The words that a fragment goes on from, or empty. */
  String lastWords = "";

  /** A number of which it is not known what it is of, or empty. */
  String openNumber = "";

  private final Deque<List<Token>> heard = new ArrayDeque<>();

  /** Notes the words of a turn; those of the last four turns count as just said. */
  void hear(Facts facts) {
    heard.add(facts.tokens());
    if (heard.size() > LATELY) {
      heard.remove();
    }
  }

  /** The words that were just said. */
  Deque<List<Token>> heard() {
    return heard;
  }

  /** What the last reply was mainly about. */
  Set<String> lastTopics() {
    return lastReply.map(r -> Set.copyOf(r.topics().stream().limit(1).toList())).orElse(Set.of());
  }

  /** Forgets it all. */
  void clear() {
    heard.clear();
    pending = Pending.NOTHING;
    last = Pending.NOTHING;
    lastAnswer = Optional.empty();
    lastReply = Optional.empty();
    lastWords = "";
    openNumber = "";
  }
}
