package plainsward.reading;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Quantity;
import plainsward.units.Ratio;

/** Reads prices: "$40", "40 dollars", "USD 40", "12 cents", "3 dollars 50 cents", "$1.2M". */
final class PriceReader extends TokenWalk {
  private static final Map<String, String> SIGNS =
      Map.of("$", "USD", "\u00a3", "GBP", "\u20ac", "EUR");
  private static final Map<String, String> WORDS =
      Map.of(
          "dollars", "USD", "dollar", "USD", "bucks", "USD", "buck", "USD", "quid", "GBP", "usd",
          "USD", "euros", "EUR", "euro", "EUR");
  private static final Set<String> BEFORE = Set.of("usd");
  private static final Set<String> PER = Set.of("a", "an", "per", "each", "for");
  private static final Set<String> CENTS = Set.of("cents", "cent");
  private static final Ratio HUNDRED = Ratio.of(100);
  private static final Ratio TEN = Ratio.of(10);
  private static final Ratio THOUSAND = Ratio.of(1000);

  private final NumeralReader numerals;

  PriceReader(List<Token> tokens, NumeralReader numerals) {
    super(tokens);
    this.numerals = numerals;
  }

  /** Whether a price may begin with this word, with which no number begins. */
  static boolean mayBegin(String word) {
    return BEFORE.contains(word) || SIGNS.containsKey(word);
  }

  /** The price that begins at this token. */
  Optional<Mention.Price> at(int i) {
    String sign = SIGNS.get(word(i));
    if (sign != null) {
      return numerals.at(i + 1).map(n -> signed(i, n, sign));
    }
    if (BEFORE.contains(word(i))) {
      return numerals.at(i + 1).map(n -> price(i, n.to(), n, WORDS.get(word(i))));
    }
    boolean one =
        word(i).equals("a") && (word(i + 1).equals("dollar") || word(i + 1).equals("buck"));
    return one
        ? named(i, Numeral.of(i, i + 1, Ratio.ONE))
        : numerals.at(i).flatMap(n -> named(i, n));
  }

  private static Mention.Price price(int from, int to, Ratio amount, String currency) {
    return new Mention.Price(from, to, Quantity.of(amount, currency), Optional.empty());
  }

  private Mention.Price price(int from, int to, Numeral n, String currency) {
    Optional<Quantity> high = n.high().map(h -> Quantity.of(h, currency));
    return new Mention.Price(from, to, Quantity.of(amount(n), currency), high);
  }

  /** "$12", "$10 to $20", "between $10 and $20". */
  private Mention.Price signed(int from, Numeral low, String sign) {
    int i = low.to();
    boolean joined =
        word(i).equals("to")
            || word(i).equals("-")
            || word(i).equals("and") && word(from - 1).equals("between");
    boolean again = joined && low.high().isEmpty() && sign.equals(SIGNS.get(word(i + 1)));
    return numerals
        .at(again ? i + 2 : tokens.size())
        .map(high -> price(from, high.to(), low.upTo(high), sign))
        .orElseGet(() -> price(from, i, low, sign));
  }

  /** A capital M counts thousands of ground, but millions of money. */
  private Ratio amount(Numeral n) {
    boolean million = tokens.get(n.to() - 1).said().equals("M");
    return million ? n.low().times(THOUSAND) : n.low();
  }

  private Optional<Mention.Price> named(int from, Numeral n) {
    int at = n.to();
    if (word(at).equals("-") || word(at).equals("us") && WORDS.containsKey(word(at + 1))) {
      at++;
    }
    if (CENTS.contains(word(at))) {
      Optional<Quantity> most = n.high().map(h -> Quantity.of(h.dividedBy(HUNDRED), "USD"));
      Quantity least = Quantity.of(n.low().dividedBy(HUNDRED), "USD");
      return Optional.of(new Mention.Price(from, at + 1, least, most));
    }
    boolean signed = SIGNS.containsKey(word(at)) && (!isNumber(at + 1) || isMoney(at + 1));
    boolean sterling = word(at).startsWith("pound") && word(at + 1).equals("sterling");
    String currency = sterling ? "GBP" : signed ? SIGNS.get(word(at)) : WORDS.get(word(at));
    boolean before = BEFORE.contains(word(at)) && isNumber(at + 1) && !tokens.get(at + 1).apart();
    if (currency == null || before) {
      return Optional.empty();
    }
    if (sterling) {
      at++;
    }
    if (n.high().isPresent()) {
      return Optional.of(price(from, at + 1, n, currency));
    }
    Optional<Numeral> cents = cents(at + 1);
    Ratio rest = cents.map(c -> c.low().dividedBy(HUNDRED)).orElse(Ratio.ZERO);
    int to = cents.map(Numeral::to).orElse(at + 1);
    return Optional.of(price(from, to, amount(n).plus(rest), currency));
  }

  /** Whether the number here has a sign or cents of its own after it. */
  private boolean isMoney(int i) {
    return numerals
        .at(i)
        .filter(n -> SIGNS.containsKey(word(n.to())) || CENTS.contains(word(n.to())))
        .isPresent();
  }

  /** The "50 cents", "and 50 cents" or bare "50" at the end of a sentence, after whole dollars. */
  private Optional<Numeral> cents(int from) {
    int i = word(from).equals("and") ? from + 1 : from;
    Optional<Numeral> few =
        numerals.at(i).filter(n -> n.low().isWhole() && n.low().compareTo(HUNDRED) < 0);
    Optional<Numeral> said =
        few.filter(n -> CENTS.contains(word(n.to())))
            .map(n -> Numeral.of(from, n.to() + 1, n.low()));
    return said.or(
        () -> few.filter(n -> n.low().compareTo(TEN) >= 0 && endsSentence(n.to()) && isTwo(n)));
  }

  private boolean endsSentence(int i) {
    return i >= tokens.size() || tokens.get(i).endsSentence() || PER.contains(word(i));
  }

  private static boolean isTwo(Numeral n) {
    return n.high().isEmpty() && !n.thousands();
  }
}
