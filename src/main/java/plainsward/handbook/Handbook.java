package plainsward.handbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.store.ByteBuffersDirectory;

/**
 * The notes, to be searched in people's own words. The index is opened at the first search, since
 * that costs a large part of the time that one answer takes. Any number of threads may search.
 */
public final class Handbook {
  private static final Handbook SHIPPED = new Handbook(ShippedIndex::open, List.of(), Set.of());

  private final Supplier<Shelf> opening;
  private final List<String> refused;
  private final Set<String> own;
  private volatile Shelf open;

  Handbook(Supplier<Shelf> opening, List<String> refused, Set<String> own) {
    this.opening = opening;
    this.refused = List.copyOf(refused);
    this.own = Set.copyOf(own);
  }

  /** The notes that come with the program. */
  public static Handbook shipped() {
    return SHIPPED;
  }

  /**
   * The notes that fit the words best, the best first; none for words that no note has. Words of
   * any kind and length may be given: the first 4,000 characters and 60 things count.
   */
  public List<Hit> search(String words, Search options) {
    return asked(words).search(options);
  }

  /** The words, read once, to be searched for in more than one way. */
  public Asked asked(String words) {
    return new Asked(shelf(), words);
  }

  /** The note of an id. */
  public Optional<Note> note(String id) {
    return shelf().note(id);
  }

  /**
   * These notes and those of a user's own folder. A note of the user's stands in for one of the
   * same id that is here. A malformed file is left out and listed by {@link #refused}.
   *
   * @throws UncheckedIOException if the folder can't be listed
   */
  public Handbook plus(Path notesFolder, Progress progress) {
    List<String> faults = new ArrayList<>(refused);
    Set<String> ids = new HashSet<>(own);
    try {
      ByteBuffersDirectory index = new ByteBuffersDirectory();
      try (NoteIndexer indexer = new NoteIndexer(index)) {
        ids.addAll(added(NoteFolder.files(notesFolder), indexer, progress, faults));
      }
      DirectoryReader notes = DirectoryReader.open(ArrayDirectory.copyOf(index));
      return new Handbook(() -> shelf().with(notes), faults, ids);
    } catch (IOException fault) {
      throw new UncheckedIOException("The notes folder can't be read: " + notesFolder, fault);
    }
  }

  /** Adds the notes of these files; gives the ids of those that could be read. */
  private static Set<String> added(
      List<Path> files, NoteIndexer indexer, Progress progress, List<String> faults)
      throws IOException {
    Set<String> ids = new HashSet<>();
    int done = 0;
    for (Path file : files) {
      try {
        Note note = NoteReader.read(file);
        indexer.add(note);
        ids.add(note.id());
      } catch (NoteFault fault) {
        faults.add(fault.getMessage());
      }
      progress.at(++done, files.size());
    }
    return ids;
  }

  /** Whether there are notes of a user's own. */
  public boolean hasOwn() {
    return !own.isEmpty();
  }

  /** Whether a note is one of a user's own. */
  public boolean isOwn(Note note) {
    return own.contains(note.id());
  }

  /** What is wrong with each file that {@link #plus} had to leave out, a sentence each. */
  public List<String> refused() {
    return refused;
  }

  private Shelf shelf() {
    Shelf here = open;
    if (here == null) {
      synchronized (this) {
        here = open;
        if (here == null) {
          here = opening.get();
          open = here;
        }
      }
    }
    return here;
  }
}
