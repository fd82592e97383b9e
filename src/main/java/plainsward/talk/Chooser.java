package plainsward.talk;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import plainsward.reading.Ask;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.units.Dimension;
import plainsward.units.Unit;

/**
 * Decides what a turn is about: what is asked in so many words, and what the facts add up to. The
 * sums come first, in the order in which one rules another out.
 */
final class Chooser {
  private static final Set<String> DRY = Set.of("dry", "empty", "emptied", "lasted");
  private static final Set<String> ALL_OF_THEM = Set.of("all", "them", "season", "year", "each");
  private static final int FRAGMENT = 5;
  private static final Set<String> REST = Set.of("left", "remaining", "remains", "rest");
  private static final Set<String> WATER = Set.of("water");
  private static final Set<String> WATERING = Set.of("water", "dilute", "mix", "mixed", "add");
  private static final Set<String> SUMS =
      Set.of(
          "mix",
          "strength",
          "coverage",
          "calibrate",
          "measure",
          "convert",
          "feed",
          "spread",
          "cost",
          "buy",
          "repeat");
  private static final int LOUD = 7;
  private static final Set<String> GROUND = Set.of("area", "shape", "test_area");

  private final Facts turn;
  private final Memory memory;
  private final Diary diary;

  Chooser(Facts turn, Memory memory, Diary diary) {
    this.turn = turn;
    this.memory = memory;
    this.diary = diary;
  }

  /** The topics, the first the main one; empty where nothing is asked and nothing adds up. */
  List<String> topics() {
    Set<String> topics = new LinkedHashSet<>();
    boolean air = any("wind", "temperature", "humidity") && !isConversion();
    boolean elsewhere = turn.asks("timing") || turn.says("drifted") && !turn.asks("weather");
    if (air && !elsewhere) {
      topics.add("weather");
    }
    String sum = sum();
    List<String> advice = advice();
    boolean wordsOnly =
        !advice.isEmpty()
            && (!hasDoseFacts() && DOSES.contains(sum) && !asksKnownDose() && !asksRate()
                || sum.equals("repeat") && isIdleRepeat());
    if (!sum.isEmpty() && !wordsOnly) {
      topics.add(sum);
    }
    if (topics.isEmpty()) {
      advice.stream().limit(2).forEach(topics::add);
    } else {
      turn.asks().stream()
          .filter(a -> !SUMS.contains(a.topic()) && a.weight() >= LOUD)
          .filter(a -> !(sum.equals("repeat") && a.topic().equals("weather")))
          .map(Ask::topic)
          .limit(2)
          .forEach(topics::add);
    }
    return List.copyOf(topics);
  }

  /** The topics that are asked in words, loudest first. */
  private List<String> advice() {
    return turn.asks().stream()
        .filter(a -> !SUMS.contains(a.topic()))
        .map(Ask::topic)
        .distinct()
        .toList();
  }

  /** "how many oz of weed killer per gallon for dandelions": an amount of product is wanted. */
  private boolean asksRate() {
    return (turn.asks("mix") || turn.asks("strength")) && has("wanted") && wantsProduct();
  }

  /** Whether "again" is asked with no day and no interval, so that words answer it better. */
  private boolean isIdleRepeat() {
    return !any("interval", "day", "last_applied", "season_limit", "applied_count")
        && !memory.has("interval")
        && !memory.has("last_applied")
        && (turn.asks("progress") || turn.asks("keep-off") || turn.asks("seed"))
        && diary.isEmpty();
  }

  /** Whether a figure of a dose that is known is asked for: "and how much water in each?". */
  private boolean asksKnownDose() {
    boolean known = memory.has("label_rate") || memory.has("strength");
    return known
        && turn.asks().stream().anyMatch(a -> a.topic().equals("mix") && !a.want().isEmpty());
  }

  private boolean hasDoseFacts() {
    return turn.all().stream()
        .anyMatch(
            f ->
                (f.value().isPresent() || !f.sides().isEmpty())
                    && !BESIDE_DOSES.contains(f.name()));
  }

  /** Amounts that go with words: weather, waits, distances. */
  private static final Set<String> BESIDE_DOSES =
      Set.of(
          "wind",
          "temperature",
          "humidity",
          "rain_gap",
          "time",
          "elapsed",
          "interval",
          "times",
          "setback",
          "height",
          "rainfall",
          "label_limit",
          "number",
          "length",
          "soil_temperature",
          "speed",
          "proposed_wait",
          "season_limit",
          "applied_count");

  private static final Set<String> DOSES =
      Set.of("mix", "strength", "coverage", "convert", "spread", "feed", "buy", "calibrate");

  private boolean has(String name) {
    return turn.has(name);
  }

  private boolean any(String... names) {
    for (String name : names) {
      if (turn.has(name)) {
        return true;
      }
    }
    return false;
  }

  private boolean asksSum() {
    return turn.asks().stream().anyMatch(a -> SUMS.contains(a.topic()));
  }

  /** "did 44 oz/acre as 44 oz/thousand": what was laid down against what was meant. */
  private boolean isOverdone() {
    List<Fact> rates = turn.of("label_rate");
    return rates.size() == 2
        && turn.says("past")
        && turn.asks().isEmpty()
        && !rates.get(0).amount().unit().equals(rates.get(1).amount().unit());
  }

  private String sum() {
    if (isOverdone()) {
      return "progress";
    }
    if (isForAllTimes()) {
      return "buy";
    }
    if (turn.asks("cost") || has("price") && any("label_rate", "container", "area")) {
      return "cost";
    }
    if (isRepeat()) {
      return "repeat";
    }
    if (turn.asks().stream().anyMatch(a -> a.want().equals("setting"))) {
      return "spread";
    }
    if (isCoverageOfBag()) {
      return "coverage";
    }
    if (has("analysis") && !isLiquidRate() || isMoreNitrogen() || isWholeBag()) {
      return "feed";
    }
    if (isSpreader()) {
      return "spread";
    }
    if (isCalibration()) {
      return "calibrate";
    }
    if (turn.asks("buy") && !has("bag") || turn.asks("buy") && any("container")) {
      return "buy";
    }
    if (any("makes_volume") && (any("container") || memory.has("container"))) {
      return "strength";
    }
    if (isConversion() || isReckoned()) {
      return "convert";
    }
    return groundOrDose();
  }

  /** "3 applications left at 1.5 oz/k on 6k, how much for all of them". */
  private boolean isForAllTimes() {
    return any("times", "applications", "season_limit")
        && turn.hasWord(ALL_OF_THEM)
        && has("label_rate")
        && any("area", "shape")
        && turn.asks("mix");
  }

  private boolean isCoverageOfBag() {
    return turn.asks("coverage")
        && any("bag", "container")
        && has("label_rate")
        && !any("area", "shape");
  }

  /** Two rates to be held against each other, or one reckoned from a bottle and its ground. */
  private boolean isReckoned() {
    boolean bottle = has("label_rate") && has("container") && turn.all().size() == 2;
    return has("strength") && has("label_rate") && turn.hasWord(SAME)
        || bottle && !asksSum() && !turn.asks().isEmpty();
  }

  /** The last sums that come in question: granules, how far it goes, a dose. */
  private String groundOrDose() {
    if (isFeeding()) {
      return has("analysis") || any("nitrogen_target") || memory.has("analysis")
          ? "feed"
          : "spread";
    }
    boolean dose = any("label_rate") && any("area", "shape") && !any("container", "product_amount");
    boolean partOfLawn = has("lawn_part") && any("label_rate", "strength");
    if (turn.asks("coverage") && isCoverage() && !dose && !partOfLawn) {
      return "coverage";
    }
    return dose();
  }

  private boolean isWholeBag() {
    return memory.has("analysis") && turn.asks("spread") && memory.has("bag_area");
  }

  private boolean isSpreader() {
    boolean thrown = any("spread_rate", "test_amount");
    boolean mass =
        turn.first("label_rate")
            .map(f -> f.amount().dimension().equals(Dimension.MASS_PER_AREA))
            .orElse(false);
    return thrown || mass && turn.asks("spread") && turn.asks("calibrate");
  }

  private boolean isMoreNitrogen() {
    boolean target = has("nitrogen_target") || memory.has("nitrogen_target");
    boolean again = has("nitrogen_target") || asksSum();
    return memory.has("analysis")
        && target
        && again
        && !any("label_rate", "strength", "test_amount", "spread_rate");
  }

  private String dose() {
    boolean watering = any("rainfall") || any("length", "height") && turn.hasWord(WATER);
    if (watering && !any("label_rate", "strength")) {
      return "";
    }
    boolean ground = turn.all().stream().anyMatch(f -> GROUND.contains(f.name()));
    boolean amounts = any("label_rate", "strength", "adjuvant_rate");
    boolean rateKnown = memory.has("label_rate") || memory.has("strength");
    boolean shape = has("shape") && !rateKnown;
    if ((turn.asks("measure") || shape) && !amounts && !wantsProduct()) {
      return "measure";
    }
    if (isForKnownRate(amounts, rateKnown)) {
      return "mix";
    }
    if (turn.asks("mix") || turn.asks("strength")) {
      boolean fragment = turn.tokens().size() <= FRAGMENT;
      boolean useful =
          amounts || ground || rateKnown || fragment || wantsProduct() || turn.hasWord(LAWN);
      return useful || any("tank", "spray_volume", "volume") ? "mix" : "";
    }
    return isComplete(amounts, ground, rateKnown) ? "mix" : measure(amounts);
  }

  /** Something to be mixed at the rate that is known, or a product that needs no mixing. */
  private boolean isForKnownRate(boolean amounts, boolean rateKnown) {
    boolean water = turn.hasWord(WATERING);
    return memory.has("ready_to_use") && (turn.asks("mix") || water && !turn.says("ready-to-use"))
        || any("area_option", "lawn_part") && (rateKnown || amounts)
        || rateKnown && any("tank", "spray_volume", "tank_part");
  }

  /** Facts that make a sum without being asked for. */
  private boolean isComplete(boolean amounts, boolean ground, boolean rateKnown) {
    boolean inHand =
        any("in_hand", "left_in_tank") && any("spray_rate", "label_rate", "strength")
            || has("left_in_tank") && rateKnown && turn.hasWord(TOPPING);
    boolean job = amounts && (ground || any("tank", "spray_volume", "volume", "tank_part"));
    boolean unowned = turn.all().stream().allMatch(f -> f.owner().isEmpty());
    boolean withKnown =
        amounts && memory.has("area")
            || ground && rateKnown && !has("shape")
            || has("strength") && memory.has("tank") && turn.all().size() == 1
            || memory.has("adjuvant_rate") && any("tank", "spray_volume", "volume");
    return inHand || job || asksNothingElse() && unowned && withKnown;
  }

  /** "whats that for 7k" asks for no weed's name. */
  private boolean asksNothingElse() {
    return turn.asks().stream().allMatch(a -> a.topic().equals("identify") && a.weight() < LOUD)
        && !has("weed");
  }

  private String measure(boolean amounts) {
    boolean squares =
        turn.first("area").map(f -> f.leavesOpen("square-metre")).orElse(false) && !amounts;
    boolean rest = any("minus", "minus_shape") && !amounts && turn.hasWord(REST);
    boolean shapeOnly =
        has("shape")
            && turn.all().size()
                == turn.of("shape").size()
                    + turn.of("number").size()
                    + turn.of("minus_shape").size()
                    + turn.of("minus").size();
    return squares && turn.asks().isEmpty() || shapeOnly || rest || turn.asks("measure")
        ? "measure"
        : "";
  }

  private boolean wantsProduct() {
    return turn.asks().stream().anyMatch(a -> a.topic().equals("mix") && !a.want().isEmpty())
        || any("product", "active", "adjuvant")
        || turn.hasWord(PRODUCT_WORDS);
  }

  private static final Set<String> SAME = Set.of("same", "equal", "equals");
  private static final Set<String> TOPPING =
      Set.of("top", "topping", "refill", "refilling", "filling", "add", "back");
  private static final Set<String> LAWN = Set.of("lawn", "yard");

  private static final Set<String> PRODUCT_WORDS =
      Set.of(
          "product",
          "concentrate",
          "herbicide",
          "weedkiller",
          "killer",
          "mix",
          "dose",
          "put",
          "stuff",
          "use",
          "spray",
          "surfactant");

  private boolean isRepeat() {
    boolean asked = turn.asks("repeat");
    boolean facts = has("interval") && any("day", "last_applied");
    boolean dayOpen = has("interval") && turn.says("past") && turn.asks().isEmpty();
    return asked || dayOpen || facts && !turn.asks("seed");
  }

  private boolean isCalibration() {
    boolean wanted =
        wanted().stream().anyMatch(u -> u.dimension().equals(Dimension.VOLUME_PER_AREA))
            && !any("label_rate", "strength");
    boolean caught = has("catch_volume") || memory.has("catch_volume") && turn.asks("calibrate");
    boolean ground =
        any("test_area", "area", "shape", "swath", "walk_time")
            || memory.has("area")
            || memory.has("test_area");
    boolean flow =
        any("nozzle_flow")
            && any("walk_speed", "swath", "spacing", "time", "spray_rate", "walk_time");
    boolean conversion = wanted && turn.all().stream().anyMatch(f -> f.name().equals("spray_rate"));
    boolean dose = any("label_rate", "strength") && any("area", "shape", "spray_rate");
    boolean ranDry =
        has("spray_rate") && turn.hasWord(DRY) && !any("label_rate", "strength", "area");
    if (has("old_spray_rate") && turn.asks("calibrate") || ranDry) {
      return true;
    }
    boolean jobKnown = memory.has("area") && (memory.has("label_rate") || memory.has("strength"));
    boolean told = has("spray_rate") && !has("catch_volume") && turn.all().size() == 1;
    if (has("spray_rate") && turn.asks("coverage") || told && jobKnown) {
      return false;
    }
    if (conversion && turn.all().size() == 2 && isInUnitWanted()) {
      return true;
    }
    return !conversion
        && !(dose && !caught)
        && (turn.asks("calibrate")
            || isTimed()
            || caught && ground
            || caught && any("catch_time") && any("walk_speed", "walk_time")
            || flow
            || wanted
                && any("catch_volume", "test_area", "nozzle_flow", "product_amount", "volume"));
  }

  /** "100 feet in 25 seconds, mph". */
  private boolean isTimed() {
    return any("distance", "swath")
        && any("catch_time", "walk_time", "time")
        && wanted().stream().anyMatch(u -> u.dimension().equals(Dimension.SPEED));
  }

  /** "30 gal lasted .9 acre, what gpa is that": reckoned already, and nothing to convert. */
  private boolean isInUnitWanted() {
    return turn.first("spray_rate").map(f -> wanted().contains(f.amount().unit())).orElse(false);
  }

  private List<Unit> wanted() {
    return turn.of("wanted").stream().map(f -> Unit.of(f.word().orElseThrow())).toList();
  }

  private boolean isConversion() {
    List<Unit> wanted = wanted();
    boolean dose =
        any("label_rate", "strength", "adjuvant_rate")
            && any("area", "shape", "tank", "spray_volume", "volume");
    boolean ofProduct = any("product", "active") && any("tank", "spray_volume", "volume");
    if (ofProduct && turn.asks("mix")) {
      return false;
    }
    if (wanted.isEmpty() && !turn.asks("convert") || dose) {
      return false;
    }
    long amounts =
        turn.all().stream()
            .filter(f -> f.value().isPresent() && !f.name().equals("number"))
            .count();
    boolean numbers = turn.has("number") && wanted.size() >= 2;
    boolean alike =
        turn.all().stream()
            .filter(f -> f.value().isPresent())
            .anyMatch(
                f -> wanted.stream().anyMatch(u -> u.dimension().equals(f.amount().dimension())));
    boolean pair = wanted.size() >= 2 && turn.asks("convert");
    return amounts >= 1
            && amounts <= 2
            && (alike && !turn.asks("measure")
                || turn.asks("convert") && (alike || wanted.isEmpty()))
        || numbers
        || pair;
  }

  private boolean isFeeding() {
    boolean facts = any("analysis", "nitrogen_target", "bag", "bag_area");
    boolean asked = turn.asks("feed") || turn.asks("spread") || any("bag_area");
    boolean number = turn.all().stream().anyMatch(f -> f.value().isPresent());
    return !isLiquidRate()
        && (facts && (asked || asksSum() || any("area", "shape"))
            || asked && number && (turn.asks("mix") || turn.asks("buy") || turn.asks("spread")));
  }

  /** Whether the label's rate is poured, so that no weight of nitrogen can be reckoned from it. */
  private boolean isLiquidRate() {
    return turn.first("label_rate")
        .map(f -> f.amount().dimension().equals(Dimension.VOLUME_PER_AREA))
        .orElse(false);
  }

  private boolean isCoverage() {
    return any(
            "tank",
            "volume",
            "container",
            "spray_volume",
            "tank_part",
            "product_amount",
            "label_rate",
            "strength",
            "spray_rate",
            "bag")
        || memory.has("label_rate")
        || memory.has("tank")
        || memory.has("container");
  }
}
