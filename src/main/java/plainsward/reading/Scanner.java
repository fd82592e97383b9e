package plainsward.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import plainsward.units.UnitSystem;

/**
 * Walks through the tokens once and lists what stands there, left to right without overlap. The
 * order of the readers is the order of trust: what can only be one thing is tried first.
 */
final class Scanner {
  private static final int MOST_KEPT = 20_000;

  /** More than anybody tells in one turn; what comes then is asked about and not read. */
  private static final int MOST_MENTIONS = 1_000;

  /** Of words that were met, whether they may begin anything; people use the same ones. */
  private static final Map<String, Boolean> BEGIN = new ConcurrentHashMap<>();

  private final List<Token> tokens;
  private final UnitReader units;
  private final NumeralReader numerals;
  private final MeasuredReader measured;
  private final RateReader rates;
  private final ShapeReader shapes;
  private final DateReader dates;
  private final OddsReader odds;

  Scanner(List<Token> tokens, UnitSystem system, LocalDate today) {
    this.tokens = tokens;
    this.units = new UnitReader(tokens, system);
    this.numerals = new NumeralReader(tokens);
    this.measured = new MeasuredReader(tokens, numerals, units);
    this.rates = new RateReader(tokens, numerals, measured, system);
    this.shapes = new ShapeReader(tokens, numerals, measured, system);
    this.dates = new DateReader(tokens, today);
    this.odds = new OddsReader(tokens, numerals, units);
  }

  /** What stands in the text. */
  List<Mention> mentions() {
    List<Mention> found = new ArrayList<>();
    int i = 0;
    while (i < tokens.size()) {
      Optional<Mention> here = at(i);
      if (found.size() == MOST_MENTIONS) {
        found.add(new Mention.Unread(i, i + 1));
        return found;
      }
      if (here.isPresent() && here.get().to() > i) {
        found.add(here.get());
        i = here.get().to();
      } else {
        i++;
      }
    }
    return found;
  }

  private Optional<Mention> at(int i) {
    Optional<Measured> below = measured.below(i);
    if (below.isPresent()) {
      return below.map(Mention.Amount::new);
    }
    if (!mayBegin(tokens.get(i))) {
      return Optional.empty();
    }
    return dates
        .at(i)
        .map(m -> (Mention) m)
        .or(() -> odds.at(i))
        .or(() -> shapes.at(i).map(m -> (Mention) m))
        .or(() -> rates.at(i).map(m -> (Mention) m))
        .or(() -> measured.at(i).map(Mention.Amount::new))
        .or(() -> bare(i))
        .or(() -> numerals.lostTo(i).map(to -> new Mention.Unread(i, to)));
  }

  /** Most words begin nothing; this keeps long chatter cheap. */
  private boolean mayBegin(Token token) {
    return token.isWord()
        ? mayBegin(token.norm())
        : token.isNumber() || token.is("$") || token.said().charAt(0) > 126;
  }

  private boolean mayBegin(String word) {
    Boolean known = BEGIN.get(word);
    if (known == null) {
      known =
          NumeralReader.mayBegin(word)
              || units.mayBegin(word)
              || DateReader.mayBegin(word)
              || OddsReader.mayBegin(word);
      if (BEGIN.size() < MOST_KEPT) {
        BEGIN.put(word, known);
      }
    }
    return known;
  }

  private Optional<Mention> bare(int i) {
    return numerals
        .at(i)
        .filter(n -> tokens.get(i).isNumber() || isAnswer(n) || isSpelled(n))
        .map(Mention.Bare::new);
  }

  /** A number word in a short turn may answer a question; "one" seldom counts anything. */
  private boolean isAnswer(Numeral n) {
    boolean one = tokens.get(n.from()).is("one") && tokens.size() > 2;
    return !n.part() && tokens.size() < 8 && !one;
  }

  /** A number of several words ("seventy two hundred") is meant as one even in long text. */
  private static boolean isSpelled(Numeral n) {
    return n.to() - n.from() > 1 && !n.part();
  }
}
