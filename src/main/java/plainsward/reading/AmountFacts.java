package plainsward.reading;

import java.util.List;
import java.util.Map;
import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;

/** What a measured amount is: a tank, a lawn, a bottle, water caught, wind, heat ... */
final class AmountFacts {
  private static final Set<String> STUFF =
      Set.of("concentrate", "product", "herbicide", "weedkiller", "it");

  /** Words before a measure that is no vessel. */
  private static final Set<String> COUNTING = Set.of("many", "much", "in", "or", "fluid");

  private static final Set<String> VESSELS =
      Set.of("bottle", "bottles", "jug", "jugs", "bag", "bags");
  private static final Set<String> CURRENCY = Set.of("$", "\u00a3", "\u20ac");
  private static final Set<String> COSTS =
      Set.of("is", "s", "costs", "for", "at", "runs", "was", ":", "=");
  private static final Set<String> FOR_EACH = Set.of("per", "/", "a");
  private static final Map<Dimension, String> KINDS =
      Map.of(
          Dimension.VOLUME, "volume",
          Dimension.MASS, "mass",
          Dimension.AREA, "area",
          Dimension.LENGTH, "length",
          Dimension.TIME, "time",
          Dimension.SPEED, "speed",
          Dimension.TEMPERATURE, "temperature",
          Dimension.PRESSURE, "pressure",
          Dimension.FLOW, "flow");
  private static final Set<String> BEFORE_WANTED =
      Set.of(
          "in",
          "what",
          "which",
          "into",
          "to",
          "many",
          "much",
          "as",
          "or",
          "total",
          "total?",
          "whats",
          "need",
          "the",
          "of",
          "is",
          "amount",
          "just",
          "got",
          "mls",
          "and",
          "dose",
          "altogether");

  /** Ground after these is what a rate is per, whose amount could not be read. */
  private static final Set<String> PER = Set.of("per", "/", "each", "every");

  private static final Ratio HALF_LITRE_OR_MORE = Ratio.of(9, 10);

  private final Passage passage;

  AmountFacts(Passage passage) {
    this.passage = passage;
  }

  List<Fact> of(Measured said) {
    String words = passage.said(said.from(), said.to());
    if (said.implied()) {
      return wanted(said, words);
    }
    boolean counted =
        passage.word(said.from() - 1).equals("each") && passage.word(said.from() - 2).endsWith("s");
    if (said.is(Dimension.AREA) && passage.in(said.from() - 1, PER) && !counted) {
      return List.of();
    }
    String role = role(said);
    List<String> doubts = said.doubt().isEmpty() ? List.of() : List.of(said.doubt());
    return List.of(
        Fact.of(role, said.low(), words, said.from())
            .with(said.low(), said.high())
            .doubting(doubts));
  }

  /** "how many ounces", "in ml": the unit that the answer is wanted in. */
  private List<Fact> wanted(Measured said, String words) {
    String before = passage.word(said.from() - 1);
    String after = passage.word(said.to());
    boolean asked =
        BEFORE_WANTED.contains(before) || after.equals("?") || after.isEmpty() && !before.isEmpty();
    if (before.isEmpty() && after.equals("in")) {
      return List.of(Fact.of("wanted", said.low().unit().code(), words, said.from()));
    }
    if (isPriceBefore(said.from())) {
      return List.of(Fact.of("container", said.low(), words, said.from()));
    }
    boolean stuff = after.equals("of") && passage.in(said.to() + 1, STUFF);
    if (stuff && !COUNTING.contains(before)) {
      return List.of(Fact.of("container", said.low(), words, said.from()));
    }
    if (isPriced(said.to())) {
      return List.of(Fact.of("container", said.low(), words, said.from()));
    }
    boolean goesOn = VESSELS.contains(after);
    if (goesOn) {
      return List.of(Fact.of("container", said.low(), words, said.from()));
    }
    return asked
        ? List.of(Fact.of("wanted", said.low().unit().code(), words, said.from()))
        : List.of();
  }

  /** "$42 qt", "$95 per gal". */
  private boolean isPriceBefore(int i) {
    int number = passage.in(i - 1, FOR_EACH) ? i - 2 : i - 1;
    return passage.isNumber(number) && passage.in(number - 1, CURRENCY);
  }

  /** "quart is $42": the size that a price is told for. */
  private boolean isPriced(int i) {
    int price = passage.in(i, COSTS) ? i + 1 : i;
    return passage.in(price, CURRENCY);
  }

  private String role(Measured said) {
    if (said.low().unit().code().equals("%") || said.low().unit().code().equals("[ppm]")) {
      return percentRole(said);
    }
    if (said.is(Dimension.VOLUME_PER_AREA)) {
      return "spray_rate";
    }
    if (said.is(Dimension.MASS) && isNitrogen(said)) {
      return "nitrogen_target";
    }
    String kind = KINDS.getOrDefault(said.dimension(), "other");
    return passage.role(kind, said.from(), said.to(), usual(said, kind));
  }

  private String percentRole(Measured said) {
    if (passage.role("percent", said.from(), said.to(), "").equals("humidity")) {
      return "humidity";
    }
    if (passage.role("percent", said.from(), said.to(), "").equals("analysis")) {
      return "analysis";
    }
    boolean adjuvant = passage.role("strength", said.from(), said.to(), "").equals("adjuvant_rate");
    return adjuvant ? "adjuvant_rate" : "strength";
  }

  private String usual(Measured said, String kind) {
    return switch (kind) {
      case "volume" -> isLarge(said.low()) ? "volume" : "product_amount";
      case "mass" -> "product_amount";
      case "area" -> "area";
      case "length" -> "length";
      case "time" -> "time";
      case "speed" -> "speed";
      case "temperature" -> "temperature";
      case "pressure" -> "pressure";
      case "flow" -> "nozzle_flow";
      default -> "other";
    };
  }

  private boolean isNitrogen(Measured said) {
    Set<String> nitrogen = Set.of("n", "nitrogen");
    return passage.in(said.to(), nitrogen)
        || passage.word(said.to()).equals("of") && passage.in(said.to() + 1, nitrogen);
  }

  private static boolean isLarge(Quantity volume) {
    Unit unit = volume.unit();
    boolean small = unit.factor().compareTo(Ratio.of(1, 10)) < 0;
    return !small && volume.inBase().compareTo(HALF_LITRE_OR_MORE) >= 0;
  }
}
