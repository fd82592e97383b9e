package plainsward.talk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
final class Understanding extends LooseEnds {
  private static final Set<String> YEARLY =
      Set.of("year", "season", "label", "max", "maximum", "limit", "most", "already", "allowed");

  private static final Set<String> ABOUT = Set.of("about", "only", "like", "around", "maybe");
  private static final Set<String> DOES = Set.of("does", "did", "covers", "gets", "covered");
  private static final Set<String> IT = Set.of("it", "tank", "that", "backpack", "sprayer", "one");

  private final AskedAgain again;
  private final BareNumbers numbers;
  private final BareAmounts amounts;
  private final RateCorrected rate;

  Understanding(Facts turn, Memory memory, Pending pending, UnitSystem system) {
    super(turn, memory, pending, system);
    this.again = new AskedAgain(turn, memory);
    this.numbers = new BareNumbers(turn, memory, pending, system);
    this.amounts = new BareAmounts(turn, memory, pending, system);
    this.rate = new RateCorrected(turn, memory, pending, system);
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
    if (!rate.join(all)) {
      numbers.unitCorrected().ifPresent(all::add);
    }
    again.rate(all);
    again.tank().ifPresent(all::add);
    filled(all);
    new Fleet(turn, memory).join(all);
    new PriceAgain(turn, memory).join(all);
    new HoseEnd(turn, memory).join(all);
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
    for (int i = all.size() - 1; i >= 0; i--) {
      if (all.get(i).name().equals(name)) {
        return Optional.of(all.get(i));
      }
    }
    return memory.latest(name).map(Memory.Told::fact);
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
      case "area" -> isOfOneTank(fact) ? fact.as("area_per_fill") : inSameMeasure(fact);
      case "number" -> numbers.number(fact, areaSaid);
      case "wanted" -> again.wanted(fact);
      case "volume" -> amounts.volume(fact);
      case "product_amount" -> amounts.product(fact);
      case "container" -> amounts.container(fact);
      case "some_part" -> fact.as(isOfLawn() ? "lawn_part" : "tank_part");
      case "bare_tank", "only_takes" -> fact.as("tank");
      case "speed" ->
          memory.has("walk_speed") && !turn.asks("weather") ? fact.as("walk_speed") : fact;
      case "day" -> day(fact);
      case "makes_volume" -> turn.has("strength") ? fact.as("spray_volume") : fact;
      case "spray_volume" -> isLoad(fact) ? fact.as("tank") : fact;
      case "content_left" ->
          fact.as(turn.has("strength") && turn.has("spray_rate") ? "left_in_tank" : "container");
      case "times" -> times(fact);
      case "catch_volume" -> amounts.caught(fact);
      case "test_area" -> isCalibrating() ? fact : fact.as("area");
      case "spray_rate" -> correctedRate(fact);
      case "label_rate" -> comparedRate(fact);
      case "strength" -> sameAdjuvant(fact);
      case "length" -> pending.needs("shape") || pending.needs("distance") ? fact.as("side") : fact;
      default -> fact;
    };
  }

  /** A bare area after one in square metres is in these too, whatever is usual. */
  private Fact inSameMeasure(Fact area) {
    boolean metric =
        area.leavesOpen("square")
            && area.amount().unit().equals(Units.SQUARE_FOOT)
            && memory
                .latest("area")
                .flatMap(told -> told.fact().value())
                .filter(before -> before.unit().equals(Units.SQUARE_METRE))
                .isPresent();
    return metric
        ? area.with(new Quantity(area.amount().value(), Units.SQUARE_METRE), Optional.empty())
        : area;
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
    if (turn.has("label_rate") && turn.has("spray_rate") && !turn.has("catch_volume")) {
      return false;
    }
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

  /** "and for 2 gal at a gallon per k" of a lawn and a rate that are known: how it is split. */
  private boolean isLoad(Fact fact) {
    boolean known = memory.has("area") && memory.has("label_rate") && !memory.has("tank");
    return known
        && turn.has("spray_rate")
        && !turn.has("tank")
        && !turn.has("area")
        && !turn.has("label_rate")
        && turn.of(fact.name()).size() == 1;
  }

  /** "and it does 5k", of the tank whose output is known. */
  private boolean isOfOneTank(Fact area) {
    int verb = turn.isWord(area.at() - 1, ABOUT) ? area.at() - 2 : area.at() - 1;
    return memory.has("tank")
        && memory.has("spray_rate")
        && !turn.has("label_rate")
        && turn.isWord(verb, DOES)
        && turn.isWord(verb - 1, IT);
  }

  private Fact day(Fact fact) {
    return pending.needs("last_applied") || turn.says("past") ? fact.as("last_applied") : fact;
  }
}
