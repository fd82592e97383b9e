package plainsward.dosing;

import java.util.Optional;
import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;

/** Looks at what a sum is given before anything is reckoned. */
final class Given {
  private Given() {}

  /** The quantity, if it is of one of the kinds and above 0. */
  static Quantity above(String name, Quantity given, Dimension... kinds) {
    Quantity right = ofKind(name, given, kinds);
    if (right.inBase().signum() <= 0) {
      throw new NotDosable(name, NotDosable.Why.NOT_ABOVE_ZERO);
    }
    return right;
  }

  /** Refuses what is not of one of the kinds or below 0. */
  static void notBelow(String name, Quantity given, Dimension... kinds) {
    if (ofKind(name, given, kinds).inBase().signum() < 0) {
      throw new NotDosable(name, NotDosable.Why.BELOW_ZERO);
    }
  }

  /** The quantity, if it is of one of the kinds. */
  static Quantity ofKind(String name, Quantity given, Dimension... kinds) {
    if (!Set.of(kinds).contains(given.dimension())) {
      throw new NotDosable(name, NotDosable.Why.WRONG_KIND);
    }
    return given;
  }

  /** A part of the whole: above 0 and at most all of it. */
  static Quantity part(String name, Quantity given) {
    Quantity right = above(name, given, Dimension.NONE);
    if (right.inBase().compareTo(Ratio.ONE) > 0) {
      throw new NotDosable(name, NotDosable.Why.TOO_LARGE);
    }
    return right;
  }

  /** What is there, or else a refusal that it is missing. */
  static <T> T needed(String name, Optional<T> given) {
    return given.orElseThrow(() -> new NotDosable(name, NotDosable.Why.MISSING));
  }

  /** A count of at least 1. */
  static long count(String name, long given) {
    if (given < 1) {
      throw new NotDosable(name, NotDosable.Why.NOT_ABOVE_ZERO);
    }
    return given;
  }
}
