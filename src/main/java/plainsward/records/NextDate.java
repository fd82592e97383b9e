package plainsward.records;

import java.time.LocalDate;
import java.time.Period;
import java.util.Comparator;

/**
 * The first day on which a label may be applied to a lawn again.
 *
 * @param lawn the lawn's name, or empty where the log names none
 * @param label the label's name
 * @param last the day of the last application
 * @param interval the label's interval
 * @param earliest the day on which the interval is over; a month ends on the month's last day where
 *     that month is short
 */
public record NextDate(
    String lawn, String label, LocalDate last, Period interval, LocalDate earliest) {

  /** By day, then by name. */
  static final Comparator<NextDate> BY_DAY =
      Comparator.comparing(NextDate::earliest)
          .thenComparing(NextDate::lawn)
          .thenComparing(NextDate::label);

  static NextDate of(String lawn, LogEntry last, Period wait) {
    return new NextDate(
        last.lawn().orElse(lawn), last.label(), last.date(), wait, last.date().plus(wait));
  }
}
