package plainsward.trade;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads what {@link ByteMaker} wrote: numbers, high byte first, and short Latin-1 texts at places
 * of packed bytes. Plain functions, since they are called for every word of every question.
 */
public final class ByteReader {
  private ByteReader() {}

  /** A number of one byte. */
  public static int one(byte[] bytes, int at) {
    return bytes[at] & 0xFF;
  }

  /** A number of two bytes. */
  public static int two(byte[] bytes, int at) {
    return (bytes[at] & 0xFF) << 8 | bytes[at + 1] & 0xFF;
  }

  /** A number of three bytes. */
  public static int three(byte[] bytes, int at) {
    return (bytes[at] & 0xFF) << 16 | (bytes[at + 1] & 0xFF) << 8 | bytes[at + 2] & 0xFF;
  }

  /** Any number of four bytes. */
  public static int four(byte[] bytes, int at) {
    return bytes[at] << 24 | three(bytes, at + 1);
  }

  /** A text behind its length in one byte. */
  public static String text(byte[] bytes, int at) {
    return new String(bytes, at + 1, one(bytes, at), StandardCharsets.ISO_8859_1);
  }

  /** The lines from a place to another. */
  public static List<String> lines(byte[] bytes, int from, int to) {
    List<String> lines = new ArrayList<>();
    int start = from;
    for (int at = from; at < to; at++) {
      if (bytes[at] == '\n') {
        lines.add(new String(bytes, start, at - start, StandardCharsets.ISO_8859_1));
        start = at + 1;
      }
    }
    return lines;
  }
}
