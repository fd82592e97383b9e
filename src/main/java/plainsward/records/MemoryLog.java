package plainsward.records;

import java.util.List;
import java.util.Optional;

/** A log that nothing remembers when the program ends. */
final class MemoryLog implements LogStore {
  private final Log log = new Log();

  @Override
  public Log log() {
    return log;
  }

  @Override
  public LogEntry append(LogEntry entry) {
    LogEntry known = LogStore.identified(entry, log);
    log.take(new LogLine.Applied(known));
    return known;
  }

  @Override
  public Optional<LogEntry> undoLast() {
    Optional<LogEntry> latest = log.latest();
    latest.ifPresent(entry -> log.take(new LogLine.Undone(entry.id())));
    return latest;
  }

  @Override
  public Optional<LogEntry> undo(String id) {
    Optional<LogEntry> entry = log.entry(id);
    entry.ifPresent(e -> log.take(new LogLine.Undone(id)));
    return entry;
  }

  @Override
  public List<String> problems() {
    return List.of();
  }
}
