package plainsward.records;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Copies what could not be read into a file beside, each line once. */
final class SetAside {
  private SetAside() {}

  /** The file beside a file. */
  static Path beside(Path file) {
    return file.resolveSibling(file.getFileName() + ".damaged");
  }

  /** Adds the lines that the file beside doesn't hold yet; the guard is held. */
  static void copy(Path file, List<byte[]> lines, Disk disk) throws IOException {
    Path beside = beside(file);
    Set<String> held = new HashSet<>();
    if (Files.exists(beside)) {
      LineSplitter.read(beside, 0, (bytes, end, ended) -> held.add(exact(bytes)));
    }
    ByteArrayOutputStream fresh = new ByteArrayOutputStream();
    for (byte[] line : lines) {
      if (held.add(exact(line))) {
        fresh.write(line);
        fresh.write('\n');
      }
    }
    if (fresh.size() > 0) {
      disk.append(beside, fresh.toByteArray());
    }
  }

  private static String exact(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }
}
