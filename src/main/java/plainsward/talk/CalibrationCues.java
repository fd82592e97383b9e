package plainsward.talk;

import java.util.Set;
import plainsward.reading.Facts;
import plainsward.units.Dimension;

/** Whether a turn is about what a sprayer lays down. */
final class CalibrationCues extends TurnCues {
  private static final Set<String> DRY = Set.of("dry", "empty", "emptied", "lasted");

  CalibrationCues(Facts turn, Memory memory) {
    super(turn, memory);
  }

  /** Whether what a sprayer lays down is to be reckoned. */
  boolean areHere() {
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
    boolean timed = has("walk_time") && has("test_area") && !any("label_rate", "strength");
    boolean conversion = wanted && turn.all().stream().anyMatch(f -> f.name().equals("spray_rate"));
    boolean dose = any("label_rate", "strength") && any("area", "shape", "spray_rate");
    boolean ranDry =
        has("spray_rate") && turn.hasWord(DRY) && !any("label_rate", "strength", "area");
    if (has("old_spray_rate") && turn.asks("calibrate") || ranDry || isLastPiece()) {
      return true;
    }
    boolean jobKnown = memory.has("area") && (memory.has("label_rate") || memory.has("strength"));
    boolean told = has("spray_rate") && !has("catch_volume") && turn.all().size() == 1;
    boolean onlyUnits = has("label_rate") && has("wanted") && turn.all().size() == 2;
    if (has("spray_rate") && turn.asks("coverage") || told && jobKnown || onlyUnits) {
      return false;
    }
    if (conversion && turn.all().size() <= 3 && isInUnitWanted()) {
      return true;
    }
    return !conversion
        && !(dose && !caught)
        && (turn.asks("calibrate")
            || isTimed()
            || caught && ground
            || caught && any("catch_time") && any("walk_speed", "walk_time")
            || flow
            || timed
            || wanted
                && any("catch_volume", "test_area", "nozzle_flow", "product_amount", "volume"));
  }

  /** What was still wanted to a catch that earlier turns told: the speed, or the tips' spacing. */
  private boolean isLastPiece() {
    boolean caught = memory.has("catch_volume") && memory.has("catch_time");
    boolean piece = any("walk_time", "walk_speed", "spacing", "swath", "distance");
    boolean speed = known("walk_speed") || known("walk_time") && known("distance");
    return caught
        && piece
        && !any("label_rate", "strength", "area")
        && speed
        && (known("spacing") || known("swath"));
  }

  private boolean known(String name) {
    return has(name) || memory.has(name);
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
}
