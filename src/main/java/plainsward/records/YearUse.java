package plainsward.records;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.Units;

/**
 * How often and how much of one label went on one lawn in a year. Entries of one day are one
 * application, because a job is often logged a tank at a time. What went on per area is each day's
 * product over the ground that it went on; where nothing tells that the entries of a day were on
 * different ground they are taken to be on the same, which can only make the figure too high.
 *
 * @param applications days with an application
 * @param applicationsLeft what the label allows further, not below 0
 * @param amount product per area; empty where no entry tells both amount and area
 * @param amountLeft what the label allows further, not below 0
 * @param uncounted entries that are not in {@code amount}, for want of an amount or an area
 */
public record YearUse(
    int applications,
    Optional<Integer> applicationsLeft,
    Optional<Quantity> amount,
    Optional<Quantity> amountLeft,
    int uncounted) {

  /**
   * The use of a label on a lawn.
   *
   * @param entries what was logged of that label on that lawn in that year
   * @param ground the lawn's area
   * @param season what the label allows
   */
  public static YearUse of(List<LogEntry> entries, Optional<Quantity> ground, Label.Season season) {
    int days = byDay(entries).size();
    List<LogEntry> counted = counted(entries, ground);
    Optional<Quantity> amount =
        byDay(counted).values().stream().map(day -> perArea(day, ground)).reduce(Quantity::plus);
    return new YearUse(
        days,
        season.applications().map(most -> Math.max(0, most - days)),
        amount,
        season.amount().flatMap(most -> left(most, amount, entries.isEmpty())),
        entries.size() - counted.size());
  }

  private static Map<LocalDate, List<LogEntry>> byDay(List<LogEntry> entries) {
    return entries.stream()
        .collect(Collectors.groupingBy(LogEntry::date, TreeMap::new, Collectors.toList()));
  }

  /** The entries with an amount of the first one's kind and with a known ground. */
  private static List<LogEntry> counted(List<LogEntry> entries, Optional<Quantity> ground) {
    List<LogEntry> told =
        entries.stream()
            .filter(e -> e.product().isPresent() && e.area().or(() -> ground).isPresent())
            .toList();
    if (told.isEmpty()) {
      return told;
    }
    Dimension first = told.get(0).product().orElseThrow().dimension();
    return told.stream().filter(e -> e.product().orElseThrow().dimension().equals(first)).toList();
  }

  private static Quantity perArea(List<LogEntry> day, Optional<Quantity> ground) {
    Quantity product =
        day.stream().flatMap(e -> e.product().stream()).reduce(Quantity::plus).orElseThrow();
    Quantity on = ground(day, ground);
    Unit per = product.unit().per(isUsual(on.unit()) ? Units.THOUSAND_SQUARE_FEET : METRIC);
    return product.dividedBy(on, per);
  }

  private static final Unit METRIC = Units.HUNDRED_SQUARE_METRES;

  private static boolean isUsual(Unit area) {
    return area.code().startsWith("[");
  }

  private static Quantity ground(List<LogEntry> day, Optional<Quantity> ground) {
    List<Quantity> areas = day.stream().map(e -> e.area().or(() -> ground).orElseThrow()).toList();
    Quantity largest = areas.stream().max(Quantity::compareTo).orElseThrow();
    Quantity together = areas.stream().reduce(Quantity::plus).orElseThrow();
    if (ground.isEmpty()) {
      return largest;
    }
    Quantity whole = ground.get().compareTo(largest) > 0 ? ground.get() : largest;
    return together.compareTo(whole) < 0 ? together : whole;
  }

  private static Optional<Quantity> left(
      Quantity most, Optional<Quantity> used, boolean nothingApplied) {
    if (used.isEmpty()) {
      return nothingApplied ? Optional.of(most) : Optional.empty();
    }
    if (!used.get().dimension().equals(most.dimension())) {
      return Optional.empty();
    }
    Quantity left = most.minus(used.get());
    return Optional.of(left.signum() < 0 ? new Quantity(Ratio.ZERO, most.unit()) : left);
  }
}
