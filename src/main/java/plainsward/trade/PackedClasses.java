package plainsward.trade;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Classes in one file, in an order: four bytes each for where their names begin (a line each) and
 * where {@link PackedWords} of them do, and for each class and behind the last where it begins;
 * then the classes.
 */
public final class PackedClasses {
  /** The file in the jar. */
  public static final String FILE = "plainsward/terminal/quick.bin";

  private static final int NAMES = 0;
  private static final int WORDS = 4;
  private static final int STARTS = 8;
  private static final int PLACE = 4;

  private final byte[] bytes;
  private final PackedWords words;

  /** What {@link #packed} made. */
  public PackedClasses(byte[] bytes) {
    this.bytes = bytes;
    this.words = new PackedWords(bytes, ByteReader.four(bytes, WORDS));
  }

  /** Packs classes by their names, in their order. */
  public static byte[] packed(Map<String, byte[]> classes) {
    Map<String, Integer> numbers = new LinkedHashMap<>();
    classes.keySet().forEach(name -> numbers.put(name, numbers.size()));
    int start = STARTS + PLACE * (classes.size() + 1);
    int size = classes.values().stream().mapToInt(each -> each.length).sum();
    byte[] names = (String.join("\n", numbers.keySet()) + "\n").getBytes(StandardCharsets.US_ASCII);
    ByteMaker out = new ByteMaker(0);
    out.four(start + size);
    out.four(start + size + names.length);
    for (byte[] each : classes.values()) {
      out.four(start);
      start += each.length;
    }
    out.four(start);
    classes.values().forEach(out::bytes);
    out.bytes(names);
    out.bytes(PackedWords.packed(numbers));
    return out.all();
  }

  /** The bytes of a class, or null where it is not there. */
  public ByteBuffer find(String name) {
    int number = words.find(name);
    if (number == PackedWords.NONE) {
      return null;
    }
    int start = start(number);
    return ByteBuffer.wrap(bytes, start, start(number + 1) - start);
  }

  private int start(int number) {
    return ByteReader.four(bytes, STARTS + PLACE * number);
  }

  /** Takes the names, the last first. */
  public void fromTheLast(Consumer<String> take) {
    int end = ByteReader.four(bytes, WORDS) - 1;
    int first = ByteReader.four(bytes, NAMES);
    while (end > first) {
      int start = end;
      while (start > first && bytes[start - 1] != '\n') {
        start--;
      }
      take.accept(new String(bytes, start, end - start, StandardCharsets.US_ASCII));
      end = start - 1;
    }
  }
}
