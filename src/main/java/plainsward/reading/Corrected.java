package plainsward.reading;

import java.util.List;
import java.util.Set;
import plainsward.units.Quantity;
import plainsward.units.Unit;

/**
 * A figure taken back in the same breath: "lawn is 5k no wait 4k", "4 gal backpack i mean 3 gal".
 * The later one stands in its place; both together would be added or the first one used.
 */
final class Corrected {
  private static final Set<String> FILLERS =
      Set.of(
          "no", "its", "it", "is", "thats", "that", "i", "a", "the", "my", ",", "more", "like", "-",
          "at", "to", "of", "?", "be", "should", "really");
  private static final Set<String> PLAIN = Set.of("no");
  private static final Set<String> NOT_NO = Set.of("more", "less", "than", "at");
  private static final Set<String> BARE = Set.of("area", "tank", "spray_volume", "volume");
  private static final int REACH = 6;

  private final Passage passage;

  Corrected(Passage passage) {
    this.passage = passage;
  }

  /** Puts each later figure in place of the one that it corrects. */
  void join(List<Fact> all) {
    for (int i = 1; i < all.size(); i++) {
      Fact later = all.get(i);
      int cue = later.value().isPresent() ? cue(later.at()) : -1;
      Fact earlier = cue < 0 ? null : earlier(all, i, cue);
      if (earlier != null) {
        all.set(i, inPlace(later, earlier));
        all.remove(earlier);
        i--;
      }
    }
  }

  /** Where the words that take something back begin, right before a place; or -1. */
  private int cue(int place) {
    boolean strong = false;
    int first = place;
    for (int i = place - 1; i >= 0 && i >= place - REACH; i--) {
      boolean cue = passage.in(i, Triggers.TAKEN_BACK);
      if (!cue && !passage.in(i, FILLERS)) {
        break;
      }
      boolean no = passage.in(i, PLAIN) && !passage.in(i + 1, NOT_NO);
      strong |= cue || no;
      first = cue || no ? i : first;
    }
    return strong ? first : -1;
  }

  /** The figure of the same kind that stands right before the words. */
  private Fact earlier(List<Fact> all, int later, int cue) {
    for (int k = later - 1; k >= 0; k--) {
      Fact earlier = all.get(k);
      if (earlier.value().isPresent() && isAlike(earlier, all.get(later))) {
        boolean near = cue - passage.end(earlier) <= 3 && cue >= passage.end(earlier);
        return near ? earlier : null;
      }
    }
    return null;
  }

  private static boolean isAlike(Fact earlier, Fact later) {
    boolean bare = later.name().equals("number") && BARE.contains(earlier.name());
    boolean kind = earlier.amount().dimension().equals(later.amount().dimension());
    boolean rate = earlier.name().equals(later.name());
    boolean volume = BARE.contains(earlier.name()) && BARE.contains(later.name());
    return bare || kind && (rate || volume);
  }

  private static Fact inPlace(Fact later, Fact earlier) {
    Unit unit = earlier.amount().unit();
    Fact mended =
        later.name().equals("number")
            ? later.with(new Quantity(later.amount().value(), unit), later.high())
            : later;
    return mended
        .as(earlier.name())
        .of(earlier.owner().isEmpty() ? later.owner() : earlier.owner());
  }
}
