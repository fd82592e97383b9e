package plainsward.reading;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.trade.MeasureWords;
import plainsward.units.Dimension;
import plainsward.units.Ratio;

/**
 * Reads numbers: digits, words, fractions, mixed ones ("1 1/2", "two and a half"), thousands ("4k",
 * "seventy two hundred") and ranges ("0.75 to 1.1").
 */
final class NumeralReader extends TokenWalk {
  private static final Ratio THOUSAND = Ratio.of(1000);
  private static final int THOUSAND_WORD = 1000;
  private static final int HUNDRED = 100;
  private static final Ratio HUNDREDS = Ratio.of(HUNDRED);
  private static final Ratio TEN = Ratio.of(10);
  private static final Ratio LARGEST_BELOW = Ratio.of(64);
  private static final Set<String> ARTICLES = Set.of("a", "an");

  private static final Set<String> BEFORE_SCALE =
      Set.of(
          "a", "an", "per", "each", "every", "the", "to", "for", "on", "over", "and", "or", "by",
          "one", "of", "in", "is", "its", "about", "full", "thru", "through");

  private final Once<Numeral> read;

  NumeralReader(List<Token> tokens) {
    super(tokens);
    this.read = new Once<>(tokens.size(), this::found);
  }

  /** Whether a number or range may begin with this word, whatever follows. */
  static boolean mayBegin(String word) {
    return NumberWords.isNumberWord(word)
        || ARTICLES.contains(word)
        || word.equals("between")
        || word.equals("point")
        || NumberWords.COUPLES.contains(word)
        || word.equals(Spelling.UNREAD);
  }

  /** The number or range that begins at this token. */
  Optional<Numeral> at(int i) {
    return read.at(i);
  }

  private Optional<Numeral> found(int i) {
    return any(i).filter(this::isWhole);
  }

  private Optional<Numeral> any(int i) {
    return between(i).or(() -> simple(i).map(this::withRange));
  }

  /** The place after a number that begins here, but of which a part can't be read; else nothing. */
  Optional<Integer> lostTo(int i) {
    return is(i, Spelling.UNREAD)
        ? Optional.of(i + 1)
        : any(i).filter(n -> !isWhole(n)).map(Numeral::to);
  }

  /** Whether no part of it was lost: no word stands beside it that may be a misspelt number. */
  private boolean isWhole(Numeral n) {
    int after = n.to();
    boolean unread = is(n.from() - 1, Spelling.UNREAD) || is(after, Spelling.UNREAD);
    boolean scaled = isScale(after + 1) && isUnknown(after);
    boolean headless = isScale(n.from() - 1) && isUnknown(n.from() - 2);
    boolean spelled = after - n.from() > 1 && NumberWords.isNumberWord(token(after - 1).norm());
    boolean tailless =
        spelled && (isLikeScale(after) || isLikeTens(after)) && isCountedOrUnit(after + 1);
    boolean apart = spelled && isLikeScale(n.from() - 1) && isNumberWord(n.from() - 2);
    return !unread && !scaled && !headless && !tailless && !apart && !isHalfOfPair(n);
  }

  /** "two fifty square feet": may be 250, or two of 50; neither half is read alone. */
  private boolean isHalfOfPair(Numeral n) {
    if (!token(n.from()).isWord() || n.part()) {
      return false;
    }
    int after = n.to();
    boolean tens = NumberWords.TENS.containsKey(word(after));
    boolean first = tens && (isSquare(after + 1) || isSquare(after + 2));
    return first
        || isSquare(after)
            && n.low().compareTo(TEN) >= 0
            && n.low().compareTo(HUNDREDS) < 0
            && NumberWords.isNumberWord(word(n.from() - 1));
  }

  /** Whether a word stands there that may be a badly misspelt hundred or thousand. */
  private boolean isLikeScale(int i) {
    return isUnknown(i)
        && (Slip.areAtMost(3, token(i).norm(), "hundred")
            || Slip.areAtMost(3, token(i).norm(), "thousand"));
  }

  /** Whether a word stands there that may be a badly misspelt ninety, or another of the tens. */
  private boolean isLikeTens(int i) {
    if (!isUnknown(i) || !word(i).endsWith("y")) {
      return false;
    }
    for (String tens : NumberWords.TENS.keySet()) {
      if (tens.charAt(0) == word(i).charAt(0) && Slip.areAtMost(3, word(i), tens)) {
        return true;
      }
    }
    return false;
  }

  private boolean isNumberWord(int i) {
    return i >= 0 && i < tokens.size() && NumberWords.isNumberWord(token(i).norm());
  }

  private boolean isCountedOrUnit(int i) {
    return isNumberWord(i)
        || i < tokens.size() && MeasureWords.shipped().longest(token(i).norm()) > 0;
  }

  private boolean isScale(int i) {
    return i >= 0 && i < tokens.size() && NumberWords.SCALES.containsKey(token(i).norm());
  }

  /** Whether a word stands there that is no unit and no little word. */
  private boolean isUnknown(int i) {
    return i >= 0
        && i < tokens.size()
        && token(i).isWord()
        && !BEFORE_SCALE.contains(token(i).norm())
        && !NumberWords.isNumberWord(token(i).norm())
        && MeasureWords.shipped().longest(token(i).norm()) == 0;
  }

  private Token token(int i) {
    return tokens.get(i);
  }

  private Optional<Numeral> between(int i) {
    if (!is(i, "between")) {
      return Optional.empty();
    }
    return simple(i + 1)
        .filter(low -> is(low.to(), "and"))
        .flatMap(low -> simple(low.to() + 1).map(low::upTo))
        .map(n -> new Numeral(i, n.to(), n.low(), n.high(), n.thousands(), false));
  }

  private Numeral withRange(Numeral low) {
    int i = low.to();
    boolean joined = is(i, "to") || is(i, "or") || is(i, "thru") || is(i, "through");
    if (is(i, "-") && (isNumber(i + 1) || isWordNumber(i + 1))) {
      joined = !(is(i + 2, "-") && isNumber(i + 3));
    }
    if (!joined) {
      return low;
    }
    Optional<Numeral> high = simple(i + 1).filter(h -> !h.part() || low.part());
    return high.isPresent() ? low.upTo(high.get()) : low;
  }

  private boolean isWordNumber(int i) {
    return i < tokens.size() && NumberWords.SMALL.containsKey(token(i).norm());
  }

  private Optional<Numeral> simple(int i) {
    if (i >= tokens.size()) {
      return Optional.empty();
    }
    Optional<Numeral> read =
        isNumber(i) ? Optional.of(digits(i)) : new NumberPhrase(tokens, i).read();
    return read.map(this::scaled);
  }

  private Numeral digits(int i) {
    Ratio value = Ratio.of(token(i).norm());
    Optional<Numeral> fraction = fraction(i);
    if (fraction.isPresent()) {
      return fraction.get();
    }
    Optional<Numeral> parts = parts(i, value);
    if (parts.isPresent()) {
      return parts.get();
    }
    int mixed = is(i + 1, "-") && !token(i + 1).apart() ? i + 2 : i + 1;
    if ((is(mixed, "and") || is(mixed, "&")) && isNumber(mixed + 1)) {
      mixed++;
    }
    Optional<Numeral> more = isNumber(mixed) ? fraction(mixed) : Optional.empty();
    if (more.isPresent() && value.isWhole() && isMixed(i, value, more.get().to())) {
      return Numeral.of(i, more.get().to(), value.plus(more.get().low()));
    }
    return andPart(i, i + 1, value);
  }

  /** "3 quarters of an ounce", "2 thirds of an acre". */
  private Optional<Numeral> parts(int i, Ratio many) {
    Ratio part = NumberWords.PARTS.get(word(i + 1));
    boolean counted = part != null && word(i + 1).endsWith("s") && many.isWhole();
    boolean of = is(i + 2, "of") && (is(i + 3, "a") || is(i + 3, "an") || is(i + 3, "one"));
    Ratio value = counted && of ? part.times(many) : Ratio.ONE;
    return value.compareTo(Ratio.ONE) < 0
        ? Optional.of(Numeral.of(i, i + 2, value))
        : Optional.empty();
  }

  /**
   * Whether a fraction belongs to the whole before it, and is no rate after a side or a large one.
   */
  private boolean isMixed(int i, Ratio whole, int after) {
    boolean side = is(i - 1, "x") || is(i - 1, "by");
    String next = after < tokens.size() ? token(after).norm() : "";
    boolean poured =
        MeasureWords.shipped()
            .find(next)
            .filter(w -> !w.us().dimension().equals(Dimension.LENGTH))
            .isPresent();
    return whole.compareTo(HUNDREDS) < 0 && !(side && poured);
  }

  /** "2 and a half", "one and three quarters". */
  private Numeral andPart(int from, int to, Ratio value) {
    boolean slip = is(to, "an") && is(to + 1, "a");
    if (!is(to, "and") && !is(to, "n") && !is(to, "&") && !slip) {
      return Numeral.of(from, to, value);
    }
    int i = to + 1;
    Ratio many = Ratio.ONE;
    if (i < tokens.size() && ARTICLES.contains(token(i).norm())) {
      i++;
    } else if (isWordNumber(i)) {
      many = Ratio.of(NumberWords.SMALL.get(token(i).norm()));
      i++;
    } else {
      return Numeral.of(from, to, value);
    }
    Ratio part = i < tokens.size() ? NumberWords.PARTS.get(token(i).norm()) : null;
    return part == null
        ? Numeral.of(from, to, value)
        : Numeral.of(from, i + 1, value.plus(part.times(many)));
  }

  /** "3/4" or "1/2": a fraction below one with a denominator that measures have. */
  private Optional<Numeral> fraction(int i) {
    if (!isNumber(i) || !is(i + 1, "/") || !isNumber(i + 2)) {
      return Optional.empty();
    }
    if (is(i + 3, "/") && isNumber(i + 4) || is(i - 1, "/")) {
      return Optional.empty();
    }
    Ratio above = Ratio.of(token(i).norm());
    Ratio below = Ratio.of(token(i + 2).norm());
    boolean proper =
        above.isWhole()
            && below.isWhole()
            && above.compareTo(below) < 0
            && above.signum() > 0
            && below.compareTo(LARGEST_BELOW) <= 0;
    return proper ? Optional.of(Numeral.of(i, i + 3, above.dividedBy(below))) : Optional.empty();
  }

  private Numeral scaled(Numeral read) {
    int i = read.to();
    if (i >= tokens.size() || read.part()) {
      return read;
    }
    Token next = token(i);
    if (isThousandLetter(next, i)) {
      return new Numeral(
          read.from(), i + 1, read.low().times(THOUSAND), Optional.empty(), true, false);
    }
    Integer scale = NumberWords.SCALES.get(next.norm());
    return scale != null && isNumber(read.from()) ? grown(read, i + 1, scale) : read;
  }

  /** "3 hundred and 21", "4 thousand 3 hundred", "3 million and a half". */
  private Numeral grown(Numeral read, int to, int scale) {
    Ratio value = read.low().times(Ratio.of(scale));
    boolean thousand = scale == THOUSAND_WORD;
    Optional<Numeral> more = scale == HUNDRED ? belowHundred(to) : hundreds(to);
    if (more.isPresent()) {
      return new Numeral(
          read.from(),
          more.get().to(),
          value.plus(more.get().low()),
          Optional.empty(),
          thousand,
          false);
    }
    Numeral part = thousand ? Numeral.of(to, to, Ratio.ZERO) : andPart(to, to, Ratio.ZERO);
    Ratio size = scale == HUNDRED ? Ratio.ONE : Ratio.of(scale);
    return new Numeral(
        read.from(),
        part.to(),
        value.plus(part.low().times(size)),
        Optional.empty(),
        thousand,
        false);
  }

  /** The "3 hundred and 21" after "4 thousand". */
  private Optional<Numeral> hundreds(int from) {
    int i = is(from, "and") ? from + 1 : from;
    boolean counted = isNumber(i) && is(i + 1, "hundred");
    Ratio count = counted ? Ratio.of(token(i).norm()) : Ratio.ZERO;
    return counted && count.isWhole() && count.compareTo(Ratio.of(10)) < 0
        ? Optional.of(grown(Numeral.of(i, i + 1, count), i + 2, HUNDRED))
        : Optional.empty();
  }

  /** The "and 21" after "3 hundred", unless it may count something of its own. */
  private Optional<Numeral> belowHundred(int from) {
    int i = is(from, "and") ? from + 1 : from;
    Optional<Numeral> more =
        isNumber(i)
            ? Optional.of(Numeral.of(i, i + 1, Ratio.of(token(i).norm())))
            : NumberPhrase.belowHundredAt(tokens, i);
    return more.filter(n -> n.low().isWhole() && n.low().compareTo(Ratio.of(100)) < 0)
        .filter(n -> n.low().signum() > 0 && (i > from || !isNumber(i)))
        .filter(n -> !isCounted(n));
  }

  /** Whether a unit or another part of a number follows. */
  private boolean isCounted(Numeral n) {
    if (n.to() >= tokens.size()) {
      return false;
    }
    String next = token(n.to()).norm();
    boolean small = n.low().compareTo(Ratio.of(10)) < 0;
    boolean unit = small && MeasureWords.shipped().longest(next) > 0;
    return unit || is(n.to(), "/") || NumberWords.isNumberWord(next) || isNumber(n.to());
  }

  /** The k of "4k", and the capital M of "14M", which counts thousands in the trade. */
  private boolean isThousandLetter(Token next, int i) {
    if (next.is("k")) {
      return !next.apart() || !is(i - 2, "per");
    }
    boolean capital = next.said().equals("M") && !next.apart();
    boolean length = is(i + 1, "x") || is(i + 1, "by") || is(i + 1, "2");
    return capital && !length;
  }
}
