package plainsward.reading;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Ratio;

/** Reads the rest: N-P-K, mixing ratios, "twice a year", "half a tank", prices and waits. */
final class OddsReader extends TokenWalk {
  private static final Set<String> IS = Set.of("is", "are", "has", "gets", "was");
  private static final Set<String> GRASS = Set.of("lawn", "grass", "turf");
  private static final Set<String> TODAY = Set.of("now", "today", "tonight", "first");
  private static final Set<String> SIDES =
      Set.of(
          "back", "front", "other", "top", "bottom", "far", "sunny", "shady", "one", "upper",
          "lower");
  private static final Set<String> EATS =
      Set.of("eat", "eats", "eating", "take", "takes", "taking", "covers", "cover");
  private static final Set<String> HOUSE =
      Set.of("house", "drive", "driveway", "patio", "beds", "pool", "buildings", "garage", "deck");
  private static final Set<String> ONLY = Set.of("only", "just");
  private static final Set<String> NEEDS = Set.of("needs", "gets", "wants");
  private static final Set<String> CLOCK = Set.of("am", "pm", "oclock");
  private static final Set<String> PER = Set.of("a", "per", "each", "every", "this", "/");
  private static final Set<String> OF_THE = Set.of("a", "the", "of", "my", "-");
  private static final Set<String> OF_WHOLE = Set.of("of", "a", "my", "the");
  private static final Set<String> WHOSE = Set.of("of", "my", "the");
  private static final Set<String> SEASONS = Set.of("year", "season", "yr", "annum", "calendar");
  private static final Set<String> GOES =
      Set.of(
          "application",
          "applications",
          "apps",
          "app",
          "times",
          "time",
          "sprays",
          "spray",
          "treatments",
          "treatment",
          "rounds",
          "sprayings",
          "shots",
          "goes");
  private static final int ANALYSIS = 5;
  private static final Set<String> VERBS =
      Set.of(
          "want", "need", "make", "making", "fill", "do", "doing", "mix", "mixing", "spray",
          "have");
  private static final Set<String> NOW =
      Set.of("now", "today", "tonight", "first", "though", "please", "of", "how", "so", "this");
  private static final Set<String> JOINS = Set.of("to", "in");
  private static final Set<String> FEED =
      Set.of("n", "nitrogen", "fertilizer", "fert", "bag", "bags", "npk", "feed", "lb", "lbs");
  private static final Set<String> TANKS =
      Set.of("tank", "tankful", "can", "full", "sprayer", "way", "knapsack", "backpack", "load");
  private static final Set<String> LAWNS =
      Set.of("lawn", "yard", "that", "it", "area", "grass", "this");
  private final NumeralReader numerals;
  private final UnitReader units;
  private final PriceReader prices;
  private final WaitReader waits;

  OddsReader(List<Token> tokens, NumeralReader numerals, UnitReader units) {
    super(tokens);
    this.numerals = numerals;
    this.units = units;
    this.prices = new PriceReader(tokens, numerals);
    this.waits = new WaitReader(tokens, numerals);
  }

  /** Whether one of these may begin with this word, with which no number begins. */
  static boolean mayBegin(String word) {
    return switch (word) {
      case "twice", "once", "fortnight", "couple", "a", "another" -> true;
      default -> PriceReader.mayBegin(word);
    };
  }

  /** What begins at this token. */
  Optional<Mention> at(int i) {
    return analysis(i)
        .or(() -> prices.at(i).map(p -> (Mention) p))
        .or(() -> mix(i))
        .or(() -> times(i))
        .or(() -> waits.at(i))
        .or(() -> tankPart(i));
  }

  private Optional<Mention> analysis(int i) {
    boolean form =
        isNumber(i)
            && word(i + 1).equals("-")
            && isNumber(i + 2)
            && word(i + 3).equals("-")
            && isNumber(i + 4)
            && (isTight(i + 2) && isTight(i + 4) || isSpacedEvenly(i) && isAboutFeed())
            && word(i).length() <= 4;
    if (!form) {
      return Optional.empty();
    }
    Ratio n = Ratio.of(word(i));
    Ratio p = Ratio.of(word(i + 2));
    Ratio k = Ratio.of(word(i + 4));
    return n.plus(p).plus(k).compareTo(Ratio.of(100)) <= 0
        ? Optional.of(new Mention.Analysis(i, i + 5, n, p, k))
        : Optional.empty();
  }

  /** "24 - 0 - 11": the three numbers with a space on both sides of each hyphen. */
  private boolean isSpacedEvenly(int i) {
    return !isTight(i + 1) && !isTight(i + 2) && !isTight(i + 3) && !isTight(i + 4);
  }

  private boolean isAboutFeed() {
    if (tokens.size() == ANALYSIS) {
      return true;
    }
    for (Token token : tokens) {
      if (FEED.contains(token.norm())) {
        return true;
      }
    }
    return false;
  }

  /** "1:50", "7:1", "10 to 1", "1 in 100", "one part to 20". */
  private Optional<Mention> mix(int i) {
    Optional<Numeral> first =
        isNumber(i)
            ? Optional.of(Numeral.of(i, i + 1, Ratio.of(word(i))))
            : numerals.at(i).filter(n -> !n.part() && n.high().isEmpty());
    if (first.isEmpty()) {
      return mixInWords(i);
    }
    if (!first.get().low().isWhole()) {
      return Optional.empty();
    }
    int sign = first.get().to();
    boolean parts = word(sign).equals("part") || word(sign).equals("parts");
    if (parts) {
      sign = pastStuff(sign + 1);
    }
    String how = word(sign);
    boolean colon = how.equals(":") && isTight(sign) && isTight(sign + 1);
    if (!colon && !how.equals("to") && !how.equals("in")) {
      return Optional.empty();
    }
    int second = sign + 1;
    return numerals
        .at(second)
        .filter(n -> n.low().isWhole() && n.high().isEmpty())
        .flatMap(n -> mix(i, first.get().low(), n, how, colon || parts));
  }

  /** "one part of product to": the stuff named between the parts. */
  private int pastStuff(int i) {
    int at = i;
    while (at < i + 4
        && at < tokens.size()
        && tokens.get(at).isWord()
        && !JOINS.contains(word(at))) {
      at++;
    }
    return JOINS.contains(word(at)) ? at : i;
  }

  /** "one to forty", which the number reader takes for a range. */
  private Optional<Mention> mixInWords(int i) {
    return numerals
        .at(i)
        .filter(n -> n.high().isPresent() && n.low().equals(Ratio.ONE) && word(i + 1).equals("to"))
        .filter(n -> n.high().get().isWhole() && n.high().get().compareTo(Ratio.of(4)) > 0)
        .filter(n -> units.at(n.to(), true).isEmpty())
        .map(n -> new Mention.Mix(i, n.to(), Ratio.ONE, n.high().get(), false));
  }

  private Optional<Mention> mix(int i, Ratio a, Numeral b, String how, boolean sure) {
    Ratio small = a.compareTo(b.low()) <= 0 ? a : b.low();
    Ratio large = small.equals(a) ? b.low() : a;
    boolean hundred = large.equals(Ratio.of(100)) && how.equals("in");
    boolean one = small.equals(Ratio.ONE) || hundred;
    boolean time = CLOCK.contains(word(b.to())) || word(i + 1).equals(":") && b.to() - i > 3;
    boolean unit = units.at(b.to(), true).isPresent();
    if (!one || large.compareTo(Ratio.of(2)) < 0 || time || unit) {
      return Optional.empty();
    }
    int to = word(b.to()).equals("parts") || word(b.to()).equals("part") ? b.to() + 1 : b.to();
    boolean inAll = how.equals("in");
    boolean plausible = sure || large.compareTo(Ratio.of(4)) > 0;
    return plausible ? Optional.of(new Mention.Mix(i, to, small, large, inAll)) : Optional.empty();
  }

  private Optional<Mention> times(int i) {
    int count;
    int at = i + 1;
    if (word(i).equals("twice")) {
      count = 2;
    } else if (word(i).equals("once") && isSeason(i + 1)) {
      count = 1;
    } else {
      Optional<Numeral> n = numerals.at(i).filter(x -> x.low().isWhole() && x.high().isEmpty());
      if (n.isEmpty() || n.get().low().compareTo(Ratio.of(30)) > 0) {
        return Optional.empty();
      }
      count = n.get().low().numerator().intValue();
      at = n.get().to();
      boolean goes = GOES.contains(word(at));
      at = goes ? at + 1 : at;
      if (!goes && !isSeason(at)) {
        return Optional.empty();
      }
    }
    boolean aYear = isSeason(at);
    return Optional.of(new Mention.Times(i, aYear ? at + 2 : at, count, aYear));
  }

  private boolean isSeason(int i) {
    boolean per = PER.contains(word(i));
    return per && SEASONS.contains(word(i + 1));
  }

  /** "house and drive eat up about half": the rest is lawn. */
  private boolean isTakenUp(int i) {
    boolean taken = false;
    for (int k = i - 1; k >= 0 && k >= i - 3; k--) {
      taken |= EATS.contains(word(k));
    }
    boolean house = false;
    for (int k = i - 1; taken && k >= 0 && k >= i - 8; k--) {
      house |= HOUSE.contains(word(k));
    }
    return house;
  }

  /** "but I only want half": of the tank or of the lawn, whichever is spoken of. */
  private boolean isOnlyPart(int i, int end) {
    boolean alone = end >= tokens.size() || !tokens.get(end).isWord() || NOW.contains(word(end));
    int verb = VERBS.contains(word(i - 1)) ? i - 1 : i - 2;
    boolean now = TODAY.contains(word(end));
    return alone
        && VERBS.contains(word(verb))
        && (now || ONLY.contains(word(verb - 1)) || ONLY.contains(word(verb + 1)));
  }

  /** "a third of the 3 gal", "half of 7k"; "the side is a third", of a lawn told elsewhere. */
  private boolean isPartOf(int i, int end, int at) {
    boolean of = OF_WHOLE.contains(word(end)) && numerals.at(at).isPresent();
    boolean alone = end >= tokens.size() || !tokens.get(end).isWord();
    boolean place = SIDES.contains(word(i - 2)) || word(i - 2).equals("side");
    return of || alone && IS.contains(word(i - 1)) && place;
  }

  private Optional<Mention> tankPart(int i) {
    return numerals
        .at(i)
        .filter(n -> n.low().compareTo(Ratio.ONE) < 0 && n.low().signum() > 0)
        .flatMap(
            n -> {
              int at = n.to();
              while (OF_THE.contains(word(at))) {
                at++;
              }
              boolean side =
                  SIDES.contains(word(i - 1))
                      && !isNumber(at)
                      && (ONLY.contains(word(i - 2))
                          || ONLY.contains(word(i - 3))
                          || NEEDS.contains(word(at)));
              if (isOnlyPart(i, n.to())) {
                return Optional.of(new Mention.TankPart(i, n.to(), n.low(), "some_part"));
              }
              if (isTakenUp(i)) {
                Ratio rest = Ratio.ONE.minus(n.low());
                return Optional.of(new Mention.TankPart(i, n.to(), rest, "lawn_part"));
              }
              if (side) {
                return Optional.of(new Mention.TankPart(i, n.to(), n.low(), "lawn_part"));
              }
              if (isPartOf(i, n.to(), at)) {
                return Optional.of(new Mention.TankPart(i, n.to(), n.low(), "part_of"));
              }
              return named(i, n.low(), at);
            });
  }

  /** "half a tank", "two thirds of my lawn": the noun after a part. */
  private Optional<Mention> named(int i, Ratio part, int at) {
    boolean sized = word(at).equals("full") && units.at(at + 1, true).isPresent();
    if (TANKS.contains(word(at)) && !sized) {
      return Optional.of(new Mention.TankPart(i, at + 1, part, "tank_part"));
    }
    boolean told =
        IS.contains(word(at + 1)) && !GRASS.contains(word(at + 2)) && at + 2 < tokens.size();
    return !told && LAWNS.contains(word(at)) && WHOSE.contains(word(at - 1))
        ? Optional.of(new Mention.TankPart(i, at + 1, part, "lawn_part"))
        : Optional.empty();
  }
}
