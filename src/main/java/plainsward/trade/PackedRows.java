package plainsward.trade;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
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
 * The tables as the build packs them: all in one file, so that reading one costs neither a search
 * through the jar nor taking JSON apart. The file begins with the number of tables, then a name and
 * a place for each; what follows is written by {@code packing.TablePacker}.
 */
public final class PackedRows {
  /** The file on the class path. */
  public static final String FILE = "corpus/tables.packed";

  /** A text with letters beyond Latin-1 says so by this bit of its length. */
  public static final int WIDE = 1 << 30;

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
  private static final PackedRows SHIPPED = new PackedRows();

  private final ByteBuffer bytes;
  private final Map<String, Integer> places = new HashMap<>();
  private final Map<Integer, String> keys = new HashMap<>();

  private PackedRows() {
    this.bytes = ByteBuffer.wrap(shippedBytes());
    int count = bytes.hasRemaining() ? bytes.getInt() : 0;
    for (int i = 0; i < count; i++) {
      String name = text();
      places.put(name, bytes.getInt());
    }
  }

  private static byte[] shippedBytes() {
    try (InputStream in = PackedRows.class.getClassLoader().getResourceAsStream(FILE)) {
      return in == null ? new byte[0] : in.readAllBytes();
    } catch (IOException fault) {
      throw new UncheckedIOException(FILE + ": " + fault.getMessage(), fault);
    }
  }

  /** The tables that ship with the program; none where they were not packed. */
  static PackedRows shipped() {
    return SHIPPED;
  }

  /** Whether a table is here. */
  boolean has(String table) {
    return places.containsKey(table);
  }

  /** The rows of a table that is here. */
  synchronized List<Row> rows(String table) {
    bytes.position(places.get(table));
    int count = bytes.getInt();
    List<Row> rows = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      rows.add(new Row(Rows.file(table), i, values()));
    }
    return rows;
  }

  private Map<String, Object> values() {
    int count = bytes.getInt();
    Map<String, Object> values = new LinkedHashMap<>();
    for (int i = 0; i < count; i++) {
      String key = key();
      values.put(key, value());
    }
    return values;
  }

  /** Keys are written once; a row only tells where. */
  private String key() {
    int place = bytes.getInt();
    String known = keys.get(place);
    if (known == null) {
      int back = bytes.position();
      bytes.position(place);
      known = text();
      keys.put(place, known);
      bytes.position(back);
    }
    return known;
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
