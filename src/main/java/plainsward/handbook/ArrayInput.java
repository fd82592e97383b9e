package plainsward.handbook;

import java.io.EOFException;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.util.Objects;
import org.apache.lucene.store.IndexInput;
import org.apache.lucene.store.RandomAccessInput;

/** Reads a part of an array; several may read the same array, each at its own place. */
final class ArrayInput extends IndexInput implements RandomAccessInput {
  private static final VarHandle SHORT = little(short[].class);
  private static final VarHandle INT = little(int[].class);
  private static final VarHandle LONG = little(long[].class);

  private final byte[] bytes;
  private final int start;
  private final int length;
  private int at;

  ArrayInput(String name, byte[] bytes, int start, int length) {
    super(name);
    this.bytes = bytes;
    this.start = start;
    this.length = length;
    this.at = start;
  }

  // Lucene's files are little-endian.
  private static VarHandle little(Class<?> array) {
    return MethodHandles.byteArrayViewVarHandle(array, ByteOrder.LITTLE_ENDIAN);
  }

  /** Takes some bytes: where they begin. */
  private int take(int count) throws EOFException {
    int from = at;
    if (count > start + length - from) {
      throw new EOFException(toString());
    }
    at = from + count;
    return from;
  }

  private int place(long position, int count) {
    return start + (int) Objects.checkFromIndexSize(position, count, (long) length);
  }

  @Override
  public byte readByte() throws EOFException {
    return bytes[take(1)];
  }

  @Override
  public void readBytes(byte[] into, int offset, int count) throws EOFException {
    System.arraycopy(bytes, take(count), into, offset, count);
  }

  @Override
  public short readShort() throws EOFException {
    return (short) SHORT.get(bytes, take(Short.BYTES));
  }

  @Override
  public int readInt() throws EOFException {
    return (int) INT.get(bytes, take(Integer.BYTES));
  }

  @Override
  public long readLong() throws EOFException {
    return (long) LONG.get(bytes, take(Long.BYTES));
  }

  @Override
  public byte readByte(long position) {
    return bytes[place(position, 1)];
  }

  @Override
  public short readShort(long position) {
    return (short) SHORT.get(bytes, place(position, Short.BYTES));
  }

  @Override
  public int readInt(long position) {
    return (int) INT.get(bytes, place(position, Integer.BYTES));
  }

  @Override
  public long readLong(long position) {
    return (long) LONG.get(bytes, place(position, Long.BYTES));
  }

  @Override
  public long getFilePointer() {
    return at - start;
  }

  @Override
  public void seek(long position) throws EOFException {
    if (position < 0 || position > length) {
      throw new EOFException(toString() + ": " + position);
    }
    at = start + (int) position;
  }

  @Override
  public long length() {
    return length;
  }

  @Override
  public IndexInput slice(String name, long offset, long count) {
    Objects.checkFromIndexSize(offset, count, (long) length);
    return new ArrayInput(getFullSliceDescription(name), bytes, start + (int) offset, (int) count);
  }

  @Override
  public void close() {}
}
