package plainsward.reading;

import java.util.Set;

/**
 * Words and roles without which the rarer joiners of facts have nothing to do: they are looked for
 * first, so that what few questions need is neither made nor loaded for the others.
 */
final class Triggers {
  /** Things that are counted and that treat so much each. */
  static final Set<String> PIECES =
      Set.of(
          "packet", "packets", "pouch", "pouches", "sachet", "sachets", "tablet", "tablets", "pod",
          "pods", "pkt", "pkts", "pack", "packs");

  /** Vessels of which several are told at once. */
  static final Set<String> JUGS =
      Set.of("jugs", "bottles", "containers", "jars", "pails", "cans", "cases");

  /** Measures that a vessel may be called by. */
  static final Set<String> SIZES = Set.of("quart", "pint", "gallon");

  /** Words of a rate that was wrong and another that is right. */
  static final Set<String> WRONG =
      Set.of("wrong", "mistake", "typo", "should", "shouldve", "supposed", "meant");

  /** Words that take something back in one breath. */
  static final Set<String> TAKEN_BACK =
      Set.of(
          "wait",
          "sorry",
          "oops",
          "actually",
          "mean",
          "meant",
          "scratch",
          "correction",
          "whoops",
          "make",
          "rather");

  /** Words that ask what an amount takes. */
  static final Set<String> ASKS = Set.of("how", "what", "whats", "hows");

  /** Words that ask for a rate per another ground. */
  static final Set<String> PER_ASKED = Set.of("?", "what", "whats", "much", "many", "equals", "=");

  /** Roles of days. */
  static final Set<String> DAYS = Set.of("day", "last_applied");

  /** Roles of rates of product. */
  static final Set<String> RATES = Set.of("label_rate", "strength");

  /** Roles of what may have been laid down. */
  static final Set<String> PRODUCT = Set.of("product_amount", "catch_volume", "container");

  /** Words of what was used up of a mix. */
  static final Set<String> USED =
      Set.of(
          "used", "sprayed", "emptied", "put", "through", "out", "ran", "did", "burned", "down",
          "went", "spent");

  private Triggers() {}
}
