package plainsward.talk;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;
import plainsward.units.Units;

/** A number without a measure answers the open question, or stands in place of one before it. */
final class BareNumbers extends LooseEnds {
  private static final Ratio LAWN = Ratio.of(100);
  private static final Ratio HOURS = Ratio.of(12);
  private static final Set<String> BEFORE_HOUR =
      Set.of("at", "by", "till", "until", "around", "before", "after", "past");
  private static final Set<String> WANTS =
      Set.of("for", "wants", "says", "needs", "want", "is", "rate", "calls");
  private static final Set<String> OF = Set.of("of");
  private static final Ratio TRUCK = Ratio.of(20);
  private static final Ratio MOST_TANK = Ratio.of(1_000);
  private static final Set<String> ALLOWS = Set.of("allows", "allow", "permits");
  private static final Set<String> TOPPING = Set.of("top", "topping", "refill", "topped");
  private static final Set<String> FROM = Set.of("from", "at");
  private static final Set<String> FILLED = Set.of("with", "in", "using");
  private static final Set<String> PER = Set.of("per", "/");
  private static final Set<String> FULL = Set.of("full", "more");
  private static final Set<String> THEM = Set.of("em", "them", "those", "these");
  private static final Set<String> LOADS =
      Set.of("tanks", "tankfuls", "loads", "fills", "batches", "backpacks", "sprayers");

  private static final Set<String> SHORT_OF_RATE = Set.of("label_rate", "strength");
  private final boolean onlyNumbers;

  BareNumbers(Facts turn, Memory memory, Pending pending, UnitSystem system) {
    super(turn, memory, pending, system);
    this.onlyNumbers =
        turn.all().stream().noneMatch(f -> f.value().isPresent() && !f.name().equals("number"));
  }

  /** What a number by itself means; {@code areaSaid} where ground is told beside it. */
  Fact number(Fact fact, boolean areaSaid) {
    if (turn.has("in_hand")
        && turn.has("spray_rate")
        && !turn.has("label_rate")
        && fact.amount().value().compareTo(Ratio.of(20)) < 0) {
      return perThousand(fact, system == UnitSystem.METRIC ? Units.MILLILITRE : Units.FL_OZ);
    }
    if (turn.has("spread_rate")
        && !turn.has("label_rate")
        && turn.isWord(fact.at() - 1, WANTS)
        && fact.amount().value().compareTo(LAWN) < 0) {
      return perThousand(fact, turn.first("spread_rate").get().amount().unit().above());
    }
    if (isTankAgain(fact)) {
      return fact.as("tank").with(new Quantity(fact.amount().value(), gallon()), Optional.empty());
    }
    Optional<Fact> limit = new BareLimits(turn, system).of(fact);
    if (limit.isPresent()) {
      return limit.get();
    }
    Optional<Fact> loads = loads(fact);
    if (loads.isPresent()) {
      return loads.get();
    }
    Optional<Fact> answer = answering(fact);
    if (answer.isPresent()) {
      return answer.get();
    }
    if (isCap(fact)) {
      return fact.as("season_limit");
    }
    boolean topped = isToppedFrom(fact);
    return topped || isOtherTank(fact)
        ? fact.as(topped ? "left_in_tank" : "tank")
            .with(new Quantity(fact.amount().value(), gallon()), Optional.empty())
        : changed(fact, areaSaid);
  }

  /** A number that stands in place of one before it, or as it was. */
  private Fact changed(Fact fact, boolean areaSaid) {
    boolean counts = turn.isWord(fact.at() + 1, OF) && turn.isWord(fact.at() + 2, THEM);
    if (counts && memory.has("lawn_each")) {
      return fact;
    }
    boolean change = turn.says("correction") || turn.says("follow-up") || turn.says("same");
    if (change && !areaSaid && memory.has("area") && fact.amount().value().compareTo(LAWN) >= 0) {
      return area(fact);
    }
    if (onlyNumbers && (turn.says("correction") || turn.says("follow-up") || turn.says("choice"))) {
      return corrected(fact).orElse(fact);
    }
    return fact;
  }

  /** "label allows 4", where it was told how often it was sprayed. */
  private boolean isCap(Fact number) {
    boolean sprayed = memory.has("applied_count") || memory.has("last_applied");
    return sprayed
        && turn.isWord(number.at() - 1, ALLOWS)
        && number.amount().value().isWhole()
        && number.amount().value().compareTo(HOURS) <= 0;
  }

  /** "top it off from 20": so much is in the tank yet. */
  private boolean isToppedFrom(Fact number) {
    return turn.hasWord(TOPPING)
        && turn.isWord(number.at() - 1, FROM)
        && memory
            .latest("tank")
            .flatMap(told -> told.fact().value())
            .filter(tank -> tank.unit().equals(gallon()))
            .filter(tank -> tank.value().compareTo(number.amount().value()) > 0)
            .isPresent();
  }

  /** "and with 200", where the tank of a truck is known: another such tank. */
  private boolean isOtherTank(Fact number) {
    Ratio value = number.amount().value();
    boolean truck =
        memory
            .latest("tank")
            .flatMap(told -> told.fact().value())
            .filter(tank -> tank.unit().equals(gallon()) && tank.value().compareTo(TRUCK) >= 0)
            .isPresent();
    return truck
        && onlyNumbers
        && turn.isWord(number.at() - 1, FILLED)
        && number.high().isEmpty()
        && value.compareTo(TRUCK) >= 0
        && value.compareTo(MOST_TANK) <= 0;
  }

  /** "how many fills of the 4": one of the tanks that the turn told. */
  private boolean isTankAgain(Fact number) {
    boolean the = number.at() > 0 && turn.tokens().get(number.at() - 1).is("the");
    Predicate<Fact> same = t -> t.amount().value().equals(number.amount().value());
    return the
        && (turn.of("tank").stream().anyMatch(same) || turn.of("volume").stream().anyMatch(same));
  }

  /** "and for 3 of em", "what about two tanks": so many of the tank that is known. */
  private Optional<Fact> loads(Fact fact) {
    int next = fact.at() + 1;
    boolean ofThem = turn.isWord(next, OF) && turn.isWord(next + 1, THEM);
    boolean counted =
        (ofThem
                || turn.isWord(next, LOADS)
                || turn.isWord(next, FULL) && turn.isWord(next + 1, LOADS))
            && fact.high().isEmpty()
            && fact.amount().value().isWhole()
            && fact.amount().value().signum() > 0;
    return counted && !turn.has("tank") && !turn.says("past")
        ? memory
            .latest("tank")
            .flatMap(told -> told.fact().value())
            .map(tank -> tank.times(fact.amount().value()))
            .map(spray -> fact.as("spray_volume").with(spray, Optional.empty()))
        : Optional.empty();
  }

  private Fact area(Fact fact) {
    Unit unit = system == UnitSystem.METRIC ? Units.SQUARE_METRE : Units.SQUARE_FOOT;
    return fact.as("area")
        .with(new Quantity(fact.amount().value(), unit), Optional.empty())
        .doubting(List.of("square"));
  }

  /** A bare number takes the role that the open question asks for. */
  private Optional<Fact> answering(Fact fact) {
    Ratio value = fact.amount().value();
    if (isOfSomethingElse(fact)) {
      return Optional.empty();
    }
    if (pending.needs("shape") || pending.needs("distance")) {
      Unit unit = system == UnitSystem.METRIC ? Units.METRE : Units.FOOT;
      return Optional.of(fact.as("side").with(new Quantity(value, unit), Optional.empty()));
    }
    if (pending.needs("area") && value.compareTo(Ratio.of(20)) >= 0) {
      return Optional.of(area(fact));
    }
    if (pending.needs("label_rate") && value.compareTo(LAWN) < 0 && !turn.has("label_rate")) {
      return Optional.of(
          perThousand(fact, system == UnitSystem.METRIC ? Units.MILLILITRE : Units.FL_OZ));
    }
    if (pending.needs("tank") && value.compareTo(Ratio.of(1000)) < 0) {
      return Optional.of(fact.as("tank").with(new Quantity(value, gallon()), Optional.empty()));
    }
    if (pending.needs("spray_rate") && value.compareTo(LAWN) < 0) {
      return Optional.of(laidDown(fact, gallon()));
    }
    if (pending.needs("nitrogen_target")) {
      return Optional.of(
          fact.as("nitrogen_target")
              .with(new Quantity(value, Units.POUND_PER_THOUSAND), Optional.empty()));
    }
    if (pending.needs("interval")) {
      return Optional.of(
          fact.as("interval")
              .with(new Quantity(value, Units.DAY), Optional.empty())
              .worded("days"));
    }
    return Optional.empty();
  }

  /**
   * "it's supposed to rain at 3", "how long before 2 dogs may go out": the number of a turn that is
   * about another matter answers nothing, unless the turn begins with it.
   */
  private boolean isOfSomethingElse(Fact number) {
    boolean first = number.at() <= 1;
    boolean another =
        !turn.asks().isEmpty()
            && turn.asks().stream().noneMatch(ask -> pending.topics().contains(ask.topic()));
    return turn.says("rain-soon") || !first && (another || isTimeOfDay(number));
  }

  private boolean isTimeOfDay(Fact number) {
    return number.amount().value().compareTo(HOURS) <= 0
        && !pending.needs("label_rate")
        && !pending.needs("strength")
        && turn.isWord(number.at() - 1, BEFORE_HOUR);
  }

  /** "make it 1.2": the number goes where a number of its size stood last. */
  private Optional<Fact> corrected(Fact fact) {
    for (String role : SHORT_OF_RATE) {
      if (memory.has(role) && fact.amount().value().compareTo(Ratio.of(60)) < 0) {
        return Listener.withNumber(memory.latest(role).map(Memory.Told::fact), fact);
      }
    }
    return Optional.empty();
  }

  /** "sorry, square metres": the unit of what was said changes. */
  Optional<Fact> unitCorrected() {
    if (!turn.says("correction") || turn.all().stream().anyMatch(f -> f.value().isPresent())) {
      return Optional.empty();
    }
    return turn.of("wanted").stream()
        .filter(f -> !turn.isWord(f.at() - 1, PER))
        .map(f -> Unit.of(f.word().orElseThrow()))
        .flatMap(
            unit ->
                memory.names().stream()
                    .flatMap(name -> memory.latest(name).stream())
                    .map(Memory.Told::fact)
                    .filter(f -> f.value().isPresent())
                    .filter(f -> f.amount().dimension().equals(unit.dimension()))
                    .map(f -> f.with(new Quantity(f.amount().value(), unit), Optional.empty())))
        .findFirst();
  }
}
