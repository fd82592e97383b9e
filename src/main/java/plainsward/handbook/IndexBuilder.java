package plainsward.handbook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.store.ByteBuffersDirectory;

/**
 * Makes the index that is shipped in the jar. Run by the build with three arguments: the folder of
 * the notes, the file of the synonyms, and the folder to write the index into. The same input gives
 * the same bytes. A broken note stops the build, and all broken ones are named at once.
 */
public final class IndexBuilder {
  // Lucene draws the ids of its segments from this property, if it is set when Lucene is loaded.
  private static final String LUCENE_SEED = "tests.seed";

  private IndexBuilder() {}

  /** Builds the index; see the class. */
  public static void main(String[] args) throws IOException {
    if (args.length != 3) {
      throw new IllegalArgumentException("NOTES-FOLDER SYNONYMS-FILE INDEX-FOLDER were expected");
    }
    String before = System.getProperty(LUCENE_SEED);
    System.setProperty(LUCENE_SEED, "1");
    try {
      build(Path.of(args[0]), Path.of(args[1]), Path.of(args[2]));
    } finally {
      if (before == null) {
        System.clearProperty(LUCENE_SEED);
      } else {
        System.setProperty(LUCENE_SEED, before);
      }
    }
  }

  private static void build(Path notes, Path synonyms, Path into) throws IOException {
    Files.createDirectories(into);
    empty(into);
    try (ByteBuffersDirectory index = new ByteBuffersDirectory()) {
      try (NoteIndexer indexer = new NoteIndexer(index)) {
        for (Note note : read(notes)) {
          indexer.add(note);
        }
      }
      copy(index, into);
      try (DirectoryReader reader = DirectoryReader.open(index)) {
        if (reader.maxDoc() <= PackedLists.MOST) {
          pack(new ListMaker(new StemIndex(reader)), into);
        }
      }
    }
    Files.write(into.resolve(NotePack.SYNONYMS), SynonymTable.read(synonyms).packed());
  }

  /** More notes than can be packed are searched in the Lucene index itself. */
  private static void pack(ListMaker lists, Path into) throws IOException {
    Files.write(into.resolve(NotePack.LISTS), lists.packed());
    List<byte[]> texts = lists.texts();
    for (int i = 0; i < texts.size(); i++) {
      Files.write(into.resolve(NotePack.texts(i)), texts.get(i));
    }
  }

  private static void empty(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
  }

  private static List<Note> read(Path folder) throws IOException {
    List<Note> notes = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    for (Path file : NoteFolder.files(folder)) {
      try {
        notes.add(NoteReader.read(file));
      } catch (NoteFault fault) {
        faults.add(fault.getMessage());
      }
    }
    if (!faults.isEmpty()) {
      throw new IllegalArgumentException("Broken notes:\n" + String.join("\n", faults));
    }
    return notes;
  }

  private static void copy(ByteBuffersDirectory index, Path into) throws IOException {
    String[] names = index.listAll();
    Arrays.sort(names);
    for (String name : names) {
      Files.write(into.resolve(name), ArrayDirectory.bytes(index, name));
    }
    String list = String.join("\n", names) + "\n";
    Files.writeString(into.resolve(ShippedIndex.FILES), list, StandardCharsets.UTF_8);
  }
}
