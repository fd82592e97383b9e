package plainsward.trade;

import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads a table as the build packs it, so that it costs neither a search through the jar nor taking
 * JSON apart: the keys' number and the keys, then the rows' number and for each its values' number
 * and the values, each with its key's place. {@code packing.TableWriter} writes it.
 */
public final class PackedRows {
  /** The class that holds the tables, by its internal name. */
  public static final String HOLDER = "plainsward/trade/PackedTables";

  /** A text with letters beyond Latin-1 says so by this bit of its length. */
  public static final int WIDE = 1 << 30;

  private static final Map<String, Integer> NUMBERS = numbers();

  /** The kinds of values. */
  public enum Kind {
    /** A length and the letters. */
    TEXT,
    /** A text of digits. */
    NUMBER,
    /** No more. */
    TRUE,
    /** No more. */
    FALSE,
    /** A number of texts and those. */
    TEXTS
  }

  private static final Kind[] KINDS = Kind.values();

  private final ByteBuffer bytes;
  private final String file;
  private final String[] keys;

  private PackedRows(String name, byte[] bytes) {
    this.bytes = ByteBuffer.wrap(bytes);
    this.file = Rows.file(name);
    this.keys = new String[this.bytes.getInt()];
    for (int i = 0; i < keys.length; i++) {
      keys[i] = text();
    }
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

  /** Whether a table of this name was packed. */
  static boolean has(String name) {
    return NUMBERS.containsKey(name);
  }

  /** The rows of a table that was packed. */
  static List<Row> of(String name) {
    return new PackedRows(name, bytes(NUMBERS.get(name))).rows();
  }

  private List<Row> rows() {
    int count = bytes.getInt();
    List<Row> rows = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      rows.add(new Row(file, i, values()));
    }
    return rows;
  }

  private Map<String, Object> values() {
    int count = bytes.getInt();
    Map<String, Object> values = new LinkedHashMap<>();
    for (int i = 0; i < count; i++) {
      String key = keys[bytes.getInt()];
      values.put(key, value());
    }
    return values;
  }

  private Object value() {
    return switch (KINDS[bytes.get()]) {
      case TEXT -> text();
      case NUMBER -> new BigDecimal(text());
      case TRUE -> Boolean.TRUE;
      case FALSE -> Boolean.FALSE;
      case TEXTS -> texts();
    };
  }

  private Row.Texts texts() {
    int count = bytes.getInt();
    List<String> items = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      items.add(text());
    }
    return new Row.Texts(Collections.unmodifiableList(items));
  }

  private String text() {
    int length = bytes.getInt();
    Charset charset = (length & WIDE) == 0 ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8;
    int size = length & ~WIDE;
    String text = new String(bytes.array(), bytes.position(), size, charset);
    bytes.position(bytes.position() + size);
    return text;
  }
}
