package plainsward.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;
import plainsward.units.Units;

/** What a rate means: the label's rate, the sprayer's, a strength, a wetting agent's, nitrogen. */
final class RateFacts {
  /** What may stand between a year's limit and the year. */
  private static final Set<String> EACH = Set.of("a", "per", "each", "every", "any", "one", "/");

  private static final Set<String> WITHIN = Set.of("in", "within");
  private static final Set<String> WHOLE_YEAR = Set.of("calendar", "growing", "one", "single");
  private static final Set<String> YEARLY = Set.of("annually", "yearly");
  private static final Set<String> YEARS = Set.of("year", "yr", "season");
  private static final Set<String> OUTPUT = Set.of("output", "puts", "gpa", "calibrated");
  private static final Set<String> TESTED = Set.of("used", "took", "caught", "through", "uses");
  private static final Set<String> STUFF =
      Set.of("product", "concentrate", "herbicide", "weedkiller", "it");
  private static final Set<String> DOING =
      Set.of("do", "spray", "run", "does", "puts", "at", "use");
  private static final Set<String> METRIC_GROUND = Set.of("m2", "har");
  private static final Set<String> PRODUCT =
      Set.of("product", "label", "rate", "concentrate", "herbicide", "material", "stuff");
  private static final Set<String> NITROGEN = Set.of("n", "nitrogen");
  private static final Set<String> LABEL =
      Set.of(
          "label",
          "says",
          "bottle",
          "directions",
          "instructions",
          "leaflet",
          "reads",
          "jug",
          "packet",
          "book",
          "calls",
          "gives",
          "sheet");
  private static final Set<String> ACTIVE = Set.of("active", "ai", "ae", "acid", "actives");
  private static final Set<String> THROWN =
      Set.of(
          "used",
          "threw",
          "dropped",
          "spread",
          "put",
          "caught",
          "gave",
          "weighed",
          "measured",
          "setting",
          "spreader",
          "ran",
          "went",
          "thrown",
          "came",
          "fed");
  private static final Set<String> THROWS =
      Set.of("puts", "throws", "throwing", "drops", "dropping", "lays", "laying");
  private static final Set<String> HAND =
      Set.of(
          "put", "mixed", "poured", "used", "buddy", "boss", "added", "guy", "right", "did", "my",
          "tank", "got");
  private static final Set<String> ASKING =
      Set.of(
          "in", "to", "into", "as", "my", "the", "whats", "many", "that", "much", "of", "or", "up",
          "using", "?", "");
  private static final Set<String> BOTTLES =
      Set.of("bottle", "jug", "container", "pack", "tub", "jar", "tin", "carton", "pail");
  private static final Set<String> ON = Set.of("on", "over", "x", "times");
  private static final Set<String> STILL = Set.of("left", "still", "remaining", "leftover");

  /** No label wants more product than a tenth of the tank. */
  private static final Ratio MOST_PRODUCT = Ratio.of(10);

  private static final Ratio FEW = Ratio.of(20);

  /** Short words and abbreviations of which people say one without a number. */
  private static final Set<String> SHORT_ONES = Set.of("cup", "cap", "qt", "pt", "gal");

  private static final Set<String> TELLING = Set.of("its", "thats", "not", "meant", "mean");

  /** The fewest letters of a measure that is no abbreviation, but for short words. */
  private static final int WRITTEN_OUT = 4;

  private final Passage passage;

  RateFacts(Passage passage) {
    this.passage = passage;
  }

  List<Fact> of(Mention.Rate rate) {
    if (rate.top().implied() && isMisread(rate.from())) {
      return List.of();
    }
    if (rate.top().implied() && (isAsked(rate) || !isOne(rate.top()))) {
      return List.of(wanted(rate));
    }
    List<Fact> facts = new ArrayList<>();
    rate.area().ifPresent(area -> perArea(rate, area, facts));
    if (rate.area().isEmpty()) {
      rate.volume().ifPresent(volume -> facts.addAll(perVolume(rate, volume)));
    }
    return facts;
  }

  /** "gal per thousand?" asks for a unit; "I do a gallon to the thousand" gives a figure. */
  private boolean isAsked(Mention.Rate rate) {
    String before = passage.word(rate.from() - 1);
    String after = passage.word(rate.to());
    if (rate.covers() && rate.area().filter(a -> !a.implied()).isPresent()) {
      return false;
    }
    boolean bare = before.isEmpty() && passage.in(rate.to(), ON);
    if (passage.in(rate.to(), PRODUCT) || bare) {
      return false;
    }
    boolean verb = passage.before(rate.from(), 2, DOING);
    return !verb && (ASKING.contains(before) || after.equals("?") || after.isEmpty());
  }

  /**
   * "Tablespoon per gallon" and "qt per acre" may be one; "oz per gallon", "ounces per gallon" and
   * "its quart per acre" tell a measure alone.
   */
  private boolean isOne(Measured top) {
    String word = passage.word(top.to() - 1);
    boolean written = word.length() >= WRITTEN_OUT || SHORT_ONES.contains(word);
    return written && !word.endsWith("s") && !passage.in(top.from() - 1, TELLING);
  }

  /** Whether a word that can't be read parts a number from the unit: "three fulld ounces per k". */
  private boolean isMisread(int unit) {
    boolean unread = passage.isWord(unit - 1) && !NumberWords.isNumberWord(passage.word(unit - 1));
    String before = passage.word(unit - 2);
    boolean article = before.equals("a") && passage.word(unit - 3).equals("and");
    boolean refused =
        isPartOnly(passage.word(unit - 1))
            || passage.word(unit - 1).equals(Spelling.UNREAD)
            || Set.of("a", "an").contains(passage.word(unit - 1)) && before.equals("of");
    return refused
        || unread && (article || passage.isNumber(unit - 2) || NumberWords.isNumberWord(before));
  }

  /** "eighths", "thirds", "quarters". */
  private static boolean isPartOnly(String word) {
    boolean part = word.length() > 3 && (word.endsWith("ths") || word.endsWith("rds"));
    for (int i = 0; part && i < word.length(); i++) {
      part = word.charAt(i) >= 'a' && word.charAt(i) <= 'z';
    }
    return part || word.equals("quarters");
  }

  private Fact wanted(Mention.Rate rate) {
    Measured below = rate.area().or(rate::volume).orElseThrow();
    Unit unit = Rates.per(rate.top().low(), below.low()).unit();
    return Fact.of("wanted", unit.code(), said(rate), rate.from());
  }

  private String said(Mention.Rate rate) {
    return passage.said(rate.from(), rate.to());
  }

  private void perArea(Mention.Rate rate, Measured area, List<Fact> facts) {
    Measured top = rate.top();
    if (rate.volume().isPresent() && !passage.before(rate.from(), 1, Set.of("water"))) {
      Quantity spray = Rates.per(rate.volume().get().low(), area.low());
      facts.add(fact("label_rate", rate, over(top, area)));
      facts.add(Fact.of("spray_rate", spray, said(rate), rate.from()));
      return;
    }
    if (isTest(rate)) {
      facts.add(
          Fact.of("catch_volume", rate.top().low(), said(rate), rate.from())
              .doubting(List.of("ounce")));
      facts.add(Fact.of("test_area", area.low(), said(rate), area.from()));
      return;
    }
    String role = isYearly(rate.to()) ? "year_amount" : areaRole(rate, area);
    Fact made = fact(role, rate, over(top, area));
    facts.add(made);
    boolean bag = top.is(Dimension.MASS) && passage.in(top.to(), Set.of("bag", "bags", "sack"));
    if (rate.covers() && bag) {
      facts.add(Fact.of("bag", top.low(), passage.said(top.from(), top.to()), top.from()));
    }
    if (rate.covers() && role.equals("spray_rate") && isTank(rate)) {
      facts.add(Fact.of("tank", top.low(), passage.said(top.from(), top.to()), top.from()));
    }
  }

  /** "3 oz per thousand a year" is the most of a year and no rate. */
  private boolean isYearly(int end) {
    int year = passage.in(end, WITHIN) ? end + 2 : end + 1;
    boolean each = passage.in(year - 1, EACH);
    boolean calendar = passage.in(year, WHOLE_YEAR);
    return passage.in(end, YEARLY) || each && passage.in(calendar ? year + 1 : year, YEARS);
  }

  /** "used 2 quarts on 500 sq ft" is a test of the sprayer. */
  private boolean isTest(Mention.Rate rate) {
    return !rate.firm()
        && !rate.covers()
        && rate.top().is(Dimension.VOLUME)
        && passage.before(rate.from(), 3, TESTED);
  }

  private boolean isTank(Mention.Rate rate) {
    return passage.role("volume", rate.top().from(), rate.top().to(), "").equals("tank");
  }

  private record Range(Quantity low, Optional<Quantity> high) {}

  private Range over(Measured top, Measured area) {
    Measured sized = top.doubt().equals("unit") ? guessed(top, area) : top;
    return new Range(
        Rates.per(sized.low(), area.low()), sized.high().map(high -> Rates.per(high, area.low())));
  }

  /** A bare label rate means fluid ounces in US measures, else millilitres. */
  private Measured guessed(Measured top, Measured area) {
    boolean spray = isSprayCue(top);
    boolean metricGround = METRIC_GROUND.contains(area.low().unit().code());
    Unit unit;
    if (spray) {
      unit = metricGround ? Units.LITRE : gallon();
    } else {
      unit = metricGround ? Units.MILLILITRE : ounce();
    }
    return new Measured(
        top.from(),
        top.to(),
        new Quantity(top.low().value(), unit),
        top.high().map(h -> new Quantity(h.value(), unit)),
        "unit",
        Optional.of(Units.OUNCE),
        false);
  }

  private Unit gallon() {
    return passage.system() == UnitSystem.IMPERIAL ? Units.IMPERIAL_GALLON : Units.GALLON;
  }

  private Unit ounce() {
    return passage.system() == UnitSystem.IMPERIAL ? Units.IMPERIAL_FL_OZ : Units.FL_OZ;
  }

  private boolean isSprayCue(Measured top) {
    return passage.before(top.from(), 5, OUTPUT);
  }

  /** Nitrogen, an active ingredient, what a spreader threw, or the label's rate by weight. */
  private String massRole(Mention.Rate rate, Measured top) {
    if (isOf(rate, top, ACTIVE)) {
      return "active_rate";
    }
    boolean actual = passage.word(afterOf(top.to())).equals("actual");
    if (isOf(rate, top, NITROGEN) || actual) {
      return "nitrogen_target";
    }
    boolean tested =
        !rate.firm() && passage.before(rate.from(), 4, THROWN)
            || passage.before(rate.from(), 2, THROWS);
    return tested ? "spread_rate" : "label_rate";
  }

  /** Whether the amount, or the rate as a whole, is said to be of one of these. */
  private boolean isOf(Mention.Rate rate, Measured top, Set<String> stuff) {
    return passage.in(afterOf(top.to()), stuff) || passage.in(afterOf(rate.to()), stuff);
  }

  private int afterOf(int place) {
    return passage.word(place).equals("of") ? place + 1 : place;
  }

  private String areaRole(Mention.Rate rate, Measured area) {
    Measured top = rate.top();
    if (top.is(Dimension.MASS)) {
      return massRole(rate, top);
    }
    if (top.doubt().equals("unit")) {
      return isSprayCue(top) ? "spray_rate" : "label_rate";
    }
    String usual = usualRole(rate, area);
    boolean product = passage.word(top.to()).equals("of") && passage.in(top.to() + 1, STUFF);
    if (product) {
      return "label_rate";
    }
    if (rate.covers() && passage.in(top.to(), BOTTLES)) {
      return "label_rate";
    }
    boolean either = isLarge(top.low().unit());
    return either ? passage.role("volumerate", rate.from(), rate.to(), usual) : water(rate, usual);
  }

  private String water(Mention.Rate rate, String usual) {
    boolean water =
        passage.word(rate.top().to()).equals("of")
                && passage.word(rate.top().to() + 1).equals("water")
            || passage.word(rate.top().to()).equals("water");
    return water ? "spray_rate" : usual;
  }

  private String usualRole(Mention.Rate rate, Measured area) {
    Unit unit = rate.top().low().unit();
    if (!isLarge(unit)) {
      return "label_rate";
    }
    boolean litres = unit.code().equals("L");
    boolean hectare = area.low().unit().code().equals("har");
    boolean little = rate.top().low().value().compareTo(FEW) <= 0;
    return litres && hectare && little ? "label_rate" : "spray_rate";
  }

  private static boolean isLarge(Unit unit) {
    return unit.code().equals("L") || unit.code().startsWith("[gal");
  }

  private List<Fact> perVolume(Mention.Rate rate, Measured volume) {
    Measured top = rate.top();
    Range strength =
        new Range(
            Rates.per(sized(top, volume).low(), volume.low()),
            top.high().map(h -> Rates.per(sized(top, volume).high().orElse(h), volume.low())));
    if (isAdjuvant(rate)) {
      return List.of(fact("adjuvant_rate", rate, strength));
    }
    if (!rate.firm() && isPartFull(top, volume)) {
      boolean left = passage.before(top.from(), 3, STILL) || passage.after(top.to(), 2, STILL);
      return List.of(
          Fact.of(
              left ? "left_in_tank" : "spray_volume",
              top.low(),
              passage.said(top.from(), top.to()),
              top.from()),
          Fact.of("tank", volume.low(), passage.said(volume.from(), volume.to()), volume.from()));
    }
    if (!rate.firm() && isInHand(rate)) {
      return List.of(
          Fact.of("in_hand", top.low(), passage.said(top.from(), top.to()), top.from()),
          Fact.of("tank", volume.low(), passage.said(volume.from(), volume.to()), volume.from()));
    }
    return List.of(fact("strength", rate, strength));
  }

  /** "1.5 gal in my 4 gal tank": so much of a tank is mix in it, and no product. */
  private static boolean isPartFull(Measured top, Measured volume) {
    return !top.implied()
        && !volume.implied()
        && isLarge(top.low().unit())
        && isLarge(volume.low().unit())
        && top.low().times(MOST_PRODUCT).compareTo(volume.low()) > 0;
  }

  private Measured sized(Measured top, Measured volume) {
    if (!top.doubt().equals("unit")) {
      return top;
    }
    Unit unit = volume.low().unit().code().equals("L") ? Units.MILLILITRE : ounce();
    return new Measured(
        top.from(),
        top.to(),
        new Quantity(top.low().value(), unit),
        top.high().map(h -> new Quantity(h.value(), unit)),
        "unit",
        Optional.empty(),
        false);
  }

  private boolean isAdjuvant(Mention.Rate rate) {
    for (int i = rate.top().to(); i < rate.to(); i++) {
      if (passage.tokens().get(i).tag().equals("adjuvant")) {
        return true;
      }
    }
    return passage.role("strength", rate.from(), rate.to(), "").equals("adjuvant_rate");
  }

  private boolean isInHand(Mention.Rate rate) {
    boolean label = passage.before(rate.from(), 7, LABEL);
    boolean hand =
        passage.before(rate.from(), 4, HAND)
            || rate.volume().isPresent()
                && passage.before(rate.volume().get().from(), 2, Set.of("my", "her", "his"))
            || passage.after(rate.to(), 2, Set.of("tank", "sprayer", "right"));
    boolean counted = rate.volume().map(v -> !v.implied()).orElse(false);
    return hand && counted && !(label && !passage.before(rate.from(), 3, Set.of("boss", "he")));
  }

  private Fact fact(String role, Mention.Rate rate, Range range) {
    List<String> doubts = rate.top().doubt().isEmpty() ? List.of() : List.of(rate.top().doubt());
    Fact made =
        Fact.of(role, range.low(), said(rate), rate.from())
            .with(range.low(), range.high())
            .doubting(doubts);
    return made;
  }
}
