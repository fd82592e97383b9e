package plainsward.records;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** A text that is put into a file of the user's choice. */
public final class TextFile {
  private TextFile() {}

  /**
   * Writes the whole text, in place of what the file held.
   *
   * @throws RecordFault where that fails; the file is then as it was
   */
  public static void write(Path file, String text) {
    try {
      new Disk().replace(file.toAbsolutePath(), text.getBytes(StandardCharsets.UTF_8));
    } catch (IOException fault) {
      throw Faults.writing(file, fault);
    }
  }
}
