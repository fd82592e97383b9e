package plainsward.talk;

import java.util.List;
import java.util.Set;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.reading.Rates;
import plainsward.units.Dimension;
import plainsward.units.Quantity;

/** A hose-end sprayer in a talk: what it lays down tells how its dial is set. */
final class HoseEnd {
  private static final Set<String> SPRAY =
      Set.of("volume", "catch_volume", "tank", "spray_volume", "product_amount");
  private static final Set<String> GROUND = Set.of("test_area", "area");
  private static final Set<String> SETTING =
      Set.of("dial", "set", "setting", "number", "mark", "turn", "put", "where");

  private final Facts turn;
  private final Memory memory;

  HoseEnd(Facts turn, Memory memory) {
    this.turn = turn;
    this.memory = memory;
  }

  /** "it covers 1000 sq ft with 2 gal", of a hose: what it lays down, no lawn and no tank. */
  void join(List<Fact> all) {
    if (!isHere()) {
      return;
    }
    setBefore(all);
    if (turn.has("spray_rate")) {
      return;
    }
    Fact spray = null;
    Fact ground = null;
    for (Fact fact : all) {
      boolean volume =
          fact.value().isPresent() && fact.amount().dimension().equals(Dimension.VOLUME);
      spray = volume && SPRAY.contains(fact.name()) ? fact : spray;
      ground = fact.value().isPresent() && GROUND.contains(fact.name()) ? fact : ground;
    }
    if (spray != null && ground != null) {
      all.remove(spray);
      all.remove(ground);
      Quantity rate = Rates.per(spray.amount(), ground.amount());
      all.add(Fact.of("spray_rate", rate, spray.said() + " on " + ground.said(), spray.at()));
    }
  }

  /** "label 4 oz per k" after "set at 3 oz per gal": how the dial stands, against the label. */
  private void setBefore(List<Fact> all) {
    boolean open = memory.has("strength") && !memory.has("label_rate");
    if (!open || !turn.has("label_rate") || turn.has("dial_setting")) {
      return;
    }
    Fact set = memory.latest("strength").orElseThrow().fact();
    if (!set.leavesOpen("most")) {
      all.add(set.as("dial_setting"));
    }
  }

  /** Whether the turn is about how the dial is set, at a label's rate that is known. */
  boolean isAboutSetting() {
    if (turn.has("dial") && turn.has("strength") && !turn.has("spray_rate")) {
      return !turn.has("area") && !turn.has("shape") && turn.hasWord(SETTING);
    }
    boolean rate = turn.has("label_rate") || memory.has("label_rate");
    boolean told = turn.has("spray_rate") || turn.has("dial") || turn.has("dial_setting");
    return isHere()
        && rate
        && !turn.has("area")
        && !turn.has("shape")
        && (told || turn.hasWord(SETTING));
  }

  private boolean isHere() {
    return turn.has("dial") || memory.has("dial");
  }
}
