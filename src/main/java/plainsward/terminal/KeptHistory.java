package plainsward.terminal;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;

/** The file of what was typed before, in the data folder, readable by its owner alone. */
final class KeptHistory {
  private KeptHistory() {}

  /**
   * The file, made where it isn't there yet.
   *
   * @throws Unreadable where it can't be written, with a sentence that tells so
   */
  static Optional<Path> in(Optional<Path> folder) throws Unreadable {
    if (folder.isEmpty()) {
      return Optional.empty();
    }
    Path file = folder.get().resolve("asked.history");
    try {
      Files.createDirectories(folder.get());
      if (!Files.exists(file)) {
        Files.createFile(file, ownerOnly());
      }
    } catch (IOException refused) {
      throw notKept(folder.get());
    }
    if (!Files.isWritable(file) || !Files.isRegularFile(file)) {
      throw notKept(folder.get());
    }
    return Optional.of(file);
  }

  private static Unreadable notKept(Path folder) {
    return new Unreadable(
        "The folder " + folder + " can't be written to, so nothing typed here will be kept.");
  }

  private static FileAttribute<?>[] ownerOnly() {
    boolean posix = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
    return posix
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
        }
        : new FileAttribute<?>[0];
  }
}
