package plainsward.reading;

import java.util.Optional;
import plainsward.units.Ratio;

/**
 * A number as it was said, possibly a range.
 *
 * @param from its first token
 * @param to the token after its last
 * @param low the value; for a range the low end
 * @param high the high end of a range
 * @param thousands whether it was said with a letter that stands for a thousand ({@code 4k}, {@code
 *     14M}), which in the trade nearly always counts square feet
 * @param part whether it is a bare part of one ("half", "a third")
 */
record Numeral(int from, int to, Ratio low, Optional<Ratio> high, boolean thousands, boolean part) {

  static Numeral of(int from, int to, Ratio value) {
    return new Numeral(from, to, value, Optional.empty(), false, false);
  }

  Numeral upTo(Numeral end) {
    boolean both = thousands || end.thousands;
    Ratio first = end.thousands && !thousands ? low.times(Ratio.of(1000)) : low;
    return first.compareTo(end.low) <= 0
        ? new Numeral(from, end.to, first, Optional.of(end.low), both, false)
        : new Numeral(from, end.to, end.low, Optional.of(first), both, false);
  }
}
