package plainsward.reading;

import java.util.List;
import java.util.Set;
import plainsward.units.Quantity;

/**
 * A container's content and the ground that it is for, told apart: "the bottle treats 16,000 sq ft,
 * it's 32 oz". Together they are the label's rate; alone the ground would be taken for a lawn.
 */
final class BottlePairs {
  private static final Set<String> BOTTLES =
      Set.of(
          "bottle",
          "jug",
          "container",
          "can",
          "jar",
          "packet",
          "pack",
          "box",
          "tub",
          "pail",
          "bag",
          "sack");
  private static final Set<String> DOES =
      Set.of("treats", "treat", "covers", "cover", "does", "do", "good", "enough", "handles");
  private static final Set<String> STUFF = Set.of("product_amount", "container", "bag");
  private static final Set<String> WANTED = Set.of("volume", "tank", "spray_volume");
  private static final Set<String> GROUND = Set.of("area", "test_area");
  private static final Set<String> RATES =
      Set.of("label_rate", "strength", "spray_rate", "nitrogen_target", "test_amount");
  private static final Set<String> FOR = Set.of("for", "up", "to", "about", "around", "only", "it");
  private static final Set<String> ARTICLES =
      Set.of("the", "my", "a", "this", "each", "per", "one");
  private static final Set<String> ASKED =
      Set.of("will", "would", "can", "could", "how", "should", "did", "if");
  private static final int FAR = 8;

  private final Passage passage;

  BottlePairs(Passage passage) {
    this.passage = passage;
  }

  /** Puts the label's rate in place of the ground. */
  void join(List<Fact> all) {
    List<Fact> stuff = Facts.named(all, STUFF);
    makes(all, stuff);
    if (stuff.size() != 1
        || !Facts.named(all, RATES).isEmpty()
        || stuff.get(0).high().isPresent()) {
      return;
    }
    Fact content = stuff.get(0);
    for (int i = 0; i < all.size(); i++) {
      Fact ground = all.get(i);
      if (GROUND.contains(ground.name()) && ground.value().isPresent() && isOfBottle(ground)) {
        Quantity rate = Rates.per(content.amount(), ground.amount());
        String said = content.said() + " for " + ground.said();
        all.set(i, Fact.of("label_rate", rate, said, ground.at()).doubting(content.doubts()));
        all.replaceAll(f -> f.equals(content) ? f.as("container") : f);
        return;
      }
    }
  }

  /** "it makes 20 gallons and it's 32 oz", and another volume is wanted: so strong is the mix. */
  private static void makes(List<Fact> all, List<Fact> stuff) {
    List<Fact> made = Facts.named(all, Set.of("makes_volume"));
    boolean wanted = !Facts.named(all, WANTED).isEmpty();
    if (stuff.size() != 1 || made.size() != 1 || !wanted || !Facts.named(all, RATES).isEmpty()) {
      return;
    }
    Fact content = stuff.get(0);
    Fact mix = made.get(0);
    if (content.amount().compareTo(mix.amount()) < 0) {
      Quantity strength = Rates.per(content.amount(), mix.amount());
      String said = content.said() + " for " + mix.said();
      all.set(
          all.indexOf(mix),
          Fact.of("strength", strength, said, mix.at()).doubting(content.doubts()));
      all.set(all.indexOf(content), content.as("container"));
    }
  }

  /** Whether a container is what does this ground. */
  private boolean isOfBottle(Fact ground) {
    int verb = ground.at() - 1;
    while (verb > 0 && passage.in(verb, FOR)) {
      verb--;
    }
    return passage.in(verb, DOES) && !passage.before(verb, 3, ASKED) && hasBottle(verb);
  }

  /** A container before the verb; "can" is one only after an article. */
  private boolean hasBottle(int verb) {
    for (int i = verb - 1; i >= 0 && i >= verb - FAR; i--) {
      boolean can = passage.in(i, Set.of("can")) && !passage.in(i - 1, ARTICLES);
      if (passage.in(i, BOTTLES) && !can) {
        return true;
      }
      if (passage.tokens().get(i).endsSentence()) {
        return false;
      }
    }
    return false;
  }
}
