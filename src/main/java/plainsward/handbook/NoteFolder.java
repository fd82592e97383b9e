package plainsward.handbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The files of notes in a folder. */
final class NoteFolder {
  private static final int DEEPEST = 8;

  private NoteFolder() {}

  /** The Markdown files in a folder and below it, by name; none if there is no such folder. */
  static List<Path> files(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.walk(folder, DEEPEST)) {
      return files
          .filter(file -> String.valueOf(file.getFileName()).endsWith(".md"))
          .filter(Files::isRegularFile)
          .sorted()
          .toList();
    }
  }
}
