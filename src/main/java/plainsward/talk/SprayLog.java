package plainsward.talk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was sprayed, as told in this talk: the day, the lawn and the label of each spraying. */
final class SprayLog {
  private static final int MOST = 1000;

  /**
   * One spraying.
   *
   * @param day when
   * @param lawn which lawn, or empty
   * @param label which label, or empty
   */
  record Entry(LocalDate day, String lawn, String label) {}

  private final List<Entry> entries = new ArrayList<>();

  void copy(SprayLog other) {
    entries.clear();
    entries.addAll(other.entries);
  }

  void clear() {
    entries.clear();
  }

  boolean isEmpty() {
    return entries.isEmpty();
  }

  void add(Entry entry) {
    if (entries.size() == MOST) {
      entries.remove(0);
    }
    entries.add(entry);
  }

  /** Takes the last entry back. */
  Optional<Entry> removeLast() {
    return entries.isEmpty() ? Optional.empty() : Optional.of(entries.remove(entries.size() - 1));
  }

  /** The sprayings with a label, or with any where none is named. */
  List<Entry> of(String label) {
    return entries.stream()
        .filter(e -> label.isEmpty() || e.label().isEmpty() || e.label().equals(label))
        .toList();
  }

  /** The day of the last spraying with a label. */
  Optional<LocalDate> last(String label) {
    return of(label).stream().map(Entry::day).max(LocalDate::compareTo);
  }

  /** How many sprayings with a label a year has. */
  long count(String label, int year) {
    return of(label).stream().filter(e -> e.day().getYear() == year).count();
  }
}
