package plainsward.records;

import java.nio.file.Path;

/** A failure of the records; its message is one plain sentence that names the file. */
public final class RecordFault extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** What is the matter. */
  public enum Why {
    /** The disk has no room left. */
    FULL,
    /** The file or folder may not be read or written. */
    NO_ACCESS,
    /** Another running copy is writing. */
    BUSY,
    /** The file's content is not what was expected. */
    BROKEN,
    /** A newer version of the program wrote the file. */
    NEWER,
    /** A file stands where a folder is needed, or a folder where a file is. */
    NOT_A_FOLDER,
    /** The file is not there. */
    MISSING,
    /** Anything else that the system reported. */
    OTHER
  }

  private final Why why;
  private final transient Path file;

  RecordFault(Why why, Path file, String sentence, Throwable cause) {
    super(sentence, cause);
    this.why = why;
    this.file = file;
  }

  /** What is the matter. */
  public Why why() {
    return why;
  }

  /** The file or folder that it is about. */
  public Path file() {
    return file;
  }
}
