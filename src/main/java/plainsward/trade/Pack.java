package plainsward.trade;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/**
 * What the build put into a class as text, a letter for each byte: a class comes out of a
 * class-data archive with no file opened and nothing inflated.
 */
public final class Pack {
  private final Map<String, Integer> numbers = new HashMap<>();
  private final Pieces pieces;

  /** The texts of a class. */
  public interface Pieces {
    /**
     * The pieces of one thing, to be joined: of 0 the names of all things, a line each; of n those
     * of the nth thing.
     */
    String[] of(int number);
  }

  /** What a class holds; nothing, where the build did not write it. */
  public Pack(Pieces pieces) {
    this.pieces = pieces;
    String names = new String(bytes(0), StandardCharsets.ISO_8859_1);
    int from = 0;
    for (int end = names.indexOf('\n'); end >= 0; end = names.indexOf('\n', from)) {
      numbers.put(names.substring(from, end), numbers.size() + 1);
      from = end + 1;
    }
  }

  /** Whether there is a thing of this name. */
  public boolean has(String name) {
    return numbers.containsKey(name);
  }

  /** The bytes of a thing that is there. */
  public byte[] bytes(String name) {
    return bytes(numbers.get(name));
  }

  private byte[] bytes(int number) {
    String[] parts = pieces.of(number);
    int size = 0;
    for (String part : parts) {
      size += part.length();
    }
    byte[] bytes = new byte[size];
    int at = 0;
    for (String part : parts) {
      byte[] letters = part.getBytes(StandardCharsets.ISO_8859_1);
      System.arraycopy(letters, 0, bytes, at, letters.length);
      at += letters.length;
    }
    return bytes;
  }
}
