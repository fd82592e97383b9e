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
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;

/** Hears that something was sprayed, or that it was not after all, and keeps the log. */
final class Logger {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("MMMM d, yyyy", Locale.ENGLISH);
  private static final Set<String> NOT_A_SPRAYING =
      Set.of("catch_volume", "in_hand", "test_area", "nozzle_flow", "walk_time", "weed", "wanted");

  private static final int WEAK = 6;

  private final Memory memory;
  private final Keeper keeper;
  private final LocalDate today;

  Logger(Memory memory, Keeper keeper, LocalDate today) {
    this.memory = memory;
    this.keeper = keeper;
    this.today = today;
  }

  /** The reply to a turn that is about the log, or nothing. */
  Optional<Reply> hear(Facts turn, List<Fact> facts) {
    if (turn.says("unlog") && !memory.log().isEmpty()) {
      SprayLog.Entry gone = memory.log().removeLast().orElseThrow();
      keeper.undo(gone);
      return Optional.of(done("Taken out of the log: " + told(gone) + ".").build());
    }
    Optional<LocalDate> day = day(turn, facts);
    boolean changesDay =
        turn.says("correction")
            && day.isPresent()
            && !memory.log().isEmpty()
            && turn.asks().isEmpty();
    if (changesDay) {
      SprayLog.Entry last = memory.log().removeLast().orElseThrow();
      keeper.undo(last);
      return Optional.of(added(new SprayLog.Entry(day.get(), last.lawn(), last.label())));
    }
    return isSpraying(turn, facts, day)
        ? Optional.of(entered(turn, facts, day.orElse(today)))
        : Optional.empty();
  }

  private static boolean isSpraying(Facts turn, List<Fact> facts, Optional<LocalDate> day) {
    boolean told = turn.says("log") && (day.isPresent() || !turn.labels().isEmpty());
    boolean other = facts.stream().anyMatch(f -> NOT_A_SPRAYING.contains(f.name()));
    boolean label = facts.stream().anyMatch(f -> f.name().equals("interval"));
    boolean asked =
        turn.asks("progress")
            || turn.asks("rules")
            || turn.asks().stream().anyMatch(a -> a.weight() > WEAK);
    return told && !other && !label && !asked;
  }

  private Optional<LocalDate> day(Facts turn, List<Fact> facts) {
    Optional<LocalDate> said =
        facts.stream().flatMap(f -> f.date().stream()).filter(d -> !d.isAfter(today)).findFirst();
    boolean now = turn.tokens().stream().anyMatch(t -> t.is("now") || t.is("just"));
    return said.isPresent() || !now ? said : Optional.of(today);
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
    String lawn = turn.lawns().isEmpty() ? spoken(turn) : String.join(" and ", turn.lawns());
    SprayLog.Entry entry = null;
    for (LocalDate day : days) {
      entry = new SprayLog.Entry(day, lawn, memory.chosenLabel());
      memory.log().add(entry);
      keeper.keep(entry);
    }
    return reply(entry);
  }

  private static String spoken(Facts turn) {
    for (String lawn : List.of("front", "back", "side")) {
      if (turn.tokens().stream().anyMatch(t -> t.is(lawn))) {
        return lawn;
      }
    }
    return "";
  }

  private Reply added(SprayLog.Entry entry) {
    memory.log().add(entry);
    keeper.keep(entry);
    return reply(entry);
  }

  private Reply reply(SprayLog.Entry entry) {
    return done("Logged: " + told(entry) + ".").suggest("When can I spray again?").build();
  }

  private static String told(SprayLog.Entry entry) {
    String lawn = entry.lawn().isEmpty() ? "the lawn" : "the " + entry.lawn() + " lawn";
    String label = entry.label().isEmpty() ? "" : " with the " + entry.label();
    return lawn + " sprayed" + label + " on " + DAY.format(entry.day());
  }

  private static ReplyBuilder done(String headline) {
    return new ReplyBuilder(Kind.DONE).topic("record").headline(headline);
  }
}
