package plainsward.topics;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reply.Reply;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;
import plainsward.units.Unit;
import plainsward.units.Units;

/** When it may be sprayed again, and how many applications are left. */
public final class RepeatTopic implements Topic {

  private static final Set<String> JUST = Set.of("just");
  private static final Set<String> SINCE = Set.of("since", "been", "ago");

  @Override
  public String code() {
    return "repeat";
  }

  @Override
  public Reply reply(Request request) {
    if (request.turn().tokens().stream().anyMatch(t -> t.is("why"))) {
      return new NoteTopic("repeat").reply(request);
    }
    Sheet sheet = new Sheet(request, "repeat");
    boolean counts = request.has("applied_count") && request.has("season_limit");
    if (request.wants("applications_left")
        || counts && (!request.has("interval") || request.turn().has("season_limit"))) {
      return left(request, sheet);
    }
    Optional<LocalDate> last = last(request);
    Optional<Known> interval = request.get("interval");
    if (last.isEmpty() && interval.isEmpty()) {
      sheet.say(
          "It stands on your label, near the rates: for many broadleaf lawn products it is two to "
              + "four weeks, and no more than about two times a year. (Common practice, no source.)");
      sheet.caution("too-soon", "season-cap");
      return sheet.ask(
          Asking.question("last_applied") + " And how many days apart does the label want?",
          "last_applied",
          "interval");
    }
    if (last.isEmpty()) {
      return sheet.ask(Asking.question("last_applied"), "last_applied");
    }
    if (interval.isEmpty()) {
      sheet.caution("too-soon");
      return sheet.ask(Asking.question("interval"), "interval");
    }
    List<Known> lawns = applied(request).stream().filter(k -> !k.fact().owner().isEmpty()).toList();
    return lawns.size() > 1
        ? forEach(request, sheet, lawns, interval.get())
        : when(request, sheet, last.get(), interval.get());
  }

  /** "the front may 1 and the back may 10": each by its own day; together by the later one. */
  private static Reply forEach(Request request, Sheet sheet, List<Known> lawns, Known interval) {
    StringBuilder line = new StringBuilder();
    LocalDate latest = LocalDate.MIN;
    int count = 0;
    for (Known lawn : lawns) {
      LocalDate day = lawn.fact().date().orElseThrow();
      LocalDate earliest = after(day, interval);
      boolean open = !earliest.isAfter(request.today());
      latest = earliest.isAfter(latest) ? earliest : latest;
      count++;
      sheet.date("earliest_" + count, earliest);
      sheet.work(
          lawn.fact().owner()
              + ": "
              + Dates.shown(day)
              + " + "
              + interval.fact().said()
              + " = "
              + Dates.shown(earliest));
      line.append(count == 1 ? "The " : "; the ")
          .append(lawn.fact().owner())
          .append(open ? " now: its interval was over on " : " not before ")
          .append(Dates.shown(earliest));
    }
    sheet.date("earliest", latest).caution("too-soon");
    leftIfKnown(request, sheet);
    return sheet.answer(line.append('.').toString());
  }

  private static List<Known> applied(Request request) {
    return request.has("last_applied") ? request.all("last_applied") : request.all("day");
  }

  /** The day of the last application. */
  static Optional<LocalDate> last(Request request) {
    return applied(request).stream()
        .filter(k -> !k.fact().name().equals("said_today"))
        .flatMap(k -> k.fact().date().stream())
        .filter(d -> !d.isAfter(request.today().plusYears(1)))
        .max(LocalDate::compareTo)
        .or(() -> since(request));
  }

  /** "it's been 3 weeks since the first". */
  private static Optional<LocalDate> since(Request request) {
    if (request.says("past") && request.turn().hasWord(JUST) && !request.turn().has("elapsed")) {
      return Optional.of(request.today());
    }
    boolean told = request.turn().has("elapsed") && request.turn().hasWord(SINCE);
    return told
        ? request
            .get("elapsed")
            .map(
                k ->
                    k.fact().word().orElse("days").equals("months")
                        ? request.today().minusMonths(k.amount().value().ceiling().longValueExact())
                        : request
                            .today()
                            .minusDays(k.amount().in(Units.DAY).value().ceiling().longValueExact()))
        : Optional.empty();
  }

  /** A day plus a wait: calendar months are months, weeks are seven days. */
  static LocalDate after(LocalDate day, Known wait) {
    Quantity amount = wait.amount();
    long count = amount.value().ceiling().longValueExact();
    if (wait.fact().word().orElse("days").equals("months")) {
      return day.plusMonths(count);
    }
    return amount.unit().equals(Unit.of("wk"))
        ? day.plusWeeks(count)
        : day.plusDays(amount.in(Units.DAY).value().ceiling().longValueExact());
  }

  private static Reply when(Request request, Sheet sheet, LocalDate last, Known interval) {
    if (request.says("after-that")) {
      return afterNext(request, sheet, after(last, interval), interval);
    }
    LocalDate earliest = after(last, interval);
    sheet.date("earliest", earliest);
    sheet.work(Dates.shown(last) + " + " + interval.fact().said() + " = " + Dates.shown(earliest));
    leftIfKnown(request, sheet);
    sheet.sketch(DaySketch.after(request, last, earliest, "again"));
    request
        .find("last_applied", k -> k.fact().word().isPresent())
        .flatMap(k -> k.fact().word())
        .ifPresent(where -> sheet.say("By the log: " + where + "."));
    sheet.caution("too-soon");
    boolean open = !earliest.isAfter(request.today());
    String line =
        open
            ? "You may spray again now: the interval was over on " + Dates.shown(earliest) + "."
            : "Not before " + Dates.shown(earliest) + ".";
    return sheet.answer(line);
  }

  /** "and after that?": the one after the next, where the label's cap leaves one. */
  private static Reply afterNext(Request request, Sheet sheet, LocalDate next, Known interval) {
    boolean capped = request.has("season_limit");
    sheet.caution("too-soon", "season-cap");
    if (capped && leftOver(request).compareTo(Ratio.of(2)) < 0) {
      return sheet.answer(
          "None this year after that one: the label allows "
              + Shown.number(request.amount("season_limit").orElseThrow().value())
              + ".");
    }
    LocalDate earliest = after(next, interval);
    sheet.date("earliest", earliest);
    sheet.work(Dates.shown(next) + " + " + interval.fact().said() + " = " + Dates.shown(earliest));
    return sheet.answer(
        "If the next is on "
            + Dates.shown(next)
            + ", the one after it not before "
            + Dates.shown(earliest)
            + (capped ? "." : ", if the label allows another this year."));
  }

  private static void leftIfKnown(Request request, Sheet sheet) {
    if (request.has("season_limit") && request.has("applied_count")) {
      sheet.figure("applications_left", Quantity.number(leftOver(request)));
    }
  }

  private static Ratio leftOver(Request request) {
    Ratio left = request.amount("season_limit").orElseThrow().value().minus(done(request));
    return left.signum() < 0 ? Ratio.ZERO : left;
  }

  /** How often this year: as told, or the days that were told. */
  private static Ratio done(Request request) {
    return request
        .amount("applied_count")
        .map(Quantity::value)
        .orElseGet(
            () ->
                Ratio.of(
                    request.all("last_applied").stream()
                        .flatMap(told -> told.fact().date().stream())
                        .filter(day -> day.getYear() == request.today().getYear())
                        .distinct()
                        .count()));
  }

  private static Reply left(Request request, Sheet sheet) {
    if (!request.has("season_limit")) {
      return sheet.ask(Asking.question("season_limit"), "season_limit");
    }
    Ratio left = leftOver(request);
    sheet.figure("applications_left", Quantity.number(left));
    String cap = Shown.number(request.amount("season_limit").orElseThrow().value());
    String done = Shown.number(done(request));
    sheet.work(cap + " allowed − " + done + " done = " + Shown.number(left) + " left");
    sheet.caution("season-cap");
    return sheet.answer(
        left.signum() == 0
            ? "None left this year: the label"
                + (cap.equals("0") ? " allows none." : "'s cap is reached.")
            : "You have "
                + (left.equals(Ratio.ONE) ? "one" : Shown.number(left))
                + " left this year, each at the label's interval.");
  }
}
