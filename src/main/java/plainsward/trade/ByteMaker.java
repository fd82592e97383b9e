package plainsward.trade;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/**
 * Packs numbers, high byte first, and short Latin-1 texts into bytes, behind a head of three bytes
 * for each of some numbers. What does not fit is refused with an {@link IllegalArgumentException}.
 */
public final class ByteMaker {
  private static final int OF_HEAD = 3;

  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final int[] head;
  private int count;

  /** Will have a head of so many numbers. */
  public ByteMaker(int numbers) {
    head = new int[numbers];
    bytes.writeBytes(new byte[OF_HEAD * numbers]);
  }

  /** Sets the next number of the head. */
  public void head(int value) {
    head[count++] = checked(value, 1 << 24);
  }

  /** Sets the next number of the head to where the next bytes stand. */
  public void part() {
    head(size());
  }

  /** As {@link #part()}, and adds bytes there. */
  public void part(byte[] whole) {
    part();
    bytes(whole);
  }

  /** How many bytes there are. */
  public int size() {
    return bytes.size();
  }

  /** Adds bytes. */
  public void bytes(byte[] made) {
    bytes.writeBytes(made);
  }

  /** Adds a number of one byte. */
  public void one(int value) {
    bytes.write(checked(value, 1 << 8));
  }

  /** Adds a number of two bytes. */
  public void two(int value) {
    checked(value, 1 << 16);
    bytes.write(value >> 8);
    bytes.write(value);
  }

  /** Adds a number of three bytes. */
  public void three(int value) {
    checked(value, 1 << 24);
    bytes.write(value >> 16);
    bytes.write(value >> 8);
    bytes.write(value);
  }

  /** Adds any number as four bytes. */
  public void four(int value) {
    for (int shift = 24; shift >= 0; shift -= 8) {
      bytes.write(value >> shift);
    }
  }

  /** Adds a text behind its length in one byte. */
  public void text(String text) {
    byte[] letters = latin(text);
    one(letters.length);
    bytes(letters);
  }

  /** Adds a text and the end of a line. */
  public void line(String text) {
    bytes(latin(text + "\n"));
  }

  private static int checked(int value, int end) {
    if (value < 0 || value >= end) {
      throw new IllegalArgumentException("a number can't be packed: " + value);
    }
    return value;
  }

  private static byte[] latin(String text) {
    byte[] letters = text.getBytes(StandardCharsets.ISO_8859_1);
    if (!new String(letters, StandardCharsets.ISO_8859_1).equals(text)) {
      throw new IllegalArgumentException("a text has letters beyond Latin-1: " + text);
    }
    return letters;
  }

  /** All of it. */
  public byte[] all() {
    byte[] all = bytes.toByteArray();
    for (int i = 0; i < head.length; i++) {
      all[OF_HEAD * i] = (byte) (head[i] >> 16);
      all[OF_HEAD * i + 1] = (byte) (head[i] >> 8);
      all[OF_HEAD * i + 2] = (byte) head[i];
    }
    return all;
  }
}
