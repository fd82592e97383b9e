package plainsward.reading;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.Units;

/** What two facts that stand beside each other mean together. */
final class Beside {
  private static final Set<String> MINUTES = Set.of("min", "mins", "minute", "minutes", "and");
  private static final Set<String> BAGGED = Set.of("product_amount", "test_amount");
  private static final Set<String> BAG = Set.of("bag");
  private static final Set<String> TREATED = Set.of("area", "test_area");
  private static final Set<String> OTHERS =
      Set.of("label_rate", "price", "analysis", "bag_area", "nitrogen_target");
  private static final Set<String> RATE_ASKED = Set.of("per", "rate", "thousand");
  private static final Set<String> ASKS = Set.of("what", "whats", "how", "?");
  private static final int MOST_LEFT_OUT = 20;
  private static final Set<String> BEDS =
      Set.of("beds", "sheds", "patios", "ponds", "gardens", "islands", "rings", "circles", "pads");
  private static final Set<String> PIECES =
      Set.of("strips", "pieces", "patches", "sections", "lawns", "plots", "squares", "bits");
  private static final Set<String> COVERS =
      Set.of("covers", "covering", "treats", "cover", "covered");
  private static final Ratio MOST_PIECES = Ratio.of(20);
  private final Passage passage;

  Beside(Passage passage) {
    this.passage = passage;
  }

  /** Joins what belongs together, in place. */
  void join(List<Fact> all) {
    minutesAndSeconds(all);
    bagBeside(all);
    severalBags(all);
    spreadBags(all);
    severalAlike(all);
    severalLeftOut(all);
    coveredByAGallon(all);
  }

  /** "1 min 50" and "1 minute 50 seconds" are one time. */
  private void minutesAndSeconds(List<Fact> all) {
    for (int i = 0; i + 1 < all.size(); i++) {
      Fact minutes = all.get(i);
      Fact more = all.get(i + 1);
      boolean time =
          more.at() - minutes.at() <= 3
              && MINUTES.contains(passage.word(more.at() - 1))
              && minutes.value().map(v -> v.unit().equals(Unit.of("min"))).orElse(false);
      if (!time || more.value().isEmpty()) {
        continue;
      }
      Ratio part = more.amount().value();
      boolean seconds =
          more.amount().unit().equals(Units.SECOND)
              || more.name().equals("number") && part.compareTo(Ratio.of(60)) < 0;
      if (seconds) {
        Ratio sum = minutes.amount().value().times(Ratio.of(60)).plus(part);
        all.set(i, minutes.with(new Quantity(sum, Units.SECOND), Optional.empty()));
        all.remove(i + 1);
      }
    }
  }

  /** "Bag is 24-0-10, 40 lb": a weight right beside the three numbers is the bag's. */
  private static void bagBeside(List<Fact> all) {
    boolean bag = all.stream().anyMatch(f -> f.name().equals("bag"));
    for (int i = 1; i < all.size() && !bag; i++) {
      boolean weight =
          all.get(i - 1).name().equals("analysis")
              && BAGGED.contains(all.get(i).name())
              && all.get(i).amount().dimension().equals(Dimension.MASS)
              && all.get(i).at() - all.get(i - 1).at() <= 6;
      if (weight) {
        all.set(i, all.get(i).as("bag"));
        bag = true;
      }
    }
  }

  /** "3 bags 50 lb 24-0-10", "two bags of 15-0-15 50 lb": what is spread is so many bags. */
  private void severalBags(List<Fact> all) {
    boolean feed = Facts.named(all, Set.of("bag", "analysis")).size() == 2;
    for (int i = 1; feed && i < passage.tokens().size(); i++) {
      Integer many = passage.in(i, Set.of("bags", "sacks")) ? count(passage.word(i - 1)) : null;
      if (many != null && many > 1 && many <= MOST_LEFT_OUT) {
        int at = i - 1;
        all.removeIf(f -> f.name().equals("number") && f.at() == at);
        Quantity bags = Quantity.number(Ratio.of(many));
        all.add(Fact.of("bags_used", bags, passage.said(at, i + 1), at));
        return;
      }
    }
  }

  /** "2 bags 18 lb each, 5k, how many lb per thousand": so much was spread on it. */
  private void spreadBags(List<Fact> all) {
    List<Fact> bag = all.size() < 2 ? List.of() : Facts.named(all, BAG);
    if (bag.size() != 1 || !Facts.named(all, OTHERS).isEmpty()) {
      return;
    }
    List<Fact> ground = Facts.named(all, TREATED);
    if (ground.isEmpty() || !passage.hasWord(RATE_ASKED) || !passage.hasWord(ASKS)) {
      return;
    }
    for (int i = 1; i < passage.tokens().size(); i++) {
      Integer many = passage.in(i, Set.of("bags", "sacks")) ? count(passage.word(i - 1)) : null;
      if (many != null && many > 1 && many <= MOST_LEFT_OUT) {
        int at = i - 1;
        Quantity spread = bag.get(0).amount().times(Ratio.of(many));
        String said = passage.said(at, passage.end(bag.get(0)));
        all.removeIf(
            f -> f.at() == at && f.name().equals("number") || f.name().equals("lawn_each"));
        all.set(all.indexOf(bag.get(0)), Fact.of("test_amount", spread, said, at));
        all.replaceAll(f -> f.equals(ground.get(0)) ? f.as("test_area") : f);
        return;
      }
    }
  }

  /** "3 strips 4 ft wide and 60 long": the piece counts as often as was said. */
  private void severalAlike(List<Fact> all) {
    for (int i = 0; i + 1 < all.size(); i++) {
      Fact count = all.get(i);
      Fact piece = all.get(i + 1);
      boolean counted =
          count.name().equals("number")
              && piece.name().equals("shape")
              && PIECES.contains(passage.word(count.at() + 1))
              && piece.at() - count.at() <= 4
              && count.amount().value().isWhole()
              && count.amount().value().compareTo(MOST_PIECES) <= 0;
      if (counted) {
        all.remove(i);
        for (Ratio n = Ratio.ONE; n.compareTo(count.amount().value()) < 0; n = n.plus(Ratio.ONE)) {
          all.add(i, piece);
        }
      }
    }
  }

  /** "three beds 4 x 8 each": what is left out counts as often as was said. */
  private void severalLeftOut(List<Fact> all) {
    for (int i = 0; i < all.size(); i++) {
      Fact piece = all.get(i);
      int count = piece.at() - 2;
      boolean noun = piece.name().equals("minus_shape") && passage.in(piece.at() - 1, BEDS);
      Integer many = noun && count >= 0 ? count(passage.word(count)) : null;
      if (many != null && many > 1 && many <= MOST_LEFT_OUT) {
        all.removeIf(f -> f.name().equals("number") && f.at() == count);
        int at = all.indexOf(piece);
        for (int n = 1; n < many; n++) {
          all.add(at, piece);
        }
        return;
      }
    }
  }

  private static Integer count(String word) {
    boolean digit = word.length() == 1 && Character.isDigit(word.charAt(0));
    return digit ? Integer.valueOf(word) : NumberWords.SMALL.get(word);
  }

  /** "3 tbsp a gallon, covers 400 sq ft": the ground that a gallon of the mix is for. */
  private void coveredByAGallon(List<Fact> all) {
    for (int i = 1; i < all.size(); i++) {
      Fact ground = all.get(i);
      Fact strength = all.get(i - 1);
      boolean covered =
          strength.name().equals("strength")
              && ground.name().matches("area|test_area")
              && ground.value().isPresent()
              && passage.before(ground.at(), 3, COVERS);
      Optional<Unit> mix = strength.value().flatMap(v -> v.unit().below());
      if (covered && mix.isPresent()) {
        Quantity one = Quantity.of(1, mix.get());
        all.set(i, ground.as("spray_rate").with(per(one, ground.amount()), Optional.empty()));
      }
    }
  }

  private static Quantity per(Quantity mix, Quantity ground) {
    boolean metric = ground.unit().equals(Units.SQUARE_METRE);
    Unit each = metric ? Units.HUNDRED_SQUARE_METRES : Units.THOUSAND_SQUARE_FEET;
    return new Quantity(mix.value().dividedBy(ground.in(each).value()), mix.unit().per(each));
  }
}
