package plainsward.reading;

import java.util.List;
import java.util.Set;

/** Whose day it is: "sprayed the front may 1 and the back may 10". */
final class DatedLawns {
  private static final Set<String> PLACES =
      Set.of("front", "back", "side", "rear", "backyard", "frontyard", "north", "south");
  private static final int NEAR = 6;

  private final Passage passage;

  DatedLawns(Passage passage) {
    this.passage = passage;
  }

  /** Gives each of several days the piece of ground that stands before it, where each has one. */
  void join(List<Fact> all) {
    List<Fact> days = Facts.named(all, Triggers.DAYS);
    int from = 0;
    for (Fact day : days) {
      if (place(from, day.at()).isEmpty()) {
        return;
      }
      from = passage.end(day);
    }
    from = 0;
    for (Fact day : days) {
      all.set(all.indexOf(day), day.of(place(from, day.at())));
      from = passage.end(day);
    }
  }

  private String place(int from, int day) {
    for (int i = day - 1; i >= from && i >= day - NEAR; i--) {
      if (passage.in(i, PLACES)) {
        return passage.word(i);
      }
    }
    return "";
  }
}
