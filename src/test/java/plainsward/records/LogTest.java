package plainsward.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.Period;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import plainsward.units.Quantity;

class LogTest {
  private RecordBook book;
  private final Label jug =
      Label.named("jug")
          .interval(Period.ofDays(30))
          .applicationsPerYear(2)
          .amountPerYear(Samples.fl("3"))
          .label();
  private final Lawn front = Lawn.named("front").withArea(Samples.sqFt(4000));

  @BeforeEach
  void open() {
    book = RecordBook.inMemory();
  }

  private LogEntry spray(LocalDate day, String lawn, String product, long area) {
    return book.append(
        Samples.entry(day, lawn, "jug")
            .withProduct(Samples.flOz(product))
            .withArea(Samples.sqFt(area)));
  }

  @Test
  void theLastApplicationIsTheLatestByDateHoweverLateItWasLogged() {
    LogEntry later = spray(Samples.MAY, "front", "6", 4000);
    spray(Samples.MAY.minusDays(40), "front", "6", 4000);
    assertEquals(Optional.of(later), book.log().last("Front", "JUG"));
    assertEquals(Optional.of(later), book.log().lastOn("front"));
  }

  @Test
  void theNextDateIsTheLastOnePlusTheInterval() {
    spray(Samples.MAY, "front", "6", 4000);
    NextDate next = book.log().next("front", jug).orElseThrow();
    assertEquals(LocalDate.of(2026, 5, 31), next.earliest());
    assertEquals(Samples.MAY, next.last());
  }

  @Test
  void aMonthIsACalendarMonth() {
    Label monthly = jug.change().interval(Period.ofMonths(1)).label();
    spray(LocalDate.of(2027, 1, 31), "front", "6", 4000);
    assertEquals(
        LocalDate.of(2027, 2, 28), book.log().next("front", monthly).orElseThrow().earliest());
  }

  @Test
  void thereIsNoNextDateWithoutAnIntervalOrAnApplication() {
    assertTrue(book.log().next("front", jug).isEmpty());
    spray(Samples.MAY, "front", "6", 4000);
    assertTrue(book.log().next("front", Label.named("jug").label()).isEmpty());
    assertTrue(book.log().next("back", jug).isEmpty());
  }

  @Test
  void applicationsOfAYearAreCountedByDay() {
    spray(Samples.MAY, "front", "3", 2000);
    spray(Samples.MAY, "front", "3", 2000);
    spray(LocalDate.of(2025, 12, 31), "front", "6", 4000);
    spray(LocalDate.of(2027, 1, 1), "front", "6", 4000);
    spray(Samples.MAY, "back", "6", 4000);
    YearUse use = book.log().use(front, jug, 2026);
    assertEquals(1, use.applications());
    assertEquals(Optional.of(1), use.applicationsLeft());
  }

  @Test
  void halvesOfALawnOnOneDayAreOneRate() {
    spray(Samples.MAY, "front", "3", 2000);
    spray(Samples.MAY, "front", "3", 2000);
    YearUse use = book.log().use(front, jug, 2026);
    assertEquals(Optional.of(Samples.fl("1.5")), use.amount());
    assertEquals(Optional.of(Samples.fl("1.5")), use.amountLeft());
  }

  @Test
  void twoApplicationsAddUpAndNothingIsLeftBelowZero() {
    spray(Samples.MAY, "front", "8", 4000);
    spray(Samples.MAY.plusDays(40), "front", "6", 4000);
    spray(Samples.MAY.plusDays(80), "front", "6", 4000);
    YearUse use = book.log().use(front, jug, 2026);
    assertEquals(Optional.of(Samples.fl("5")), use.amount());
    assertEquals(Optional.of(Samples.fl("0")), use.amountLeft());
    assertEquals(Optional.of(0), use.applicationsLeft());
  }

  @Test
  void ofUnknownGroundTheEntriesOfADayCountAsOnTheSame() {
    spray(Samples.MAY, "front", "3", 2000);
    spray(Samples.MAY, "front", "3", 2000);
    YearUse use = book.log().use(Lawn.named("front"), jug, 2026);
    assertEquals(Optional.of(Samples.fl("3")), use.amount());
  }

  @Test
  void entriesWithoutAnAmountAreToldAsUncounted() {
    book.append(Samples.entry(Samples.MAY, "front", "jug"));
    YearUse use = book.log().use(front, jug, 2026);
    assertEquals(1, use.uncounted());
    assertEquals(Optional.empty(), use.amount());
    assertEquals(Optional.empty(), use.amountLeft());
    assertEquals(1, use.applications());
  }

  @Test
  void anEntryWithoutAnAreaWentOnTheWholeLawn() {
    book.append(Samples.entry(Samples.MAY, "front", "jug").withProduct(Samples.flOz("6")));
    assertEquals(Optional.of(Samples.fl("1.5")), book.log().use(front, jug, 2026).amount());
  }

  @Test
  void metricGroundGivesMetricRates() {
    book.append(
        Samples.entry(Samples.MAY, "front", "jug")
            .withProduct(Quantity.of("90", "mL"))
            .withArea(Quantity.of("300", "m2")));
    assertEquals(
        Optional.of(Quantity.of("30", "mL/(100.m2)")),
        book.log().use(Lawn.named("front"), jug, 2026).amount());
  }

  @Test
  void nothingAppliedLeavesTheWholeYearsAmount() {
    YearUse use = book.log().use(front, jug, 2026);
    assertEquals(Optional.of(Samples.fl("3")), use.amountLeft());
    assertEquals(Optional.of(2), use.applicationsLeft());
  }

  @Test
  void theEntriesOfAMonthAreThoseOfThatLawnFromItsFirstToItsLastDay() {
    LogEntry last = spray(LocalDate.of(2026, 5, 31), "front", "6", 4000);
    LogEntry first = spray(Samples.MAY, "front", "6", 4000);
    spray(LocalDate.of(2026, 6, 1), "front", "6", 4000);
    spray(LocalDate.of(2026, 4, 30), "front", "6", 4000);
    spray(Samples.MAY, "back", "6", 4000);
    assertEquals(List.of(first, last), book.log().inMonth("front", YearMonth.of(2026, 5)));
  }

  @Test
  void whatWasUndoneCountsNowhere() {
    spray(Samples.MAY, "front", "6", 4000);
    book.undoLast();
    assertEquals(0, book.log().use(front, jug, 2026).applications());
    assertTrue(book.log().inMonth("front", YearMonth.of(2026, 5)).isEmpty());
    assertTrue(book.log().lastOn("front").isEmpty());
  }

  @Test
  void nextDatesComeByDayForEveryLawnAndLabelWithAnInterval() {
    book.save(jug);
    book.save(Label.named("can").label());
    spray(Samples.MAY.plusDays(5), "front", "6", 4000);
    spray(Samples.MAY, "back", "6", 4000);
    book.append(Samples.entry(Samples.MAY, "back", "can"));
    List<NextDate> dates = book.nextDates();
    assertEquals(List.of("back", "front"), dates.stream().map(NextDate::lawn).toList());
  }
}
