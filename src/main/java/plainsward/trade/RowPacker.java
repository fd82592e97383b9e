package plainsward.trade;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Writes a table as {@link PackedRows} reads it. */
public final class RowPacker {
  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final DataOutputStream out = new DataOutputStream(bytes);

  private RowPacker() {}

  /**
   * The bytes of a table.
   *
   * @throws IllegalArgumentException where a row holds what is no value of a table
   */
  public static byte[] packed(List<Row> rows) {
    try {
      return written(rows);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible); // nothing but memory is written to
    }
  }

  private static byte[] written(List<Row> rows) throws IOException {
    TreeSet<String> sorted = new TreeSet<>();
    rows.forEach(row -> sorted.addAll(row.values().keySet()));
    List<String> keys = new ArrayList<>(sorted);
    RowPacker head = new RowPacker();
    head.out.writeInt(keys.size());
    for (String key : keys) {
      head.text(key);
    }
    head.out.writeInt(rows.size());
    RowPacker body = new RowPacker();
    int start = head.bytes.size() + Integer.BYTES * rows.size();
    for (Row row : rows) {
      head.out.writeInt(start + body.bytes.size());
      body.row(keys, row);
    }
    head.bytes.writeBytes(body.bytes.toByteArray());
    return head.bytes.toByteArray();
  }

  private void row(List<String> keys, Row row) throws IOException {
    out.writeInt(row.values().size());
    for (Map.Entry<String, Object> each : row.values().entrySet()) {
      out.writeInt(keys.indexOf(each.getKey()));
      RowPacker value = new RowPacker();
      out.writeByte(value.value(each.getValue()));
      out.writeInt(value.bytes.size());
      value.bytes.writeTo(out);
    }
  }

  /** Writes a value and tells its kind. */
  private int value(Object value) throws IOException {
    if (value instanceof String text) {
      text(text);
      return PackedValues.TEXT;
    }
    if (value instanceof BigDecimal number) {
      text(number.toString());
      return PackedValues.NUMBER;
    }
    if (value instanceof Boolean truth) {
      return truth ? PackedValues.TRUE : PackedValues.FALSE;
    }
    if (value instanceof Row.Texts texts) {
      out.writeInt(texts.items().size());
      for (String item : texts.items()) {
        text(item);
      }
      return PackedValues.TEXTS;
    }
    throw new IllegalArgumentException("a table holds what can't be packed: " + value);
  }

  private void text(String text) throws IOException {
    boolean wide = !StandardCharsets.ISO_8859_1.newEncoder().canEncode(text);
    Charset charset = wide ? StandardCharsets.UTF_8 : StandardCharsets.ISO_8859_1;
    byte[] letters = text.getBytes(charset);
    out.writeInt(letters.length | (wide ? PackedRows.WIDE : 0));
    out.write(letters);
  }
}
