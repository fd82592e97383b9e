package plainsward.dosing.published;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * How each published example is reckoned with the classes of this room: for every figure that the
 * source prints a quantity, a plain number, or days.
 */
final class Sums {
  private final Map<String, Function<Example, Map<String, Object>>> all = new LinkedHashMap<>();

  Sums() {
    MixSums.addTo(this);
    SprayerSums.addTo(this);
    GroundSums.addTo(this);
    FeedSums.addTo(this);
    SkySums.addTo(this);
  }

  void put(String id, Function<Example, Map<String, Object>> sum) {
    if (all.put(id, sum) != null) {
      throw new IllegalStateException("two sums for " + id);
    }
  }

  Map<String, Function<Example, Map<String, Object>>> all() {
    return all;
  }
}
