package plainsward.records;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The log as a file of JSON Lines that only ever grows. What others appended is read before every
 * answer. A line that can't be read is copied aside, reported and passed over.
 */
final class FileLog implements LogStore {
  private static final int MOST_TOLD = 20;

  /** A line that can't be read. */
  private record Damage(long line, byte[] bytes, String reason) {}

  private final Path file;
  private final Guard guard;
  private final Disk disk;
  private final List<Damage> damages = new ArrayList<>();
  private Log log = new Log();
  private ShelfFile.Stamp seen;
  private long offset;
  private long lines;
  private int setAside;

  FileLog(Path file, Guard guard, Disk disk) {
    this.file = file;
    this.guard = guard;
    this.disk = disk;
  }

  @Override
  public synchronized Log log() {
    try {
      refresh();
      return log;
    } catch (IOException fault) {
      throw Faults.reading(file, fault);
    }
  }

  @Override
  public synchronized LogEntry append(LogEntry entry) {
    return guard.alone(
        file,
        () -> {
          refresh();
          LogEntry known = LogStore.identified(entry, log);
          write(LogLine.tree(known));
          return known;
        });
  }

  @Override
  public synchronized Optional<LogEntry> undoLast() {
    return undo(Log::latest);
  }

  @Override
  public synchronized Optional<LogEntry> undo(String id) {
    return undo(known -> known.entry(id));
  }

  private Optional<LogEntry> undo(Function<Log, Optional<LogEntry>> which) {
    return guard.alone(
        file,
        () -> {
          refresh();
          Optional<LogEntry> entry = which.apply(log);
          if (entry.isPresent()) {
            write(LogLine.undoing(entry.get().id()));
          }
          return entry;
        });
  }

  private void write(Tree line) throws IOException {
    disk.append(file, (line.line() + "\n").getBytes(StandardCharsets.UTF_8));
  }

  private void refresh() throws IOException {
    ShelfFile.Stamp stamp;
    try {
      stamp = ShelfFile.Stamp.of(file);
    } catch (NoSuchFileException noLogYet) {
      forget();
      return;
    }
    if (seen != null && isOther(stamp)) {
      forget();
    }
    if (stamp.size() > offset || seen == null) {
      boolean torn = read(false);
      seen = stamp;
      if (torn || setAside < damages.size()) {
        settle();
      }
    }
  }

  /** Whether it is not the file that was read so far with something added at most. */
  private boolean isOther(ShelfFile.Stamp stamp) {
    boolean replaced = stamp.key() != null && !stamp.key().equals(seen.key());
    boolean edited = stamp.size() == offset && !stamp.time().equals(seen.time());
    return replaced || edited || stamp.size() < offset;
  }

  private void forget() {
    log = new Log();
    damages.clear();
    seen = null;
    offset = 0;
    lines = 0;
    setAside = 0;
  }

  /**
   * Reads on. A last line without an end that is no entry may be one that another copy is writing
   * at this moment: it is left for later unless nobody can be writing.
   *
   * @return whether such a line was left
   */
  private boolean read(boolean nobodyWrites) throws IOException {
    boolean[] left = {false};
    LineSplitter.read(
        file,
        offset,
        (bytes, end, ended) -> {
          String reason = taken(bytes);
          if (reason != null && !ended && !nobodyWrites) {
            left[0] = true;
            return;
          }
          if (reason != null) {
            damages.add(new Damage(lines + 1, bytes, reason));
          }
          offset = end;
          lines += ended ? 1 : 0;
        });
    return left[0];
  }

  /** Takes a line into the log, or says why not. */
  private String taken(byte[] bytes) {
    try {
      if (!new String(bytes, StandardCharsets.ISO_8859_1).isBlank()) {
        log.take(LogLine.read(Json.read(bytes), lines + 1));
      }
      return null;
    } catch (FieldFault fault) {
      return fault.getMessage().replaceFirst("^line 1, ", "");
    }
  }

  private void settle() throws IOException {
    try {
      guard.now(
          () -> {
            read(true);
            List<Damage> fresh = damages.subList(setAside, damages.size());
            SetAside.copy(file, fresh.stream().map(Damage::bytes).toList(), disk);
            setAside = damages.size();
            return file;
          });
    } catch (IOException nothingCanBeWrittenHere) {
      read(true);
    }
  }

  @Override
  public synchronized List<String> problems() {
    try {
      refresh();
    } catch (IOException fault) {
      return List.of(Faults.reading(file, fault).getMessage());
    }
    List<String> told = new ArrayList<>();
    for (Damage damage : damages.subList(0, Math.min(MOST_TOLD, damages.size()))) {
      told.add(sentence("line " + damage.line() + " cannot be read (" + damage.reason() + ")"));
    }
    if (damages.size() > MOST_TOLD) {
      told.add(sentence((damages.size() - MOST_TOLD) + " more lines cannot be read"));
    }
    return told;
  }

  private String sentence(String what) {
    boolean copied = setAside == damages.size() && Files.exists(SetAside.beside(file));
    String kept = copied ? "copied to " + SetAside.beside(file).getFileName() : "left where it is";
    return file + ": " + what + "; it was " + kept + ", and the rest was read.";
  }
}
