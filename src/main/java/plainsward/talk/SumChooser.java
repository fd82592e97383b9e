package plainsward.talk;

import java.util.List;
import java.util.Set;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.units.Dimension;
import plainsward.units.Unit;

/**
 * Decides which sum the facts of a turn add up to: the sums come in the order in which one rules
 * another out.
 */
final class SumChooser extends TurnCues {
  private static final Set<String> ALL_OF_THEM =
      Set.of("all", "them", "season", "year", "each", "both");
  private static final Set<String> LEFT = Set.of("left", "remaining", "leftover");
  private static final Set<String> SAME = Set.of("same", "equal", "equals");
  private final FeedCues feed;

  SumChooser(Facts turn, Memory memory) {
    super(turn, memory);
    this.feed = new FeedCues(turn, memory);
  }

  /** The sum, or empty where nothing adds up. */
  String topic() {
    String first = first();
    if (!first.isEmpty()) {
      return first;
    }
    if (turn.asks().stream().anyMatch(a -> a.want().equals("setting"))) {
      return "spread";
    }
    if (isCoverageOfBag()) {
      return "coverage";
    }
    if (feed.areOfNitrogen()) {
      return "feed";
    }
    if (feed.isSpreader()) {
      return "spread";
    }
    if (new CalibrationCues(turn, memory).areHere()) {
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

  /** The sums that rule out all others. */
  private String first() {
    if (has("piece_makes")) {
      return "mix";
    }
    if (has("taken_rate") && any("label_rate", "strength")) {
      return "convert";
    }
    if (isOverdone()) {
      return "progress";
    }
    if (isForAllTimes()) {
      return "buy";
    }
    boolean putDown = memory.has("put_down") && has("label_rate");
    if (putDown && !any("area", "shape", "tank", "strength") && turn.asks().isEmpty()) {
      return "mix";
    }
    if (turn.says("unsprayed") && turn.says("mixed-it") && turn.says("double")) {
      return "mix";
    }
    if (turn.asks("cost") || has("price") && any("label_rate", "container", "area")) {
      return "cost";
    }
    if (isChecked()) {
      return "mix";
    }
    if (isRepeat()) {
      return "repeat";
    }
    if (new HoseEnd(turn, memory).isAboutSetting()) {
      return "mix";
    }
    return "";
  }

  /** The last sums that come in question: granules, how far it goes, a dose. */
  private String groundOrDose() {
    if (feed.isFeeding()) {
      return has("analysis") || any("nitrogen_target") || memory.has("analysis")
          ? "feed"
          : "spread";
    }
    boolean dose = any("label_rate") && any("area", "shape") && !any("container", "product_amount");
    boolean partOfLawn = has("lawn_part") && any("label_rate", "strength");
    boolean left =
        has("container")
            && turn.hasWord(LEFT)
            && has("label_rate")
            && turn.asks().isEmpty()
            && !any("area", "shape", "tank", "spray_rate", "test_area");
    boolean makes = has("container") && has("strength") && wantsVolume();
    if (left || makes && !any("area", "shape", "tank")) {
      return "coverage";
    }
    if (turn.asks("coverage") && isCoverage() && !dose && !partOfLawn) {
      return "coverage";
    }
    return new DoseChooser(turn, memory).topic();
  }

  /** "8 oz per 100 gal, is he right": a mix that the label's figure must be known for. */
  private boolean isChecked() {
    boolean made = any("strength") || has("in_hand") && has("tank");
    return made && turn.says("check") && !any("area", "shape", "label_rate", "spray_volume");
  }

  /** "did 44 oz/acre as 44 oz/thousand": what was laid down against what was meant. */
  private boolean isOverdone() {
    List<Fact> rates = turn.of("label_rate");
    return rates.size() == 2
        && turn.says("past")
        && turn.asks().isEmpty()
        && !rates.get(0).amount().unit().equals(rates.get(1).amount().unit());
  }

  /** "3 applications left at 1.5 oz/k on 6k, how much for all of them". */
  private boolean isForAllTimes() {
    return any("times", "applications", "season_limit")
        && turn.hasWord(ALL_OF_THEM)
        && has("label_rate")
        && any("area", "shape")
        && (turn.asks("mix") || turn.says("both"));
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

  private boolean isRepeat() {
    boolean asked = turn.asks("repeat");
    boolean facts = has("interval") && any("day", "last_applied");
    boolean dayOpen = has("interval") && turn.says("past") && turn.asks().isEmpty();
    return asked || dayOpen || facts && !turn.asks("seed");
  }

  /** Whether amounts are to be told in other units. */
  boolean isConversion() {
    List<Unit> wanted = wanted();
    boolean dose =
        any("label_rate", "strength", "adjuvant_rate")
            && any("area", "shape", "tank", "spray_volume", "volume");
    boolean ofProduct = any("product", "active") && any("tank", "spray_volume", "volume");
    boolean makes = has("container") && has("strength");
    boolean tankful = makes || any("tank") && any("spray_rate");
    if ((ofProduct || tankful) && turn.asks("mix")) {
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

  private boolean wantsVolume() {
    return wanted().stream().anyMatch(u -> u.dimension().equals(Dimension.VOLUME));
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
