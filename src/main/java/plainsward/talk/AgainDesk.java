package plainsward.talk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import plainsward.reading.Facts;
import plainsward.records.Label;
import plainsward.records.LogEntry;
import plainsward.reply.Figure;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.safety.Cautions;
import plainsward.topics.Dates;
import plainsward.units.Quantity;
import plainsward.units.Ratio;

/**
 * When again, and how many are left, lawn by lawn: where several lawns are in the log and the
 * question names none.
 */
final class AgainDesk {
  private static final int MOST_TOLD = 12;
  private static final Set<String> OWN_FACTS =
      Set.of("interval", "day", "last_applied", "season_limit", "applied_count", "planned");

  private final Memory memory;
  private final Diary diary;
  private final LocalDate today;

  /** What one lawn may have next. */
  private record Next(String lawn, LogEntry last, Optional<LocalDate> earliest, int left) {
    String day() {
      String from = "from " + Dates.shown(earliest.orElseThrow()) + " on, after the ";
      return from + last.label() + " on " + last.date();
    }

    String more() {
      return left + " left of the " + last.label();
    }
  }

  AgainDesk(Memory memory, Diary diary, LocalDate today) {
    this.memory = memory;
    this.diary = diary;
    this.today = today;
  }

  /** The reply, where it is asked and must be told lawn by lawn. */
  Optional<Reply> hear(Facts turn) {
    boolean own = turn.all().stream().anyMatch(f -> OWN_FACTS.contains(f.name()));
    boolean named = !turn.lawns().isEmpty() || !memory.chosenLawns().isEmpty();
    if (!turn.asks("repeat") || own || named || memory.isStranger()) {
      return Optional.empty();
    }
    boolean left = turn.asks().stream().anyMatch(a -> a.want().equals("applications_left"));
    List<Next> all = new ArrayList<>();
    for (String lawn : diary.lawns()) {
      diary
          .last(List.of(lawn), memory.chosenLabel())
          .flatMap(e -> next(lawn, e))
          .ifPresent(all::add);
    }
    all.removeIf(n -> left ? n.left() < 0 : n.earliest().isEmpty());
    return all.size() < 2 ? Optional.empty() : Optional.of(left ? left(all) : when(all));
  }

  private Optional<Next> next(String lawn, LogEntry last) {
    Optional<Label> card = memory.labelCards().get(Memory.key(last.label()));
    if (card.isEmpty() || last.lawn().isEmpty()) {
      return Optional.empty();
    }
    int done = diary.count(List.of(lawn), last.label(), today.getYear());
    int left = card.get().season().applications().map(most -> Math.max(0, most - done)).orElse(-1);
    return Optional.of(
        new Next(lawn, last, card.get().season().interval().map(last.date()::plus), left));
  }

  private Reply when(List<Next> all) {
    all.sort(Comparator.comparing(n -> n.earliest().orElseThrow()));
    LocalDate latest = all.get(all.size() - 1).earliest().orElseThrow();
    return told(all, Next::day)
        .headline("All of them not before " + Dates.shown(latest) + "; each lawn has its day.")
        .figure(Figure.of("earliest", latest, Dates.shown(latest)))
        .caution(Cautions.of("too-soon"))
        .suggest("Put the next dates in a calendar file.")
        .build();
  }

  private Reply left(List<Next> all) {
    all.sort(Comparator.comparingInt(Next::left));
    int fewest = all.get(0).left();
    return told(all, Next::more)
        .headline("It goes by lawn; the fewest left this year are " + fewest + ".")
        .figure(
            Figure.of(
                "applications_left", Quantity.number(Ratio.of(fewest)), String.valueOf(fewest)))
        .caution(Cautions.of("season-cap"))
        .build();
  }

  /** A line for each lawn, of the first twelve. */
  private static ReplyBuilder told(List<Next> all, Function<Next, String> line) {
    ReplyBuilder reply = new ReplyBuilder(Kind.ANSWER).topic("repeat");
    all.stream()
        .limit(MOST_TOLD)
        .forEach(n -> reply.say("The " + n.lawn() + " lawn: " + line.apply(n) + "."));
    return reply;
  }
}
