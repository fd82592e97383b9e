package plainsward.handbook;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.store.ByteBuffersDirectory;
import org.apache.lucene.store.IOContext;
import org.apache.lucene.store.IndexOutput;

/** Reads the index that the build made from the class path into memory. */
final class ShippedIndex {
  /** The list of the index's files, a name a line. */
  static final String FILES = "files";

  /** The synonyms, as {@link Synonyms#toLines} makes them. */
  static final String SYNONYMS = "synonyms";

  private static final String FOLDER = "handbook-index/";

  private ShippedIndex() {}

  static Shelf open() {
    try {
      ByteBuffersDirectory index = InMemory.directory();
      for (String name : lines(FILES)) {
        try (IndexOutput out = index.createOutput(name, IOContext.DEFAULT)) {
          byte[] bytes = bytes(name);
          out.writeBytes(bytes, bytes.length);
        }
      }
      return Shelf.of(DirectoryReader.open(index), Synonyms.ofLines(lines(SYNONYMS)));
    } catch (IOException fault) {
      throw new UncheckedIOException("The handbook's index can't be read", fault);
    }
  }

  private static List<String> lines(String name) throws IOException {
    return new String(bytes(name), StandardCharsets.UTF_8).lines().toList();
  }

  private static byte[] bytes(String name) throws IOException {
    try (InputStream in = ShippedIndex.class.getClassLoader().getResourceAsStream(FOLDER + name)) {
      if (in == null) {
        throw new FileNotFoundException(FOLDER + name);
      }
      return in.readAllBytes();
    }
  }
}
