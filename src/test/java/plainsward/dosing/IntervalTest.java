package plainsward.dosing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainsward.dosing.Refused.refused;
import static plainsward.units.Amounts.q;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import org.junit.jupiter.api.Test;
import plainsward.dosing.NotDosable.Why;

class IntervalTest {
  private static final LocalDate MAY_DAY = LocalDate.of(2026, 5, 1);

  @Test
  void theWaitIsCountedFromTheLastDay() {
    assertEquals(LocalDate.of(2026, 5, 31), Interval.earliest(MAY_DAY, Period.ofDays(30)));
    assertEquals(LocalDate.of(2026, 5, 22), Interval.earliest(MAY_DAY, Period.ofWeeks(3)));
    assertEquals(MAY_DAY, Interval.earliest(MAY_DAY, Period.ZERO));
  }

  @Test
  void monthsAreCalendarMonths() {
    assertEquals(LocalDate.of(2026, 8, 1), Interval.earliest(MAY_DAY, Period.ofMonths(3)));
    LocalDate january = LocalDate.of(2026, 1, 31);
    assertEquals(LocalDate.of(2026, 2, 28), Interval.earliest(january, Period.ofMonths(1)));
    assertEquals(
        List.of(january, LocalDate.of(2026, 2, 28), LocalDate.of(2026, 3, 31)),
        Interval.days(january, Period.ofMonths(1), 3));
  }

  @Test
  void aDayBeforeTheEndOfTheWaitIsTooSoon() {
    Period wait = Period.ofDays(28);
    LocalDate end = LocalDate.of(2026, 5, 29);
    assertTrue(Interval.isTooSoon(end.minusDays(1), MAY_DAY, wait));
    assertFalse(Interval.isTooSoon(end, MAY_DAY, wait));
    assertFalse(Interval.isTooSoon(end.plusDays(1), MAY_DAY, wait));
    assertEquals(1, Interval.daysToWait(end.minusDays(1), MAY_DAY, wait));
    assertEquals(0, Interval.daysToWait(end, MAY_DAY, wait));
    assertEquals(0, Interval.daysToWait(end.plusDays(9), MAY_DAY, wait));
  }

  @Test
  void senselessWaitsAreRefused() {
    refused("interval", Why.BELOW_ZERO, () -> Interval.earliest(MAY_DAY, Period.ofDays(-1)));
    refused("interval", Why.BELOW_ZERO, () -> Interval.earliest(MAY_DAY, Period.ofMonths(-1)));
    refused("interval", Why.BELOW_ZERO, () -> Interval.earliest(MAY_DAY, Period.ofYears(-1)));
    refused(
        "interval", Why.TOO_LARGE, () -> Interval.earliest(MAY_DAY, Period.ofYears(1_000_000_000)));
    refused("applied_count", Why.NOT_ABOVE_ZERO, () -> Interval.days(MAY_DAY, Period.ofDays(1), 0));
    assertEquals(List.of(MAY_DAY), Interval.days(MAY_DAY, Period.ofDays(1), 1));
  }

  @Test
  void whatIsLeftOfTheYearNeverGoesBelowNought() {
    assertEquals(1, Interval.applicationsLeft(2, 1));
    assertEquals(0, Interval.applicationsLeft(2, 2));
    assertEquals(0, Interval.applicationsLeft(2, 3));
    assertEquals(2, Interval.applicationsLeft(2, 0));
    assertEquals(0, Interval.applicationsLeft(0, 0));
    refused("season_limit", Why.BELOW_ZERO, () -> Interval.applicationsLeft(-1, 0));
    refused("season_limit", Why.BELOW_ZERO, () -> Interval.applicationsLeft(1, -1));
    assertEquals(
        q("1.5 [pt_us]/[acr_us]"),
        Interval.amountLeft(q("4 [pt_us]/[acr_us]"), q("2.5 [pt_us]/[acr_us]")));
    assertEquals(q("0 L/har"), Interval.amountLeft(q("4 L/har"), q("5 L/har")));
    assertEquals(q("4 L/har"), Interval.amountLeft(q("4 L/har"), q("0 L/har")));
    refused("season_limit", Why.BELOW_ZERO, () -> Interval.amountLeft(q("-1 L"), q("1 L")));
    refused("applied_count", Why.BELOW_ZERO, () -> Interval.amountLeft(q("1 L"), q("-1 L")));
    refused("applied_count", Why.WRONG_KIND, () -> Interval.amountLeft(q("1 L"), q("1 kg")));
  }

  @Test
  void aYearlyAmountAllowsSoManyGoes() {
    assertEquals(2, Interval.applicationsIn(q("4 L/har"), q("1.5 L/har")));
    assertEquals(0, Interval.applicationsIn(q("1 L/har"), q("1.5 L/har")));
    assertEquals(Long.MAX_VALUE, Interval.applicationsIn(q("1e30 L"), q("1 L")));
    refused("label_rate", Why.NOT_ABOVE_ZERO, () -> Interval.applicationsIn(q("1 L"), q("0 L")));
    refused("season_limit", Why.BELOW_ZERO, () -> Interval.applicationsIn(q("-1 L"), q("1 L")));
    refused("season_limit", Why.WRONG_KIND, () -> Interval.applicationsIn(q("4 1"), q("1 1")));
  }
}
