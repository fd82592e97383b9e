package plainsward.reading;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.UnitSystem;
import plainsward.units.Units;

/** Reads rates: "1.5 oz per 1,000", "3 pt/A", "30 ml in 5 litres over 50 m2", "a gal does 400". */
final class RateReader extends TokenWalk {
  private static final Set<String> BARE_VERBS = Set.of("cover", "treat", "do", "make");
  private static final Set<String> AUXILIARY =
      Set.of("will", "would", "can", "could", "does", "should", "if", "did");
  private static final Ratio SIDE = Ratio.of(150);
  private static final Ratio BARE_GROUND = Ratio.of(300);
  private static final Set<String> FIRM = Set.of("/", "per", "each", "every", "a", "an");
  private static final Set<String> LOOSE = Set.of("in", "into", "on", "over", "for", "to", "with");
  private static final Set<String> COVERS =
      Set.of(
          "covers",
          "cover",
          "covering",
          "does",
          "treats",
          "treat",
          "treating",
          "do",
          "makes",
          "make",
          "did",
          "lasted",
          "lasts",
          "covered");
  private static final Set<String> LABEL =
      Set.of(
          "label",
          "says",
          "directions",
          "gives",
          "reads",
          "bottle",
          "instructions",
          "leaflet",
          "recommended",
          "recommends",
          "recommendation",
          "rate",
          "packet",
          "calls",
          "dose");
  private static final Set<String> MAKES = Set.of("makes", "make");
  private static final Set<String> TREATS =
      Set.of("treat", "treats", "cover", "covers", "do", "spray");
  private static final Set<String> TANKS =
      Set.of("tank", "sprayer", "backpack", "knapsack", "bp", "pump", "hand", "skid", "can", "rig");
  private static final Set<String> ASKED =
      Set.of("whats", "what", "much", "many", "that", "need", "about");
  private static final Set<String> BETWEEN =
      Set.of(
          "the", "a", "an", "my", "every", "each", "up", "to", "about", "around", "only", "our",
          "at", "least", "minimum", "that");
  private static final Set<String> STOPS =
      Set.of(
          "and", "in", "with", "for", "at", "plus", "but", "is", "to", "on", "over", "into", "by",
          "or", "from", "if", "so");
  private static final Set<String> THOUSAND =
      Set.of("thousand", "thou", "k", "thosand", "thousnd", "thousnad", "thousands", "1000");

  private final NumeralReader numerals;
  private final MeasuredReader measured;
  private final UnitSystem system;

  RateReader(
      List<Token> tokens, NumeralReader numerals, MeasuredReader measured, UnitSystem system) {
    super(tokens);
    this.numerals = numerals;
    this.measured = measured;
    this.system = system;
  }

  private record Below(int to, Measured said, boolean firm, boolean covers) {}

  /** The rate that begins at this token. */
  Optional<Mention.Rate> at(int i) {
    Measured top = measured.at(i).orElseGet(() -> numerals.at(i).map(this::unitless).orElse(null));
    boolean stuff =
        top != null && (top.doubt().equals("unit") || MeasuredReader.isStuff(top.dimension()));
    if (!stuff) {
      return Optional.empty();
    }
    Optional<Below> first = below(top, top.to(), true);
    if (first.isEmpty()) {
      return Optional.empty();
    }
    Optional<Below> second =
        below(top, first.get().to(), false)
            .filter(b -> apart(first.get(), b))
            .filter(b -> b.firm() || !first.get().said().is(Dimension.AREA) || isCarrier(i, b));
    return Optional.of(rate(i, top, first.get(), second));
  }

  /** "per 100 m2 in 10 litres of water" is the label's water; "in my 2 gal" is somebody's tank. */
  private boolean isCarrier(int from, Below water) {
    if (word(water.to()).equals("water")
        || word(water.to()).equals("of") && word(water.to() + 1).equals("water")) {
      return true;
    }
    if (TANKS.contains(word(water.to()))) {
      return false;
    }
    boolean somebodys =
        Set.of("my", "the", "our", "her", "his", "a", "an").contains(word(water.said().from() - 1));
    boolean label = false;
    for (int i = Math.max(0, from - 8); i < from; i++) {
      label |= LABEL.contains(word(i));
    }
    return label && !somebodys && !word(water.said().from()).equals("a");
  }

  private static boolean apart(Below first, Below second) {
    return !first.said().dimension().equals(second.said().dimension());
  }

  private static Mention.Rate rate(int i, Measured top, Below first, Optional<Below> second) {
    Optional<Measured> volume = pick(Dimension.VOLUME, first, second);
    Optional<Measured> area = pick(Dimension.AREA, first, second);
    boolean covers = first.covers() || second.map(Below::covers).orElse(false);
    int to = second.map(Below::to).orElse(first.to());
    return new Mention.Rate(i, to, top, volume, area, first.firm(), covers);
  }

  private static Optional<Measured> pick(Dimension wanted, Below first, Optional<Below> second) {
    if (first.said().is(wanted)) {
      return Optional.of(first.said());
    }
    return second.map(Below::said).filter(m -> m.is(wanted));
  }

  private Measured unitless(Numeral number) {
    return new Measured(
        number.from(),
        number.to(),
        Quantity.number(number.low()),
        number.high().map(Quantity::number),
        "unit",
        Optional.empty(),
        false);
  }

  private Optional<Below> below(Measured top, int from, boolean first) {
    Optional<Below> close = joined(top, from);
    if (close.isPresent()) {
      return close;
    }
    int i = pastWeight(from < tokens.size() && tokens.get(from).is(")") ? from + 1 : from);
    if (i > from) {
      return joined(top, i);
    }
    int most = first ? 3 : 1;
    for (int k = 0; k < most && i < tokens.size(); k++, i++) {
      Token token = tokens.get(i);
      boolean unit = k == 0 && measured.at(i).filter(m -> m.is(Dimension.VOLUME)).isPresent();
      if (!token.isWord() || STOPS.contains(token.norm()) || unit) {
        return Optional.empty();
      }
      String next = word(i + 1);
      boolean goesOn =
          next.equals("/") || next.equals("per") || (COVERS.contains(next) && !next.equals("do"));
      if (goesOn && !top.doubt().equals("unit")) {
        return joined(top, i + 1);
      }
    }
    return Optional.empty();
  }

  /** "half an ounce by weight per gallon". */
  private int pastWeight(int i) {
    boolean weight = word(i).equals("by") && Set.of("weight", "wt", "volume").contains(word(i + 1));
    return weight ? i + 2 : i;
  }

  private Optional<Below> joined(Measured top, int i) {
    String word = word(i);
    boolean covers = COVERS.contains(word) && !isAskedOf(top.from(), word);
    boolean toEach =
        word.equals("to") && BETWEEN.contains(word(i + 1)) && !word(i + 1).equals("my");
    boolean forEach = word.equals("for") && Set.of("every", "each").contains(word(i + 1));
    boolean firm = FIRM.contains(word) || toEach || forEach;
    if (!firm && !covers && !LOOSE.contains(word)) {
      return Optional.empty();
    }
    boolean unitless = top.doubt().equals("unit");
    boolean treats = (word.equals("to") || word.equals("and")) && TREATS.contains(word(i + 1));
    if (treats && !unitless && isLabelGround(top.from(), i + 2)) {
      return joined(top, i + 1);
    }
    if (unitless && !(word.equals("/") || word.equals("per") || word.equals("a"))) {
      return Optional.empty();
    }
    int k = i + 1;
    boolean article = word.equals("a") || word.equals("an");
    while (BETWEEN.contains(word(k)) && !isAcreLetter(k) && k < i + 4) {
      article |= word(k).equals("a") || word(k).equals("an");
      k++;
    }
    boolean each = Set.of("each", "every").contains(word(k - 1)) && k > i + 1;
    boolean sure = firm || each;
    boolean needsNumber = !sure && !article;
    boolean ground = covers && !MAKES.contains(word);
    if (top.implied() && !firm && !(covers && isGroundSaid(k))) {
      return Optional.empty();
    }
    boolean lawnFor = word.equals("for") && !firm && !isLabelGround(top.from(), k);
    return (lawnFor ? Optional.<Measured>empty() : ground(top, k, sure))
        .or(() -> ground && !isSmall(top) ? Optional.empty() : volume(top, i + 1, needsNumber))
        .filter(m -> !unitless || !word.equals("a") || m.implied())
        .map(m -> new Below(m.to(), m, sure || (covers && !word.equals("do")), covers));
  }

  /** "50 ml in 7 litres for 50 m2 and I have 80": of two grounds the label's stands in its rate. */
  private boolean isLabelGround(int from, int k) {
    Optional<Measured> here = measured.at(k).filter(m -> m.is(Dimension.AREA) && !m.implied());
    if (here.isEmpty()) {
      return false;
    }
    boolean label = false;
    for (int i = Math.max(0, from - 8); i < from; i++) {
      label |= LABEL.contains(word(i));
    }
    for (int i = here.get().to(); i + 2 < tokens.size(); i++) {
      label |= ASKED.contains(word(i)) && (word(i + 2).equals("for") || word(i + 1).equals("for"));
    }
    for (int i = here.get().to(); label && i < tokens.size(); i++) {
      if (tokens.get(i).isNumber() && COVERS.contains(word(i - 1))
          || measured.at(i).filter(m -> m.is(Dimension.AREA) && !m.implied()).isPresent()) {
        return true;
      }
    }
    return false;
  }

  /** "will a 20 oz bottle cover 12,000": asked, and not told. */
  private boolean isAskedOf(int top, String verb) {
    if (!BARE_VERBS.contains(verb)) {
      return false;
    }
    for (int i = Math.max(0, top - 4); i < top; i++) {
      if (AUXILIARY.contains(word(i))) {
        return true;
      }
    }
    return false;
  }

  /** "1 gal per 800": gallons are per so much ground. */
  private static boolean isGallons(Measured top) {
    return top.is(Dimension.VOLUME) && top.low().unit().code().startsWith("[gal");
  }

  /** "half a cup does 2 gallons": so little of a product makes so much mix. */
  private static boolean isSmall(Measured top) {
    return top.is(Dimension.VOLUME)
        && !top.implied()
        && top.low().unit().factor().compareTo(Ratio.of(1, 2)) < 0;
  }

  /** "gallon does 500 feet", "a gallon covers 1,000": so much ground that a length is none. */
  private boolean isGroundSaid(int k) {
    return measured.at(k).filter(m -> m.is(Dimension.AREA) && !m.implied()).isPresent()
        || squareFeet(k).isPresent()
        || bareGround(k).isPresent();
  }

  /** "6 oz did 4,000": so large a number after such a verb is square feet. */
  private Optional<Measured> bareGround(int k) {
    if (system == UnitSystem.METRIC || measured.at(k).isPresent()) {
      return Optional.empty();
    }
    return numerals
        .at(k)
        .filter(n -> n.low().compareTo(BARE_GROUND) >= 0 && n.high().isEmpty() && !n.part())
        .map(
            n ->
                new Measured(
                    n.from(),
                    n.to(),
                    new Quantity(n.low(), Units.SQUARE_FOOT),
                    Optional.empty(),
                    "square",
                    Optional.empty(),
                    false));
  }

  private Optional<Measured> squareFeet(int k) {
    return measured
        .at(k)
        .filter(m -> m.low().unit().equals(Units.FOOT) && m.low().value().compareTo(SIDE) >= 0)
        .filter(m -> !word(m.to()).equals("x") && !word(m.to()).equals("by"))
        .filter(m -> !word(m.to()).startsWith("long") && !word(m.to()).equals("wide"))
        .map(
            m ->
                new Measured(
                    m.from(),
                    m.to(),
                    new Quantity(m.low().value(), Units.SQUARE_FOOT),
                    m.high().map(h -> new Quantity(h.value(), Units.SQUARE_FOOT)),
                    "square",
                    Optional.empty(),
                    false));
  }

  /** "per hundred gallons" has no number before the hundred. */
  private Optional<Measured> hundred(int k) {
    if (!word(k).equals("hundred")) {
      return measured.at(k);
    }
    return measured
        .at(k + 1)
        .filter(Measured::implied)
        .map(
            m ->
                new Measured(
                    k,
                    m.to(),
                    m.low().times(Ratio.of(100)),
                    Optional.empty(),
                    m.doubt(),
                    m.dry(),
                    false));
  }

  private boolean isAcreLetter(int k) {
    return k < tokens.size() && tokens.get(k).said().equals("A");
  }

  /** A thousand, an acre, so many square feet or metres. */
  private Optional<Measured> ground(Measured top, int k, boolean firm) {
    Optional<Measured> said =
        hundred(k)
            .filter(m -> m.is(Dimension.AREA) && m.low().signum() > 0)
            .or(() -> COVERS.contains(word(k - 1)) ? squareFeet(k) : Optional.empty())
            .or(() -> COVERS.contains(word(k - 1)) && !firm ? bareGround(k) : Optional.empty())
            .or(
                () ->
                    isGallons(top) && word(k - 1).equals("per")
                        ? squareFeet(k).or(() -> bareGround(k))
                        : Optional.empty());
    if (said.isPresent() && (firm || !said.get().implied() || word(k - 1).startsWith("a"))) {
      return said;
    }
    if (word(k).equals("100") && firm && isMetric() && measured.at(k).isEmpty()) {
      return Optional.of(hundredMetres(k));
    }
    boolean thousand = THOUSAND.contains(word(k)) || isTradeM(k, firm);
    if (!thousand
        || measured.at(k).filter(m -> !m.implied() && !m.is(Dimension.LENGTH)).isPresent()) {
      return Optional.empty();
    }
    int to = k + 1;
    String after = word(to);
    if (after.equals("feet") || after.equals("ft") || after.equals("foot") || after.equals("sf")) {
      to++;
    } else if (after.equals("sq") || after.equals("square")) {
      to += Set.of("ft", "foot", "feet").contains(word(to + 1)) ? 2 : 1;
    }
    return Optional.of(
        new Measured(
            k,
            to,
            Quantity.of(1000, Units.SQUARE_FOOT),
            Optional.empty(),
            "",
            Optional.empty(),
            false));
  }

  /** Whether the writer thinks in metres: the ground spoken of is told in them. */
  private boolean isMetric() {
    if (system == UnitSystem.METRIC) {
      return true;
    }
    for (int i = 0; i < tokens.size(); i++) {
      boolean metres =
          tokens.get(i).isNumber()
              && measured.at(i).filter(m -> m.low().unit().equals(Units.SQUARE_METRE)).isPresent();
      if (metres) {
        return true;
      }
    }
    return false;
  }

  /** "45 ml per 100", where the ground is told in metres. */
  private static Measured hundredMetres(int k) {
    return new Measured(
        k,
        k + 1,
        Quantity.of(100, Units.SQUARE_METRE),
        Optional.empty(),
        "",
        Optional.empty(),
        false);
  }

  /** The trade's M is a thousand square feet; a small m after a metric unit is a metre. */
  private boolean isTradeM(int k, boolean firm) {
    if (!firm || k >= tokens.size() || !tokens.get(k).is("m")) {
      return false;
    }
    boolean squared = word(k + 1).equals("2") && !tokens.get(k + 1).apart();
    return !squared && (tokens.get(k).said().equals("M") || system == UnitSystem.US);
  }

  private Optional<Measured> volume(Measured top, int i, boolean needsNumber) {
    for (int k = i; k < i + 4; k++) {
      Optional<Measured> said =
          hundred(k)
              .filter(m -> m.is(Dimension.VOLUME) && m.low().signum() > 0)
              .filter(m -> !tooSmall(top, m));
      boolean counted = said.isPresent() && (!needsNumber || !said.get().implied());
      if (counted) {
        return said;
      }
      if (!BETWEEN.contains(word(k))) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** "2 gal per oz" is no strength: what it is per must be larger than what goes in. */
  private static boolean tooSmall(Measured top, Measured below) {
    return top.is(Dimension.VOLUME)
        && below.low().inBase().compareTo(top.low().inBase()) <= 0
        && below.low().unit().factor().compareTo(Ratio.of(1, 10)) < 0;
  }
}
