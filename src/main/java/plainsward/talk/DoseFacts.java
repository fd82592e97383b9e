package plainsward.talk;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Fact;

/** Whether facts are those of a dose. */
final class DoseFacts {
  private static final Set<String> ROLES =
      Set.of(
          "label_rate",
          "strength",
          "area",
          "tank",
          "spray_rate",
          "spray_volume",
          "analysis",
          "adjuvant_rate",
          "container");

  private DoseFacts() {}

  /** Whether one of them is of a dose. */
  static boolean areAmong(List<Fact> facts) {
    for (Fact fact : facts) {
      if (ROLES.contains(fact.name())) {
        return true;
      }
    }
    return false;
  }

  /** Whether one of them is of a dose, or the sides of some ground. */
  static boolean orGroundAreAmong(List<Fact> facts) {
    for (Fact fact : facts) {
      if (ROLES.contains(fact.name()) || !fact.sides().isEmpty()) {
        return true;
      }
    }
    return false;
  }

  /** A number that can't be read whole, where a dose is spoken of. */
  static Optional<Fact> unread(List<Fact> facts) {
    if (orGroundAreAmong(facts)) {
      for (Fact fact : facts) {
        if (fact.name().equals("unread")) {
          return Optional.of(fact);
        }
      }
    }
    return Optional.empty();
  }
}
