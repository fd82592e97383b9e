package plainsward.records;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Where the log lives. */
interface LogStore {
  /** The log as it is now. */
  Log log();

  /** Adds an entry and gives it back with its id. */
  LogEntry append(LogEntry entry);

  /** Undoes the latest entry that is not undone yet. */
  Optional<LogEntry> undoLast();

  /** Undoes the entry of this id; empty where there is none, or it is undone. */
  Optional<LogEntry> undo(String id);

  /** A sentence for each line that could not be read. */
  List<String> problems();

  /** An entry with an id that the log does not have. */
  static LogEntry identified(LogEntry entry, Log log) {
    String id = "";
    while (id.isEmpty() || log.knows(id)) {
      id = Long.toUnsignedString(UUID.randomUUID().getMostSignificantBits(), 36);
    }
    return entry.withId(id);
  }
}
