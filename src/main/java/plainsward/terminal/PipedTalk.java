package plainsward.terminal;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/**
 * The conversation when nobody sits at the terminal: a turn a line in, replies out, an empty line
 * between them (none between lines of JSON). Empty lines are passed over.
 */
final class PipedTalk {
  private final Turns turns;
  private final Out out;
  private final String between;
  private boolean any;
  private boolean good = true;

  /**
   * A conversation.
   *
   * @param between what stands between two replies
   */
  PipedTalk(Turns turns, Out out, String between) {
    this.turns = turns;
    this.out = out;
    this.between = between;
  }

  /**
   * Talks to the end of the input, or until the user leaves or nobody listens.
   *
   * @return whether every turn got a reply
   */
  boolean run(InputStream in) throws IOException {
    LineSource lines = new LineSource(in, Batch.LONGEST_LINE);
    Optional<LineSource.Line> line = lines.next();
    while (line.isPresent() && !out.isClosed() && stays(line.get())) {
      line = lines.next();
    }
    return good && !out.isClosed();
  }

  private boolean stays(LineSource.Line line) {
    if (line.isTooLong()) {
      good = false;
      tell("That line is longer than I can read.");
      return true;
    }
    Turns.Told told = turns.hear(line.text());
    good &= told.isGood();
    if (!told.text().isEmpty()) {
      tell(told.text());
    }
    return !told.leaves();
  }

  private void tell(String text) {
    out.line(any ? between + text : text);
    any = true;
    out.flush();
  }
}
