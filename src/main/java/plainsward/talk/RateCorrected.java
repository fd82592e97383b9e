package plainsward.talk;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.reading.Token;
import plainsward.trade.MeasureWords;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;
import plainsward.units.Units;

/**
 * "no i meant per acre", "sorry, tbsp not oz": the measure of the rate that was said is another,
 * its number stays.
 */
final class RateCorrected extends LooseEnds {
  private static final int MOST_WORDS = 10;
  private static final Set<String> PER = Set.of("per", "/");
  private static final Set<String> NOT = Set.of("not", "isnt", "wasnt");
  private static final Set<String> IS = Set.of("its", "thats", "is", "was", "reads", "says");
  private static final Set<String> THOUSAND = Set.of("thousand", "1000", "1,000", "k", "m");

  private Unit above;
  private Unit below;
  private int from = -1;

  RateCorrected(Facts turn, Memory memory, Pending pending, UnitSystem system) {
    super(turn, memory, pending, system);
  }

  /** Puts the rate with its new measure among the facts of the turn, and tells whether it did. */
  boolean join(List<Fact> all) {
    List<Token> words = turn.tokens();
    if (!memory.has("label_rate") && !memory.has("strength")) {
      return false;
    }
    boolean corrects = turn.says("correction") || turn.hasWord(NOT) || turn.hasWord(IS);
    if (!corrects || words.size() > MOST_WORDS || !turn.says("correction") && isAsked()) {
      return false;
    }
    Optional<Fact> before = rate();
    if (before.isEmpty() || turn.all().stream().anyMatch(f -> f.value().isPresent())) {
      return false;
    }
    Unit old = before.get().amount().unit();
    above = old.above();
    below = old.below().orElseThrow();
    read(words);
    Unit unit = above.per(below);
    boolean spray = unit.code().startsWith("[gal") && below.dimension().equals(Dimension.AREA);
    if (from < 0 || unit.equals(old) || spray) {
      return false;
    }
    all.removeIf(fact -> fact.name().equals("wanted"));
    all.add(measured(before.get(), unit));
    return true;
  }

  private boolean isAsked() {
    return turn.says("question") || turn.says("follow-up") || !turn.asks().isEmpty();
  }

  /** The rate that stands, where it is so much of something per something. */
  private Optional<Fact> rate() {
    return memory
        .latest("label_rate")
        .or(() -> memory.latest("strength"))
        .map(Memory.Told::fact)
        .filter(fact -> fact.value().flatMap(rate -> rate.unit().below()).isPresent());
  }

  private Fact measured(Fact rate, Unit unit) {
    boolean ground = below.dimension().equals(Dimension.AREA);
    Quantity low = new Quantity(rate.amount().value(), unit);
    return Fact.of(ground ? "label_rate" : "strength", low, turn.text(), from)
        .with(low, rate.high().map(high -> new Quantity(high.value(), unit)))
        .of(rate.owner());
  }

  /** Takes the measures that are said and not denied. */
  private void read(List<Token> words) {
    for (int i = 0; i < words.size(); i++) {
      boolean denied = turn.isWord(i - 1, NOT);
      boolean per = turn.isWord(i, PER);
      Optional<Unit> unit = unit(words, per ? i + 1 : i);
      if (unit.isEmpty()) {
        continue;
      }
      Dimension kind = unit.get().dimension();
      boolean stuff = kind.equals(Dimension.VOLUME) || kind.equals(Dimension.MASS);
      if (per && !denied && (stuff || kind.equals(Dimension.AREA))) {
        below = unit.get();
        from = from < 0 ? i : from;
      } else if (!per && !denied && stuff) {
        above = unit.get();
        from = from < 0 ? i : from;
      }
      i += per ? 1 : 0;
    }
  }

  private Optional<Unit> unit(List<Token> words, int i) {
    boolean per = i > 0 && turn.isWord(i - 1, PER);
    if (per && turn.isWord(i, THOUSAND)) {
      boolean metres = turn.isWord(i + 1, Set.of("m2", "sqm"));
      return metres ? Optional.empty() : Optional.of(Units.THOUSAND_SQUARE_FEET);
    }
    boolean letter = i >= words.size() || words.get(i).norm().length() < 2;
    return letter
        ? Optional.empty()
        : MeasureWords.shipped().find(words.get(i).norm()).map(word -> word.in(system));
  }
}
