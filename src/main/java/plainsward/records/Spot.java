package plainsward.records;

import java.time.LocalDate;
import java.util.Comparator;

/** Where an entry stands: by its day, and within a day in the order of the log. */
record Spot(LocalDate date, long order) implements Comparable<Spot> {
  private static final Comparator<Spot> BY_DAY =
      Comparator.comparing(Spot::date).thenComparingLong(Spot::order);

  @Override
  public int compareTo(Spot other) {
    return BY_DAY.compare(this, other);
  }

  /** Before everything of a day. */
  static Spot startOf(LocalDate date) {
    return new Spot(date, -1);
  }
}
