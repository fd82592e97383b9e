package plainsward.reading;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Ratio;

/** Reads one number in words: "seventy two hundred", "one point two", "three quarters". */
final class NumberPhrase {
  private static final Set<String> ARTICLES = Set.of("a", "an");
  private final List<Token> tokens;
  private final int from;
  private int at;

  NumberPhrase(List<Token> tokens, int from) {
    this.tokens = tokens;
    this.from = from;
    this.at = from;
  }

  Optional<Numeral> read() {
    Optional<Numeral> part = part();
    if (part.isPresent()) {
      return part;
    }
    at = from;
    if (articleBeforeScale()) {
      at++;
      return Optional.of(finish(Ratio.of(scale())));
    }
    Integer first = belowHundred();
    if (first == null) {
      return pointOnly();
    }
    return Optional.of(finish(Ratio.of(first)));
  }

  private String word(int i) {
    return i < tokens.size() ? tokens.get(i).norm() : "";
  }

  private boolean articleBeforeScale() {
    return ARTICLES.contains(word(at))
        && (NumberWords.SCALES.containsKey(word(at + 1)) || word(at + 1).equals("dozen"))
        && !word(at + 1).equals("thousands");
  }

  private int scale() {
    String word = word(at++);
    return word.equals("dozen") ? 12 : NumberWords.SCALES.get(word);
  }

  /** "half", "a third", "three quarters", "two thirds". */
  private Optional<Numeral> part() {
    int i = from;
    Ratio many = Ratio.ONE;
    Integer count = NumberWords.SMALL.get(word(i));
    if (ARTICLES.contains(word(i))) {
      i++;
    } else if (count != null && count > 0 && NumberWords.PARTS.containsKey(word(i + 1))) {
      many = Ratio.of(count);
      i++;
    } else if (count != null
        && count > 0
        && word(i + 1).equals("-")
        && NumberWords.PARTS.containsKey(word(i + 2))) {
      many = Ratio.of(count);
      i += 2;
    }
    Ratio part = NumberWords.PARTS.get(word(i));
    if (part == null) {
      return Optional.empty();
    }
    boolean bare = many.equals(Ratio.ONE);
    return Optional.of(new Numeral(from, i + 1, part.times(many), Optional.empty(), false, bare));
  }

  private Integer belowHundred() {
    Integer tens = NumberWords.TENS.get(word(at));
    if (tens != null) {
      at++;
      int i = word(at).equals("-") ? at + 1 : at;
      Integer ones = NumberWords.SMALL.get(word(i));
      if (ones != null && ones > 0 && ones < 10) {
        at = i + 1;
        return tens + ones;
      }
      return tens;
    }
    Integer small = NumberWords.SMALL.get(word(at));
    if (small != null) {
      at++;
    }
    return small;
  }

  private Numeral finish(Ratio first) {
    Ratio value = first;
    if (word(at).equals("point")) {
      value = value.plus(decimals());
    }
    boolean thousands = false;
    while (NumberWords.SCALES.containsKey(word(at))) {
      int scale = NumberWords.SCALES.get(word(at));
      thousands |= scale == 1000;
      at++;
      value = value.times(Ratio.of(scale)).plus(rest(scale));
    }
    Optional<Ratio> half = andPart();
    return new Numeral(
        from, at, value.plus(half.orElse(Ratio.ZERO)), Optional.empty(), thousands, false);
  }

  /** What follows a scale: "two hundred and fifty", "one thousand two hundred". */
  private Ratio rest(int scale) {
    int mark = at;
    if (word(at).equals("and")) {
      at++;
    }
    Integer more = belowHundred();
    if (more == null || NumberWords.PARTS.containsKey(word(at))) {
      at = mark;
      return Ratio.ZERO;
    }
    Ratio value = Ratio.of(more);
    if (scale >= 1000 && word(at).equals("hundred")) {
      at++;
      value = value.times(Ratio.of(100)).plus(rest(100));
    }
    return value;
  }

  private Optional<Ratio> andPart() {
    boolean slip = word(at).equals("an") && word(at + 1).equals("a");
    if (!word(at).equals("and") && !word(at).equals("n") && !slip) {
      return Optional.empty();
    }
    int i = at + 1;
    Ratio many = Ratio.ONE;
    Integer count = NumberWords.SMALL.get(word(i));
    if (count != null && count > 0) {
      many = Ratio.of(count);
      i++;
    } else if (ARTICLES.contains(word(i))) {
      i++;
    } else {
      return Optional.empty();
    }
    Ratio part = NumberWords.PARTS.get(word(i));
    if (part == null) {
      return Optional.empty();
    }
    at = i + 1;
    return Optional.of(part.times(many));
  }

  private Ratio decimals() {
    at++;
    Ratio value = Ratio.ZERO;
    Ratio place = Ratio.of(1, 10);
    while (true) {
      Integer digit = NumberWords.SMALL.get(word(at));
      Integer tens = NumberWords.TENS.get(word(at));
      if (tens != null) {
        return value.plus(Ratio.of(belowHundred()).times(place).dividedBy(Ratio.of(10)));
      }
      if (digit == null || digit > 9) {
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
