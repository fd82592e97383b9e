package plainsward.reading;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;

/**
 * A volume and what it takes, and then another volume: "2.5 gallons takes 6 oz, how much in one".
 * The pair tells how strong the mix is.
 */
final class Takes {
  private static final Set<String> VOLUMES =
      Set.of("volume", "tank", "spray_volume", "catch_volume", "makes_volume");
  private static final Set<String> PRODUCT =
      Set.of("product_amount", "catch_volume", "container", "in_hand");
  private static final Set<String> TAKE =
      Set.of("takes", "take", "needs", "need", "gets", "uses", "is", "wants", "get");
  private static final Set<String> GOES = Set.of("goes", "go", "into", "for", "in");
  private static final Set<String> ASKED =
      Set.of("for", "in", "into", "of", "does", "do", "about", "just", "only", "would", "whats");
  private static final Set<String> ONE = Set.of("one", "1");
  private static final Ratio TEN = Ratio.of(10);

  private final Passage passage;

  Takes(Passage passage) {
    this.passage = passage;
  }

  /** Puts the strength in place of the pair, and the other volume as the mix to be made. */
  void join(List<Fact> all) {
    for (int i = 0; i + 1 < all.size(); i++) {
      Fact first = all.get(i);
      Fact second = all.get(i + 1);
      boolean takes = isVolume(first) && isProduct(second, first) && isJoined(first, second, TAKE);
      boolean goes = isProduct(first, second) && isVolume(second) && isGoing(first, second);
      if (takes || goes) {
        told(all, takes ? first : second, takes ? second : first);
        return;
      }
    }
  }

  private void told(List<Fact> all, Fact volume, Fact product) {
    int end = Math.max(passage.end(volume), passage.end(product));
    Fact other = null;
    for (Fact fact : all) {
      boolean later = fact.at() >= end && (isVolume(fact) || isCount(fact));
      other = later ? fact : other;
    }
    int one = other == null ? oneAfter(end) : -1;
    if (other == null && one < 0) {
      return;
    }
    Unit unit = volume.amount().unit();
    Quantity mix =
        other == null
            ? Quantity.of(1, unit)
            : isVolume(other) ? other.amount() : new Quantity(other.amount().value(), unit);
    int at = other == null ? one : other.at();
    String said = other == null ? passage.word(one) : other.said();
    Fact asked = other;
    all.removeIf(f -> f == volume || f == product || f == asked);
    Quantity strength = Rates.per(product.amount(), volume.amount());
    int from = Math.min(volume.at(), product.at());
    all.add(
        Fact.of("strength", strength, passage.said(from, end), from).doubting(product.doubts()));
    all.add(Fact.of("spray_volume", mix, said, at));
  }

  /** "how much in one". */
  private int oneAfter(int from) {
    for (int i = from; i < passage.tokens().size(); i++) {
      if (passage.in(i, ONE) && passage.in(i - 1, ASKED)) {
        return i;
      }
    }
    return -1;
  }

  private boolean isCount(Fact fact) {
    return fact.name().equals("number")
        && fact.high().isEmpty()
        && fact.amount().value().compareTo(TEN) <= 0
        && passage.in(fact.at() - 1, ASKED);
  }

  private static boolean isVolume(Fact fact) {
    return VOLUMES.contains(fact.name())
        && fact.value().isPresent()
        && fact.high().isEmpty()
        && fact.amount().dimension().equals(Dimension.VOLUME);
  }

  private static boolean isProduct(Fact fact, Fact volume) {
    Optional<Quantity> amount = fact.value();
    return PRODUCT.contains(fact.name())
        && amount.isPresent()
        && fact.high().isEmpty()
        && volume.value().isPresent()
        && (!amount.get().dimension().equals(volume.amount().dimension())
            || amount.get().compareTo(volume.amount()) < 0);
  }

  private boolean isJoined(Fact first, Fact second, Set<String> verbs) {
    int end = passage.end(first);
    return second.at() - end <= 2 && second.at() > end && passage.in(end, verbs);
  }

  /** "6 oz goes in 2.5 gallons", "9 oz for 3 gal". */
  private boolean isGoing(Fact first, Fact second) {
    int end = passage.end(first);
    return second.at() > end && second.at() - end <= 3 && passage.in(end, GOES);
  }
}
