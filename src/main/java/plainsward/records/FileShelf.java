package plainsward.records;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A shelf that is a folder, a file for each thing. Files are read anew when they changed, so that
 * an edit by hand or by another running copy shows at once. A file that cannot be read is reported
 * and never overwritten.
 */
final class FileShelf<T> implements Shelf<T> {
  private static final String ENDING = ".json";

  private final Path folder;
  private final Codec<T> codec;
  private final Guard guard;
  private final Disk disk;
  private final Map<Path, ShelfFile<T>> files = new TreeMap<>();
  private final Map<String, ShelfFile<T>> byName = new TreeMap<>();
  private final List<String> problems = new ArrayList<>();

  FileShelf(Path folder, Codec<T> codec, Guard guard, Disk disk) {
    this.folder = folder;
    this.codec = codec;
    this.guard = guard;
    this.disk = disk;
  }

  @Override
  public List<T> all() {
    refresh();
    List<T> all = new ArrayList<>(byName.size());
    for (ShelfFile<T> file : byName.values()) {
      all.add(file.thing().orElseThrow());
    }
    return Collections.unmodifiableList(all);
  }

  @Override
  public Optional<T> find(String name) {
    refresh();
    return Optional.ofNullable(byName.get(Names.key(name))).flatMap(ShelfFile::thing);
  }

  @Override
  public void put(T thing) {
    byte[] content = codec.tree(thing).text().getBytes(StandardCharsets.UTF_8);
    guard.alone(
        folder,
        () -> {
          refresh();
          Path file = fileFor(codec.name(thing));
          try {
            disk.clearUnfinished(folder);
            disk.replace(file, content);
          } catch (IOException fault) {
            throw Faults.writing(file, fault);
          }
          return file;
        });
  }

  /** The file that holds this name, or else one that does not exist yet. */
  private Path fileFor(String name) {
    ShelfFile<T> known = byName.get(Names.key(name));
    if (known != null) {
      return known.file();
    }
    String plain = Names.fileName(name);
    Path file = folder.resolve(plain + ENDING);
    for (int i = 2; Files.exists(file, LinkOption.NOFOLLOW_LINKS); i++) {
      file = folder.resolve(plain + "-" + i + ENDING);
    }
    return file;
  }

  @Override
  public boolean remove(String name) {
    if (find(name).isEmpty()) {
      return false;
    }
    return guard.alone(
        folder,
        () -> {
          refresh();
          ShelfFile<T> known = byName.get(Names.key(name));
          if (known != null) {
            disk.delete(known.file());
          }
          return known != null;
        });
  }

  @Override
  public List<String> problems() {
    refresh();
    return List.copyOf(problems);
  }

  private void refresh() {
    problems.clear();
    byName.clear();
    List<Path> found = listed();
    files.keySet().retainAll(found);
    for (Path file : found) {
      ShelfFile<T> read = ShelfFile.read(file, files.get(file), codec);
      files.put(file, read);
      read.problem().ifPresent(problems::add);
      read.thing().ifPresent(thing -> place(read, codec.name(thing)));
    }
  }

  private void place(ShelfFile<T> file, String name) {
    ShelfFile<T> first = byName.putIfAbsent(Names.key(name), file);
    if (first != null) {
      problems.add(
          String.format(
              "%s was left out: the %s \"%s\" is in %s already.",
              file.file(), codec.kind(), name, first.file().getFileName()));
    }
  }

  private List<Path> listed() {
    List<Path> found = new ArrayList<>();
    if (Files.notExists(folder)) {
      return found;
    }
    try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, "*" + ENDING)) {
      for (Path file : all) {
        if (!file.getFileName().toString().startsWith(".")) {
          found.add(file);
        }
      }
    } catch (IOException fault) {
      problems.add(Faults.reading(folder, fault).getMessage());
    } catch (DirectoryIteratorException fault) {
      problems.add(Faults.reading(folder, fault.getCause()).getMessage());
    }
    found.sort(null);
    return found;
  }
}
