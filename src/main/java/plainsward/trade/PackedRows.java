package plainsward.trade;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.AbstractList;
import java.util.List;
import java.util.RandomAccess;

/**
 * A table as the build packs it, so that it costs neither a search through the jar nor taking JSON
 * apart, and of a row only what is asked for is made: the keys' number and the keys, the rows'
 * number, where each row begins, and the rows as {@link PackedValues} reads them. {@link RowPacker}
 * writes it. All numbers have their high byte first.
 */
public final class PackedRows extends AbstractList<Row> implements RandomAccess {
  /** A text with letters beyond Latin-1 says so by this bit of its length. */
  public static final int WIDE = 1 << 30;

  private final byte[] bytes;
  private final String file;
  private final String[] keys;
  private final int starts;
  private final Row[] rows;

  private PackedRows(String file, byte[] bytes) {
    this.bytes = bytes;
    this.file = file;
    this.keys = new String[ByteReader.four(bytes, 0)];
    int at = 4;
    for (int i = 0; i < keys.length; i++) {
      keys[i] = text(bytes, at).intern();
      at = afterText(bytes, at);
    }
    this.rows = new Row[ByteReader.four(bytes, at)];
    this.starts = at + 4;
  }

  /**
   * The rows that {@link RowPacker} packed.
   *
   * @param file where they come from, for messages
   */
  public static List<Row> of(String file, byte[] bytes) {
    return new PackedRows(file, bytes);
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
      int start = ByteReader.four(bytes, starts + 4 * number);
      row = new Row(file, number, new PackedValues(bytes, keys, start));
      rows[number] = row;
    }
    return row;
  }

  /** A length and the letters. */
  static String text(byte[] bytes, int at) {
    int length = ByteReader.four(bytes, at);
    Charset charset = (length & WIDE) == 0 ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8;
    return new String(bytes, at + 4, length & ~WIDE, charset);
  }

  static int afterText(byte[] bytes, int at) {
    return at + 4 + (ByteReader.four(bytes, at) & ~WIDE);
  }
}
