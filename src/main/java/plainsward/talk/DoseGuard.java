package plainsward.talk;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Facts;
import plainsward.records.Label;
import plainsward.records.LogEntry;
import plainsward.records.YearUse;
import plainsward.reply.Figure;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.safety.Cautions;
import plainsward.topics.Dates;
import plainsward.units.Quantity;
import plainsward.units.Shown;

/**
 * Stands before a dose of the label in hand for a named lawn: by the log it may come too soon, or
 * be more than the label allows in a year. Then it is declined with the day on which it is
 * possible.
 */
final class DoseGuard {
  private static final Set<String> DOSES = Set.of("mix", "strength");

  private final Memory memory;
  private final Diary diary;
  private final LocalDate today;

  DoseGuard(Memory memory, Diary diary, LocalDate today) {
    this.memory = memory;
    this.diary = diary;
    this.today = today;
  }

  /** The refusal, or nothing where the log has nothing against it. */
  Optional<Reply> check(Facts turn, List<String> topics) {
    Optional<Label> label = memory.labelCards().get(memory.chosenLabel());
    Set<String> lawns = memory.chosenLawns();
    if (label.isEmpty() || lawns.isEmpty() || topics.stream().noneMatch(DOSES::contains)) {
      return Optional.empty();
    }
    LocalDate day = day(turn);
    return lawns.stream()
        .flatMap(lawn -> against(lawn, label.get(), day).stream())
        .max(Comparator.comparing(r -> r.figure("earliest").flatMap(Figure::date).orElse(day)));
  }

  /** The day that it is for: one that is said, from today on; else today. */
  private LocalDate day(Facts turn) {
    return turn.all().stream()
        .flatMap(f -> f.date().stream())
        .filter(d -> !d.isBefore(today))
        .findFirst()
        .orElse(today);
  }

  private Optional<Reply> against(String lawn, Label label, LocalDate day) {
    List<LogEntry> year = diary.inYear(lawn, memory.chosenLabel(), day.getYear());
    YearUse use =
        YearUse.of(
            year.stream().filter(e -> e.lawn().isPresent()).toList(), ground(lawn), label.season());
    return pastCap(lawn, label, use, day)
        .or(() -> pastAmount(lawn, label, use, day))
        .or(() -> tooSoon(lawn, label, day));
  }

  private Optional<Quantity> ground(String lawn) {
    return memory.lawn(lawn).stream()
        .map(Memory.Told::fact)
        .filter(f -> f.name().equals("area") && f.value().isPresent())
        .map(f -> f.amount())
        .reduce(Quantity::plus);
  }

  private Optional<Reply> pastCap(String lawn, Label label, YearUse use, LocalDate day) {
    boolean none = use.applicationsLeft().map(left -> left == 0).orElse(false);
    String allowed = label.season().applications().map(String::valueOf).orElse("");
    return none
        ? Optional.of(
            declined(
                "season-cap",
                LocalDate.of(day.getYear() + 1, 1, 1),
                "No: your label allows "
                    + allowed
                    + " a year, and the "
                    + lawn
                    + " lawn has had "
                    + use.applications()
                    + "."))
        : Optional.empty();
  }

  private Optional<Reply> pastAmount(String lawn, Label label, YearUse use, LocalDate day) {
    Optional<Quantity> rate = memory.latest("label_rate").map(told -> told.fact().amount());
    Optional<Quantity> left = use.amountLeft();
    boolean over =
        rate.isPresent()
            && left.isPresent()
            && rate.get().dimension().equals(left.get().dimension())
            && rate.get().compareTo(left.get()) > 0;
    return over
        ? Optional.of(
            declined(
                "season-cap",
                LocalDate.of(day.getYear() + 1, 1, 1),
                "No: your label allows "
                    + label.season().amount().map(Shown::of).orElse("")
                    + " a year, and of that "
                    + Shown.notAbove(left.get())
                    + " is left for the "
                    + lawn
                    + " lawn: less than the rate."))
        : Optional.empty();
  }

  private Optional<Reply> tooSoon(String lawn, Label label, LocalDate day) {
    Optional<LocalDate> last =
        diary
            .last(List.of(lawn), memory.chosenLabel())
            .filter(e -> e.lawn().isPresent())
            .map(LogEntry::date)
            .filter(d -> !d.isAfter(day));
    Optional<LocalDate> earliest =
        last.flatMap(d -> label.season().interval().map(d::plus)).filter(day::isBefore);
    return earliest.map(
        possible ->
            declined(
                "too-soon",
                possible,
                "No: the "
                    + lawn
                    + " lawn had the "
                    + memory.chosenLabel()
                    + " on "
                    + Dates.shown(last.get())
                    + ", and the label wants "
                    + label.season().interval().map(LabelText::wait).orElse("")
                    + " between."));
  }

  private static Reply declined(String caution, LocalDate possible, String why) {
    return new ReplyBuilder(Kind.DECLINE)
        .topic("repeat")
        .headline(why + " The next is possible from " + Dates.shown(possible) + ".")
        .figure(Figure.of("earliest", possible, Dates.shown(possible)))
        .caution(Cautions.of(caution))
        .caution(Cautions.of("read-label"))
        .say("Ask for a later day, as in \"for " + Dates.shown(possible) + "\", to plan ahead.")
        .build();
  }
}
