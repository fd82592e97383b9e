package plainsward.terminal;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import java.util.function.Function;
import plainsward.reply.Reply;

/**
 * The conversation when nobody sits at the terminal: a turn a line in, replies out, an empty line
 * between them (none between lines of JSON). Empty lines are passed over.
 */
final class PipedTalk {
  private final Answering talk;
  private final Out out;
  private final Function<Reply, String> look;
  private final String between;
  private boolean any;
  private boolean good = true;

  /**
   * A conversation.
   *
   * @param look how a reply is written
   * @param between what stands between two replies
   */
  PipedTalk(Answering talk, Out out, Function<Reply, String> look, String between) {
    this.talk = talk;
    this.out = out;
    this.look = look;
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
    while (line.isPresent() && !out.isClosed() && !LocalWord.of(line.get().text()).isQuit()) {
      turn(line.get());
      line = lines.next();
    }
    return good && !out.isClosed();
  }

  private void turn(LineSource.Line line) {
    if (line.isTooLong() || !line.text().isBlank()) {
      tell(told(line));
    }
  }

  private String told(LineSource.Line line) {
    if (line.isTooLong()) {
      good = false;
      return "That line is longer than I can read.";
    }
    if (LocalWord.of(line.text()) == LocalWord.HELP) {
      return HelpText.examples();
    }
    try {
      return look.apply(talk.answer(line.text()));
    } catch (RuntimeException | StackOverflowError fault) {
      good = false;
      return Fault.sentence(fault);
    }
  }

  private void tell(String text) {
    out.line(any ? between + text : text);
    any = true;
    out.flush();
  }
}
