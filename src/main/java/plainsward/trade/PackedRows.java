package plainsward.trade;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.AbstractList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.RandomAccess;

/**
 * A table as the build packs it, so that it costs neither a search through the jar nor taking JSON
 * apart, and of a row only what is asked for is made: the keys' number and the keys, the rows'
 * number, where each row begins, and the rows as {@link PackedValues} reads them. {@code
 * packing.TableWriter} writes it. All numbers have their high byte first.
 */
public final class PackedRows extends AbstractList<Row> implements RandomAccess {
  /** The class that holds the tables, by its internal name. */
  public static final String HOLDER = "plainsward/trade/PackedTables";

  /** A text with letters beyond Latin-1 says so by this bit of its length. */
  public static final int WIDE = 1 << 30;

  private static final Map<String, Integer> NUMBERS = numbers();

  private final byte[] bytes;
  private final String file;
  private final String[] keys;
  private final int starts;
  private final Row[] rows;

  private PackedRows(String name, byte[] bytes) {
    this.bytes = bytes;
    this.file = Rows.file(name);
    this.keys = new String[number(bytes, 0)];
    int at = 4;
    for (int i = 0; i < keys.length; i++) {
      keys[i] = text(bytes, at).intern();
      at = afterText(bytes, at);
    }
    this.rows = new Row[number(bytes, at)];
    this.starts = at + 4;
  }

  private static Map<String, Integer> numbers() {
    Map<String, Integer> numbers = new HashMap<>();
    String names = new String(bytes(0), StandardCharsets.ISO_8859_1);
    int from = 0;
    for (int end = names.indexOf('\n'); end >= 0; end = names.indexOf('\n', from)) {
      numbers.put(names.substring(from, end), numbers.size() + 1);
      from = end + 1;
    }
    return numbers;
  }

  private static byte[] bytes(int number) {
    String[] pieces = PackedTables.pieces(number);
    int size = 0;
    for (String piece : pieces) {
      size += piece.length();
    }
    byte[] bytes = new byte[size];
    int at = 0;
    for (String piece : pieces) {
      byte[] part = piece.getBytes(StandardCharsets.ISO_8859_1);
      System.arraycopy(part, 0, bytes, at, part.length);
      at += part.length;
    }
    return bytes;
  }

  /** What was packed under a name that {@link Rows#arePacked} knows, as it is. */
  public static byte[] bytes(String name) {
    return bytes(NUMBERS.get(name));
  }

  /** Whether a table of this name was packed. */
  static boolean has(String name) {
    return NUMBERS.containsKey(name);
  }

  /** The rows of a table that was packed. */
  static List<Row> of(String name) {
    return new PackedRows(name, bytes(name));
  }

  @Override
  public int size() {
    return rows.length;
  }

  /** Two threads may both make a row; they are alike, and one of them stays. */
  @Override
  public Row get(int number) {
    Row row = rows[number];
    if (row == null) {
      int start = number(bytes, starts + 4 * number);
      row = new Row(file, number, new PackedValues(bytes, keys, start));
      rows[number] = row;
    }
    return row;
  }

  static int number(byte[] bytes, int at) {
    return bytes[at] << 24
        | (bytes[at + 1] & 0xFF) << 16
        | (bytes[at + 2] & 0xFF) << 8
        | bytes[at + 3] & 0xFF;
  }

  /** A length and the letters. */
  static String text(byte[] bytes, int at) {
    int length = number(bytes, at);
    Charset charset = (length & WIDE) == 0 ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8;
    return new String(bytes, at + 4, length & ~WIDE, charset);
  }

  static int afterText(byte[] bytes, int at) {
    return at + 4 + (number(bytes, at) & ~WIDE);
  }
}
