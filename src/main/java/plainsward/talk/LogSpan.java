package plainsward.talk;

import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Facts;
import plainsward.reading.Token;

/**
 * The days that a question about the log is about.
 *
 * @param from the first day
 * @param end the day after the last
 * @param words as in "in May 2026", or empty for all days
 */
record LogSpan(LocalDate from, LocalDate end, String words) {
  private static final LocalDate FIRST = LocalDate.of(1900, 1, 1);
  private static final LocalDate LAST = LocalDate.of(3000, 1, 1);
  private static final Set<String> BEFORE_MONTH =
      Set.of("in", "during", "of", "last", "this", "for");

  /** The span that a turn names, all days where it names none. */
  static LogSpan of(Facts turn, LocalDate today) {
    Optional<LocalDate> day = turn.all().stream().flatMap(f -> f.date().stream()).findFirst();
    return week(turn, today)
        .or(() -> month(turn, today))
        .or(() -> year(turn, today))
        .or(() -> day.map(d -> new LogSpan(d, d.plusDays(1), "on " + d)))
        .orElseGet(() -> new LogSpan(FIRST, LAST, ""));
  }

  /** A week goes from Monday to Sunday. */
  private static Optional<LogSpan> week(Facts turn, LocalDate today) {
    List<Token> tokens = turn.tokens();
    for (int i = 1; i < tokens.size(); i++) {
      boolean last = tokens.get(i - 1).is("last");
      if (tokens.get(i).is("week") && (last || tokens.get(i - 1).is("this"))) {
        LocalDate monday = today.minusDays(today.getDayOfWeek().getValue() - 1L);
        LocalDate from = last ? monday.minusWeeks(1) : monday;
        return Optional.of(
            new LogSpan(from, from.plusWeeks(1), (last ? "last" : "this") + " week"));
      }
    }
    return Optional.empty();
  }

  private static Optional<LogSpan> month(Facts turn, LocalDate today) {
    List<Token> tokens = turn.tokens();
    for (int i = 1; i < tokens.size(); i++) {
      boolean last = tokens.get(i - 1).is("last");
      if (tokens.get(i).is("month") && (last || tokens.get(i - 1).is("this"))) {
        return Optional.of(of(YearMonth.from(today).minusMonths(last ? 1 : 0)));
      }
      Optional<Month> named = named(tokens.get(i).norm());
      if (named.isPresent() && BEFORE_MONTH.contains(tokens.get(i - 1).norm())) {
        return Optional.of(of(YearMonth.of(year(tokens, i + 1, named.get(), today), named.get())));
      }
    }
    return Optional.empty();
  }

  private static LogSpan of(YearMonth month) {
    String name = month.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    return new LogSpan(
        month.atDay(1), month.plusMonths(1).atDay(1), "in " + name + " " + month.getYear());
  }

  private static Optional<Month> named(String word) {
    for (Month month : Month.values()) {
      String name = month.getDisplayName(TextStyle.FULL, Locale.ENGLISH).toLowerCase(Locale.ROOT);
      if (word.length() >= 3 && name.startsWith(word)) {
        return Optional.of(month);
      }
    }
    return Optional.empty();
  }

  /** The year that is said after a month, else that of the last such month. */
  private static int year(List<Token> tokens, int at, Month month, LocalDate today) {
    if (at < tokens.size() && tokens.get(at).norm().matches("(19|20)\\d\\d")) {
      return Integer.parseInt(tokens.get(at).norm());
    }
    return month.getValue() > today.getMonthValue() ? today.getYear() - 1 : today.getYear();
  }

  private static Optional<LogSpan> year(Facts turn, LocalDate today) {
    List<Token> tokens = turn.tokens();
    for (int i = 1; i < tokens.size(); i++) {
      boolean last = tokens.get(i - 1).is("last");
      if ((tokens.get(i).is("year") || tokens.get(i).is("season"))
          && (last || tokens.get(i - 1).is("this"))) {
        return Optional.of(ofYear(today.getYear() - (last ? 1 : 0)));
      }
      boolean said = tokens.get(i).norm().matches("(19|20)\\d\\d");
      if (said && BEFORE_MONTH.contains(tokens.get(i - 1).norm())) {
        return Optional.of(ofYear(Integer.parseInt(tokens.get(i).norm())));
      }
    }
    return Optional.empty();
  }

  private static LogSpan ofYear(int year) {
    return new LogSpan(LocalDate.of(year, 1, 1), LocalDate.of(year + 1, 1, 1), "in " + year);
  }
}
