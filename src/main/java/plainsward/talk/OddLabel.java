package plainsward.talk;

import java.util.List;
import java.util.Optional;
import plainsward.reading.Detail;
import plainsward.reading.Fact;
import plainsward.records.Label;
import plainsward.topics.Unusual;
import plainsward.units.Quantity;
import plainsward.units.Shown;
import plainsward.units.Units;

/** What was told of a label and can hardly stand there: it is asked about, and not refused. */
final class OddLabel {
  private static final Quantity STRONG_WIND = Quantity.of(20, Units.MILE_PER_HOUR);
  private static final Quantity GREAT_HEAT = Quantity.of(100, Units.FAHRENHEIT);

  /**
   * A question.
   *
   * @param text what is asked
   * @param needs what would answer it, or empty where the value is kept all the same
   */
  record Question(String text, String needs) {}

  private OddLabel() {}

  /** The question about a wait of hours between applications. */
  static Optional<Question> interval(List<Detail> details) {
    return details.stream()
        .filter(d -> d.field().equals("interval") && d.low().isPresent())
        .findFirst()
        .map(
            d ->
                new Question(
                    d.said()
                        + " between applications? Labels give days or weeks. Is it "
                        + Shown.number(d.longest().value())
                        + " days?",
                    "interval"));
  }

  /** The question about a cap below nothing, or of more than once a week. */
  static Optional<Question> cap(List<Fact> facts) {
    return facts.stream()
        .filter(f -> f.name().equals("season_limit") && f.value().isPresent())
        .map(Fact::amount)
        .filter(
            q ->
                q.signum() < 0
                    || q.compareTo(Quantity.of(LabelMerge.MOST_APPLICATIONS, q.unit())) > 0)
        .findFirst()
        .map(
            q ->
                new Question(
                    Shown.number(q.value())
                        + " a year? That can hardly stand there. How many applications a year does "
                        + "the label allow?",
                    "season_limit"));
  }

  /** The questions about values that are kept: a rate, a wind, a heat, a cap out of the usual. */
  static Optional<String> kept(Label label) {
    if (label.season().applications().equals(Optional.of(0))) {
      return Optional.of(
          "None a year: then it may not be sprayed at all. If another number stands there, say it.");
    }
    Optional<String> rate =
        label.rates().stream()
            .flatMap(r -> Unusual.question(r.amount().high()).stream())
            .findFirst();
    Optional<String> wind =
        label
            .weather()
            .windMost()
            .filter(w -> w.compareTo(STRONG_WIND) > 0)
            .map(w -> "A wind of " + Shown.of(w) + " carries any spray away. Is that its limit?");
    Optional<String> heat =
        label
            .weather()
            .heatMost()
            .filter(h -> h.compareTo(GREAT_HEAT) > 0)
            .map(h -> Shown.of(h) + " would hurt grass. Is that its limit?");
    return rate.or(() -> wind).or(() -> heat);
  }
}
