package plainsward.terminal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import plainsward.units.UnitSystem;

/**
 * What was chosen on the command line.
 *
 * @param way what is to be done
 * @param question the question, for {@link Way#QUESTION}
 * @param batchFile the file of a batch; empty for standard input
 * @param units the measures taken where a question does not tell
 * @param today the date that replies reckon from; empty for the clock's
 * @param home where labels, lawns, sprayers and the log live, where said
 * @param notes a folder of the user's own notes, where said
 * @param json whether replies are written as JSON
 * @param plain whether colour and drawings are left out
 * @param length how much of a reply is told
 */
record Choices(
    Way way,
    String question,
    Optional<String> batchFile,
    UnitSystem units,
    Optional<LocalDate> today,
    Optional<Path> home,
    Optional<Path> notes,
    boolean json,
    boolean plain,
    Length length) {

  /** Whether replies are three sentences at most. */
  boolean brief() {
    return length == Length.SHORT;
  }

  /** The ways in. */
  enum Way {
    /** Turn after turn, until the user leaves. */
    CONVERSATION,
    /** One question, one reply. */
    QUESTION,
    /** A line in, a line of JSON out. */
    BATCH,
    /** What can be said on the command line. */
    HELP,
    /** Which version this is. */
    VERSION
  }
}
