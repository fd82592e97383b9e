package plainsward.trade;

import java.math.BigDecimal;
import java.util.AbstractMap;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The values of one packed row, each made when it is asked for: how many there are, and for each
 * its key's place, its kind (a byte), how many bytes follow, and those.
 */
public final class PackedValues extends AbstractMap<String, Object> {
  private static final int HEAD = 9;

  /** A length and the letters. */
  public static final int TEXT = 0;

  /** A text of digits. */
  public static final int NUMBER = 1;

  /** No more. */
  public static final int TRUE = 2;

  /** No more. */
  public static final int FALSE = 3;

  /** A number of texts and those. */
  public static final int TEXTS = 4;

  private final byte[] bytes;
  private final String[] keys;
  private final int start;
  private final Object[] made;

  PackedValues(byte[] bytes, String[] keys, int start) {
    this.bytes = bytes;
    this.keys = keys;
    this.start = start;
    this.made = new Object[ByteReader.four(bytes, start)];
  }

  @Override
  public Object get(Object key) {
    int at = start + 4;
    for (int i = 0; i < made.length; i++) {
      if (keys[ByteReader.four(bytes, at)].equals(key)) {
        return made(i, at);
      }
      at += HEAD + ByteReader.four(bytes, at + 5);
    }
    return null;
  }

  @Override
  public boolean containsKey(Object key) {
    return get(key) != null;
  }

  @Override
  public Set<Map.Entry<String, Object>> entrySet() {
    Map<String, Object> all = new LinkedHashMap<>();
    int at = start + 4;
    for (int i = 0; i < made.length; i++) {
      all.put(keys[ByteReader.four(bytes, at)], made(i, at));
      at += HEAD + ByteReader.four(bytes, at + 5);
    }
    return Collections.unmodifiableMap(all).entrySet();
  }

  /** Two threads may both make a value; they are alike, and one of them stays. */
  private Object made(int number, int at) {
    Object value = made[number];
    if (value == null) {
      value = value(bytes[at + 4], at + HEAD);
      made[number] = value;
    }
    return value;
  }

  private Object value(int kind, int at) {
    return switch (kind) {
      case NUMBER -> new BigDecimal(PackedRows.text(bytes, at));
      case TRUE -> Boolean.TRUE;
      case FALSE -> Boolean.FALSE;
      case TEXTS -> texts(at);
      default -> PackedRows.text(bytes, at);
    };
  }

  private Row.Texts texts(int start) {
    int count = ByteReader.four(bytes, start);
    int at = start + 4;
    List<String> items = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      items.add(PackedRows.text(bytes, at));
      at = PackedRows.afterText(bytes, at);
    }
    return new Row.Texts(Collections.unmodifiableList(items));
  }
}
