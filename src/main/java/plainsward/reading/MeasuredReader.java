package plainsward.reading;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.trade.MeasureWord;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;

/** Reads numbers with units: "1.5 fl oz", "half a gallon", "an ounce and a half", "2-gallon". */
final class MeasuredReader {
  private static final Set<String> ARTICLES = Set.of("a", "an");
  private static final Ratio LONGEST_IN_FEET = Ratio.of(1500);
  private final List<Token> tokens;
  private final NumeralReader numerals;
  private final UnitReader units;
  private final Once<Measured> read;

  MeasuredReader(List<Token> tokens, NumeralReader numerals, UnitReader units) {
    this.tokens = tokens;
    this.numerals = numerals;
    this.units = units;
    this.read = new Once<>(tokens.size(), this::found);
  }

  /** The measured amount that begins here; a lone unit is one, marked as implied. */
  Optional<Measured> at(int i) {
    return read.at(i);
  }

  private Optional<Measured> found(int i) {
    Optional<Numeral> numeral = numerals.at(i);
    if (numeral.isPresent()) {
      Optional<Measured> said = withUnit(i, numeral.get());
      if (said.isPresent()) {
        return said.map(this::upTo);
      }
    }
    return article(i).or(() -> lone(i));
  }

  private boolean is(int i, String word) {
    return i < tokens.size() && tokens.get(i).is(word);
  }

  private Optional<Measured> withUnit(int from, Numeral numeral) {
    int i = skipToUnit(numeral);
    if (is(i, "full")) {
      i++;
    }
    return units
        .at(i, true)
        .map(found -> measured(from, found.to(), numeral, found.word()))
        .map(this::andPart)
        .map(this::largeFeetAreSquare);
  }

  /** After a number: a hyphen ("2-gallon"), "of an" ("three quarters of an ounce"). */
  private int skipToUnit(Numeral numeral) {
    int i = numeral.to();
    if (is(i, "-") && is(i + 1, "full")) {
      return i + 1;
    }
    if (is(i, "-") && !tokens.get(i).apart()) {
      return i + 1;
    }
    boolean fraction = !numeral.low().isWhole();
    if (fraction && is(i, "of")) {
      i++;
    }
    if (fraction && (is(i, "a") || is(i, "an") || is(i, "one"))) {
      i++;
    }
    return i;
  }

  private Measured measured(int from, int to, Numeral numeral, MeasureWord word) {
    Unit unit = units.unit(word);
    return new Measured(
        from,
        to,
        new Quantity(numeral.low(), unit),
        numeral.high().map(high -> new Quantity(high, unit)),
        word.doubt(),
        word.dry(),
        false);
  }

  /** "a gallon", "an acre and a quarter". */
  private Optional<Measured> article(int i) {
    if (i >= tokens.size() || !ARTICLES.contains(tokens.get(i).norm())) {
      return Optional.empty();
    }
    return units
        .at(i + 1, true)
        .filter(found -> !tokens.get(i + 1).said().equals("A"))
        .map(found -> measured(i, found.to(), Numeral.of(i, i, Ratio.ONE), found.word()))
        .map(this::andPart);
  }

  private Optional<Measured> lone(int i) {
    return units
        .at(i, false)
        .map(found -> measured(i, found.to(), Numeral.of(i, i, Ratio.ONE), found.word()))
        .map(
            m -> {
              Measured part = andPart(m);
              return part == m
                  ? new Measured(m.from(), m.to(), m.low(), m.high(), m.doubt(), m.dry(), true)
                  : part;
            });
  }

  /** "... and a half" after the unit; only a whole number can be gone on with. */
  private Measured andPart(Measured said) {
    int i = said.to();
    if (!said.low().value().isWhole() || !is(i, "and")) {
      return said;
    }
    int k = is(i + 1, "a") || is(i + 1, "one") ? i + 2 : i + 1;
    Ratio many = Ratio.ONE;
    if (is(k, "three")) {
      many = Ratio.of(3);
      k++;
    }
    Ratio part = k < tokens.size() ? NumberWords.PARTS.get(tokens.get(k).norm()) : null;
    return part == null ? said : said.plusPart(part.times(many), k + 1);
  }

  /** "0.75 oz to 1.1 oz" with the unit said twice. */
  private Measured upTo(Measured low) {
    int i = low.to();
    if (low.high().isPresent() || !(is(i, "to") || is(i, "-") || is(i, "or"))) {
      return low;
    }
    Optional<Numeral> numeral = numerals.at(i + 1);
    Optional<Measured> high = numeral.flatMap(n -> withUnit(i + 1, n));
    boolean alike =
        high.isPresent() && high.get().is(low.dimension()) && high.get().high().isEmpty();
    return alike ? low.upTo(high.get()) : low;
  }

  /** "9 thousand ft" of lawn means square feet: nobody has a side of that length. */
  private Measured largeFeetAreSquare(Measured said) {
    boolean feet = said.low().unit().code().equals("[ft_i]");
    if (!feet || said.low().value().compareTo(LONGEST_IN_FEET) < 0) {
      return said;
    }
    Unit square = Unit.of("[sft_i]");
    return new Measured(
        said.from(),
        said.to(),
        new Quantity(said.low().value(), square),
        said.high().map(high -> new Quantity(high.value(), square)),
        "square",
        Optional.empty(),
        false);
  }

  /** Whether this dimension can be laid on the ground: volumes and masses. */
  static boolean isStuff(Dimension dimension) {
    return dimension.equals(Dimension.VOLUME) || dimension.equals(Dimension.MASS);
  }
}
