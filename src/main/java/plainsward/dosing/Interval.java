package plainsward.dosing;

import java.math.BigInteger;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Period;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import plainsward.units.Dimension;
import plainsward.units.Quantity;

/**
 * When again, and how much is left in the year. A wait in months is in calendar months: from 31
 * January a month ends on the last day of February.
 */
public final class Interval {
  private Interval() {}

  /** The first day on which the wait is over: last + wait; the wait must not be below 0. */
  public static LocalDate earliest(LocalDate last, Period wait) {
    return after(last, wait);
  }

  /** Whether a day comes before the wait is over. */
  public static boolean isTooSoon(LocalDate day, LocalDate last, Period wait) {
    return day.isBefore(earliest(last, wait));
  }

  /** How many days a day still is before the first allowed one; 0 if it is not. */
  public static long daysToWait(LocalDate day, LocalDate last, Period wait) {
    return Math.max(0, ChronoUnit.DAYS.between(day, earliest(last, wait)));
  }

  /** The days of so many applications, the first on the day given; at least 1. */
  public static List<LocalDate> days(LocalDate first, Period wait, int count) {
    Given.count("applied_count", count);
    List<LocalDate> days = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      days.add(after(first, wait.multipliedBy(i)));
    }
    return days;
  }

  /** Applications left: cap − count, not below 0. */
  public static long applicationsLeft(long cap, long count) {
    if (cap < 0 || count < 0) {
      throw new NotDosable("season_limit", NotDosable.Why.BELOW_ZERO);
    }
    return Math.max(0, cap - count);
  }

  /** What is left of the amount allowed in a year: limit − used, not below 0. */
  public static Quantity amountLeft(Quantity limit, Quantity used) {
    Given.notBelow("season_limit", limit, limit.dimension());
    Given.notBelow("applied_count", used, limit.dimension());
    Quantity left = limit.minus(used);
    return left.signum() < 0 ? Quantity.of(0, limit.unit()) : left;
  }

  /**
   * How many applications a yearly amount allows at a rate, as a whole number; both per area, or
   * both in all.
   */
  public static long applicationsIn(Quantity limit, Quantity rate) {
    Given.notBelow("season_limit", limit, limit.dimension());
    Given.above("label_rate", rate, limit.dimension());
    if (limit.dimension().equals(Dimension.NONE)) {
      throw new NotDosable("season_limit", NotDosable.Why.WRONG_KIND);
    }
    return limit.ratioTo(rate).floor().min(BigInteger.valueOf(Long.MAX_VALUE)).longValue();
  }

  private static LocalDate after(LocalDate day, Period wait) {
    if (wait.getDays() < 0 || wait.getMonths() < 0 || wait.getYears() < 0) {
      throw new NotDosable("interval", NotDosable.Why.BELOW_ZERO);
    }
    try {
      return day.plus(wait);
    } catch (DateTimeException | ArithmeticException pastTheCalendar) {
      throw new NotDosable("interval", NotDosable.Why.TOO_LARGE);
    }
  }
}
