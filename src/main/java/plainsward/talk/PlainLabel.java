package plainsward.talk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import plainsward.reading.Detail;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.reading.LabelWords;
import plainsward.records.Label;

/**
 * The waits of a label that has no name: "my label says no mowing for three days, I sprayed May 1".
 */
final class PlainLabel {
  private static final Set<String> WAITS =
      Set.of("mow-after", "water", "water-in", "water-in-within", "seed-after", "rain-free");

  private PlainLabel() {}

  /** Puts the waits that a turn tells of such a label among its facts, in place of bare times. */
  static void hear(Facts facts, List<Fact> tied, Memory memory, Setting setting) {
    if (!facts.says("by-label") || !facts.labels().isEmpty() || !memory.chosenLabel().isEmpty()) {
      return;
    }
    List<Detail> waits = new ArrayList<>();
    Set<Integer> claimed = new HashSet<>();
    for (Detail detail : LabelWords.read(facts, "", setting.units(), setting.today())) {
      if (WAITS.contains(detail.field()) && detail.low().isPresent() && !isRain(facts, detail)) {
        waits.add(detail);
        claimed.add(detail.at());
      }
    }
    if (waits.isEmpty()) {
      return;
    }
    tied.removeIf(fact -> fact.value().isPresent() && claimed.contains(fact.at()));
    Label label = new LabelMerge(Label.named("label").label()).details(waits, tied).label();
    for (Fact fact : LabelFacts.limits(label)) {
      tied.add(fact.of(""));
    }
  }

  /** "rain in 3 hours" beside the label's hours is what the sky has, where that is asked. */
  private static boolean isRain(Facts facts, Detail detail) {
    for (Fact gap : facts.of("rain_gap")) {
      if (gap.at() == detail.at() && facts.asks("weather")) {
        return true;
      }
    }
    return false;
  }
}
