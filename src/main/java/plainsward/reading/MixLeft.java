package plainsward.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;

/**
 * What is still in the tank after a part was sprayed: "mixed 5 gal, used 3.5, how much product is
 * still in there". The whole would be told for the rest.
 */
final class MixLeft {
  private static final Set<String> WHOLES =
      Set.of("spray_volume", "tank", "volume", "makes_volume", "catch_volume");
  private static final Set<String> POURED =
      Set.of("product_amount", "in_hand", "catch_volume", "container");
  private static final Set<String> STILL = Set.of("left", "still", "remaining", "remains");
  private static final Set<String> STUFF =
      Set.of(
          "product",
          "products",
          "herbicide",
          "chemical",
          "chem",
          "chems",
          "concentrate",
          "killer",
          "weedkiller",
          "active",
          "stuff",
          "oz",
          "ounces",
          "poison");
  private static final Set<String> MANY = Set.of("much", "many");
  private static final int NEAR = 5;

  private final Passage passage;

  MixLeft(Passage passage) {
    this.passage = passage;
  }

  /** Puts the rest of the mix in place of what was mixed and what was used of it. */
  void join(List<Fact> all) {
    Fact whole = null;
    Fact used = null;
    for (Fact fact : all) {
      if (whole == null && WHOLES.contains(fact.name()) && isVolume(fact)) {
        whole = fact;
      } else if (whole != null && used == null && isUsed(fact)) {
        used = fact;
      }
    }
    if (used == null || !isAsked()) {
      return;
    }
    Optional<Quantity> rest = rest(whole, used);
    if (rest.isPresent()) {
      strength(all, whole);
      all.remove(whole);
      all.remove(used);
      String said = passage.said(whole.at(), passage.end(used));
      all.add(Fact.of("mix_left", rest.get(), said, whole.at()));
    }
  }

  /** "how much product is still in there". */
  private boolean isAsked() {
    for (int i = 0; i < passage.tokens().size(); i++) {
      boolean product = passage.in(i, MANY) && passage.after(i + 1, 4, STUFF);
      if (product && passage.after(i + 1, 9, STILL)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isVolume(Fact fact) {
    return fact.value().isPresent()
        && fact.high().isEmpty()
        && fact.amount().dimension().equals(Dimension.VOLUME);
  }

  private boolean isUsed(Fact fact) {
    boolean amount =
        fact.name().equals("number") || fact.name().equals("lawn_part") || isVolume(fact);
    return amount && fact.value().isPresent() && passage.before(fact.at(), 3, Triggers.USED);
  }

  private static Optional<Quantity> rest(Fact whole, Fact used) {
    Ratio value = used.amount().value();
    boolean part = used.name().equals("lawn_part");
    Quantity gone =
        isVolume(used)
            ? used.amount().in(whole.amount().unit())
            : part ? whole.amount().times(value) : new Quantity(value, whole.amount().unit());
    return gone.signum() > 0 && gone.compareTo(whole.amount()) < 0
        ? Optional.of(whole.amount().minus(gone))
        : Optional.empty();
  }

  /** "4 gal with 6 oz": how strong the whole was. */
  private void strength(List<Fact> all, Fact whole) {
    for (Fact fact : new ArrayList<>(all)) {
      boolean poured =
          fact != whole
              && POURED.contains(fact.name())
              && fact.value().isPresent()
              && Math.abs(fact.at() - whole.at()) <= NEAR
              && (!isVolume(fact) || fact.amount().compareTo(whole.amount()) < 0);
      if (poured) {
        Quantity strength = Rates.per(fact.amount(), whole.amount());
        String said = fact.said() + " in " + whole.said();
        all.set(all.indexOf(fact), Fact.of("strength", strength, said, fact.at()));
        return;
      }
    }
  }
}
