package plainsward.handbook;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.lucene.store.BaseDirectory;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.IOContext;
import org.apache.lucene.store.IndexInput;
import org.apache.lucene.store.IndexOutput;
import org.apache.lucene.store.NoLockFactory;

/** An index that is only read, each of its files one array of bytes in memory. */
final class ArrayDirectory extends BaseDirectory {
  private final Map<String, byte[]> files = new TreeMap<>();

  ArrayDirectory(Map<String, byte[]> files) {
    super(NoLockFactory.INSTANCE);
    this.files.putAll(files);
  }

  /** A copy of an index that was written elsewhere. */
  static ArrayDirectory copyOf(Directory written) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    for (String name : written.listAll()) {
      files.put(name, bytes(written, name));
    }
    return new ArrayDirectory(files);
  }

  /** The bytes of a file of an index. */
  static byte[] bytes(Directory written, String name) throws IOException {
    try (IndexInput in = written.openInput(name, IOContext.READONCE)) {
      byte[] bytes = new byte[Math.toIntExact(in.length())];
      in.readBytes(bytes, 0, bytes.length);
      return bytes;
    }
  }

  @Override
  public String[] listAll() {
    return files.keySet().toArray(new String[0]);
  }

  @Override
  public long fileLength(String name) throws IOException {
    return file(name).length;
  }

  @Override
  public IndexInput openInput(String name, IOContext context) throws IOException {
    byte[] bytes = file(name);
    return new ArrayInput(name, bytes, 0, bytes.length);
  }

  private byte[] file(String name) throws IOException {
    byte[] bytes = files.get(name);
    if (bytes == null) {
      throw new NoSuchFileException(name);
    }
    return bytes;
  }

  @Override
  public Set<String> getPendingDeletions() {
    return Set.of();
  }

  @Override
  public void close() {
    isOpen = false;
  }

  @Override
  public IndexOutput createOutput(String name, IOContext context) {
    throw new UnsupportedOperationException();
  }

  @Override
  public IndexOutput createTempOutput(String prefix, String suffix, IOContext context) {
    throw new UnsupportedOperationException();
  }

  @Override
  public void deleteFile(String name) {
    throw new UnsupportedOperationException();
  }

  @Override
  public void rename(String source, String target) {
    throw new UnsupportedOperationException();
  }

  @Override
  public void sync(Collection<String> names) {}

  @Override
  public void syncMetaData() {}
}
