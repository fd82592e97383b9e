package plainsward.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;
import plainsward.units.Unit;
import plainsward.units.Units;

/** A label's figures told in pieces: the low end apart, the active ingredient and its content. */
final class RatePieces {
  private static final Set<String> LOW = Set.of("low", "lowest", "min", "minimum", "least");
  private static final Set<String> RATES = Set.of("label_rate", "strength");
  private static final Set<String> TOLD =
      Set.of("label", "says", "rate", "max", "used", "put", "bottle", "jug", "product", "dose");
  private static final Set<String> GROUND = Set.of("area");
  private static final Set<String> PLACES =
      Set.of("back", "front", "side", "rear", "backyard", "frontyard", "strip");
  private static final Set<String> LABEL_RATE = Set.of("label_rate");
  private static final Set<String> THROWN = Set.of("test_amount", "spread_rate");
  private static final Set<String> ON = Set.of("on", "for");
  private static final Ratio MOST_RATE = Ratio.of(100);
  private static final Set<String> TANKS = Set.of("tank", "volume");
  private static final Set<String> PER = Set.of("per", "/", "a", "each");
  private static final Set<String> THOUSAND = Set.of("thousand", "1000", "k", "m");
  private static final Unit PINT = Unit.of("[pt_us]");

  private final Passage passage;

  RatePieces(Passage passage) {
    this.passage = passage;
  }

  /** Puts together what belongs together. */
  void join(List<Fact> all) {
    if (passage.hasWord(Triggers.WRONG)) {
      new WrongThenRight(passage).join(all);
    }
    shares(all);
    lowEnd(all);
    ofAnalysis(all);
    outputBeside(all);
    ofActive(all);
    if (all.size() > 1) {
      onPlace(all);
      likeThrown(all);
    }
  }

  /** "1.1 oz/k front, 1.5 on the back": the second rate has the first's unit. */
  private void onPlace(List<Fact> all) {
    List<Fact> rates = Facts.named(all, LABEL_RATE);
    if (rates.size() != 1 || Facts.named(all, GROUND).size() < 2) {
      return;
    }
    for (int i = 0; i < all.size(); i++) {
      Fact number = all.get(i);
      int end = number.name().equals("number") && number.value().isPresent() ? number.at() + 1 : -1;
      boolean small = end > 0 && number.amount().value().compareTo(MOST_RATE) < 0;
      boolean named = small && passage.in(end, ON) && passage.after(end + 1, 2, PLACES);
      boolean after = named && number.at() > rates.get(0).at();
      boolean at = small && i > 0 && isAtGround(all.get(i - 1), number);
      if (after || at) {
        Quantity rate = new Quantity(number.amount().value(), rates.get(0).amount().unit());
        all.set(i, rates.get(0).with(rate, Optional.empty()).saidAs(number.said(), number.at()));
      }
    }
  }

  /** "4k front at 1.5": a rate right after its piece of ground. */
  private boolean isAtGround(Fact ground, Fact number) {
    int end = passage.end(ground);
    return ground.name().equals("area")
        && passage.in(number.at() - 1, Set.of("at"))
        && number.at() - end <= 2;
  }

  /** "dropped 4 lb on 20 by 50, label 3.5 per k": pounds as well. */
  private static void likeThrown(List<Fact> all) {
    List<Fact> thrown = Facts.named(all, THROWN);
    for (int i = 0; i < all.size() && thrown.size() == 1; i++) {
      Fact rate = all.get(i);
      Unit unit = thrown.get(0).amount().unit();
      boolean mass = unit.equals(Units.POUND) || unit.above().equals(Units.POUND);
      if (mass && rate.name().equals("label_rate") && rate.leavesOpen("unit")) {
        Unit per = Units.POUND.per(rate.amount().unit().below().orElseThrow());
        Quantity weighed = new Quantity(rate.amount().value(), per);
        all.set(i, rate.with(weighed, Optional.empty()).doubting(List.of()));
      }
    }
  }

  /** "2,4-D 24%, mecoprop 7%": what a product is made of is no strength to mix at. */
  private void shares(List<Fact> all) {
    List<Fact> shares = new ArrayList<>();
    for (Fact fact : all) {
      if (isShare(fact)) {
        shares.add(fact);
      }
    }
    if (shares.size() > 1) {
      all.replaceAll(fact -> shares.contains(fact) ? fact.as("active_share") : fact);
    }
  }

  private boolean isShare(Fact fact) {
    return fact.name().equals("strength")
        && fact.amount().unit().equals(Units.PERCENT)
        && fact.at() > 0
        && passage.tokens().get(fact.at() - 1).tag().equals("active");
  }

  /** "2.75 per 1,000 as the max and 1.8 as the low": the low end of the label's range. */
  private void lowEnd(List<Fact> all) {
    for (Fact low : List.copyOf(all)) {
      boolean named =
          low.name().equals("number")
              && low.value().isPresent()
              && (passage.after(low.at() + 1, 3, LOW) || passage.before(low.at(), 2, LOW));
      for (int i = 0; named && i < all.size(); i++) {
        Fact rate = all.get(i);
        boolean below =
            RATES.contains(rate.name())
                && rate.high().isEmpty()
                && low.amount().value().compareTo(rate.amount().value()) < 0;
        if (below) {
          Quantity end = new Quantity(low.amount().value(), rate.amount().unit());
          all.set(i, rate.with(end, Optional.of(rate.amount())));
          all.remove(low);
          return;
        }
      }
    }
  }

  /**
   * "1.1 oz/k, 2g/k", "200 gal, 2/k, 1.2/k": of two rates per thousand the one in a bare letter or
   * number is gallons of spray, the one after a tank or after the ounces.
   */
  private void outputBeside(List<Fact> all) {
    List<Fact> rates = Facts.named(all, Set.of("label_rate"));
    if (rates.size() != 2 || !Facts.named(all, Set.of("spray_rate")).isEmpty()) {
      return;
    }
    for (int i = 0; i < 2; i++) {
      Fact rate = rates.get(i);
      Fact other = rates.get(1 - i);
      boolean perThousand =
          rate.amount().unit().below().filter(Units.THOUSAND_SQUARE_FEET::equals).isPresent();
      boolean grams = rate.amount().unit().above().equals(Units.GRAM) && !isWeighed(other);
      boolean bare =
          rate.leavesOpen("unit")
              && isSlashed(rate)
              && (afterTank(all, rate)
                  || !other.leavesOpen("unit") && !Facts.named(all, TANKS).isEmpty());
      if (perThousand && rate.high().isEmpty() && (grams || bare)) {
        Unit unit = Units.GALLON.per(Units.THOUSAND_SQUARE_FEET);
        Quantity spray = new Quantity(rate.amount().value(), unit);
        all.set(all.indexOf(rate), rate.as("spray_rate").with(spray, Optional.empty()));
        return;
      }
    }
  }

  /** "2/k", and not what a label or somebody is said to give. */
  private boolean isSlashed(Fact rate) {
    return rate.said().indexOf('/') > 0 && !passage.before(rate.at(), 4, TOLD);
  }

  private static boolean isWeighed(Fact rate) {
    return rate.amount().dimension().equals(Dimension.MASS_PER_AREA);
  }

  /** Whether the tank is what was told right before. */
  private static boolean afterTank(List<Fact> all, Fact rate) {
    int i = all.indexOf(rate);
    return i > 0 && TANKS.contains(all.get(i - 1).name());
  }

  /** "6 lb of 18-0-6 per thousand": the three numbers stand inside the rate. */
  private void ofAnalysis(List<Fact> all) {
    for (int i = 1; i < all.size(); i++) {
      Fact bag = all.get(i);
      Fact amount = all.get(i - 1);
      int per = passage.end(bag);
      boolean rate =
          bag.name().equals("analysis")
              && amount.name().equals("product_amount")
              && amount.value().isPresent()
              && bag.at() - passage.end(amount) <= 1
              && passage.in(per, PER)
              && passage.in(per + 1, THOUSAND);
      if (rate) {
        Unit unit = amount.amount().unit().per(Units.THOUSAND_SQUARE_FEET);
        Quantity laid = new Quantity(amount.amount().value(), unit);
        all.set(i - 1, amount.as("label_rate").with(laid, Optional.empty()));
      }
    }
  }

  /** "2 lb active per acre" of a product of 4 lb a gallon is half a gallon of product per acre. */
  private static void ofActive(List<Fact> all) {
    Optional<Fact> wanted = all.stream().filter(f -> f.name().equals("active_rate")).findFirst();
    Optional<Fact> content =
        all.stream()
            .filter(f -> f.name().equals("strength"))
            .filter(f -> f.amount().dimension().equals(Dimension.MASS_PER_VOLUME))
            .findFirst();
    if (wanted.isEmpty() || content.isEmpty()) {
      return;
    }
    Unit ground = wanted.get().amount().unit().below().orElseThrow();
    Unit liquid = content.get().amount().unit().code().endsWith("L") ? Units.MILLILITRE : PINT;
    Quantity rate = wanted.get().amount().dividedBy(content.get().amount(), liquid.per(ground));
    String line =
        Shown.of(wanted.get().amount())
            + " of active ingredient ÷ "
            + Shown.of(content.get().amount())
            + " = "
            + Shown.of(rate)
            + " of product";
    all.removeAll(List.of(wanted.get(), content.get()));
    all.add(Fact.of("label_rate", rate, wanted.get().said(), wanted.get().at()).worded(line));
  }
}
