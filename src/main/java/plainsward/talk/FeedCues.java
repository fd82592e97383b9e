package plainsward.talk;

import plainsward.reading.Ask;
import plainsward.reading.Facts;
import plainsward.units.Dimension;

/** Whether a turn is about feeding or spreading. */
final class FeedCues extends TurnCues {
  FeedCues(Facts turn, Memory memory) {
    super(turn, memory);
  }

  /** Whether what is in the bag is to be reckoned from its three numbers. */
  boolean areOfNitrogen() {
    return has("analysis") && !isLiquidRate() || isMoreNitrogen() || isWholeBag();
  }

  /** Whether a test of a spreader is told. */
  boolean isSpreader() {
    boolean thrown = any("spread_rate", "test_amount");
    boolean mass =
        turn.first("label_rate")
            .map(f -> f.amount().dimension().equals(Dimension.MASS_PER_AREA))
            .orElse(false);
    return thrown || asksGate() || mass && turn.asks("spread") && turn.asks("calibrate");
  }

  /** "open it or close it", of a spreader whose throw is known. */
  private boolean asksGate() {
    if (memory.has("spread_rate")) {
      for (Ask ask : turn.asks()) {
        if (ask.want().equals("spread_rate")) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether feeding or granules are asked about. */
  boolean isFeeding() {
    boolean facts = any("analysis", "nitrogen_target", "bag", "bag_area");
    boolean asked = turn.asks("feed") || turn.asks("spread") || any("bag_area");
    boolean number = turn.all().stream().anyMatch(f -> f.value().isPresent());
    return !isLiquidRate()
        && (facts && (asked || asksSum() || any("area", "shape"))
            || asked && number && (turn.asks("mix") || turn.asks("buy") || turn.asks("spread")));
  }

  private boolean isWholeBag() {
    return memory.has("analysis") && turn.asks("spread") && memory.has("bag_area");
  }

  private boolean isMoreNitrogen() {
    boolean target = has("nitrogen_target") || memory.has("nitrogen_target");
    boolean again = has("nitrogen_target") || asksSum();
    return memory.has("analysis")
        && target
        && again
        && !any("label_rate", "strength", "test_amount", "spread_rate");
  }
}
