package plainsward.packing;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import plainsward.trade.PackedRows;
import plainsward.trade.PackedRows.Kind;
import plainsward.trade.Row;

/** Writes a table as {@link PackedRows} reads it. */
final class TableWriter {
  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final DataOutputStream out = new DataOutputStream(bytes);

  private TableWriter() {}

  static byte[] written(List<Row> rows) throws IOException {
    TableWriter writer = new TableWriter();
    writer.write(rows);
    return writer.bytes.toByteArray();
  }

  private void write(List<Row> rows) throws IOException {
    TreeSet<String> sorted = new TreeSet<>();
    rows.forEach(row -> sorted.addAll(row.values().keySet()));
    List<String> keys = new ArrayList<>(sorted);
    out.writeInt(keys.size());
    for (String key : keys) {
      text(key);
    }
    out.writeInt(rows.size());
    for (Row row : rows) {
      out.writeInt(row.values().size());
      for (Map.Entry<String, Object> each : row.values().entrySet()) {
        out.writeInt(keys.indexOf(each.getKey()));
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
