package plainsward.talk;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.units.Dimension;
import plainsward.units.Unit;
import plainsward.units.Units;

/** What a turn asks for of that which is known: the rate in another unit, the smaller tank. */
final class AskedAgain {
  private static final Set<String> PER = Set.of("per", "/", "a", "an", "the", "each");
  private static final Set<String> SMALL = Set.of("little", "small", "smaller", "littler");
  private static final Set<String> BIG = Set.of("big", "bigger", "large", "larger");

  private final Facts turn;
  private final Memory memory;

  AskedAgain(Facts turn, Memory memory) {
    this.turn = turn;
    this.memory = memory;
  }

  /** "what's that per hectare": the label's rate is asked for, in the unit that fits the ground. */
  Fact wanted(Fact fact) {
    Unit ground = Unit.of(fact.word().orElseThrow());
    boolean per =
        ground.dimension().equals(Dimension.AREA)
            && turn.isWord(fact.at() - 1, PER)
            && isRateAsked();
    Optional<Unit> stuff = memory.latest("label_rate").map(t -> t.fact().amount().unit().above());
    if (!per || stuff.isEmpty()) {
      return fact;
    }
    boolean metric = ground.code().matches("m2|har");
    boolean weight = stuff.get().dimension().equals(Dimension.MASS);
    Unit top = metric ? (weight ? Units.KILOGRAM : Units.LITRE) : stuff.get();
    return Fact.of("wanted", top.per(ground).code(), fact.said(), fact.at());
  }

  /** The rate that is asked for in another unit is spoken of again. */
  void rate(List<Fact> all) {
    boolean strength =
        turn.asks("convert")
            && turn.asks("strength")
            && !turn.has("wanted")
            && turn.all().isEmpty();
    if (strength) {
      memory.latest("strength").map(Memory.Told::fact).ifPresent(all::add);
    }
    for (Fact fact : List.copyOf(all)) {
      if (!fact.name().equals("wanted") || turn.asks("calibrate") || !isRateAsked()) {
        continue;
      }
      Unit unit = Unit.of(fact.word().orElseThrow());
      String role = unit.code().startsWith("[gal") ? "spray_rate" : "label_rate";
      if (isUnitTaken(role, unit)) {
        all.remove(fact);
        all.add(memory.latest(role).orElseThrow().fact().doubting(List.of()));
        continue;
      }
      memory
          .latest(role)
          .map(Memory.Told::fact)
          .filter(f -> f.value().isPresent())
          .filter(f -> f.amount().dimension().equals(unit.dimension()))
          .ifPresent(all::add);
    }
  }

  /** "oz per thousand" after a bare "1.5": the unit that it was taken to have. */
  private boolean isUnitTaken(String role, Unit unit) {
    return memory
        .latest(role)
        .map(Memory.Told::fact)
        .filter(f -> f.leavesOpen("unit") || f.leavesOpen("per"))
        .flatMap(Fact::value)
        .filter(rate -> rate.unit().equals(unit))
        .isPresent();
  }

  /** "the little one": of two tanks that were told, the one of that size. */
  Optional<Fact> tank() {
    List<Memory.Told> tanks = memory.all("tank_option");
    boolean small = turn.hasWord(SMALL);
    if (tanks.size() != 2 || turn.has("tank") || small == turn.hasWord(BIG)) {
      return Optional.empty();
    }
    Fact first = tanks.get(0).fact();
    Fact second = tanks.get(1).fact();
    boolean firstSmaller = first.amount().compareTo(second.amount()) < 0;
    return Optional.of(firstSmaller == small ? first : second);
  }

  /** Whether nothing but the unit is told, so that "per" asks for the rate in it. */
  private boolean isRateAsked() {
    return memory.has("label_rate") && turn.all().stream().noneMatch(f -> f.value().isPresent());
  }
}
