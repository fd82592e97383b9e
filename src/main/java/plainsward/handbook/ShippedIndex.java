package plainsward.handbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexReader;

/** What the build made of the notes: packed lists, and the Lucene index that they come from. */
final class ShippedIndex {
  /** The list of the index's files, a name a line. */
  static final String FILES = "files";

  private ShippedIndex() {}

  static Shelf open() {
    boolean packed = NotePack.has(NotePack.LISTS);
    NoteLists lists = packed ? new PackedLists() : new StemIndex(reader());
    return Shelf.of(lists, new Synonyms(NotePack.bytes(NotePack.SYNONYMS)));
  }

  /** The Lucene index, which only a user's own notes need beside theirs. */
  static IndexReader reader() {
    Map<String, byte[]> files = new TreeMap<>();
    String names = new String(NotePack.bytes(FILES), StandardCharsets.UTF_8);
    names.lines().forEach(name -> files.put(name, NotePack.bytes(name)));
    try {
      return DirectoryReader.open(new ArrayDirectory(files));
    } catch (IOException fault) {
      throw new UncheckedIOException("The handbook's index can't be read", fault);
    }
  }
}
