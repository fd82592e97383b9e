package plainsward.talk;

import java.util.List;
import java.util.Optional;
import plainsward.reading.Fact;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;
import plainsward.units.Units;

/** What an amount is that answers the question for one thing of a label. */
final class LabelAnswers {
  private final String open;
  private final UnitSystem system;

  /**
   * The reading of answers.
   *
   * @param open the field that was asked for, or empty
   * @param system the measures meant where the words do not tell
   */
  LabelAnswers(String open, UnitSystem system) {
    this.open = open;
    this.system = system;
  }

  /** The facts of a turn, in the roles that they have as an answer. */
  List<Fact> facts(List<Fact> facts) {
    return facts.stream().map(this::answer).toList();
  }

  private Fact answer(Fact fact) {
    if (fact.value().isEmpty()) {
      return fact;
    }
    return switch (open) {
      case "applications" ->
          fact.name().matches("number|applications|times|applied_count")
              ? fact.as("season_limit")
              : fact;
      case "year-amount" -> fact.name().equals("label_rate") ? fact.as("year_amount") : fact;
      case "wetting-agent" ->
          fact.name().matches("strength|label_rate") ? fact.as("adjuvant_rate") : fact;
      case "spray-volume" -> sprayVolume(fact);
      default -> fact;
    };
  }

  private Fact sprayVolume(Fact fact) {
    if (fact.amount().dimension().equals(Dimension.VOLUME_PER_AREA)) {
      return fact.as("spray_rate");
    }
    boolean volume = fact.amount().dimension().equals(Dimension.VOLUME);
    Unit ground =
        system == UnitSystem.METRIC ? Units.HUNDRED_SQUARE_METRES : Units.THOUSAND_SQUARE_FEET;
    return volume
        ? fact.as("spray_rate").with(per(fact.amount(), ground), high(fact, ground))
        : fact;
  }

  private static Optional<Quantity> high(Fact fact, Unit ground) {
    return fact.high().map(high -> per(high, ground));
  }

  private static Quantity per(Quantity volume, Unit ground) {
    return new Quantity(volume.value(), volume.unit().per(ground));
  }
}
