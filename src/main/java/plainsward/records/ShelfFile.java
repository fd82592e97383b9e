package plainsward.records;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Objects;
import java.util.Optional;

/**
 * A file of a shelf as it was last read.
 *
 * @param file where it is
 * @param stamp what changes when the file does
 * @param thing what it holds, if it can be read
 * @param problem the sentence where it can't
 */
record ShelfFile<T>(Path file, Stamp stamp, Optional<T> thing, Optional<String> problem) {
  private static final long LARGEST = 1 << 20;

  /** What changes when a file does: which file it is, its length, when it was written. */
  record Stamp(Object key, long size, FileTime time) {
    static Stamp of(Path file) throws IOException {
      BasicFileAttributes seen = Files.readAttributes(file, BasicFileAttributes.class);
      return new Stamp(seen.fileKey(), seen.size(), seen.lastModifiedTime());
    }
  }

  /** Reads a file unless it is still as it was. */
  static <T> ShelfFile<T> read(Path file, ShelfFile<T> before, Codec<T> codec) {
    Stamp stamp = null;
    try {
      stamp = Stamp.of(file);
      if (before != null && Objects.equals(stamp, before.stamp)) {
        return before;
      }
      return new ShelfFile<>(file, stamp, Optional.of(content(file, codec)), Optional.empty());
    } catch (IOException fault) {
      return broken(file, stamp, Faults.reading(file, fault));
    } catch (RecordFault fault) {
      return broken(file, stamp, fault);
    }
  }

  private static <T> ShelfFile<T> broken(Path file, Stamp stamp, RecordFault fault) {
    return new ShelfFile<>(file, stamp, Optional.empty(), Optional.of(fault.getMessage()));
  }

  /** The thing that a file holds; {@link RecordFault} where it is not as expected. */
  static <T> T content(Path file, Codec<T> codec) throws IOException {
    return content(file, bytes(file), codec);
  }

  private static <T> T content(Path file, byte[] bytes, Codec<T> codec) {
    try {
      return codec.read(Json.read(bytes));
    } catch (FieldFault fault) {
      throw Faults.content(file, fault);
    }
  }

  /** A whole file of a size that a person would write. */
  static byte[] bytes(Path file) throws IOException {
    if (Files.size(file) > LARGEST) {
      throw Faults.content(file, FieldFault.saying("", "it is larger than 1 MB"));
    }
    return Files.readAllBytes(file);
  }
}
