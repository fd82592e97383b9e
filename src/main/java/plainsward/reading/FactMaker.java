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

/** Turns what stands in the text into facts with roles and owners. */
final class FactMaker {
  /** What may stand between a measure and what it is per. */
  private static final Set<String> PER = Set.of("per", "/", "a", "an", "to", "for", "on");

  /** Words after and before a bare number that say it is ground. */
  private static final Set<String> GROUND_AFTER =
      Set.of("lawn", "yard", "square", "of", "combined", "bag", "bags");

  private static final Set<String> GROUND_BEFORE =
      Set.of("lawn", "yard", "its", "customer", "neighbors", "just", "for");

  private static final Set<String> SECONDS = Set.of("seconds", "secs", "sec");
  private static final Set<String> NET = Set.of("its", "leaves", "theres");
  private static final Set<String> LESS = Set.of("minus", "without", "less", "after", "excluding");
  private static final Set<String> OTHER_LIMITS =
      Set.of(
          "wind",
          "winds",
          "gusts",
          "gusting",
          "mph",
          "degrees",
          "temp",
          "apps",
          "app",
          "times",
          "applications",
          "sprays",
          "treatments",
          "days",
          "weeks",
          "respray",
          "again",
          "rainfast");
  private static final Ratio SMALLEST_LAWN = Ratio.of(150);
  private static final Ratio LARGE = Ratio.of(1000);
  private static final Ratio HUNDRED = Ratio.of(100);
  private static final Ratio FEW = Ratio.of(20);

  /** More numbers than anybody lists before one unit. */
  private static final int MOST_LISTED = 40;

  /** Words before a number that is a name and counts nothing. */
  private static final Set<String> NUMBERED =
      Set.of(
          "number",
          "zip",
          "code",
          "model",
          "order",
          "invoice",
          "phone",
          "epa",
          "reg",
          "unit",
          "route",
          "highway",
          "apartment",
          "no",
          "since");

  private static final Set<String> JOINS = Set.of(",", "and", "+", "&", "plus", "or");

  private final Passage passage;
  private final Owners owners;
  private final AmountFacts amounts;
  private final RateFacts rates;
  private final List<Fact> facts = new ArrayList<>();
  private boolean first = true;
  private boolean namedAfter;

  FactMaker(Passage passage) {
    this.passage = passage;
    this.owners = new Owners(passage);
    this.amounts = new AmountFacts(passage);
    this.rates = new RateFacts(passage);
  }

  List<Fact> make(List<Mention> mentions) {
    for (int i = 0; i < mentions.size(); i++) {
      facts.addAll(owned(mentions.get(i), facts(mentions, i)));
    }
    return facts;
  }

  private List<Fact> facts(List<Mention> mentions, int i) {
    Mention mention = mentions.get(i);
    if (mention instanceof Mention.Rate rate) {
      return rates.of(rate);
    }
    if (mention instanceof Mention.Amount amount) {
      return amounts.of(amount.said());
    }
    if (mention instanceof Mention.Piece piece) {
      return piece(piece);
    }
    if (mention instanceof Mention.Bare bare) {
      return bare(mentions, i, bare.number());
    }
    return rest(mention);
  }

  private String said(Mention mention) {
    return passage.said(mention.from(), mention.to());
  }

  private List<Fact> piece(Mention.Piece piece) {
    String role =
        passage.role("area", piece.from(), piece.to(), "shape").equals("minus")
            ? "minus_shape"
            : passage.role("area", piece.from(), piece.to(), "shape").equals("test_area")
                ? "test_shape"
                : "shape";
    Fact shape = Fact.shape(piece.form(), piece.sides(), said(piece), piece.from());
    return List.of(shape.as(role).doubting(piece.unitSaid() ? List.of() : List.of("side-unit")));
  }

  private List<Fact> rest(Mention mention) {
    String said = said(mention);
    int at = mention.from();
    if (mention instanceof Mention.Day day) {
      return List.of(Fact.of(role("day", mention, "day"), day.date(), said, at));
    }
    if (mention instanceof Mention.Wait wait) {
      return List.of(wait(wait, said));
    }
    if (mention instanceof Mention.Times times) {
      Quantity count = Quantity.number(Ratio.of(times.count()));
      String usual =
          times.aYear()
              ? passage.word(times.to() - 2).equals("this") ? "applications" : "season_limit"
              : "times";
      return List.of(Fact.of(role("times", mention, usual), count, said, at));
    }
    if (mention instanceof Mention.Analysis bag) {
      Quantity nitrogen = new Quantity(bag.nitrogen(), Units.PERCENT);
      return List.of(Fact.of("analysis", nitrogen, said, at).worded(said));
    }
    if (mention instanceof Mention.Price price) {
      return List.of(price(price, said));
    }
    if (mention instanceof Mention.Mix mix) {
      return List.of(mix(mix, said));
    }
    if (mention instanceof Mention.TankPart part) {
      return List.of(Fact.of(part.role(), Quantity.number(part.part()), said, at));
    }
    if (mention instanceof Mention.Unread unread) {
      String around = passage.said(Math.max(0, unread.from() - 1), unread.to() + 2);
      return List.of(Fact.of("unread", said, around, at));
    }
    if (mention instanceof Mention.Named named) {
      return List.of(Fact.of(factName(named.kind()), named.id(), said, at));
    }
    return List.of();
  }

  private static String factName(NameKind kind) {
    return switch (kind) {
      case WEED -> "weed";
      case GRASS -> "grass";
      case ACTIVE -> "active";
      case PRODUCT -> "product";
      case ADJUVANT -> "adjuvant";
    };
  }

  private String role(String kind, Mention mention, String usual) {
    return passage.role(kind, mention.from(), mention.to(), usual);
  }

  /** A price from here to there: no sum may take either end for the price. */
  private static Fact price(Mention.Price price, String said) {
    return price.high().isPresent()
        ? Fact.of("unread", said, said, price.from())
        : Fact.of("price", price.money(), said, price.from());
  }

  private Fact wait(Mention.Wait wait, String said) {
    Unit unit =
        switch (wait.unit()) {
          case DAYS -> Units.DAY;
          case WEEKS -> Unit.of("wk");
          case MONTHS -> Units.ONE;
        };
    Quantity low = Quantity.of(wait.low(), unit);
    return Fact.of(role("wait", wait, "interval"), low, said, wait.from())
        .with(low, wait.high().map(h -> Quantity.of(h, unit)))
        .worded(wait.unit() == Mention.Span.MONTHS ? "months" : "days");
  }

  /** One to n is one part in n + 1 of the mix; one in n is one part in n. */
  private Fact mix(Mention.Mix mix, String said) {
    Ratio whole = mix.inAll() ? mix.large() : mix.large().plus(mix.small());
    Ratio percent = mix.small().dividedBy(whole).times(Ratio.of(100));
    String role =
        passage.role("strength", mix.from(), mix.to(), "strength").equals("adjuvant_rate")
            ? "adjuvant_rate"
            : "strength";
    return Fact.of(role, new Quantity(percent, Units.PERCENT), said, mix.from())
        .worded(mix.inAll() ? "1-in-n" : "1-to-n");
  }

  private List<Fact> bare(List<Mention> mentions, int i, Numeral number) {
    String said = passage.said(number.from(), number.to());
    boolean lawn = owners.lawn(number.from()).isPresent() || isLawnCue(number);
    boolean large = isLarge(number, said, lawn);
    Optional<Measured> follower =
        large && lawn
            ? Optional.empty()
            : follower(mentions, i).filter(f -> !large || f.is(Dimension.AREA));
    if (follower.isPresent()) {
      Measured alike = follower.get();
      return List.of(
          Fact.of("listed", new Quantity(number.low(), alike.low().unit()), said, number.from()));
    }
    Optional<Fact> cued = cued(number, said);
    if (cued.isPresent()) {
      return List.of(cued.get());
    }
    boolean minus =
        passage.role("area", number.from(), number.to(), "").equals("minus")
            && number.low().compareTo(SMALLEST_LAWN) >= 0;
    boolean net =
        minus && passage.in(number.from() - 1, NET) && passage.before(number.from(), 5, LESS);
    if (net) {
      Quantity area = new Quantity(number.low(), ground());
      return List.of(Fact.of("area", area, said, number.from()).doubting(List.of("square")));
    }
    if (minus || large) {
      Quantity area = new Quantity(number.low(), ground());
      return List.of(
          Fact.of(minus ? "minus" : "area", area, said, number.from()).doubting(List.of("square")));
    }
    Quantity amount = Quantity.number(number.low());
    return List.of(
        Fact.of("number", amount, said, number.from())
            .with(amount, number.high().map(Quantity::number)));
  }

  /** Whether a number without a unit can only be ground: thousands, or a lawn's own number. */
  private boolean isLarge(Numeral number, String said, boolean lawn) {
    if (passage.before(number.from(), 3, NUMBERED)) {
      return false;
    }
    return number.thousands()
        || number.low().compareTo(SMALLEST_LAWN) >= 0 && lawn
        || number.low().compareTo(LARGE) >= 0 && !isYear(said);
  }

  /** What the cue words make of a number without a unit: "the tank is 50", "rate .37". */
  private Optional<Fact> cued(Numeral number, String said) {
    int at = number.from();
    String role = passage.role("bare", at, number.to(), "");
    return switch (role) {
      case "bag_area" ->
          number.low().compareTo(LARGE) >= 0
              ? Optional.of(Fact.of("bag_area", new Quantity(number.low(), ground()), said, at))
              : Optional.empty();
      case "applied_count" ->
          number.low().compareTo(FEW) < 0
              ? Optional.of(Fact.of("applied_count", Quantity.number(number.low()), said, at))
              : Optional.empty();
      case "label_rate" ->
          number.low().compareTo(HUNDRED) < 0 && !isUnread(number.to()) && !isOtherLimit()
              ? Optional.of(perThousand(number, said))
              : Optional.empty();
      case "analysis" ->
          number.low().compareTo(HUNDRED) < 0
              ? Optional.of(
                  Fact.of("analysis", new Quantity(number.low(), Units.PERCENT), said, at)
                      .worded(said))
              : Optional.empty();
      case "vague" -> Optional.of(Fact.of("vague", Quantity.number(number.low()), said, at));
      default -> ofSprayer(role, number, said);
    };
  }

  /** What the cue words of sprayer and soil make of a number without a unit. */
  private Optional<Fact> ofSprayer(String role, Numeral number, String said) {
    int at = number.from();
    return switch (role) {
      case "walk_time" ->
          isInSeconds()
              ? Optional.of(
                  Fact.of("walk_time", new Quantity(number.low(), Units.SECOND), said, at))
              : Optional.empty();
      case "nozzle_count" ->
          number.low().isWhole() && number.high().isEmpty() && number.low().compareTo(HUNDRED) < 0
              ? Optional.of(Fact.of("nozzle_count", Quantity.number(number.low()), said, at))
              : Optional.empty();
      case "bag" ->
          number.low().compareTo(HUNDRED) <= 0 && passage.system() != UnitSystem.METRIC
              ? Optional.of(Fact.of("bag", new Quantity(number.low(), Units.POUND), said, at))
              : Optional.empty();
      case "soil_temperature" ->
          Optional.of(Fact.of("soil_temperature", new Quantity(number.low(), degree()), said, at));
      case "spray_volume" ->
          Optional.of(
              Fact.of("spray_volume", new Quantity(number.low(), tankUnit()), said, at)
                  .doubting(List.of("gallon")));
      case "tank", "only_takes" ->
          Optional.of(
              Fact.of("tank", new Quantity(number.low(), tankUnit()), said, at)
                  .doubting(List.of("gallon")));
      default -> Optional.empty();
    };
  }

  /** Whether seconds were told elsewhere, so that a bare time is in them too. */
  private boolean isInSeconds() {
    for (Token token : passage.tokens()) {
      if (SECONDS.contains(token.norm())) {
        return true;
      }
    }
    return false;
  }

  /** Whether wind, heat, days or counts are spoken of, so that a label's bare number is no rate. */
  private boolean isOtherLimit() {
    for (Token token : passage.tokens()) {
      if (OTHER_LIMITS.contains(token.norm())) {
        return true;
      }
    }
    return false;
  }

  /** Whether a word that may be a misspelt unit stands between a number and what it is per. */
  private boolean isUnread(int i) {
    return passage.isWord(i)
        && (passage.in(i + 1, PER)
            || passage.isWord(i + 1) && passage.in(i + 2, Set.of("per", "/")));
  }

  private boolean isLawnCue(Numeral number) {
    return passage.after(number.to(), 3, GROUND_AFTER)
        || passage.before(number.from(), 3, GROUND_BEFORE);
  }

  /** "rate .37": a label's bare rate, per 1,000 sq ft in fluid ounces, and marked as open. */
  private Fact perThousand(Numeral number, String said) {
    Unit unit =
        passage.system() == UnitSystem.METRIC ? Units.ML_PER_HUNDRED : Units.FL_OZ_PER_THOUSAND;
    Quantity low = new Quantity(number.low(), unit);
    return Fact.of("label_rate", low, said, number.from())
        .with(low, number.high().map(h -> new Quantity(h, unit)))
        .doubting(List.of("unit", "per"));
  }

  private static boolean isYear(String said) {
    return said.matches("(19|20)\\d\\d");
  }

  private Unit tankUnit() {
    return switch (passage.system()) {
      case US -> Units.GALLON;
      case IMPERIAL -> Units.IMPERIAL_GALLON;
      case METRIC -> Units.LITRE;
    };
  }

  private Unit degree() {
    return passage.system() == UnitSystem.METRIC ? Units.CELSIUS : Units.FAHRENHEIT;
  }

  private Unit ground() {
    return passage.system() == UnitSystem.METRIC ? Units.SQUARE_METRE : Units.SQUARE_FOOT;
  }

  /** In "5,200, 7,900 and 3,400 sq ft" each number has the unit of the last. */
  private Optional<Measured> follower(List<Mention> mentions, int i) {
    int k = i + 1;
    int end = mentions.get(i).to();
    while (k < mentions.size() && k <= i + MOST_LISTED) {
      Mention next = mentions.get(k);
      if (!joined(end, next.from())) {
        return Optional.empty();
      }
      if (next instanceof Mention.Amount amount) {
        boolean alike = amount.said().is(Dimension.AREA) || amount.said().is(Dimension.VOLUME);
        return alike && !amount.said().implied() ? Optional.of(amount.said()) : Optional.empty();
      }
      if (!(next instanceof Mention.Bare)) {
        return Optional.empty();
      }
      end = next.to();
      k++;
    }
    return Optional.empty();
  }

  private boolean joined(int end, int next) {
    if (next <= end || next - end > 2) {
      return false;
    }
    for (int i = end; i < next; i++) {
      if (!JOINS.contains(passage.word(i))) {
        return false;
      }
    }
    return true;
  }

  private List<Fact> owned(Mention mention, List<Fact> made) {
    List<Fact> all = new ArrayList<>();
    for (Fact fact : made) {
      boolean ground = fact.name().equals("area") || fact.name().equals("shape");
      if (ground) {
        all.add(lawn(mention).map(fact::of).orElse(fact));
      } else if (fact.isOfLabel()) {
        all.add(label(mention.from()).map(fact::of).orElse(fact));
      } else {
        all.add(fact);
      }
    }
    return all;
  }

  /** "3k front 5k back": where the first ground has its name after it, so has each. */
  private Optional<String> lawn(Mention ground) {
    Optional<String> after = owners.lawnAfter(ground.to());
    if (first) {
      first = false;
      namedAfter = after.isPresent() && owners.lawn(ground.from()).isEmpty();
    }
    return namedAfter ? after : owners.lawn(ground.from());
  }

  /** The label named last before this place, else the one named right after. */
  private Optional<String> label(int place) {
    String before = null;
    for (Owners.Nickname nickname : owners.labels()) {
      if (nickname.from() < place) {
        before = nickname.name();
      } else if (before == null) {
        return Optional.of(nickname.name());
      }
    }
    return Optional.ofNullable(before);
  }

  List<String> labels() {
    return owners.labels().stream().map(Owners.Nickname::name).distinct().toList();
  }
}
