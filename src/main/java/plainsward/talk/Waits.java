package plainsward.talk;

import java.time.Period;
import plainsward.reading.Detail;
import plainsward.reading.Fact;
import plainsward.units.Quantity;
import plainsward.units.Unit;

/** Waits that were told, as a label keeps them. */
final class Waits {
  private Waits() {}

  /** A whole number, rounded up; one beyond all bounds is cut. */
  static int count(Quantity amount) {
    return amount.value().ceiling().min(java.math.BigInteger.valueOf(100_000)).intValue();
  }

  /** The wait that a fact tells. */
  static Period period(Fact wait) {
    int count = count(wait.amount());
    if (wait.word().orElse("days").equals("months")) {
      return Period.ofMonths(count);
    }
    return wait.amount().unit().equals(Unit.of("wk"))
        ? Period.ofWeeks(count)
        : Period.ofDays(count);
  }

  /** A wait of hours counts as whole days, rounded up. */
  static Period period(Detail wait) {
    Quantity amount = wait.longest();
    if (wait.months()) {
      return Period.ofMonths(count(amount));
    }
    return Period.ofDays(count(amount.in(Unit.of("d"))));
  }
}
