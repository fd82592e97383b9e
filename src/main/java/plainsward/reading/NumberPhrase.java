package plainsward.reading;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.trade.MeasureWords;
import plainsward.units.Ratio;

/** Reads one number in words: "seventy two hundred", "one point two", "three quarters". */
final class NumberPhrase extends TokenWalk {
  private static final Set<String> ARTICLES = Set.of("a", "an");
  private static final Ratio DOZEN = Ratio.of(12);
  private static final Ratio TEN = Ratio.of(10);
  private static final Ratio HUNDRED = Ratio.of(100);
  private static final int THOUSAND = 1000;
  private static final Set<String> COUNTED_PARTS =
      Set.of(
          "thirds",
          "quarters",
          "fourths",
          "fifths",
          "sixths",
          "sevenths",
          "eighths",
          "ninths",
          "tenths",
          "twelfths",
          "sixteenths",
          "hundredths");
  private final int from;
  private int at;

  NumberPhrase(List<Token> tokens, int from) {
    super(tokens);
    this.from = from;
    this.at = from;
  }

  /** The number that begins at the first token. */
  Optional<Numeral> read() {
    Optional<Numeral> part = part();
    if (part.isPresent()) {
      return part;
    }
    Optional<Numeral> couple = couple();
    if (couple.isPresent()) {
      return couple;
    }
    at = from;
    if (ARTICLES.contains(word(at)) && NumberWords.DOZENS.contains(word(at + 1))) {
      at += 2;
      Ratio dozens = Ratio.ONE.plus(dozenPart());
      return Optional.of(Numeral.of(from, at, DOZEN.times(dozens)));
    }
    boolean article = ARTICLES.contains(word(at)) && isScale(at + 1);
    if (article || isScale(at) && isScale(at + 1)) {
      at += article ? 1 : 0;
      return Optional.of(finish(Ratio.ONE));
    }
    Ratio first = belowHundred();
    return first == null ? pointOnly() : Optional.of(finish(first));
  }

  /** "a couple of gallons", "a pair of quarts", "a couple hundred feet": two of a measure. */
  private Optional<Numeral> couple() {
    int i = ARTICLES.contains(word(from)) ? from + 1 : from;
    if (!NumberWords.COUPLES.contains(word(i))) {
      return Optional.empty();
    }
    at = word(i + 1).equals("of") ? i + 2 : i + 1;
    if (isScale(at)) {
      return Optional.of(finish(Ratio.of(2)));
    }
    MeasureWords words = MeasureWords.shipped();
    boolean unit =
        words.find(word(at)).isPresent() || words.find(word(at) + " " + word(at + 1)).isPresent();
    return unit ? Optional.of(Numeral.of(from, at, Ratio.of(2))) : Optional.empty();
  }

  /**
   * What goes on after a scale in digits: the 21 of "3 hundred and 21 " in words, or nothing.
   *
   * @param tokens the text
   * @param from the place after the scale
   */
  static Optional<Numeral> belowHundredAt(List<Token> tokens, int from) {
    NumberPhrase phrase = new NumberPhrase(tokens, from);
    Ratio value = phrase.belowHundred();
    boolean goesOn = value == null || phrase.isScale(phrase.at) || phrase.isPart(phrase.at);
    return goesOn ? Optional.empty() : Optional.of(Numeral.of(from, phrase.at, value));
  }

  private boolean isScale(int i) {
    String word = word(i);
    return NumberWords.SCALES.containsKey(word) && !word.equals("thousands");
  }

  private boolean isPart(int i) {
    return NumberWords.PARTS.containsKey(word(i));
  }

  /** "half", "a third", "three quarters", "two thirds", "half a dozen". */
  private Optional<Numeral> part() {
    if (COUNTED_PARTS.contains(word(from))) {
      return Optional.empty();
    }
    int i = from;
    Ratio many = Ratio.ONE;
    Integer count = NumberWords.SMALL.get(word(i));
    if (ARTICLES.contains(word(i))) {
      i++;
    } else if (count != null && count > 0) {
      int next = word(i + 1).equals("-") ? i + 2 : i + 1;
      if (isPart(next)) {
        many = Ratio.of(count);
        i = next;
      }
    }
    Ratio part = NumberWords.PARTS.get(word(i));
    if (part == null) {
      return Optional.empty();
    }
    Optional<Numeral> large = partOfMany(i + 1, part.times(many));
    boolean bare = many.equals(Ratio.ONE);
    return large.isPresent()
        ? large
        : Optional.of(new Numeral(from, i + 1, part.times(many), Optional.empty(), false, bare));
  }

  /** "half a dozen", "two thirds of a million"; a thousand may be what a rate is per. */
  private Optional<Numeral> partOfMany(int after, Ratio part) {
    int i = word(after).equals("of") ? after + 1 : after;
    i = ARTICLES.contains(word(i)) ? i + 1 : i;
    Ratio many =
        NumberWords.DOZENS.contains(word(i))
            ? DOZEN
            : word(i).equals("million") ? Ratio.of(1_000_000) : null;
    return many == null ? Optional.empty() : Optional.of(Numeral.of(from, i + 1, part.times(many)));
  }

  private Ratio belowHundred() {
    Integer small = NumberWords.SMALL.get(word(at));
    Integer tens = NumberWords.TENS.get(word(at));
    if (small == null && tens == null) {
      return null;
    }
    at++;
    if (tens != null) {
      int i = word(at).equals("-") ? at + 1 : at;
      Integer ones = NumberWords.SMALL.get(word(i));
      boolean both = ones != null && ones > 0 && ones < 10;
      at = both ? i + 1 : at;
      small = both ? tens + ones : tens;
    }
    if (NumberWords.DOZENS.contains(word(at))) {
      at++;
      return Ratio.of(small).plus(dozenPart()).times(DOZEN);
    }
    return Ratio.of(small);
  }

  /** The half of "a dozen and a half". */
  private Ratio dozenPart() {
    return andPart().orElse(Ratio.ZERO);
  }

  private Numeral finish(Ratio first) {
    if (COUNTED_PARTS.contains(word(at))) {
      return Numeral.of(from, at + 1, first.times(NumberWords.PARTS.get(word(at))));
    }
    at += is(at, "-") && isScale(at + 1) ? 1 : 0;
    Optional<Numeral> pairs = pairs(first);
    if (pairs.isPresent()) {
      return pairs.get();
    }
    Ratio value = word(at).equals("point") ? first.plus(decimals()) : first;
    Ratio total = Ratio.ZERO;
    int last = Integer.MAX_VALUE;
    value = hundreds(value);
    while (scale(at) >= THOUSAND && scale(at) < last) {
      last = scale(at);
      at++;
      total = total.plus(value.times(Ratio.of(last)));
      value = group();
    }
    total = total.plus(value);
    if (word(at).equals("point") && NumberWords.isNumberWord(word(at + 1))) {
      total = total.plus(decimals());
    }
    return withPart(total, last == THOUSAND);
  }

  /** "forty two fifty square feet": hundreds and the rest as two numbers of two figures. */
  private Optional<Numeral> pairs(Ratio first) {
    boolean hundreds =
        first.compareTo(TEN) > 0 && !first.dividedBy(TEN).isWhole() && first.isWhole();
    if (!hundreds || first.compareTo(HUNDRED) > 0) {
      return Optional.empty();
    }
    int mark = at;
    Ratio rest = belowHundred();
    if (rest != null && rest.compareTo(TEN) >= 0 && isSquare(at)) {
      return Optional.of(Numeral.of(from, at, first.times(HUNDRED).plus(rest)));
    }
    at = mark;
    return Optional.empty();
  }

  /** "... and a half"; of a thousand, where the thousand stands right before it or right after. */
  private Numeral withPart(Ratio total, boolean thousands) {
    int before = at > from ? scale(at - 1) : 0;
    Ratio part = andPart().orElse(Ratio.ZERO);
    int after = part.signum() > 0 ? scale(at) : 0;
    if (after >= THOUSAND) {
      at++;
      Ratio grown = total.plus(part).times(Ratio.of(after));
      return new Numeral(from, at, grown, Optional.empty(), after == THOUSAND, false);
    }
    Ratio whole = total.plus(before >= THOUSAND ? part.times(Ratio.of(before)) : part);
    return new Numeral(from, at, whole, Optional.empty(), thousands, false);
  }

  private int scale(int i) {
    return NumberWords.SCALES.getOrDefault(word(i), 0);
  }

  /** "two hundred and fifty" once its "two" is read. */
  private Ratio hundreds(Ratio count) {
    if (scale(at) != 100) {
      return count;
    }
    at++;
    return count.times(Ratio.of(100)).plus(rest());
  }

  /** What follows a hundred: "and fifty", "fifty two"; nothing where that is a part or counted. */
  private Ratio rest() {
    int mark = at;
    at += word(at).equals("and") ? 1 : 0;
    Ratio more = belowHundred();
    if (more == null || isPart(at) || scale(at) == 100) {
      at = mark;
      return Ratio.ZERO;
    }
    return more;
  }

  /** What follows a thousand: "two hundred", "and six"; nothing where that is a part. */
  private Ratio group() {
    int mark = at;
    at += word(at).equals("and") ? 1 : 0;
    Ratio more = belowHundred();
    more = more == null ? null : hundreds(more);
    if (more == null || isPart(at)) {
      at = mark;
      return Ratio.ZERO;
    }
    return more;
  }

  private Optional<Ratio> andPart() {
    boolean slip = word(at).equals("an") && word(at + 1).equals("a");
    if (!word(at).equals("and") && !word(at).equals("n") && !slip) {
      return Optional.empty();
    }
    int mark = at;
    at++;
    Ratio many = Ratio.ONE;
    if (ARTICLES.contains(word(at))) {
      at++;
    } else {
      many = belowHundred();
    }
    at += is(at, "-") ? 1 : 0;
    Ratio part = NumberWords.PARTS.get(word(at));
    if (part == null || many == null || many.signum() == 0) {
      at = mark;
      return Optional.empty();
    }
    boolean ofThousand = scale(mark - 1) >= THOUSAND;
    if (ofThousand && MeasureWords.shipped().longest(word(at + 1)) > 0) {
      at = mark;
      return Optional.empty();
    }
    at++;
    return Optional.of(part.times(many));
  }

  private Ratio decimals() {
    at++;
    Ratio value = Ratio.ZERO;
    Ratio place = Ratio.of(1, 10);
    while (true) {
      Integer digit = NumberWords.SMALL.get(word(at));
      if (NumberWords.TENS.containsKey(word(at)) || digit != null && digit > 9) {
        return value.plus(belowHundred().times(place).dividedBy(Ratio.of(10)));
      }
      if (digit == null) {
        return value;
      }
      value = value.plus(Ratio.of(digit).times(place));
      place = place.dividedBy(Ratio.of(10));
      at++;
    }
  }

  private Optional<Numeral> pointOnly() {
    if (!word(at).equals("point") || !NumberWords.isNumberWord(word(at + 1))) {
      return Optional.empty();
    }
    Ratio value = decimals();
    return Optional.of(Numeral.of(from, at, value));
  }
}
