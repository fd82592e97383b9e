package plainsward.reading;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.Units;

/**
 * What is used by the piece: "one packet makes 1.5 gal", "2 tablets per gal", "a pouch does 1k".
 */
final class Packets {
  private static final Set<String> MAKES =
      Set.of(
          "makes", "make", "treats", "does", "covers", "for", "per", "to", "in", "goes", "into",
          "a", "/", "each", "is", "good", "every");
  private static final Set<String> WATER =
      Set.of(
          "volume",
          "makes_volume",
          "spray_volume",
          "tank",
          "catch_volume",
          "bare_tank",
          "container");
  private static final Set<String> GROUND = Set.of("area", "test_area", "bag_area", "shape");
  private static final Set<String> ONE = Set.of("one", "a", "each", "1", "per", "every");
  private static final Set<String> GALLON = Set.of("gal", "gallon");
  private static final int MOST_BETWEEN = 5;

  private final Passage passage;

  Packets(Passage passage) {
    this.passage = passage;
  }

  /** Adds what one piece makes or treats; another volume or ground is what is to be done. */
  void join(List<Fact> all) {
    for (int i = 0; i < passage.tokens().size(); i++) {
      if (passage.in(i, Triggers.PIECES) && passage.in(i + 1, MAKES)) {
        Optional<Quantity> count = count(all, i);
        if (count.isPresent() && told(all, i, count.get().value())) {
          return;
        }
      }
    }
  }

  /** How many pieces stand before the word; a word alone at a start is one. */
  private Optional<Quantity> count(List<Fact> all, int piece) {
    for (Fact fact : all) {
      boolean number = fact.name().equals("vague") || fact.name().equals("number");
      if (number && fact.value().isPresent() && passage.end(fact) == piece) {
        return fact.value();
      }
    }
    boolean one = piece == 0 || passage.in(piece - 1, ONE);
    return one ? Optional.of(Quantity.number(Ratio.ONE)) : Optional.empty();
  }

  private boolean told(List<Fact> all, int piece, Ratio count) {
    Fact made = null;
    for (Fact fact : all) {
      boolean near = fact.at() > piece && fact.at() - piece <= MOST_BETWEEN;
      boolean stuff = WATER.contains(fact.name()) || GROUND.contains(fact.name());
      if (made == null && near && stuff && fact.value().isPresent() && fact.high().isEmpty()) {
        made = fact;
      }
    }
    int gallon = passage.in(piece + 2, GALLON) ? piece + 2 : piece + 3;
    boolean bare = passage.in(gallon, GALLON) && (made == null || made.at() > gallon);
    if (count.signum() <= 0 || made == null && !bare) {
      return false;
    }
    Quantity whole = bare ? Quantity.of(1, gallons()) : made.amount();
    int end = bare ? gallon + 1 : passage.end(made);
    Fact used = bare ? null : made;
    all.removeIf(f -> f == used || f.name().equals("vague"));
    String said = passage.said(Math.max(0, piece - 1), end);
    Quantity each = whole.times(Ratio.ONE.dividedBy(count));
    all.add(Fact.of("piece_makes", each, said, piece).worded(passage.word(piece)));
    all.replaceAll(this::asNeeded);
    return true;
  }

  private Unit gallons() {
    return passage.system() == plainsward.units.UnitSystem.IMPERIAL
        ? Units.IMPERIAL_GALLON
        : Units.GALLON;
  }

  /** What else is told is the mix or the ground to be done. */
  private Fact asNeeded(Fact fact) {
    boolean water =
        WATER.contains(fact.name())
            && !fact.name().equals("tank")
            && fact.value().filter(v -> v.dimension().equals(Dimension.VOLUME)).isPresent();
    boolean ground = fact.name().equals("test_area") || fact.name().equals("bag_area");
    return water ? fact.as("spray_volume") : ground ? fact.as("area") : fact;
  }
}
