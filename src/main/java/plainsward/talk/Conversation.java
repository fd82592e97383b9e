package plainsward.talk;

import java.util.List;
import plainsward.reply.Kind;
import plainsward.reply.Reply;

/** One conversation: it remembers what was said and answers turn by turn. Not thread-safe. */
public final class Conversation {

  /** Starts with nothing remembered. */
  public Conversation(Setting setting) {
    // Facts are gathered as turns come.
  }

  /** Answers one turn; never throws for anything typed. */
  public Reply answer(String said) {
    return new Reply(
        Kind.UNSURE,
        List.of(),
        "I did not understand that.",
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }
}
