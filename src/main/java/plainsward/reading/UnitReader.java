package plainsward.reading;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.trade.MeasureWord;
import plainsward.trade.MeasureWords;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;

/**
 * Finds unit words, longest spelling first, and refuses the letters that only sometimes are one.
 */
final class UnitReader extends TokenWalk {
  private static final Set<String> OTHER =
      Set.of(
          "mile", "miles", "inch", "inches", "cm", "km", "in", "rods", "yds", "yd", "yard",
          "yards");
  private static final int YEAR = 4;
  private static final Set<String> DECADES =
      Set.of("the", "early", "late", "mid", "low", "high", "upper", "lower");
  private static final Set<String> INTO = Set.of("in", "into", "to");
  private static final Set<String> NO_LAST = Set.of("a", "s", "'", "\"", "#", "square", "squares");
  private static final Set<String> PERCENT = Set.of("percent", "percentage", "%", "pct");
  private static final Set<String> ASKING = Set.of("what", "which", "as", "in", "a", "whats");
  private static final Set<String> ABOVE_SLASH = Set.of("l", "g", "pt");

  /** Words that are units only right after a number. */
  private static final Set<String> ONLY_AFTER_NUMBER =
      Set.of(
          "m", "c", "f", "g", "l", "s", "h", "a", "'", "\"", "#", "%", "bar", "bars", "yard",
          "yards", "foot", "feet", "second", "seconds", "sec", "secs", "min", "mins", "minute",
          "minutes", "hour", "hours", "hr", "hrs", "degree", "degrees", "deg", "°", "mil", "cup",
          "cups", "pound", "pounds", "ac", "pt", "mile", "miles", "inch", "inches", "metre",
          "metres", "meter", "meters", "ha", "gl", "acr", "lt", "ins", "ft", "square", "squares");

  /** What may follow "in" for it to be inches and not the little word. */
  private static final Set<String> AFTER_INCHES =
      Set.of(
          "x",
          "by",
          "tall",
          "high",
          "deep",
          "wide",
          "long",
          "thick",
          "apart",
          "spacing",
          "spacings",
          "centers",
          "centres",
          "center",
          "band",
          "swath",
          "tips",
          "nozzle",
          "nozzles",
          "rain",
          "of",
          ",",
          ".",
          "tip",
          "grass");

  /**
   * A unit found.
   *
   * @param to the token after its last
   * @param word what it is
   */
  record Found(int to, MeasureWord word) {}

  private final MeasureWords words = MeasureWords.shipped();
  private final UnitSystem system;

  UnitReader(List<Token> tokens, UnitSystem system) {
    super(tokens);
    this.system = system;
  }

  /** Whether a unit may begin with this word, whatever follows. */
  boolean mayBegin(String word) {
    return words.longest(word) > 0;
  }

  /** The unit whose spelling begins at this token. */
  Optional<Found> at(int i, boolean afterNumber) {
    if (i >= tokens.size()) {
      return Optional.empty();
    }
    if (afterNumber && isDecade(i)) {
      return Optional.empty();
    }
    if ((afterNumber || isBelow(i)) && tokens.get(i).said().equals("A")) {
      return words.find("acre").map(w -> new Found(i + 1, w));
    }
    if (afterNumber && tokens.get(i).is("in") && isInches(i)) {
      return words.find("inch").map(w -> new Found(i + 1, w));
    }
    return longest(i, afterNumber);
  }

  Unit unit(MeasureWord word) {
    return word.in(system);
  }

  /** "back in the 80s", "a 1960s house": no seconds. */
  private boolean isDecade(int i) {
    boolean tens = is(i, "s") && isTight(i) && word(i - 1).endsWith("0");
    return tens && (word(i - 1).length() == YEAR || DECADES.contains(word(i - 2)));
  }

  /** Right after "/" or "per" a unit's letter is one. */
  private boolean isBelow(int i) {
    boolean per = i > 0 && (tokens.get(i - 1).is("/") || tokens.get(i - 1).is("per"));
    return per
        && !tokens.get(i).is("m")
        && (!tokens.get(i).is("a") || tokens.get(i).said().equals("A"));
  }

  /** "square" before another measure ("square miles") is no measure of its own. */
  private boolean isOtherMeasure(int i) {
    return i < tokens.size() && OTHER.contains(tokens.get(i).norm());
  }

  /** "L/ha" names a unit without a number. */
  private boolean isAboveSlash(int i) {
    return i + 1 < tokens.size()
        && tokens.get(i + 1).is("/")
        && ABOVE_SLASH.contains(tokens.get(i).norm());
  }

  /** "what percent is that" asks for the unit without a number. */
  private boolean isAskedPercent(int i) {
    return i > 0
        && PERCENT.contains(tokens.get(i).norm())
        && ASKING.contains(tokens.get(i - 1).norm());
  }

  /** "80 psi in bar?": at the end of a question a unit is what is wanted. */
  private boolean isAskedLast(int i) {
    boolean last = i + 1 == tokens.size() || tokens.get(i + 1).is("?");
    return last
        && i > 1
        && INTO.contains(tokens.get(i - 1).norm())
        && !NO_LAST.contains(tokens.get(i).norm());
  }

  private boolean isInches(int i) {
    if (i + 1 >= tokens.size()) {
      return i >= 2;
    }
    return AFTER_INCHES.contains(tokens.get(i + 1).norm());
  }

  /** Whether the 2 before it is no square: "12 ft 2 in", "1 oz /M 2 gallon tank". */
  private boolean isCounted(int i) {
    if (i >= tokens.size()) {
      return false;
    }
    String next = tokens.get(i).norm();
    return next.equals("in") || next.equals("-") || words.longest(next) > 0;
  }

  /** Whether a letter is part of a name or a code: "24703L202", "F-Series", "C.P.I", "scp-173m". */
  private boolean isCode(int i) {
    if (!tokens.get(i).isWord()) {
      return false;
    }
    boolean goesOn =
        isTight(i + 1)
            && (tokens.get(i + 1).isNumber() && !tokens.get(i + 1).is("2")
                || (tokens.get(i + 1).is("-") || tokens.get(i + 1).is("."))
                    && isTight(i + 2)
                    && tokens.get(i + 2).kind() != Token.Kind.SIGN);
    int at = i - 1;
    boolean numbered = at > 0 && tokens.get(at).isNumber();
    while (numbered && isTight(at) && isNumberOrDash(at)) {
      at--;
    }
    Token first = tokens.get(Math.max(at, 0));
    boolean named = numbered && at < i - 1 && first.isWord() && first.norm().length() > 1;
    return goesOn || named;
  }

  private boolean isNumberOrDash(int i) {
    return i > 0 && (tokens.get(i).isNumber() || tokens.get(i).is("-"));
  }

  private Optional<Found> longest(int i, boolean afterNumber) {
    StringBuilder joined = new StringBuilder();
    Found best = null;
    int most = words.longest(tokens.get(i).norm());
    for (int k = 0; k < most && i + k < tokens.size(); k++) {
      Token token = tokens.get(i + k);
      joined.append(k == 0 ? "" : " ").append(token.norm());
      Optional<MeasureWord> word = words.find(joined.toString());
      boolean lone =
          k == 0
              && ONLY_AFTER_NUMBER.contains(token.norm())
              && !afterNumber
              && !isBelow(i)
              && !isAboveSlash(i)
              && !isAskedPercent(i)
              && !isAskedLast(i);
      boolean code = k == 0 && token.norm().length() == 1 && isCode(i);
      boolean counted = k > 0 && token.is("2") && token.apart() && isCounted(i + k + 1);
      boolean halfSaid = token.norm().startsWith("square") && k == 0 && isOtherMeasure(i + 1);
      if (word.isPresent() && !lone && !halfSaid && !code && !counted) {
        best = new Found(i + k + 1, word.get());
      }
    }
    return Optional.ofNullable(best);
  }
}
