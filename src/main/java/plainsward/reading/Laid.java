package plainsward.reading;

import java.util.List;
import java.util.Set;

/**
 * Product that went down already: "i put 3 oz on 2k, label says 3/4 oz per k". It is held against
 * the label; the label's dose alone would hide what was done.
 */
final class Laid {
  private static final Set<String> GROUND = Set.of("area", "test_area", "shape", "test_shape");
  private static final Set<String> DONE =
      Set.of("put", "used", "sprayed", "applied", "dumped", "laid", "threw", "spread", "poured");
  private static final Set<String> SOMEBODY =
      Set.of("i", "we", "he", "she", "they", "guy", "tech", "just", "already", "helper", "crew");
  private static final Set<String> OFF =
      Set.of("off", "heavy", "over", "light", "overdid", "under", "overapplied");
  private static final Set<String> ON = Set.of("on", "over", "across", "onto", "to");

  private static final Set<String> RATE = Set.of("label_rate");
  private static final int PARTS = 3;

  private final Passage passage;

  Laid(Passage passage) {
    this.passage = passage;
  }

  /** Calls what was put on a piece of ground so, where the label's rate is told as well. */
  void join(List<Fact> all) {
    if (all.size() < PARTS || Facts.named(all, RATE).size() != 1 || holds(all, "tank", "in_hand")) {
      return;
    }
    List<Fact> ground = Facts.named(all, GROUND);
    List<Fact> product = Facts.named(all, Triggers.PRODUCT);
    if (ground.size() != 1 || product.size() != 1 || product.get(0).value().isEmpty()) {
      return;
    }
    Fact put = product.get(0);
    int end = passage.end(put);
    int next = passage.in(end, Set.of("of")) ? end + 2 : end;
    boolean on =
        passage.after(next, 2, ON) && ground.get(0).at() > end && ground.get(0).at() - next <= 4;
    boolean done = passage.before(put.at(), 3, DONE) && passage.before(put.at(), 5, SOMEBODY);
    boolean asked = passage.hasWord(OFF) && passage.before(put.at(), 3, DONE);
    if (on && done || asked) {
      all.set(all.indexOf(put), put.as("in_hand"));
      Fact piece = ground.get(0);
      all.set(all.indexOf(piece), piece.as(piece.value().isPresent() ? "area" : "shape"));
    }
  }

  private static boolean holds(List<Fact> all, String... roles) {
    for (Fact fact : all) {
      for (String role : roles) {
        if (fact.name().equals(role)) {
          return true;
        }
      }
    }
    return false;
  }
}
