package plainsward.records;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Reads a file's lines as bytes from a place on, in little memory however long the file is. */
final class LineSplitter {
  /** Far more than an entry needs; what is longer is cut, and so can't be read as an entry. */
  static final int LONGEST = 1 << 20;

  /** Is told of each line. */
  interface Lines {
    /** A line without its line end, after which comes place {@code end}. */
    void line(byte[] bytes, long end, boolean ended);
  }

  private final ByteArrayOutputStream line = new ByteArrayOutputStream(512);
  private final Lines lines;
  private long from;
  private long at;

  private LineSplitter(long from, Lines lines) {
    this.from = from;
    this.at = from;
    this.lines = lines;
  }

  /** Tells of all lines from a place on. */
  static void read(Path file, long from, Lines lines) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
      channel.position(from);
      new LineSplitter(from, lines).split(Channels.newInputStream(channel));
    }
  }

  private void split(InputStream in) throws IOException {
    byte[] block = new byte[1 << 16];
    for (int size = in.read(block); size >= 0; size = in.read(block)) {
      int start = 0;
      for (int i = 0; i < size; i++) {
        if (block[i] == '\n') {
          keep(block, start, i);
          at++;
          tell(true);
          start = i + 1;
        }
      }
      keep(block, start, size);
    }
    if (at > from) {
      tell(false);
    }
  }

  private void keep(byte[] block, int start, int end) {
    line.write(block, start, Math.min(end - start, LONGEST - line.size()));
    at += end - start;
  }

  private void tell(boolean ended) {
    lines.line(line.toByteArray(), at, ended);
    line.reset();
    from = at;
  }
}
