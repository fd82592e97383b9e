package plainsward.records;

import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;
import plainsward.records.RecordFault.Why;

/** What the system reports, as one plain sentence that names the file. */
final class Faults {
  private Faults() {}

  /** A file that could not be written; nothing of it was changed. */
  static RecordFault writing(Path file, Exception cause) {
    Why why = why(cause);
    String told =
        switch (why) {
          case FULL -> "the disk is full";
          case NO_ACCESS -> "it may not be written (read-only)";
          case NOT_A_FOLDER -> "a file stands where a folder is needed";
          default -> "the system said: " + message(cause);
        };
    return new RecordFault(why, file, file + " was not saved: " + told + ".", cause);
  }

  /** A file that could not be read. */
  static RecordFault reading(Path file, Exception cause) {
    Why why = why(cause);
    String told =
        switch (why) {
          case NO_ACCESS -> "reading it is not allowed";
          case MISSING -> "there is no such file";
          case NOT_A_FOLDER -> "a file was expected, and a folder was found or the reverse";
          default -> "the system said: " + message(cause);
        };
    return new RecordFault(why, file, file + " cannot be read: " + told + ".", cause);
  }

  /** A file whose content is not what was expected. */
  static RecordFault content(Path file, FieldFault fault) {
    Why why = fault.isNewer() ? Why.NEWER : Why.BROKEN;
    return new RecordFault(why, file, file + " cannot be read: " + fault.getMessage() + ".", fault);
  }

  /** Another running copy that keeps writing. */
  static RecordFault busy(Path home) {
    return new RecordFault(
        Why.BUSY,
        home,
        "Nothing was saved in "
            + home
            + " because another running copy of Plainsward is writing there; close it or try"
            + " again.",
        null);
  }

  /** The kind of trouble; systems differ in how they report it, so their words count too. */
  static Why why(Exception cause) {
    String text = message(cause).toLowerCase(Locale.ROOT);
    if (text.contains("no space left")
        || text.contains("not enough space")
        || text.contains("quota exceeded")) {
      return Why.FULL;
    }
    if (cause instanceof NotDirectoryException
        || cause instanceof FileAlreadyExistsException
        || text.contains("not a directory")
        || text.contains("is a directory")) {
      return Why.NOT_A_FOLDER;
    }
    if (cause instanceof AccessDeniedException
        || cause instanceof ReadOnlyFileSystemException
        || cause instanceof SecurityException
        || text.contains("read-only file system")
        || text.contains("not permitted")) {
      return Why.NO_ACCESS;
    }
    return cause instanceof NoSuchFileException ? Why.MISSING : Why.OTHER;
  }

  private static String message(Exception cause) {
    String text = cause.getMessage();
    return text == null ? cause.getClass().getSimpleName() : text.strip();
  }
}
