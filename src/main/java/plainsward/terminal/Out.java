package plainsward.terminal;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * Writes UTF-8 lines that end in {@code \n} on every system, in large pieces, and notices when
 * nobody reads them any more.
 */
final class Out {
  private static final int PIECE = 1 << 16;

  private final PrintStream stream;
  private final ByteArrayOutputStream waiting = new ByteArrayOutputStream();
  private boolean closed;

  Out(PrintStream stream) {
    this.stream = stream;
  }

  /** Writes a line; it may wait until {@link #flush}. */
  void line(String text) {
    waiting.writeBytes(text.getBytes(StandardCharsets.UTF_8));
    waiting.write('\n');
    if (waiting.size() > PIECE) {
      flush();
    }
  }

  /** Writes a piece of a line. */
  void text(String piece) {
    waiting.writeBytes(piece.getBytes(StandardCharsets.UTF_8));
  }

  /** Hands on what was written. */
  void flush() {
    if (!closed) {
      stream.write(waiting.toByteArray(), 0, waiting.size());
      closed = stream.checkError();
    }
    waiting.reset();
  }

  /** Whether the reader at the other end is gone. */
  boolean isClosed() {
    return closed;
  }
}
