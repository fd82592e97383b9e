package plainsward.handbook;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.lucene.index.DirectoryReader;

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
      Map<String, byte[]> files = new TreeMap<>();
      for (String name : lines(FILES)) {
        files.put(name, bytes(name));
      }
      DirectoryReader reader = DirectoryReader.open(new ArrayDirectory(files));
      return Shelf.of(reader, Synonyms.ofLines(lines(SYNONYMS)));
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
