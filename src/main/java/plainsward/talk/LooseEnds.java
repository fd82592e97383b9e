package plainsward.talk;

import java.util.List;
import java.util.Optional;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.units.Quantity;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;
import plainsward.units.Units;

/** What the loose ends of a turn are tied up with. */
abstract class LooseEnds {
  /** What was understood of the turn. */
  final Facts turn;

  /** What is known. */
  final Memory memory;

  /** What was asked back. */
  final Pending pending;

  /** The measures taken where nothing tells. */
  final UnitSystem system;

  LooseEnds(Facts turn, Memory memory, Pending pending, UnitSystem system) {
    this.turn = turn;
    this.memory = memory;
    this.pending = pending;
    this.system = system;
  }

  /** An amount as a strength. */
  Fact perGallon(Fact fact) {
    Unit unit = fact.amount().unit().per(gallon());
    return fact.as("strength")
        .with(
            new Quantity(fact.amount().value(), unit),
            fact.high().map(h -> new Quantity(h.value(), unit)))
        .doubting(List.of("unit", "per"));
  }

  /** An amount as a rate for so much ground. */
  Fact perThousand(Fact fact, Unit unit) {
    Quantity low = new Quantity(fact.amount().value(), unit.per(ground()));
    return fact.as("label_rate")
        .with(low, fact.high().map(h -> new Quantity(h.value(), unit.per(ground()))))
        .doubting(List.of("unit", "per"));
  }

  /** An amount of spray as what is laid down. */
  Fact laidDown(Fact fact, Unit unit) {
    Quantity low = new Quantity(fact.amount().value(), unit.per(ground()));
    return fact.as("spray_rate").with(low, Optional.empty());
  }

  private Unit ground() {
    return system == UnitSystem.METRIC ? Units.HUNDRED_SQUARE_METRES : Units.THOUSAND_SQUARE_FEET;
  }

  /** The measure of a tank. */
  Unit gallon() {
    return switch (system) {
      case US -> Units.GALLON;
      case IMPERIAL -> Units.IMPERIAL_GALLON;
      case METRIC -> Units.LITRE;
    };
  }
}
