package plainsward.handbook;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Reads numbers, high byte first, and short Latin-1 texts at places of packed bytes. */
final class ByteReader {
  private final byte[] bytes;

  ByteReader(byte[] bytes) {
    this.bytes = bytes;
  }

  int one(int at) {
    return bytes[at] & 0xFF;
  }

  int two(int at) {
    return one(at) << 8 | one(at + 1);
  }

  int three(int at) {
    return one(at) << 16 | two(at + 1);
  }

  int four(int at) {
    return two(at) << 16 | two(at + 2);
  }

  /** A text behind its length in one byte. */
  String text(int at) {
    return new String(bytes, at + 1, one(at), StandardCharsets.ISO_8859_1);
  }

  /** The lines from a place to another. */
  List<String> lines(int from, int to) {
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
