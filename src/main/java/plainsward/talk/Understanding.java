package plainsward.talk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.reading.Rates;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;
import plainsward.units.Units;

/**
 * What a turn's loose ends mean in this talk: a bare number that answers the open question or
 * corrects what was said, a lone "4 gallon", a unit said in correction.
 */
final class Understanding {
  private static final Set<String> OF_PRODUCT = Set.of("product", "concentrate", "chemical");
  private static final Ratio LAWN = Ratio.of(100);
  private static final Set<String> YEARLY =
      Set.of("year", "season", "label", "max", "maximum", "limit", "most", "already", "allowed");
  private static final Quantity ONE_DOSE = Quantity.of(4, Units.FL_OZ);
  private static final Quantity LITTLE = Quantity.of(12, Units.FL_OZ);
  private static final Set<String> CATCHING =
      Set.of(
          "water", "caught", "catch", "cup", "bucket", "tip", "nozzle", "nozzles", "strip", "test");
  private static final Set<String> OF = Set.of("of");
  private static final Set<String> FULL = Set.of("full", "more");
  private static final Set<String> THEM = Set.of("em", "them", "those", "these");
  private static final Set<String> LOADS =
      Set.of("tanks", "tankfuls", "loads", "fills", "batches", "backpacks", "sprayers");
  private static final Set<String> SHORT_OF_RATE = Set.of("label_rate", "strength");

  private static final Set<String> NO_OTHER =
      Set.of("tank", "volume", "spray_volume", "area", "shape", "price", "label_rate", "in_hand");

  private final Facts turn;
  private final Memory memory;
  private final Pending pending;
  private final UnitSystem system;
  private final boolean onlyNumbers;
  private final AskedAgain again;

  Understanding(Facts turn, Memory memory, Pending pending, UnitSystem system) {
    this.turn = turn;
    this.memory = memory;
    this.pending = pending;
    this.system = system;
    this.again = new AskedAgain(turn, memory);
    this.onlyNumbers =
        turn.all().stream().noneMatch(f -> f.value().isPresent() && !f.name().equals("number"));
  }

  /** The turn's facts with their loose ends tied up. */
  List<Fact> facts() {
    List<Fact> all = new ArrayList<>();
    boolean areaSaid = turn.has("area") || turn.has("shape");
    boolean left = turn.has("content_left");
    boolean onlyTakes = turn.says("only-takes") && turn.has("tank");
    for (Fact fact : turn.all()) {
      boolean nominal = onlyTakes && fact.name().equals("volume");
      if (!(left && fact.name().equals("container")) && !nominal) {
        all.add(tied(fact, areaSaid));
      }
    }
    unitCorrected().ifPresent(all::add);
    again.rate(all);
    again.tank().ifPresent(all::add);
    filled(all);
    noneThisYear().ifPresent(all::add);
    return all;
  }

  /** "a tank does 4,400" beside the size of the tank, told in whichever turn: what is laid down. */
  private void filled(List<Fact> all) {
    Optional<Fact> ground = latest(all, "area_per_fill");
    Optional<Fact> tank = latest(all, "tank");
    boolean news =
        all.stream().anyMatch(f -> f.name().equals("area_per_fill"))
            || all.stream().anyMatch(f -> f.name().equals("tank")) && !memory.has("spray_rate");
    boolean told = all.stream().anyMatch(f -> f.name().equals("spray_rate"));
    if (news && !told && ground.isPresent() && tank.isPresent()) {
      all.add(
          Fact.of(
              "spray_rate",
              Rates.per(tank.get().amount(), ground.get().amount()),
              tank.get().said() + " does " + ground.get().said(),
              ground.get().at()));
    }
  }

  private Optional<Fact> latest(List<Fact> all, String name) {
    return all.stream()
        .filter(f -> f.name().equals(name))
        .reduce((first, second) -> second)
        .or(() -> memory.latest(name).map(Memory.Told::fact));
  }

  /** "It may not be sprayed this year at all": a cap of nothing. */
  private Optional<Fact> noneThisYear() {
    if (!turn.says("none-a-year") || turn.has("season_limit")) {
      return Optional.empty();
    }
    Fact cap = Fact.of("season_limit", Quantity.number(Ratio.ZERO), "none this year", 0);
    return Optional.of(turn.labels().size() == 1 ? cap.of(turn.labels().get(0)) : cap);
  }

  private Fact tied(Fact fact, boolean areaSaid) {
    return switch (fact.name()) {
      case "shape" ->
          fact.leavesOpen("left-out") && memory.has("area") ? fact.as("minus_shape") : fact;
      case "number" -> number(fact, areaSaid);
      case "wanted" -> again.wanted(fact);
      case "volume" -> volume(fact);
      case "product_amount" -> isMixAtStrength(fact) ? fact.as("spray_volume") : amount(fact);
      case "container" -> container(fact);
      case "some_part" -> fact.as(isOfLawn() ? "lawn_part" : "tank_part");
      case "bare_tank", "only_takes" -> fact.as("tank");
      case "day" -> day(fact);
      case "makes_volume" -> turn.has("strength") ? fact.as("spray_volume") : fact;
      case "content_left" ->
          fact.as(turn.has("strength") && turn.has("spray_rate") ? "left_in_tank" : "container");
      case "times" -> times(fact);
      case "catch_volume" -> caught(fact);
      case "test_area" -> isCalibrating() ? fact : fact.as("area");
      case "spray_rate" -> correctedRate(fact);
      case "label_rate" -> comparedRate(fact);
      case "strength" -> sameAdjuvant(fact);
      case "length" -> pending.needs("shape") || pending.needs("distance") ? fact.as("side") : fact;
      default -> fact;
    };
  }

  /**
   * "my jug says .37 oz": nothing is sold by so little, so it is an amount that the label gives.
   */
  private Fact container(Fact fact) {
    if (isMixAtStrength(fact) && isIn(fact)) {
      return fact.as("tank");
    }
    boolean little =
        fact.amount().dimension().equals(Dimension.VOLUME)
            && fact.amount().compareTo(ONE_DOSE) < 0
            && turn.says("label-says")
            && !turn.has("price");
    return little ? fact.as("product_amount") : fact;
  }

  private boolean isOfLawn() {
    return turn.has("area") || turn.has("shape") || memory.has("area");
  }

  /** "Twice" is a limit where a label or a season is spoken of; else it counts nothing known. */
  private Fact times(Fact fact) {
    if (turn.says("past") && (turn.asks("repeat") || turn.hasWord(YEARLY))) {
      return fact.as("applied_count");
    }
    boolean limit =
        turn.says("label-most") || turn.hasWord(YEARLY) || pending.needs("season_limit");
    return limit ? fact.as("season_limit") : fact;
  }

  /** "half a litre at 1 in 40": so much of the mix, where no other volume and no ground is told. */
  private boolean isMixAtStrength(Fact fact) {
    Unit unit = fact.amount().unit();
    return turn.has("strength")
        && unit.dimension().equals(Dimension.VOLUME)
        && unit.factor().compareTo(Ratio.of(2, 5)) > 0
        && NO_OTHER.stream().noneMatch(turn::has)
        && turn.of(fact.name()).size() == 1;
  }

  /** What was caught, unless it is the mix that is needed, or a little product that is used. */
  private Fact caught(Fact fact) {
    if (isMixNeeded()) {
      return fact.as("spray_volume");
    }
    boolean little =
        fact.amount().dimension().equals(Dimension.VOLUME)
            && fact.amount().compareTo(LITTLE) < 0
            && !turn.asks("calibrate")
            && !turn.hasWord(CATCHING)
            && !turn.has("catch_time")
            && !turn.has("walk_time")
            && !turn.has("time")
            && !turn.has("swath")
            && !turn.has("wanted")
            && turn.of("catch_volume").size() == 1;
    return little ? fact.as("product_amount") : fact;
  }

  /** "2 oz per gallon, what do 20 gallons of water use up": no test of the sprayer. */
  private boolean isMixNeeded() {
    boolean dose = turn.has("strength") || turn.has("label_rate") && turn.has("spray_rate");
    if (turn.has("strength") && turn.asks("mix") && turn.hasWord(OF_PRODUCT)) {
      return true;
    }
    return dose
        && !turn.has("area")
        && !turn.has("test_area")
        && !turn.has("shape")
        && !turn.has("swath")
        && !turn.asks("calibrate")
        && turn.of("catch_volume").size() == 1;
  }

  private boolean isIn(Fact fact) {
    for (int i = fact.at() - 1; i >= 0 && i >= fact.at() - 2; i--) {
      if (turn.tokens().get(i).is("in")) {
        return true;
      }
    }
    return false;
  }

  /** "is 65 gal per acre the same as 1.5 per thousand": the bare one is gallons as well. */
  private Fact comparedRate(Fact fact) {
    boolean compared = turn.asks("convert") && turn.has("spray_rate") && fact.leavesOpen("unit");
    Quantity rate = fact.amount();
    return compared
        ? fact.as("spray_rate")
            .with(
                new Quantity(rate.value(), gallon().per(rate.unit().below().orElseThrow())),
                Optional.empty())
        : fact;
  }

  /** "same for 0.5% in 4 gallons" after a wetting agent is the wetting agent again. */
  private Fact sameAdjuvant(Fact fact) {
    boolean again = turn.says("same") || turn.says("follow-up");
    boolean onlyAdjuvant =
        memory.has("adjuvant_rate") && !memory.has("strength") && !memory.has("label_rate");
    boolean alone =
        turn.has("adjuvant")
            && !turn.has("label_rate")
            && !turn.has("adjuvant_rate")
            && !turn.has("product")
            && !turn.has("active")
            && turn.of("strength").size() == 1;
    return again && onlyAdjuvant || alone ? fact.as("adjuvant_rate") : fact;
  }

  /** In a correction a rate in the unit of the label's rate is the label's again. */
  private Fact correctedRate(Fact fact) {
    boolean label =
        turn.says("correction")
            && !memory.has("spray_rate")
            && memory
                .latest("label_rate")
                .map(t -> t.fact().amount().unit().equals(fact.amount().unit()))
                .orElse(false);
    return label ? fact.as("label_rate") : fact;
  }

  private boolean isCalibrating() {
    return turn.has("catch_volume")
        || turn.has("walk_time")
        || turn.asks("calibrate")
        || !turn.has("label_rate")
            && !turn.has("strength")
            && turn.says("past")
            && !memory.has("label_rate")
        || turn.of("wanted").stream()
            .map(f -> Unit.of(f.word().orElseThrow()))
            .anyMatch(u -> u.dimension().equals(Dimension.VOLUME_PER_AREA));
  }

  private Fact day(Fact fact) {
    return pending.needs("last_applied") || turn.says("past") ? fact.as("last_applied") : fact;
  }

  /** A lone amount of gallons or litres is the tank where a dose is spoken of. */
  private Fact volume(Fact fact) {
    if (pending.needs("container")) {
      return fact.as("container");
    }
    if (pending.needs("spray_volume") && !pending.needs("tank")) {
      return fact.as("spray_volume");
    }
    boolean adjuvantOnly =
        turn.has("adjuvant_rate") && !turn.has("label_rate") && !memory.has("label_rate");
    boolean strengthOnly =
        (turn.has("strength") || memory.has("strength") || adjuvantOnly)
            && !memory.has("area")
            && !turn.has("area")
            && !turn.has("shape");
    if (strengthOnly && !pending.needs("tank") && !turn.has("tank")) {
      return fact.as(memory.has("spray_volume") ? "spray_volume" : "tank");
    }
    boolean dose =
        turn.has("label_rate")
            || memory.has("label_rate")
            || turn.asks("mix")
            || turn.has("area")
            || memory.has("area")
            || pending.needs("tank");
    return dose ? fact.as("tank") : fact;
  }

  private Fact amount(Fact fact) {
    if (pending.needs("container")) {
      return fact.as("container");
    }
    boolean rateWanted = pending.needs("label_rate") || pending.needs("strength");
    if (rateWanted && !turn.has("label_rate") && !turn.has("strength")) {
      return pending.needs("label_rate")
          ? perThousand(fact, fact.amount().unit())
          : perGallon(fact);
    }
    if (turn.asks("cost") && (turn.has("container") || memory.has("container"))) {
      return perThousand(fact, fact.amount().unit());
    }
    boolean nitrogen =
        memory.has("analysis")
            && memory.has("nitrogen_target")
            && fact.amount().dimension().equals(Dimension.MASS)
            && fact.amount().in(Units.POUND).value().compareTo(Ratio.of(2)) <= 0;
    if (nitrogen && !turn.says("past")) {
      return fact.as("nitrogen_target");
    }
    if (turn.asks("coverage") || turn.asks("cost")) {
      return fact.as("container");
    }
    return fact;
  }

  private Fact perGallon(Fact fact) {
    Unit unit = fact.amount().unit().per(gallon());
    return fact.as("strength")
        .with(
            new Quantity(fact.amount().value(), unit),
            fact.high().map(h -> new Quantity(h.value(), unit)))
        .doubting(List.of("unit", "per"));
  }

  private Fact perThousand(Fact fact, Unit unit) {
    Quantity low = new Quantity(fact.amount().value(), unit.per(ground()));
    return fact.as("label_rate")
        .with(low, fact.high().map(h -> new Quantity(h.value(), unit.per(ground()))))
        .doubting(List.of("unit", "per"));
  }

  private Unit ground() {
    return system == UnitSystem.METRIC ? Units.HUNDRED_SQUARE_METRES : Units.THOUSAND_SQUARE_FEET;
  }

  private Fact number(Fact fact, boolean areaSaid) {
    if (turn.has("in_hand")
        && turn.has("spray_rate")
        && !turn.has("label_rate")
        && fact.amount().value().compareTo(Ratio.of(20)) < 0) {
      return perThousand(fact, system == UnitSystem.METRIC ? Units.MILLILITRE : Units.FL_OZ);
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
    boolean change = turn.says("correction") || turn.says("follow-up") || turn.says("same");
    if (change && !areaSaid && memory.has("area") && fact.amount().value().compareTo(LAWN) >= 0) {
      return area(fact);
    }
    if (onlyNumbers && (turn.says("correction") || turn.says("follow-up") || turn.says("choice"))) {
      return corrected(fact).orElse(fact);
    }
    return fact;
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
    boolean ofThem = isWord(next, OF) && isWord(next + 1, THEM);
    boolean counted =
        (ofThem || isWord(next, LOADS) || isWord(next, FULL) && isWord(next + 1, LOADS))
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

  private boolean isWord(int i, Set<String> words) {
    return i < turn.tokens().size() && words.contains(turn.tokens().get(i).norm());
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

  private Unit gallon() {
    return switch (system) {
      case US -> Units.GALLON;
      case IMPERIAL -> Units.IMPERIAL_GALLON;
      case METRIC -> Units.LITRE;
    };
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
  private Optional<Fact> unitCorrected() {
    if (!turn.says("correction") || turn.all().stream().anyMatch(f -> f.value().isPresent())) {
      return Optional.empty();
    }
    return turn.of("wanted").stream()
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
