package plainsward.reading;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plainsward.trade.MeasureWord;
import plainsward.trade.MeasureWords;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;

/** Reads numbers with units: "1.5 fl oz", "half a gallon", "an ounce and a half", "2-gallon". */
final class MeasuredReader extends TokenWalk {
  private static final Set<String> WHOLE = Set.of("whole", "full", "entire");
  private static final Set<String> ARTICLES = Set.of("a", "an", "another");
  private static final int INCHES = 12;
  private static final Ratio MOST_POUNDS = Ratio.of(5);
  private static final Ratio LONGEST_IN_FEET = Ratio.of(1500);
  private static final Map<String, String> BRACKETS =
      Map.of("(", ")", "[", "]", "{", "}", "<", ">");
  private static final Map<String, Smaller> SMALLER =
      Map.of(
          "[ft_i]", new Smaller("[in_i]", 12),
          "[lb_av]", new Smaller("[oz_av]", 16),
          "h", new Smaller("min", 60),
          "min", new Smaller("s", 60),
          "[gal_us]", new Smaller("[qt_us]", 4),
          "[gal_br]", new Smaller("[qt_br]", 4));
  private static final Set<String> RATE = Set.of("per", "/", "a", "an", "each", "every", "of");
  private static final Set<String> WHOSE = Set.of("my", "the", "his", "her", "our", "those", "a");
  private static final Set<String> AFTER =
      Set.of(
          "on", "for", "in", "and", "to", "over", "at", "of", "left", "so", "since", "now", "today",
          "please", "tonight", "after", "doing", "when", "but", "i", "we", "with", "already",
          "what", "whats", "how");
  private static final Set<String> PLACES =
      Set.of("a", "an", "the", "my", "our", "this", "that", "each", "all", "total", "one");

  /**
   * What a unit's rest is told in.
   *
   * @param unit the smaller unit's code
   * @param in how many of it make the larger
   */
  private record Smaller(String unit, int in) {}

  private final NumeralReader numerals;
  private final UnitReader units;
  private final Degrees degrees;
  private final Once<Measured> read;

  MeasuredReader(List<Token> tokens, NumeralReader numerals, UnitReader units) {
    super(tokens);
    this.numerals = numerals;
    this.units = units;
    this.degrees = new Degrees(tokens);
    this.read = new Once<>(tokens.size(), this::found);
  }

  /** The measured amount that begins here; a lone unit is one, marked as implied. */
  Optional<Measured> at(int i) {
    return read.at(i);
  }

  private Optional<Measured> found(int i) {
    Optional<Measured> weather = degrees.decade(i).map(n -> measured(i, n.to(), n, degree()));
    if (weather.isPresent()) {
      return weather;
    }
    Optional<Numeral> numeral = numerals.at(i);
    if (numeral.isPresent()) {
      Optional<Measured> said = withUnit(i, numeral.get()).or(() -> outOf(i, numeral.get()));
      if (said.isPresent()) {
        return said.map(this::upTo);
      }
    }
    return article(i).or(() -> lone(i));
  }

  /** A temperature below nought: "-5 C", "minus five degrees". */
  Optional<Measured> below(int i) {
    return degrees.isBelow(i)
        ? at(i + 1)
            .filter(m -> m.is(Dimension.TEMPERATURE) && m.high().isEmpty() && !m.implied())
            .map(m -> m.negated(i))
        : Optional.empty();
  }

  private Optional<Measured> withUnit(int from, Numeral numeral) {
    int below = degrees.pastBelowZero(numeral.to());
    if (below > 0 && numeral.high().isEmpty()) {
      return Optional.of(frost(from, below, numeral));
    }
    int skipped = skipToUnit(numeral);
    int i = is(skipped, "full") ? skipped + 1 : skipped;
    return bracketed(i)
        .or(() -> units.at(i, true))
        .filter(found -> degrees.areTemperature(from, numeral, found))
        .filter(found -> !(numeral.thousands() && is(found.to() - 1, "second")))
        .map(found -> measured(from, found.to(), numeral, found.word()))
        .map(this::andPart)
        .map(this::andSmaller)
        .map(this::largeFeetAreSquare)
        .map(this::belowZero);
  }

  /** "2 degrees below zero". */
  private Measured belowZero(Measured said) {
    int to = degrees.pastBelowZero(said.to());
    boolean below = to > 0 && said.is(Dimension.TEMPERATURE) && said.high().isEmpty();
    return below ? said.to(to).negated(said.from()) : said;
  }

  /** "3 of my 5 gallons": so many of the same unit. */
  private Optional<Measured> outOf(int from, Numeral few) {
    int i = few.to();
    if (!is(i, "of") || few.high().isPresent() || few.low().compareTo(Ratio.ONE) <= 0) {
      return Optional.empty();
    }
    int k = i + 1 < tokens.size() && WHOSE.contains(tokens.get(i + 1).norm()) ? i + 2 : i + 1;
    return numerals
        .at(k)
        .filter(n -> n.high().isEmpty() && n.low().compareTo(few.low()) > 0)
        .flatMap(n -> withUnit(k, n))
        .filter(m -> isStuff(m.dimension()) && isEnd(m.to()))
        .map(
            m ->
                new Measured(
                    from,
                    m.to(),
                    new Quantity(few.low(), m.low().unit()),
                    Optional.empty(),
                    m.doubt(),
                    m.dry(),
                    false));
  }

  /** Whether the amount ends here, and is no tank or bag that is counted: "2 of my 4 gal tanks". */
  private boolean isEnd(int i) {
    return i >= tokens.size() || !tokens.get(i).isWord() || AFTER.contains(tokens.get(i).norm());
  }

  /** A unit in brackets: "20 (kg)". */
  private Optional<UnitReader.Found> bracketed(int i) {
    String close = i < tokens.size() ? BRACKETS.get(tokens.get(i).norm()) : null;
    return close == null
        ? Optional.empty()
        : units
            .at(i + 1, true)
            .filter(found -> is(found.to(), close))
            .map(found -> new UnitReader.Found(found.to() + 1, found.word()));
  }

  /** "5 feet 2 inches", "1 hour and 20 minutes": the rest in the next smaller unit. */
  private Measured andSmaller(Measured said) {
    Smaller smaller = SMALLER.get(said.low().unit().code());
    if (smaller == null || !said.low().value().isWhole() || said.high().isPresent()) {
      return said;
    }
    int i = is(said.to(), "and") ? said.to() + 1 : said.to();
    Optional<Numeral> few = numerals.at(i).filter(n -> n.high().isEmpty() && !n.part());
    if (few.isEmpty() || few.get().low().compareTo(Ratio.of(smaller.in())) >= 0) {
      return said;
    }
    int at = few.get().to();
    if (isLetterRest(said, few.get(), smaller)) {
      int to = is(at, "m") ? at + 1 : at;
      return said.plusPart(few.get().low().dividedBy(Ratio.of(smaller.in())), to);
    }
    Optional<UnitReader.Found> found =
        is(at, "in") && smaller.unit().equals("[in_i]") && !isPlace(at + 1)
            ? Optional.of(new UnitReader.Found(at + 1, inch()))
            : units.at(is(at, "-") ? at + 1 : at, true);
    return found
        .filter(f -> isOf(f.word(), smaller.unit()) && !isRate(f.to(), said, i))
        .map(f -> said.plusPart(few.get().low().dividedBy(Ratio.of(smaller.in())), f.to()))
        .orElse(said);
  }

  /** "1h 10m", "5'6": the rest with a letter or with nothing behind it. */
  private boolean isLetterRest(Measured said, Numeral few, Smaller smaller) {
    boolean minutes = is(said.to() - 1, "h") && is(few.to(), "m") && isTight(few.to());
    boolean inches = is(said.to() - 1, "'") && isTight(few.from()) && smaller.in() == INCHES;
    boolean end = few.to() >= tokens.size() || tokens.get(few.to()).apart();
    return isNumber(few.from())
        && (minutes || inches && end && units.at(few.to(), true).isEmpty() && !is(few.to(), "x"));
  }

  /**
   * "2 gal 1 qt/acre": the second amount begins a rate of its own; but "1 lb 2 oz per acre" is one.
   */
  private boolean isRate(int i, Measured first, int second) {
    boolean joined = second == first.to();
    boolean pounds = first.low().unit().code().equals("[lb_av]");
    boolean few = pounds && first.low().value().compareTo(MOST_POUNDS) <= 0;
    return RATE.contains(word(i)) && !(joined && (is(i, "of") || few));
  }

  private boolean isOf(MeasureWord word, String code) {
    return units.unit(word).code().equals(code)
        || word.dry().filter(dry -> dry.code().equals(code)).isPresent();
  }

  /** Whether what follows makes "in" the little word and no inches. */
  private boolean isPlace(int i) {
    return i < tokens.size() && PLACES.contains(tokens.get(i).norm());
  }

  /** "2 below zero Celsius", "10 below zero". */
  private Measured frost(int from, int to, Numeral numeral) {
    UnitReader.Found unit =
        units
            .at(to, true)
            .filter(u -> u.word().us().dimension().equals(Dimension.TEMPERATURE))
            .orElseGet(() -> new UnitReader.Found(to, degree()));
    return measured(from, unit.to(), numeral, unit.word()).negated(from);
  }

  private static MeasureWord degree() {
    return MeasureWords.shipped().find("degrees").orElseThrow();
  }

  private static MeasureWord inch() {
    return MeasureWords.shipped().find("inch").orElseThrow();
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
    if (fraction && (is(i, "a") && !isAcre(i) || is(i, "an") || is(i, "one"))) {
      i++;
    }
    return i;
  }

  /** A capital A is an acre's, except in "THREE QUARTERS OF A CUP". */
  private boolean isAcre(int i) {
    return tokens.get(i).said().equals("A") && units.at(i + 1, true).isEmpty();
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
    if (i >= tokens.size() || isPartOf(i) || !ARTICLES.contains(tokens.get(i).norm())) {
      return Optional.empty();
    }
    int unit = i + 1 < tokens.size() && WHOLE.contains(tokens.get(i + 1).norm()) ? i + 2 : i + 1;
    return units
        .at(unit, true)
        .filter(found -> !tokens.get(unit).said().equals("A") && !isOrder(unit))
        .map(found -> measured(i, found.to(), Numeral.of(i, i, Ratio.ONE), found.word()))
        .map(this::andPart)
        .map(this::andSmaller);
  }

  /** "a second opinion": an order of things and no time. */
  private boolean isOrder(int i) {
    return is(i, "second") && i + 1 < tokens.size() && !isEnd(i + 1) && !is(i + 1, "per");
  }

  /** Whether "of" before it belongs to a part of it that could not be read. */
  private boolean isPartOf(int i) {
    if (i < 2 || !is(i - 1, "of")) {
      return false;
    }
    boolean counted =
        i > 2
            && (tokens.get(i - 3).isNumber() || NumberWords.isNumberWord(tokens.get(i - 3).norm()));
    return NumberWords.PARTS.containsKey(tokens.get(i - 2).norm())
        || counted && tokens.get(i - 2).isWord() && units.at(i - 2, true).isEmpty();
  }

  /** A unit alone; not where a hyphen ties it to what could not be read ("2 fuid-ounces"). */
  private Optional<Measured> lone(int i) {
    boolean four = is(0, "for") && (i == 1 || i == 2 && word(1).startsWith("fl"));
    if (four || is(i - 1, "-") && isTight(i) && isTight(i - 1)) {
      return Optional.empty();
    }
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
