package plainsward.terminal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Lines of UTF-8 from a stream, whatever the stream holds: broken bytes become U+FFFD, a byte order
 * mark and carriage returns at line ends are dropped, the last line needs no end, and of a line
 * that is too long only its length is kept in mind.
 */
final class LineSource {
  private static final int BUFFER = 1 << 16;

  private final InputStream in;
  private final int longest;
  private final byte[] buffer = new byte[BUFFER];
  private int next;
  private int end;
  private long number;

  /**
   * One line.
   *
   * @param number its place, from 1
   * @param text what it says; empty where it is too long
   * @param bytes how long it is, at most one more than the longest allowed
   * @param isTooLong whether it is longer than allowed
   */
  record Line(long number, String text, int bytes, boolean isTooLong) {}

  /**
   * Lines of this stream.
   *
   * @param longest how many bytes a line may have
   */
  LineSource(InputStream in, int longest) {
    this.in = in;
    this.longest = longest;
  }

  /** The next line; empty at the end. */
  Optional<Line> next() throws IOException {
    ByteArrayOutputStream line = new ByteArrayOutputStream(256);
    boolean any = false;
    while (fill()) {
      any = true;
      int stop = lineEnd();
      keep(line, stop);
      next = stop;
      if (stop < end) {
        next++;
        return Optional.of(made(line));
      }
    }
    return any ? Optional.of(made(line)) : Optional.empty();
  }

  private boolean fill() throws IOException {
    if (next < end) {
      return true;
    }
    next = 0;
    end = in.read(buffer, 0, BUFFER);
    return end > 0;
  }

  private int lineEnd() {
    int stop = next;
    while (stop < end && buffer[stop] != '\n') {
      stop++;
    }
    return stop;
  }

  /** Keeps one byte more than is allowed, which tells that there were more. */
  private void keep(ByteArrayOutputStream line, int stop) {
    int room = longest + 1 - line.size();
    line.write(buffer, next, Math.min(room, stop - next));
  }

  private Line made(ByteArrayOutputStream line) {
    number++;
    int bytes = line.size();
    if (bytes > longest) {
      return new Line(number, "", bytes, true);
    }
    String text = line.toString(StandardCharsets.UTF_8);
    if (number == 1 && text.startsWith("\uFEFF")) {
      text = text.substring(1);
    }
    return new Line(
        number, text.endsWith("\r") ? text.substring(0, text.length() - 1) : text, bytes, false);
  }
}
