package plainsward.reading;

import java.util.List;
import java.util.Optional;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;

/** Reads waits: "10 to 14 days", "a week and three days", "two fortnights", "a day and a half". */
final class WaitReader extends TokenWalk {
  private static final Ratio LONGEST = Ratio.of(1000);
  private static final Ratio WEEK = Ratio.of(7);
  private static final Ratio FORTNIGHT = Ratio.of(14);
  private static final Ratio DAY_HOURS = Ratio.of(24);

  /**
   * The word that a wait is counted in.
   *
   * @param span how it is told again
   * @param days how many days it has
   */
  private record Counted(Mention.Span span, Ratio days) {}

  private final NumeralReader numerals;

  WaitReader(List<Token> tokens, NumeralReader numerals) {
    super(tokens);
    this.numerals = numerals;
  }

  /** The wait that begins at this token. */
  Optional<Mention> at(int i) {
    if (word(i).equals("fortnight")) {
      return Optional.of(new Mention.Wait(i, i + 1, 14, Optional.empty(), Mention.Span.DAYS));
    }
    return numerals.at(i).or(() -> couple(i)).flatMap(this::wait);
  }

  /** "a week", "another week", "a couple of weeks". */
  private Optional<Numeral> couple(int i) {
    int k = word(i).equals("a") ? i + 1 : i;
    if (word(k).equals("couple")) {
      return Optional.of(Numeral.of(i, word(k + 1).equals("of") ? k + 2 : k + 1, Ratio.of(2)));
    }
    return word(i).equals("a") || word(i).equals("another")
        ? Optional.of(Numeral.of(i, i + 1, Ratio.ONE))
        : Optional.empty();
  }

  private static Counted counted(String word) {
    return switch (word) {
      case "day", "days", "dys", "d" -> new Counted(Mention.Span.DAYS, Ratio.ONE);
      case "week", "weeks", "wk", "wks" -> new Counted(Mention.Span.WEEKS, WEEK);
      case "fortnight", "fortnights" -> new Counted(Mention.Span.DAYS, FORTNIGHT);
      case "month", "months", "mo", "mos", "mths" -> new Counted(Mention.Span.MONTHS, Ratio.ZERO);
      default -> null;
    };
  }

  private Optional<Mention> wait(Numeral n) {
    int at = unitAt(n);
    Counted unit = counted(word(at));
    if (unit == null || n.low().compareTo(LONGEST) > 0) {
      return Optional.empty();
    }
    Optional<Ratio> part = n.high().isEmpty() ? partAfter(at + 1) : Optional.empty();
    int to = part.isPresent() ? word(at + 2).equals("half") ? at + 3 : at + 4 : at + 1;
    Ratio low = n.low().plus(part.orElse(Ratio.ZERO));
    boolean whole = low.isWhole() && n.high().map(Ratio::isWhole).orElse(true);
    if (unit.span() == Mention.Span.MONTHS && !whole) {
      return Optional.of(new Mention.Unread(n.from(), to));
    }
    if (whole && !unit.days().equals(FORTNIGHT)) {
      return Optional.of(withDays(n, unit, at + 1));
    }
    return Optional.of(inDays(n, low.times(unit.days()), unit, to));
  }

  /** "half a day", "2-day", "a quarter of a day". */
  private int unitAt(Numeral n) {
    int at = n.to();
    if (n.low().isWhole() && !n.part()) {
      return word(at).equals("-") ? at + 1 : at;
    }
    at += word(at).equals("of") || word(at).equals("-") ? 1 : 0;
    return word(at).equals("a") ? at + 1 : at;
  }

  /** "and a half" behind the unit. */
  private Optional<Ratio> partAfter(int i) {
    int k = word(i + 1).equals("a") ? i + 2 : i + 1;
    boolean half = k == i + 1 && word(k).equals("half");
    return word(i).equals("and") && (k == i + 2 || half)
        ? Optional.ofNullable(NumberWords.PARTS.get(word(k)))
        : Optional.empty();
  }

  /** Whole days, weeks or months; "a week and three days" are ten days. */
  private Mention withDays(Numeral n, Counted unit, int to) {
    int low = n.low().numerator().intValue();
    int i = word(to).equals("and") ? to + 1 : to;
    if (unit.span() == Mention.Span.WEEKS && n.high().isEmpty()) {
      Optional<Numeral> more =
          numerals
              .at(i)
              .filter(d -> d.high().isEmpty() && d.low().isWhole() && d.low().compareTo(WEEK) < 0)
              .filter(d -> word(d.to()).equals("days") || word(d.to()).equals("day"));
      if (more.isPresent()) {
        int days = low * 7 + more.get().low().numerator().intValue();
        int end = more.get().to() + 1;
        return new Mention.Wait(n.from(), end, days, Optional.empty(), Mention.Span.DAYS);
      }
    }
    Optional<Integer> high = n.high().map(h -> h.numerator().intValue());
    return new Mention.Wait(n.from(), to, low, high, unit.span());
  }

  /** Weeks and fortnights as days where those are whole, else hours. */
  private static Mention inDays(Numeral n, Ratio low, Counted unit, int to) {
    Optional<Ratio> high = n.high().map(h -> h.times(unit.days()));
    if (low.isWhole() && high.map(Ratio::isWhole).orElse(true)) {
      Optional<Integer> most = high.map(h -> h.numerator().intValue());
      int least = low.numerator().intValue();
      return new Mention.Wait(n.from(), to, least, most, Mention.Span.DAYS);
    }
    Quantity hours = new Quantity(low.times(DAY_HOURS), Unit.of("h"));
    Optional<Quantity> most = high.map(h -> new Quantity(h.times(DAY_HOURS), Unit.of("h")));
    return new Mention.Amount(new Measured(n.from(), to, hours, most, "", Optional.empty(), false));
  }
}
