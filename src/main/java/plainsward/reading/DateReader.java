package plainsward.reading;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plainsward.trade.MeasureWords;

/** Reads days: "april 18", "5/1/2026", "20 may", "yesterday", "two weeks ago", "last saturday". */
final class DateReader extends TokenWalk {
  /** Words before a month and a day in digits. */
  private static final Set<String> DATED =
      Set.of(
          "on", "is", "sprayed", "since", "from", "date", "applied", "did", "done", "treated",
          "was", "it");

  private static final Map<String, Integer> MONTHS =
      Map.ofEntries(
          Map.entry("jan", 1),
          Map.entry("january", 1),
          Map.entry("feb", 2),
          Map.entry("february", 2),
          Map.entry("mar", 3),
          Map.entry("march", 3),
          Map.entry("apr", 4),
          Map.entry("april", 4),
          Map.entry("may", 5),
          Map.entry("jun", 6),
          Map.entry("june", 6),
          Map.entry("jul", 7),
          Map.entry("july", 7),
          Map.entry("aug", 8),
          Map.entry("august", 8),
          Map.entry("sep", 9),
          Map.entry("sept", 9),
          Map.entry("september", 9),
          Map.entry("oct", 10),
          Map.entry("october", 10),
          Map.entry("nov", 11),
          Map.entry("november", 11),
          Map.entry("dec", 12),
          Map.entry("december", 12));
  private static final Map<String, DayOfWeek> WEEKDAYS =
      Map.ofEntries(
          Map.entry("monday", DayOfWeek.MONDAY),
          Map.entry("mon", DayOfWeek.MONDAY),
          Map.entry("tuesday", DayOfWeek.TUESDAY),
          Map.entry("tues", DayOfWeek.TUESDAY),
          Map.entry("tue", DayOfWeek.TUESDAY),
          Map.entry("wednesday", DayOfWeek.WEDNESDAY),
          Map.entry("thursday", DayOfWeek.THURSDAY),
          Map.entry("thurs", DayOfWeek.THURSDAY),
          Map.entry("friday", DayOfWeek.FRIDAY),
          Map.entry("fri", DayOfWeek.FRIDAY),
          Map.entry("saturday", DayOfWeek.SATURDAY),
          Map.entry("sat", DayOfWeek.SATURDAY),
          Map.entry("sunday", DayOfWeek.SUNDAY));

  /** Words that say that a day is over. */
  private static final Set<String> PAST =
      Set.of(
          "sprayed", "treated", "applied", "did", "put", "last", "was", "since", "done", "fed",
          "hit");

  /** Words that say that a day is yet to come, whatever else is said. */
  private static final Set<String> PLANNED =
      Set.of(
          "if", "when", "will", "gonna", "going", "plan", "planning", "ill", "can", "would", "may");

  /** What may follow a day of the month that has no month beside it. */
  private static final Set<String> ENDS =
      Set.of(
          "and", "so", "when", "label", "how", "it", "its", "can", "with", "at", "says", "wants",
          "but", "then", "again", "my", "the", "on", "i", "we", "to", "is", "was", "ok", "or");

  private static final int NEAR = 8;
  private static final int FAR = 12;
  private final LocalDate today;

  DateReader(List<Token> tokens, LocalDate today) {
    super(tokens);
    this.today = today;
  }

  /** Whether a day may begin with this word, whatever follows. */
  static boolean mayBegin(String word) {
    return switch (word) {
      case "today", "tonight", "yesterday", "this", "day", "last", "a" -> true;
      case "tomorrow", "tmrw", "tomorow", "tommorrow" -> true;
      default ->
          MONTHS.containsKey(word)
              || WEEKDAYS.containsKey(word)
              || NumberWords.SMALL.containsKey(word)
              || Ordinals.of(word).isPresent();
    };
  }

  /** The day that begins at this token. */
  Optional<Mention.Day> at(int i) {
    return near(i)
        .or(() -> ago(i))
        .or(() -> monthDay(i))
        .or(() -> dayMonth(i))
        .or(() -> slashes(i))
        .or(() -> weekday(i))
        .or(() -> dayAlone(i));
  }

  private Optional<Integer> whole(int i) {
    if (i >= tokens.size()
        || !tokens.get(i).isNumber()
        || word(i).contains(".")
        || word(i).length() > 4) {
      return Optional.empty();
    }
    return Optional.of(Integer.valueOf(word(i)));
  }

  private Optional<Mention.Day> near(int i) {
    return switch (word(i)) {
      case "today", "tonight" -> word(i + 1).equals("is") ? Optional.empty() : day(i, i + 1, today);
      case "yesterday" -> day(i, i + 1, today.minusDays(1));
      case "tomorrow", "tmrw", "tomorow", "tommorrow" -> day(i, i + 1, today.plusDays(1));
      case "this" ->
          word(i + 1).equals("morning") || word(i + 1).equals("afternoon")
              ? day(i, i + 2, today)
              : Optional.empty();
      case "day" ->
          word(i + 1).equals("before") && word(i + 2).equals("yesterday")
              ? day(i, i + 3, today.minusDays(2))
              : Optional.empty();
      case "last" ->
          word(i + 1).equals("week") ? day(i, i + 2, today.minusDays(7)) : Optional.empty();
      default -> Optional.empty();
    };
  }

  private Optional<Mention.Day> ago(int i) {
    int unit = i + 1;
    Optional<Integer> count = whole(i).or(() -> counted(i));
    if (word(i).equals("a") && word(i + 1).equals("couple")) {
      count = Optional.of(2);
      unit = word(i + 2).equals("of") ? i + 3 : i + 2;
    }
    if (count.isEmpty() || !word(unit + 1).equals("ago")) {
      return Optional.empty();
    }
    int n = count.get();
    return switch (word(unit)) {
      case "day", "days" -> day(i, unit + 2, today.minusDays(n));
      case "week", "weeks", "wk", "wks" -> day(i, unit + 2, today.minusWeeks(n));
      case "month", "months" -> day(i, unit + 2, today.minusMonths(n));
      default -> Optional.empty();
    };
  }

  private Optional<Integer> counted(int i) {
    return word(i).equals("a")
        ? Optional.of(1)
        : Optional.ofNullable(NumberWords.SMALL.get(word(i)));
  }

  private Optional<Mention.Day> monthDay(int i) {
    Integer month = MONTHS.get(word(i));
    int at = word(i + 1).equals("the") ? i + 2 : i + 1;
    Optional<Integer> day = dayOfMonth(at);
    if (month == null || day.isEmpty()) {
      return Optional.empty();
    }
    return dated(i, skipOrdinal(at + 1), month, day.get());
  }

  /** A day's number in digits or as an ordinal word. */
  private Optional<Integer> dayOfMonth(int i) {
    return whole(i).or(() -> Ordinals.of(word(i))).filter(d -> d >= 1 && d <= 31);
  }

  private Optional<Mention.Day> dayMonth(int i) {
    Optional<Integer> day = dayOfMonth(i);
    if (day.isEmpty()) {
      return Optional.empty();
    }
    int at = skipOrdinal(i + 1);
    if (word(at).equals("of")) {
      at++;
    }
    Integer month = MONTHS.get(word(at));
    boolean counts = whole(i).isEmpty() && dayOfMonth(at + 1).isPresent();
    return month == null || counts ? Optional.empty() : dated(i, at + 1, month, day.get());
  }

  /** "sprayed on the 8th", "again on the 28th": a day of this month or of one beside it. */
  private Optional<Mention.Day> dayAlone(int i) {
    Optional<Integer> day = word(i - 1).equals("the") ? dayOfMonth(i) : Optional.empty();
    int after = skipOrdinal(i + 1);
    boolean ordinal = after > i + 1;
    boolean goesOn =
        after < tokens.size() && tokens.get(after).isWord() && !ENDS.contains(word(after));
    if (day.isEmpty() || !ordinal || goesOn) {
      return Optional.empty();
    }
    boolean past = stands(i, PAST, FAR);
    LocalDate month = today.withDayOfMonth(1);
    if (past && day.get() > today.getDayOfMonth()) {
      month = month.minusMonths(1);
    } else if (!past && day.get() < today.getDayOfMonth()) {
      month = month.plusMonths(1);
    }
    return day.get() <= month.lengthOfMonth()
        ? day(i, after, month.withDayOfMonth(day.get()))
        : Optional.empty();
  }

  /** Whether one of these words stands a little before a place. */
  private boolean stands(int i, Set<String> words, int reach) {
    for (int k = i - 1; k >= 0 && k >= i - reach && !tokens.get(k).endsSentence(); k--) {
      if (words.contains(word(k))) {
        return true;
      }
    }
    return false;
  }

  private int skipOrdinal(int i) {
    return word(i).equals("st")
            || word(i).equals("nd")
            || word(i).equals("rd")
            || word(i).equals("th")
        ? i + 1
        : i;
  }

  private Optional<Mention.Day> dated(int from, int to, int month, int day) {
    int at = word(to).equals(",") ? to + 1 : to;
    Optional<Integer> year = whole(at).filter(y -> y >= 1990 && y <= 2100);
    try {
      return year.isPresent()
          ? day(from, at + 1, LocalDate.of(year.get(), month, day))
          : day(from, to, thisYearOrLast(from, LocalDate.of(today.getYear(), month, day)));
    } catch (DateTimeException noSuchDay) {
      return Optional.empty();
    }
  }

  /** "sprayed october 10", said in May, was last year. */
  private LocalDate thisYearOrLast(int from, LocalDate date) {
    boolean past = stands(from, PAST, NEAR) && !stands(from, PLANNED, FAR);
    return date.isAfter(today) && past ? date.minusYears(1) : date;
  }

  /** "2026-05-01", "5/1/2026", and "5/1" where it can't be a fraction or a measure. */
  private Optional<Mention.Day> slashes(int i) {
    Optional<Integer> first = whole(i);
    String sign = word(i + 1);
    Optional<Integer> second = whole(i + 2);
    boolean signed = (sign.equals("/") || sign.equals("-")) && !apart(i + 1) && !apart(i + 2);
    if (first.isEmpty() || second.isEmpty() || !signed) {
      return Optional.empty();
    }
    Optional<Integer> third = word(i + 3).equals(sign) ? whole(i + 4) : Optional.empty();
    try {
      if (first.get() >= 1990 && third.isPresent()) {
        return day(i, i + 5, LocalDate.of(first.get(), second.get(), third.get()));
      }
      boolean hyphen = sign.equals("-");
      boolean mixed = word(i + 3).equals("/") && !apart(i + 3);
      if (hyphen && (third.isPresent() || mixed || !word(i - 1).equals("on"))) {
        return Optional.empty();
      }
      if (third.isPresent()) {
        int year = third.get() < 100 ? 2000 + third.get() : third.get();
        return day(i, i + 5, LocalDate.of(year, first.get(), second.get()));
      }
      return lone(i, first.get(), second.get());
    } catch (DateTimeException noSuchDay) {
      return Optional.empty();
    }
  }

  private boolean apart(int i) {
    return i < tokens.size() && tokens.get(i).apart();
  }

  private Optional<Mention.Day> lone(int i, int month, int day) {
    String before = word(i - 1);
    boolean listed = before.equals("and") && word(i - 3).equals("/");
    boolean cue = DATED.contains(before) || listed;
    int after = Set.of("of", "a", "an").contains(word(i + 3)) ? i + 4 : i + 3;
    after = Set.of("a", "an").contains(word(after)) ? after + 1 : after;
    boolean measured = MeasureWords.shipped().longest(word(after)) > 0;
    boolean fits = month >= 1 && month <= 12 && day >= 1 && day <= 31 && !measured;
    return cue && fits
        ? day(i, i + 3, LocalDate.of(today.getYear(), month, day))
        : Optional.empty();
  }

  private Optional<Mention.Day> weekday(int i) {
    boolean last = word(i).equals("last");
    DayOfWeek weekday = WEEKDAYS.get(word(last ? i + 1 : i));
    if (weekday == null) {
      return Optional.empty();
    }
    LocalDate before = today.with(TemporalAdjusters.previous(weekday));
    return day(i, last ? i + 2 : i + 1, before);
  }

  private static Optional<Mention.Day> day(int from, int to, LocalDate date) {
    return Optional.of(new Mention.Day(from, to, date));
  }
}
