package plainsward.records;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;

/** A text that is put into a file of the user's choice. */
public final class TextFile {
  private static final int MOST_TRIED = 1000;

  private TextFile() {}

  /**
   * Writes the whole text into a file that was not there: under the name, or where that is taken
   * under the name with a number, as in {@code log-2.csv}.
   *
   * @param name a plain file name with an ending
   * @return the file
   * @throws RecordFault where that fails; nothing is left behind then
   */
  public static Path writeNew(Path folder, String name, String text) {
    int dot = name.lastIndexOf('.');
    Path file = folder.resolve(name);
    for (int i = 2; i < MOST_TRIED; i++) {
      if (isMade(file, text)) {
        return file;
      }
      file = folder.resolve(name.substring(0, dot) + "-" + i + name.substring(dot));
    }
    throw Faults.writing(file, new IOException("all names like it are taken"));
  }

  private static boolean isMade(Path file, String text) {
    try {
      new Disk().make(file.toAbsolutePath(), text.getBytes(StandardCharsets.UTF_8));
      return true;
    } catch (FileAlreadyExistsException taken) {
      return false;
    } catch (IOException fault) {
      throw Faults.writing(file, fault);
    }
  }

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
