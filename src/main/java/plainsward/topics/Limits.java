package plainsward.topics;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.reading.Token;
import plainsward.reply.Reply;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;
import plainsward.units.Units;

/** What the label that was told does not allow: more than its rate, sooner, or past its cap. */
public final class Limits {
  private static final Set<String> LABEL_WORDS =
      Set.of("label", "labels", "says", "said", "say", "reads");

  private static final Set<String> GROUND = Set.of("area", "shape", "tank");

  private static final long SHORTEST_MONTH = 28;

  /** "What if a storm comes tonight" plans no spraying. */
  private static final Set<String> SKY =
      Set.of("rain", "rains", "storm", "storms", "shower", "showers", "thunderstorm");

  private static final Set<String> SPRAYING =
      Set.of("spray", "spraying", "treat", "apply", "go", "again", "respray", "put", "spread");

  private Limits() {}

  /** The refusal, where what is asked breaks a limit that is known; else nothing. */
  public static Optional<Reply> check(Request request, List<Quantity> labelMost) {
    return besideLabel(request)
        .or(() -> aboveLabel(request, labelMost))
        .or(() -> tooSoon(request))
        .or(() -> pastCap(request));
  }

  private static Optional<Reply> aboveLabel(Request request, List<Quantity> allowed) {
    Optional<Quantity> asked =
        request
            .turn()
            .first("label_rate")
            .or(() -> request.turn().first("strength"))
            .map(f -> f.high().orElse(f.amount()));
    Optional<Quantity> labelMost =
        allowed.stream()
            .filter(most -> asked.map(a -> a.dimension().equals(most.dimension())).orElse(false))
            .max(Quantity::compareTo);
    boolean above = labelMost.isPresent() && asked.get().compareTo(labelMost.get()) > 0;
    if (!above || request.says("correction") || request.says("label-most")) {
      return Optional.empty();
    }
    return Optional.of(above(request, labelMost.get(), asked.get()));
  }

  /** "May I put down 3 when the label says 1.5?": the rate after these words is the label's. */
  private static Optional<Reply> besideLabel(Request request) {
    List<Token> tokens = request.turn().tokens();
    boolean asks = request.says("permission") && !request.says("correction");
    int says = 0;
    while (says < tokens.size() && !LABEL_WORDS.contains(tokens.get(says).norm())) {
      says++;
    }
    int from = says;
    List<Fact> rates =
        request.turn().all().stream().filter(f -> asks && f.name().equals("label_rate")).toList();
    Optional<Fact> label = rates.stream().filter(f -> f.at() > from).findFirst();
    if (label.isEmpty()) {
      return Optional.empty();
    }
    Quantity allowed = top(label.get());
    return rates.stream()
        .map(Limits::top)
        .filter(asked -> asked.dimension().equals(allowed.dimension()))
        .max(Quantity::compareTo)
        .filter(asked -> asked.compareTo(allowed) > 0)
        .map(asked -> above(request, allowed, asked));
  }

  private static Quantity top(Fact rate) {
    return rate.high().orElse(rate.amount());
  }

  private static Reply above(Request request, Quantity allowed, Quantity asked) {
    Sheet sheet = new Sheet(request, "mix").caution("above-label", "read-label");
    sheet.say(
        "If the label really allows more, tell me its words and I will take that as the label. "
            + "What helps instead: growing weeds, a dry calm day, and a second round after the interval.");
    return sheet.decline(
        "No: your label's most is "
            + Shown.of(allowed)
            + ", and "
            + Shown.of(asked)
            + " is more. I give no amount above the label.");
  }

  private static Optional<Reply> tooSoon(Request request) {
    Optional<Known> interval = request.has("interval") ? request.get("interval") : Optional.empty();
    if (interval.isEmpty() || !asksForMore(request) || request.turn().asks("seed")) {
      return Optional.empty();
    }
    Optional<Reply> byWait = proposedWait(request, interval.get());
    if (byWait.isPresent()) {
      return byWait;
    }
    Optional<LocalDate> last = RepeatTopic.last(request);
    Optional<LocalDate> planned = planned(request);
    if (last.isEmpty() || planned.isEmpty() || planned.get().isBefore(last.get())) {
      return Optional.empty();
    }
    LocalDate earliest = RepeatTopic.after(last.get(), interval.get());
    if (!planned.get().isBefore(earliest)) {
      return Optional.empty();
    }
    Sheet sheet = new Sheet(request, "repeat").caution("too-soon", "read-label");
    sheet.date("earliest", earliest);
    return Optional.of(
        sheet.decline(
            "No: "
                + Dates.shown(planned.get())
                + " is too soon. Your label wants "
                + interval.get().fact().said()
                + " between, so not before "
                + Dates.shown(earliest)
                + "."));
  }

  private static Optional<Reply> proposedWait(Request request, Known interval) {
    Optional<Fact> proposed = request.turn().first("proposed_wait");
    boolean sooner = proposed.isPresent() && isSooner(proposed.get().amount(), least(interval));
    if (!sooner) {
      return Optional.empty();
    }
    Sheet sheet = new Sheet(request, "repeat").caution("too-soon", "read-label");
    return Optional.of(
        sheet.decline(
            "No: the label's wait of "
                + interval.fact().said()
                + " stands, also for less at a time, "
                + "unless the label itself allows split applications."));
  }

  /** The least that a wait may be: a month has 28 days at the least. */
  private static Quantity least(Known interval) {
    boolean months = interval.fact().word().equals(Optional.of("months"));
    return months
        ? new Quantity(interval.amount().value().times(Ratio.of(SHORTEST_MONTH)), Units.DAY)
        : interval.amount();
  }

  private static boolean isSooner(Quantity proposed, Quantity wait) {
    return proposed.dimension().equals(Units.DAY.dimension())
        && wait.dimension().equals(Units.DAY.dimension())
        && proposed.compareTo(wait) < 0;
  }

  private static boolean asksForMore(Request request) {
    Facts turn = request.turn();
    return !request.asks().isEmpty() || turn.has("label_rate") || turn.has("proposed_wait");
  }

  /** The day on which it is to be sprayed: one said for it, or a day from today on. */
  private static Optional<LocalDate> planned(Request request) {
    if (request.turn().hasWord(SKY) && !request.turn().hasWord(SPRAYING)) {
      return Optional.empty();
    }
    List<Fact> days = request.turn().all().stream().filter(f -> f.date().isPresent()).toList();
    return days.stream()
        .filter(f -> f.name().equals("planned") || !f.date().get().isBefore(request.today()))
        .filter(f -> !f.name().equals("last_applied"))
        .map(f -> f.date().get())
        .findFirst();
  }

  private static Optional<Reply> pastCap(Request request) {
    if (!request.has("season_limit")) {
      return Optional.empty();
    }
    Ratio cap = request.amount("season_limit").orElseThrow().value();
    if (cap.signum() == 0 && asksForAny(request)) {
      return Optional.of(none(request));
    }
    if (!asksForAnother(request)) {
      return Optional.empty();
    }
    Ratio days = Ratio.of(daysDone(request));
    Ratio told = request.amount("applied_count").map(Quantity::value).orElse(Ratio.ZERO);
    Ratio done = told.compareTo(days) < 0 ? days : told;
    if (done.compareTo(cap) < 0) {
      return Optional.empty();
    }
    Sheet sheet = new Sheet(request, "repeat").caution("season-cap", "read-label");
    sheet.say("Pull or dig what is left, mow higher and feed the lawn, and spray again next year.");
    return Optional.of(
        sheet.decline(
            "No: your label allows "
                + Shown.number(cap)
                + " a year, and "
                + Shown.number(done)
                + " are done. The next is possible from January 1, "
                + (request.today().getYear() + 1)
                + "."));
  }

  /** How many days on which it was sprayed the turn tells. */
  private static long daysDone(Request request) {
    long days = 0;
    for (Fact fact : request.turn().all()) {
      boolean day = fact.name().equals("last_applied") || fact.name().equals("day");
      boolean over = fact.date().isPresent() && !fact.date().get().isAfter(request.today());
      days += day && over ? 1 : 0;
    }
    return days;
  }

  /** Whether a dose or a spraying is asked for, or the ground that a known rate is for is told. */
  private static boolean asksForAny(Request request) {
    Facts turn = request.turn();
    boolean dose = turn.asks("mix") || turn.asks("strength") || turn.asks("buy");
    boolean spraying = turn.asks("weather") || asksForAnother(request);
    boolean ground = false;
    for (Fact fact : turn.all()) {
      ground |= GROUND.contains(fact.name()) && fact.owner().isEmpty();
    }
    boolean rate = request.has("label_rate") || request.has("strength");
    return !request.wants("applications_left") && (dose || spraying || ground && rate);
  }

  private static Reply none(Request request) {
    Sheet sheet = new Sheet(request, "repeat").caution("season-cap", "read-label");
    sheet.say("Pull or dig what is there, mow higher and feed the lawn.");
    return sheet.decline(
        "No: your label allows none this year. The next is possible from January 1, "
            + (request.today().getYear() + 1)
            + ", if the label then does.");
  }

  private static boolean asksForAnother(Request request) {
    boolean dose =
        request.asks().stream()
            .anyMatch(a -> a.topic().equals("mix") && request.turn().has("label_rate"));
    boolean another = request.says("another");
    boolean again =
        request.asks().stream()
                .anyMatch(a -> a.topic().equals("repeat") && !a.want().equals("applications_left"))
            && (request.says("permission")
                || request.turn().all().stream().anyMatch(f -> f.name().equals("planned")));
    return dose || another || again;
  }
}
