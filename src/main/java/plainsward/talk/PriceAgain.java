package plainsward.talk;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Unit;

/**
 * "what if the gallon is 120" after a price: one container of that measure at a price in the money
 * spoken of, and no amount of product to be told in gallons.
 */
final class PriceAgain {
  private static final Set<String> IS =
      Set.of("is", "costs", "cost", "runs", "for", "at", "was", "goes", "were", "=");
  private static final Set<String> SIZES =
      Set.of("container", "volume", "tank", "spray_volume", "product_amount", "catch_volume");
  private static final Set<String> VESSELS = Set.of("jug", "bottle", "container", "bag", "price");
  private static final Set<String> ONLY = Set.of("only", "just", "now", "like");
  private static final int MOST_WORDS = 4;
  private static final Set<String> PER = Set.of("a", "per", "the", "each", "for");

  private final Facts turn;
  private final Memory memory;

  PriceAgain(Facts turn, Memory memory) {
    this.turn = turn;
    this.memory = memory;
  }

  /** Takes a size without a number and the bare number beside it for a container's price. */
  void join(List<Fact> all) {
    if (!memory.has("price")) {
      return;
    }
    Optional<Quantity> price = memory.latest("price").flatMap(told -> told.fact().value());
    if (price.isEmpty() || turn.has("price")) {
      return;
    }
    Fact size = null;
    Fact number = null;
    for (Fact fact : turn.all()) {
      size = isSize(fact) ? fact : size;
      number = fact.name().equals("number") && fact.high().isEmpty() ? fact : number;
    }
    if (size == null && number != null && isOfVessel(number)) {
      Quantity money = new Quantity(number.amount().value(), price.get().unit());
      all.set(all.indexOf(number), Fact.of("price", money, number.said(), number.at()));
      return;
    }
    if (size == null || number == null || !areJoined(size, number)) {
      return;
    }
    int from = size.at();
    int at = number.at();
    Quantity money = new Quantity(number.amount().value(), price.get().unit());
    all.removeIf(fact -> fact.at() == from || fact.at() == at);
    all.add(Fact.of("container", amount(size), size.said(), from));
    all.add(Fact.of("price", money, number.said(), at));
  }

  private static boolean isSize(Fact fact) {
    return fact.name().equals("wanted")
        ? amount(fact).dimension().equals(Dimension.VOLUME)
        : SIZES.contains(fact.name())
            && fact.value().filter(q -> q.dimension().equals(Dimension.VOLUME)).isPresent();
  }

  private static Quantity amount(Fact size) {
    return size.value().orElseGet(() -> Quantity.of(1, Unit.of(size.word().orElseThrow())));
  }

  /** "if the jug was 95": the same container at another price. */
  private boolean isOfVessel(Fact number) {
    int is = number.at() - 1;
    int vessel = turn.isWord(is - 1, ONLY) ? is - 2 : is - 1;
    return turn.isWord(is, IS) && turn.isWord(vessel, VESSELS);
  }

  private boolean areJoined(Fact size, Fact number) {
    int between = number.at() - size.at();
    boolean is = turn.isWord(number.at() - 1, IS) && between > 1 && between <= MOST_WORDS;
    boolean per = between == -2 && turn.isWord(number.at() + 1, PER);
    return is || per;
  }
}
