package plainsward.talk;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import plainsward.records.Log;
import plainsward.records.LogEntry;
import plainsward.records.RecordBook;

/**
 * What was sprayed, as this talk knows it: the saved log, and beside it what names neither a lawn
 * nor a label and would not be found again. An empty lawn or label stands for one that was not
 * named; a spraying with one counts for every lawn or label.
 */
final class Diary {
  /** The label of a spraying for which none was named. */
  static final String UNNAMED = "unnamed product";

  private static final int MOST_OWN = 1000;

  /** An entry made in this talk, and where it went. */
  private record Made(RecordBook book, String id) {}

  private final Optional<RecordBook> saved;
  private final Consumer<Runnable> guard;
  private RecordBook own = RecordBook.inMemory();
  private final Deque<Made> made = new ArrayDeque<>();

  /**
   * A diary.
   *
   * @param saved the saved records, where there are any
   * @param guard does what may fail with a fault of the disk, and remembers the fault
   */
  Diary(Optional<RecordBook> saved, Consumer<Runnable> guard) {
    this.saved = saved;
    this.guard = guard;
  }

  /** Forgets what is not saved. */
  void forgetTalk() {
    own = RecordBook.inMemory();
    made.clear();
  }

  /** Keeps a spraying; gives it back with its id, or nothing where that failed. */
  Optional<LogEntry> add(LogEntry entry) {
    boolean named = entry.lawn().isPresent() || !entry.label().equals(UNNAMED);
    RecordBook book = named ? saved.orElse(own) : own;
    List<LogEntry> kept = new ArrayList<>();
    guard.accept(() -> kept.add(book.append(entry)));
    kept.forEach(e -> made.push(new Made(book, e.id())));
    if (made.size() > MOST_OWN) {
      made.removeLast();
    }
    return kept.stream().findFirst();
  }

  /** How many sprayings this talk added. */
  int mark() {
    return made.size();
  }

  /** Takes back what was added since a mark. */
  void backTo(int mark) {
    while (made.size() > mark) {
      undoLast();
    }
  }

  /** Takes back the last spraying of this talk, else the last that was saved. */
  Optional<LogEntry> undoLast() {
    List<LogEntry> gone = new ArrayList<>();
    if (!made.isEmpty()) {
      Made last = made.pop();
      guard.accept(() -> last.book().undo(last.id()).ifPresent(gone::add));
    } else {
      saved.ifPresent(book -> guard.accept(() -> book.undoLast().ifPresent(gone::add)));
    }
    return gone.stream().findFirst();
  }

  private List<Log> logs() {
    List<Log> all = new ArrayList<>();
    saved.ifPresent(book -> guard.accept(() -> all.add(book.log())));
    all.add(own.log());
    return all;
  }

  /** Whether nothing was sprayed. */
  boolean isEmpty() {
    return logs().stream().allMatch(Log::isEmpty);
  }

  /** The names of the lawns in it, without the unnamed. */
  Set<String> lawns() {
    Set<String> names = new LinkedHashSet<>();
    logs().forEach(log -> names.addAll(log.lawns()));
    names.remove("");
    return names;
  }

  /** The names of the people who did something in it, lower-case. */
  Set<String> people() {
    Set<String> names = new LinkedHashSet<>();
    logs().forEach(log -> names.addAll(log.people()));
    return names;
  }

  /** The last spraying with a label, or with any for an empty one, on lawns, or on any for none. */
  Optional<LogEntry> last(Collection<String> lawns, String label) {
    LogEntry latest = null;
    for (String lawn : spots(lawns)) {
      for (LogEntry entry : last(lawn, label)) {
        if (latest == null || entry.date().isAfter(latest.date())) {
          latest = entry;
        }
      }
    }
    return Optional.ofNullable(latest);
  }

  private List<LogEntry> last(String lawn, String label) {
    List<LogEntry> found = new ArrayList<>();
    for (Log log : logs()) {
      if (label.isEmpty()) {
        log.lastOn(lawn).ifPresent(found::add);
      } else {
        log.last(lawn, label).ifPresent(found::add);
        log.last(lawn, UNNAMED).ifPresent(found::add);
      }
    }
    return found;
  }

  private Collection<String> spots(Collection<String> lawns) {
    Set<String> all = new LinkedHashSet<>(lawns.isEmpty() ? lawns() : lawns);
    all.add("");
    return all;
  }

  /**
   * The sprayings with a label, or with any for an empty one, on one lawn in a year, by day, with
   * those for which no lawn was named.
   */
  List<LogEntry> inYear(String lawn, String label, int year) {
    List<String> lawns = lawn.isEmpty() ? List.of("") : List.of(lawn, "");
    if (label.isEmpty()) {
      LocalDate from = LocalDate.of(year, 1, 1);
      return between(lawns, from, from.plusYears(1));
    }
    List<LogEntry> found = new ArrayList<>();
    for (Log log : logs()) {
      for (String place : lawns) {
        found.addAll(log.inYear(place, label, year));
        found.addAll(log.inYear(place, UNNAMED, year));
      }
    }
    found.sort(Comparator.comparing(LogEntry::date));
    return found;
  }

  /** The days in a year on which a label went on a lawn; for no lawns the most of any. */
  int count(Collection<String> lawns, String label, int year) {
    Collection<String> all = lawns.isEmpty() ? spots(List.of()) : lawns;
    return all.stream()
        .mapToInt(
            lawn -> (int) inYear(lawn, label, year).stream().map(LogEntry::date).distinct().count())
        .max()
        .orElse(0);
  }

  /** The sprayings on lawns from a day on to before another, by day. */
  List<LogEntry> between(Collection<String> lawns, LocalDate from, LocalDate end) {
    return logs().stream()
        .flatMap(log -> lawns.stream().flatMap(lawn -> log.between(lawn, from, end).stream()))
        .sorted(Comparator.comparing(LogEntry::date))
        .toList();
  }
}
