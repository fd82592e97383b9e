package plainsward.talk;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.units.Quantity;
import plainsward.units.Units;

/**
 * Days of spraying that are told in a roundabout way: "march 30 and again may 1", "its been 3 weeks
 * since i sprayed".
 */
final class PastDays {
  private static final Set<String> SINCE = Set.of("since", "been");
  private static final Set<String> SPRAYED = Set.of("sprayed", "treated", "did", "spraying");

  private final Facts turn;
  private final LocalDate today;

  PastDays(Facts turn, LocalDate today) {
    this.turn = turn;
    this.today = today;
  }

  /** Takes such days for the days of the last application. */
  void join(List<Fact> all) {
    all.replaceAll(fact -> isOver(fact) ? fact.as("last_applied") : fact);
    since(all).ifPresent(all::add);
  }

  private boolean isOver(Fact fact) {
    return (fact.name().equals("planned") || fact.name().equals("day"))
        && fact.date().filter(day -> day.isBefore(today)).isPresent()
        && (turn.says("past") || turn.says("log"));
  }

  private Optional<Fact> since(List<Fact> all) {
    boolean told =
        turn.has("elapsed") && turn.hasWord(SINCE) && turn.hasWord(SPRAYED) && turn.says("past");
    for (Fact fact : all) {
      told &= fact.date().isEmpty();
    }
    return told ? turn.first("elapsed").flatMap(this::day) : Optional.empty();
  }

  private Optional<Fact> day(Fact elapsed) {
    Quantity wait = elapsed.amount();
    boolean months = elapsed.word().filter("months"::equals).isPresent();
    long many = (months ? wait : wait.in(Units.DAY)).value().ceiling().longValueExact();
    LocalDate day = months ? today.minusMonths(many) : today.minusDays(many);
    return Optional.of(Fact.of("last_applied", day, elapsed.said(), elapsed.at()));
  }
}
