package plainsward.talk;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.records.Lawn;
import plainsward.records.LogEntry;
import plainsward.records.Sprayer;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.units.Shown;

/** Hears that something was sprayed, or that it was not after all, and keeps the log. */
final class Logger {
  /** Made when first wanted: most turns log nothing. */
  private static final class Written {
    static final DateTimeFormatter DAY =
        DateTimeFormatter.ofPattern("MMMM d, yyyy", Locale.ENGLISH);
  }

  private static final Set<String> NOT_A_SPRAYING =
      Set.of("catch_volume", "in_hand", "test_area", "nozzle_flow", "walk_time", "wanted");

  private static final Set<String> NOW = Set.of("now", "just");
  private static final int WEAK = 6;

  private final Memory memory;
  private final Diary diary;
  private final LocalDate today;
  private final int turn;

  Logger(Memory memory, Diary diary, LocalDate today, int turn) {
    this.turn = turn;
    this.memory = memory;
    this.diary = diary;
    this.today = today;
  }

  /** The reply to a turn that is about the log, or nothing. */
  Optional<Reply> hear(Facts turn, List<Fact> facts) {
    if (turn.says("unlog")) {
      return diary
          .undoLast()
          .map(gone -> done("Taken out of the log: " + told(gone) + ".").build());
    }
    Optional<LocalDate> day = day(turn, facts);
    boolean changesDay =
        turn.says("correction") && day.isPresent() && diary.mark() > 0 && turn.asks().isEmpty();
    if (changesDay) {
      Optional<LogEntry> last = diary.undoLast();
      return last.map(entry -> added(List.of(entry.at(day.get()))));
    }
    return isSpraying(turn, facts, day)
        ? Optional.of(entered(turn, facts, day.orElse(today)))
        : Optional.empty();
  }

  private static boolean isSpraying(Facts turn, List<Fact> facts, Optional<LocalDate> day) {
    boolean told = turn.says("log") && (day.isPresent() || !turn.labels().isEmpty());
    boolean weed = facts.stream().anyMatch(f -> f.name().equals("weed"));
    boolean other =
        facts.stream().anyMatch(f -> NOT_A_SPRAYING.contains(f.name()))
            || weed && (turn.labels().isEmpty() || turn.lawns().isEmpty());
    boolean label = facts.stream().anyMatch(f -> f.name().equals("interval"));
    boolean asked =
        turn.says("question")
            || turn.asks("progress")
            || turn.asks("rules")
            || turn.asks().stream().anyMatch(a -> a.weight() > WEAK);
    return told && !other && !label && !asked;
  }

  private Optional<LocalDate> day(Facts turn, List<Fact> facts) {
    for (Fact fact : facts) {
      if (fact.date().isPresent() && !fact.date().get().isAfter(today)) {
        return fact.date();
      }
    }
    return turn.hasWord(NOW) ? Optional.of(today) : Optional.empty();
  }

  private Reply entered(Facts turn, List<Fact> facts, LocalDate first) {
    List<LocalDate> days = new ArrayList<>();
    facts.stream()
        .flatMap(f -> f.date().stream())
        .filter(d -> !d.isAfter(today))
        .forEach(days::add);
    if (days.isEmpty()) {
      days.add(first);
    }
    Spraying spraying = new Spraying(turn, facts, memory);
    List<LogEntry> entries = new ArrayList<>();
    days.forEach(day -> entries.addAll(spraying.on(day)));
    entries.stream().flatMap(e -> e.lawn().stream()).forEach(this::meet);
    entries.forEach(this::held);
    return added(entries);
  }

  /** What was sprayed is what the sprayer held last. */
  private void held(LogEntry entry) {
    Optional<Sprayer> sprayer = memory.sprayerCards().get(memory.chosenSprayer());
    boolean named = !entry.label().equals(Diary.UNNAMED);
    sprayer
        .filter(s -> named)
        .map(s -> s.withHeld(entry.label(), entry.date()))
        .ifPresent(s -> memory.sprayerCards().put(memory.chosenSprayer(), s, turn));
  }

  /** A lawn that is logged for the first time is known by its name from now on. */
  private void meet(String lawn) {
    if (!memory.lawnNames().contains(lawn)) {
      memory.lawnCards().put(lawn, Lawn.named(lawn), turn);
    }
  }

  private Reply added(List<LogEntry> entries) {
    List<String> told = new ArrayList<>();
    for (LogEntry entry : entries) {
      diary.add(entry).ifPresent(kept -> told.add(told(kept)));
    }
    return told.isEmpty()
        ? done("That could not be put into the log.").build()
        : done("Logged: " + String.join("; ", told) + ".")
            .suggest("When can I spray again?")
            .build();
  }

  /** An entry in words. */
  static String told(LogEntry entry) {
    StringBuilder line = new StringBuilder();
    line.append(entry.lawn().map(l -> "the " + l + " lawn").orElse("the lawn")).append(" sprayed");
    if (!entry.label().equals(Diary.UNNAMED)) {
      line.append(" with the ").append(entry.label());
    }
    line.append(" on ").append(Written.DAY.format(entry.date()));
    entry.product().ifPresent(q -> line.append(", ").append(Shown.of(q)));
    entry.area().ifPresent(q -> line.append(", on ").append(Shown.of(q)));
    entry.remark().ifPresent(r -> line.append(", ").append(r));
    entry.weather().ifPresent(w -> line.append(", ").append(w));
    entry.who().ifPresent(w -> line.append(", by ").append(w));
    return line.toString();
  }

  private static ReplyBuilder done(String headline) {
    return new ReplyBuilder(Kind.DONE).topic("record").headline(headline);
  }
}
