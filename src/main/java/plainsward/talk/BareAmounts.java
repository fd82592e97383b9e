package plainsward.talk;

import java.util.Set;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;
import plainsward.units.Units;

/**
 * An amount whose role the words leave open: the tank, a bottle, the mix, water that was caught.
 */
final class BareAmounts extends LooseEnds {
  private static final Quantity ONE_DOSE = Quantity.of(4, Units.FL_OZ);
  private static final Ratio LITRE = Ratio.of(9, 10);
  private static final Set<String> BOTTLES =
      Set.of("jug", "bottle", "container", "jugs", "concentrate", "left", "pail", "can", "drum");
  private static final Quantity LITTLE = Quantity.of(12, Units.FL_OZ);
  private static final Set<String> CATCHING =
      Set.of(
          "water", "caught", "catch", "cup", "bucket", "tip", "nozzle", "nozzles", "strip", "test");

  private static final Set<String> NO_OTHER =
      Set.of("tank", "volume", "spray_volume", "area", "shape", "price", "label_rate", "in_hand");

  private static final Set<String> ENOUGH = Set.of("enough", "enuf", "cover", "last");
  private static final Set<String> USED = Set.of("used", "put", "sprayed", "poured");
  private static final Set<String> OF_PRODUCT = Set.of("product", "concentrate", "chemical");

  BareAmounts(Facts turn, Memory memory, Pending pending, UnitSystem system) {
    super(turn, memory, pending, system);
  }

  /**
   * "my jug says .37 oz": nothing is sold by so little, so it is an amount that the label gives.
   */
  Fact container(Fact fact) {
    boolean much = fact.amount().unit().factor().compareTo(LITRE) >= 0 && !turn.hasWord(BOTTLES);
    boolean had = much && !turn.says("question") && turn.all().size() == 2;
    if (isMixAtStrength(fact) && (isIn(fact) || had)) {
      return fact.as("tank");
    }
    boolean logged = turn.says("log") && !turn.labels().isEmpty() && !turn.has("price");
    if (logged && fact.amount().dimension().equals(Dimension.VOLUME)) {
      return fact.as("product_amount");
    }
    boolean little =
        fact.amount().dimension().equals(Dimension.VOLUME)
            && fact.amount().compareTo(ONE_DOSE) < 0
            && turn.says("label-says")
            && !turn.has("price");
    return little ? fact.as("product_amount") : fact;
  }

  /** What an amount of product is. */
  Fact product(Fact fact) {
    return isMixAtStrength(fact) ? fact.as("spray_volume") : amount(fact);
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

  /** What was caught, unless it is the mix that is needed, or a little product that is used. */
  Fact caught(Fact fact) {
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
    if (little && isUsedUp()) {
      return fact.as("in_hand");
    }
    return little ? fact.as("product_amount") : fact;
  }

  /** "i used 5 oz on 4k": what went down there, where no rate is told. */
  private boolean isUsedUp() {
    return turn.says("past")
        && turn.hasWord(USED)
        && turn.has("area")
        && !turn.has("label_rate")
        && !turn.has("strength")
        && !memory.has("label_rate")
        && !memory.has("strength");
  }

  /** A lone amount of gallons or litres is the tank where a dose is spoken of. */
  Fact volume(Fact fact) {
    if (pending.needs("container") || isBottleAsked(fact)) {
      return fact.as("container");
    }
    if (pending.needs("spray_rate") && !turn.has("test_area") && !turn.has("area")) {
      return laidDown(fact, fact.amount().unit());
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

  /** "is a quart enough for 20k at 1.5 per thousand": a bottle, and no tank. */
  private boolean isBottleAsked(Fact fact) {
    return turn.hasWord(ENOUGH)
        && turn.has("label_rate")
        && !turn.has("spray_rate")
        && fact.amount().compareTo(Quantity.of(1, Units.GALLON)) <= 0
        && turn.of(fact.name()).size() == 1;
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
}
