package plainsward.talk;

import java.util.List;
import java.util.Set;
import plainsward.reading.Facts;
import plainsward.units.Dimension;
import plainsward.units.Unit;

/** What a turn says, as the choosers of its topics look at it. */
abstract class TurnCues {
  /** The topics that are reckoned. */
  static final Set<String> SUMS =
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

  /** What is asked at least so loudly is asked beside a sum. */
  static final int LOUD = 7;

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

  /** What was understood of the turn. */
  final Facts turn;

  /** What is known. */
  final Memory memory;

  TurnCues(Facts turn, Memory memory) {
    this.turn = turn;
    this.memory = memory;
  }

  /** Whether the turn has something of this role. */
  boolean has(String name) {
    return turn.has(name);
  }

  /** Whether the turn has something of one of these roles. */
  boolean any(String... names) {
    for (String name : names) {
      if (turn.has(name)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a sum is asked for in so many words. */
  boolean asksSum() {
    return turn.asks().stream().anyMatch(a -> SUMS.contains(a.topic()));
  }

  /** Whether an amount of product is spoken of. */
  boolean wantsProduct() {
    return turn.asks().stream().anyMatch(a -> a.topic().equals("mix") && !a.want().isEmpty())
        || any("product", "active", "adjuvant")
        || turn.hasWord(PRODUCT_WORDS);
  }

  /** The units that the answer is wanted in. */
  List<Unit> wanted() {
    return turn.of("wanted").stream().map(f -> Unit.of(f.word().orElseThrow())).toList();
  }

  /** Whether the label's rate is poured, so that no weight of nitrogen can be reckoned from it. */
  boolean isLiquidRate() {
    return turn.first("label_rate")
        .map(f -> f.amount().dimension().equals(Dimension.VOLUME_PER_AREA))
        .orElse(false);
  }
}
