package plainsward.talk;

import java.util.Set;
import plainsward.reading.Facts;

/** Whether a turn asks for a dose, or gives what makes one, or only for the ground. */
final class DoseChooser extends TurnCues {
  private static final int FRAGMENT = 5;
  private static final Set<String> REST = Set.of("left", "remaining", "remains", "rest");
  private static final Set<String> WATER = Set.of("water");
  private static final Set<String> WATERING = Set.of("water", "dilute", "mix", "mixed", "add");
  private static final Set<String> GROUND = Set.of("area", "shape", "test_area");
  private static final Set<String> TOPPING =
      Set.of("top", "topping", "refill", "refilling", "filling", "add", "back");

  private static final Set<String> LAWN = Set.of("lawn", "yard");

  DoseChooser(Facts turn, Memory memory) {
    super(turn, memory);
  }

  /** The topic of a dose or of the ground for one, or empty. */
  String topic() {
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
    if (has("mix_left")) {
      return "mix";
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
    boolean inTank =
        memory.has("in_tank")
            && memory.has("tank")
            && !ground
            && (turn.says("mend") && rateKnown || amounts);
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
    return inTank || inHand || job || asksNothingElse() && unowned && withKnown;
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
    boolean part = any("lawn_part") && any("area", "shape") && !amounts && turn.asks().isEmpty();
    return part || squares && turn.asks().isEmpty() || shapeOnly || rest || turn.asks("measure")
        ? "measure"
        : "";
  }
}
