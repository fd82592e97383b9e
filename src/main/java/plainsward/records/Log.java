package plainsward.records;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The applications in the log, without those that were undone, and what can be asked of them. Names
 * are told apart without regard to case and spacing. It is kept in memory by lawn and label, so
 * that an answer does not depend on how long the log is.
 */
public final class Log {
  private record Pair(String lawn, String label) {}

  private final Map<String, Spot> spots = new HashMap<>();
  private final NavigableMap<Long, LogEntry> inOrder = new TreeMap<>();
  private final NavigableMap<Long, LogEntry> undone = new TreeMap<>();
  private final Map<Pair, NavigableMap<Spot, LogEntry>> byPair = new HashMap<>();
  private final Map<String, NavigableMap<Spot, LogEntry>> byLawn = new HashMap<>();
  private final Map<String, NavigableMap<Spot, LogEntry>> bySprayer = new HashMap<>();
  private final Map<String, NavigableMap<Spot, LogEntry>> byWho = new HashMap<>();
  private long next;

  Log() {}

  /** Takes in a line; {@link FieldFault} where it doesn't fit to those before. */
  synchronized void take(LogLine line) {
    if (line instanceof LogLine.Applied applied) {
      add(applied.entry());
    } else if (line instanceof LogLine.Undone gone) {
      undo(gone.of());
    }
  }

  private void add(LogEntry entry) {
    Spot spot = new Spot(entry.date(), next);
    if (spots.putIfAbsent(entry.id(), spot) != null) {
      throw FieldFault.saying("id", "an earlier line has the same one");
    }
    inOrder.put(next++, entry);
    indexes(entry).forEach(index -> index.put(spot, entry));
  }

  private void undo(String id) {
    Spot spot = spots.get(id);
    LogEntry entry = spot == null ? null : inOrder.remove(spot.order());
    if (entry == null) {
      throw FieldFault.saying("of", "there is no such entry to undo");
    }
    undone.put(spot.order(), entry);
    indexes(entry).forEach(index -> index.remove(spot));
  }

  private List<NavigableMap<Spot, LogEntry>> indexes(LogEntry entry) {
    String lawn = key(entry.lawn());
    NavigableMap<Spot, LogEntry> pair =
        byPair.computeIfAbsent(new Pair(lawn, Names.key(entry.label())), k -> new TreeMap<>());
    NavigableMap<Spot, LogEntry> onLawn = byLawn.computeIfAbsent(lawn, k -> new TreeMap<>());
    List<NavigableMap<Spot, LogEntry>> all = new ArrayList<>(List.of(pair, onLawn));
    entry
        .sprayer()
        .ifPresent(s -> all.add(bySprayer.computeIfAbsent(Names.key(s), k -> new TreeMap<>())));
    entry.who().ifPresent(w -> all.add(byWho.computeIfAbsent(Names.key(w), k -> new TreeMap<>())));
    return all;
  }

  private static String key(Optional<String> lawn) {
    return lawn.map(Names::key).orElse("");
  }

  boolean knows(String id) {
    return spots.containsKey(id);
  }

  /** All entries, in the order in which they were appended. */
  public synchronized List<LogEntry> entries() {
    return List.copyOf(inOrder.values());
  }

  /** The entries that were undone. */
  public synchronized List<LogEntry> undone() {
    return List.copyOf(undone.values());
  }

  /** The entry appended last and not undone. */
  public synchronized Optional<LogEntry> latest() {
    return inOrder.isEmpty() ? Optional.empty() : Optional.of(inOrder.lastEntry().getValue());
  }

  /** The entry of this id, if it is not undone. */
  synchronized Optional<LogEntry> entry(String id) {
    return Optional.ofNullable(spots.get(id)).map(spot -> inOrder.get(spot.order()));
  }

  /** Whether nothing is in it. */
  public synchronized boolean isEmpty() {
    return inOrder.isEmpty();
  }

  /** The names of the lawns in it, lower-case; {@code ""} where an entry names none. */
  public synchronized List<String> lawns() {
    return List.copyOf(byLawn.keySet());
  }

  /** The names of the people who did something in it, lower-case. */
  public synchronized List<String> people() {
    List<String> people = new ArrayList<>();
    byWho.forEach((who, entries) -> people.addAll(entries.isEmpty() ? List.of() : List.of(who)));
    return people;
  }

  /** The applications of a label on a lawn by day; entries without a lawn go by {@code ""}. */
  public synchronized List<LogEntry> entries(String lawn, String label) {
    return List.copyOf(pair(lawn, label).values());
  }

  private NavigableMap<Spot, LogEntry> pair(String lawn, String label) {
    return byPair.getOrDefault(new Pair(Names.key(lawn), Names.key(label)), new TreeMap<>());
  }

  /** The last application of a label on a lawn. */
  public synchronized Optional<LogEntry> last(String lawn, String label) {
    return last(pair(lawn, label));
  }

  private static Optional<LogEntry> last(NavigableMap<Spot, LogEntry> index) {
    return index.isEmpty() ? Optional.empty() : Optional.of(index.lastEntry().getValue());
  }

  /** The last application of any label on a lawn. */
  public synchronized Optional<LogEntry> lastOn(String lawn) {
    return last(byLawn.getOrDefault(Names.key(lawn), new TreeMap<>()));
  }

  /** The last application with a sprayer: its label is what the sprayer held last. */
  public synchronized Optional<LogEntry> lastIn(String sprayer) {
    return last(bySprayer.getOrDefault(Names.key(sprayer), new TreeMap<>()));
  }

  /** The first day on which a label may be applied to a lawn again, by the label's interval. */
  public synchronized Optional<NextDate> next(String lawn, Label label) {
    return last(lawn, label.name())
        .flatMap(last -> label.season().interval().map(wait -> NextDate.of(lawn, last, wait)));
  }

  /** The next dates of all lawns on which these labels were applied, by day. */
  public synchronized List<NextDate> nextDates(List<Label> labels) {
    return new TreeSet<>(byPair.keySet().stream().map(Pair::lawn).toList())
        .stream()
            .flatMap(lawn -> labels.stream().flatMap(label -> next(lawn, label).stream()))
            .sorted(NextDate.BY_DAY)
            .toList();
  }

  /** The applications of a label on a lawn in a year, by day. */
  public synchronized List<LogEntry> inYear(String lawn, String label, int year) {
    return between(pair(lawn, label), LocalDate.of(year, 1, 1), LocalDate.of(year + 1, 1, 1));
  }

  /** The entries of a lawn in a month, by day. */
  public List<LogEntry> inMonth(String lawn, YearMonth month) {
    return between(lawn, month.atDay(1), month.plusMonths(1).atDay(1));
  }

  /** The entries of a lawn from a day on to before another, by day. */
  public synchronized List<LogEntry> between(String lawn, LocalDate from, LocalDate end) {
    return between(byLawn.getOrDefault(Names.key(lawn), new TreeMap<>()), from, end);
  }

  private static List<LogEntry> between(
      NavigableMap<Spot, LogEntry> index, LocalDate from, LocalDate end) {
    return List.copyOf(index.subMap(Spot.startOf(from), true, Spot.startOf(end), false).values());
  }

  /** How often and how much of a label went on a lawn in a year, and what is left of both. */
  public YearUse use(Lawn lawn, Label label, int year) {
    return YearUse.of(inYear(lawn.name(), label.name(), year), lawn.area(), label.season());
  }
}
