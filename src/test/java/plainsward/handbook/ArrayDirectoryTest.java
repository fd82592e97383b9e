package plainsward.handbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.EOFException;
import java.nio.file.NoSuchFileException;
import java.util.Map;
import org.apache.lucene.store.IOContext;
import org.apache.lucene.store.IndexInput;
import org.apache.lucene.store.RandomAccessInput;
import org.junit.jupiter.api.Test;

class ArrayDirectoryTest {
  private static final byte[] BYTES = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10};

  private final ArrayDirectory directory = new ArrayDirectory(Map.of("a", BYTES));

  private IndexInput open() throws Exception {
    return directory.openInput("a", IOContext.DEFAULT);
  }

  @Test
  void filesAreListedAndMissingOnesNamed() throws Exception {
    assertArrayEquals(new String[] {"a"}, directory.listAll());
    assertEquals(10, directory.fileLength("a"));
    assertThrows(NoSuchFileException.class, () -> directory.openInput("b", IOContext.DEFAULT));
    assertThrows(UnsupportedOperationException.class, () -> directory.deleteFile("a"));
  }

  @Test
  void numbersAreReadLowByteFirst() throws Exception {
    IndexInput in = open();
    assertEquals(1, in.readByte());
    assertEquals(0x0302, in.readShort());
    assertEquals(0x07060504, in.readInt());
    assertEquals(7, in.getFilePointer());
    in.seek(1);
    assertEquals(0x0908070605040302L, in.readLong());
  }

  @Test
  void nothingIsReadPastTheEnd() throws Exception {
    IndexInput in = open();
    in.seek(8);
    assertThrows(EOFException.class, in::readInt);
    assertEquals(8, in.getFilePointer());
    assertThrows(EOFException.class, () -> in.seek(11));
    IndexInput part = in.slice("part", 2, 3);
    part.seek(3);
    assertThrows(EOFException.class, part::readByte);
    assertThrows(IndexOutOfBoundsException.class, () -> in.slice("part", 8, 3));
  }

  @Test
  void aPartIsReadFromItsOwnStart() throws Exception {
    RandomAccessInput part = open().randomAccessSlice(2, 8);
    assertEquals(8, part.length());
    assertEquals(3, part.readByte(0));
    assertEquals(0x0504, part.readShort(1));
    assertEquals(0x06050403, part.readInt(0));
    assertEquals(0x0A09080706050403L, part.readLong(0));
    assertThrows(IndexOutOfBoundsException.class, () -> part.readLong(1));
  }

  @Test
  void aCopyKeepsItsOwnPlace() throws Exception {
    IndexInput in = open();
    IndexInput copy = in.clone();
    in.readInt();
    assertEquals(0, copy.getFilePointer());
    assertEquals(1, copy.readByte());
  }
}
