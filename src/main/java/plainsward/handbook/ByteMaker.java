package plainsward.handbook;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/** Writes what {@link ByteReader} reads: behind a head of three bytes for each part its bytes. */
final class ByteMaker {
  private static final int PLACE = 3;

  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final int[] parts;
  private int count;

  /** Will have so many parts. */
  ByteMaker(int parts) {
    this.parts = new int[parts];
    bytes.writeBytes(new byte[PLACE * parts]);
  }

  /** Begins the next part here. */
  void part() {
    parts[count++] = bytes.size();
  }

  /** A part that was made elsewhere. */
  void part(byte[] whole) {
    part();
    bytes(whole);
  }

  /** What was made elsewhere. */
  void bytes(byte[] made) {
    bytes.writeBytes(made);
  }

  int size() {
    return bytes.size();
  }

  void one(int value) {
    if (value < 0 || value > 0xFF) {
      throw new IllegalStateException("a packed number is too great: " + value);
    }
    bytes.write(value);
  }

  void two(int value) {
    one(value >> 8);
    one(value & 0xFF);
  }

  void three(int value) {
    one(value >> 16);
    two(value & 0xFFFF);
  }

  void four(int value) {
    two(value >>> 16);
    two(value & 0xFFFF);
  }

  void text(String text) {
    byte[] letters = latin(text);
    one(letters.length);
    bytes.writeBytes(letters);
  }

  void line(String text) {
    bytes.writeBytes(latin(text + "\n"));
  }

  private static byte[] latin(String text) {
    byte[] letters = text.getBytes(StandardCharsets.ISO_8859_1);
    if (!new String(letters, StandardCharsets.ISO_8859_1).equals(text)) {
      throw new IllegalArgumentException("a word has letters beyond Latin-1: " + text);
    }
    return letters;
  }

  /** All of it. */
  byte[] all() {
    byte[] all = bytes.toByteArray();
    for (int i = 0; i < parts.length; i++) {
      all[PLACE * i] = (byte) (parts[i] >> 16);
      all[PLACE * i + 1] = (byte) (parts[i] >> 8);
      all[PLACE * i + 2] = (byte) parts[i];
    }
    return all;
  }
}
