package plainsward.packing;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import plainsward.trade.PackedRows;
import plainsward.trade.PackedRows.Kind;
import plainsward.trade.Row;

/** Writes tables as {@link PackedRows} reads them. */
final class TableWriter {
  private final Map<String, List<Map<String, Object>>> tables;
  private final Map<String, Integer> places = new TreeMap<>();
  private final Map<String, Integer> keys = new TreeMap<>();
  private ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private DataOutputStream out = new DataOutputStream(bytes);

  TableWriter(Map<String, List<Map<String, Object>>> tables) {
    this.tables = new TreeMap<>(tables);
  }

  /** Written twice, for only the first time tells where everything will stand. */
  byte[] written() throws IOException {
    write();
    bytes = new ByteArrayOutputStream();
    out = new DataOutputStream(bytes);
    write();
    return bytes.toByteArray();
  }

  private void write() throws IOException {
    out.writeInt(tables.size());
    for (String name : tables.keySet()) {
      text(name);
      out.writeInt(places.getOrDefault(name, 0));
    }
    for (List<Map<String, Object>> rows : tables.values()) {
      for (Map<String, Object> row : rows) {
        for (String key : row.keySet()) {
          keys.putIfAbsent(key, 0);
        }
      }
    }
    for (String key : List.copyOf(keys.keySet())) {
      keys.put(key, out.size());
      text(key);
    }
    for (Map.Entry<String, List<Map<String, Object>>> table : tables.entrySet()) {
      places.put(table.getKey(), out.size());
      rows(table.getValue());
    }
  }

  private void rows(List<Map<String, Object>> rows) throws IOException {
    out.writeInt(rows.size());
    for (Map<String, Object> row : rows) {
      out.writeInt(row.size());
      for (Map.Entry<String, Object> each : row.entrySet()) {
        out.writeInt(keys.get(each.getKey()));
        value(each.getValue());
      }
    }
  }

  private void value(Object value) throws IOException {
    if (value instanceof String text) {
      out.writeByte(Kind.TEXT.ordinal());
      text(text);
    } else if (value instanceof BigDecimal number) {
      out.writeByte(Kind.NUMBER.ordinal());
      text(number.toString());
    } else if (value instanceof Boolean truth) {
      out.writeByte((truth ? Kind.TRUE : Kind.FALSE).ordinal());
    } else if (value instanceof Row.Texts texts) {
      out.writeByte(Kind.TEXTS.ordinal());
      out.writeInt(texts.items().size());
      for (String item : texts.items()) {
        text(item);
      }
    } else {
      throw new IllegalArgumentException("a table holds what can't be packed: " + value);
    }
  }

  private void text(String text) throws IOException {
    boolean wide = !StandardCharsets.ISO_8859_1.newEncoder().canEncode(text);
    Charset charset = wide ? StandardCharsets.UTF_8 : StandardCharsets.ISO_8859_1;
    byte[] letters = text.getBytes(charset);
    out.writeInt(letters.length | (wide ? PackedRows.WIDE : 0));
    out.write(letters);
  }
}
