package plainsward.records;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/**
 * Writes that are whole or not at all, and on the disk when the method returns. The caller holds
 * the {@link Guard}. Tests make single steps fail.
 */
class Disk {
  private static final String UNFINISHED = ".unfinished";

  /**
   * Adds a line to the end of a file. A torn line that a crash left there is closed first, so that
   * it can't swallow the new one; a line that could not be written whole is taken back.
   */
  void append(Path file, byte[] line) throws IOException {
    makeFolder(file.getParent());
    boolean fresh = Files.notExists(file);
    try (FileChannel channel =
        FileChannel.open(
            file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
      long before = channel.size();
      try {
        if (isTorn(channel, before)) {
          write(channel.position(before), ByteBuffer.wrap(new byte[] {'\n'}));
        }
        write(channel.position(channel.size()), ByteBuffer.wrap(line));
        force(channel);
      } catch (IOException fault) {
        takeBack(channel, before, fault);
        throw fault;
      }
    }
    if (fresh) {
      forceFolder(file.getParent());
    }
  }

  /** Makes a folder and those above it, each on the disk before anything is put into it. */
  private void makeFolder(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      Path above = folder.toAbsolutePath().getParent();
      if (above != null && !Files.isDirectory(above)) {
        makeFolder(above);
      }
      Files.createDirectories(folder);
      if (above != null) {
        forceFolder(above);
      }
    }
  }

  private static boolean isTorn(FileChannel channel, long size) throws IOException {
    ByteBuffer last = ByteBuffer.allocate(1);
    return size > 0 && channel.read(last, size - 1) == 1 && last.get(0) != '\n';
  }

  private static void takeBack(FileChannel channel, long size, IOException fault) {
    try {
      channel.truncate(size);
    } catch (IOException second) {
      fault.addSuppressed(second);
    }
  }

  /** Puts a file in place of what it was; a reader sees the old one or the new one. */
  void replace(Path file, byte[] content) throws IOException {
    makeFolder(file.getParent());
    Path target = Files.exists(file) ? file.toRealPath() : file;
    Path folder = target.getParent();
    Path fresh = folder.resolve("." + UUID.randomUUID() + UNFINISHED);
    try {
      try (FileChannel channel =
          FileChannel.open(fresh, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
        write(channel, ByteBuffer.wrap(content));
        force(channel);
      }
      rename(fresh, target);
    } catch (IOException | RuntimeException fault) {
      deleteQuietly(fresh, fault);
      throw fault;
    }
    forceFolder(folder);
  }

  /**
   * Makes a file that is not there yet.
   *
   * @throws java.nio.file.FileAlreadyExistsException where it is there; it is then left alone
   */
  void make(Path file, byte[] content) throws IOException {
    makeFolder(file.getParent());
    Files.createFile(file);
    try {
      replace(file, content);
    } catch (IOException | RuntimeException fault) {
      deleteQuietly(file, fault);
      throw fault;
    }
  }

  /** Clears what a killed run left: the guard is held, so nobody is still writing it. */
  void clearUnfinished(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return;
    }
    try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, ".*" + UNFINISHED)) {
      for (Path file : left) {
        Files.deleteIfExists(file);
      }
    }
  }

  private static void deleteQuietly(Path file, Exception fault) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException second) {
      fault.addSuppressed(second);
    }
  }

  /** Removes a file. */
  void delete(Path file) throws IOException {
    Files.deleteIfExists(file);
    forceFolder(file.getParent());
  }

  /** Writes all that is left in the buffer. */
  void write(FileChannel channel, ByteBuffer bytes) throws IOException {
    while (bytes.hasRemaining()) {
      channel.write(bytes);
    }
  }

  /** Waits until the file is on the disk. */
  void force(FileChannel channel) throws IOException {
    channel.force(true);
  }

  /** Puts one file in the other's place in a single step. */
  void rename(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  /** Waits until the folder is on the disk, where the system lets a folder be opened. */
  void forceFolder(Path folder) throws IOException {
    FileChannel opened;
    try {
      opened = FileChannel.open(folder, StandardOpenOption.READ);
    } catch (IOException foldersCannotBeOpenedHere) {
      return;
    }
    try (opened) {
      opened.force(true);
    }
  }
}
