package plainsward.talk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import plainsward.reading.Facts;
import plainsward.reading.Token;
import plainsward.records.LogEntry;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.units.Quantity;
import plainsward.units.Shown;

/** Answers what was sprayed where and when, from the log. */
final class LogDesk {
  private static final String EXPORT = "Export the log as CSV.";
  private static final Set<String> PARTS =
      Set.of("front", "back", "side", "rear", "strip", "corner");
  private static final int MOST_TOLD = 12;

  private final Memory memory;
  private final Diary diary;
  private final LocalDate today;

  LogDesk(Memory memory, Diary diary, LocalDate today) {
    this.memory = memory;
    this.diary = diary;
    this.today = today;
  }

  /**
   * The reply to a question about what is in the log, or nothing.
   *
   * @param goesOn whether the reply before was of the log, so that "and the front?" asks it too
   */
  Optional<Reply> hear(Facts turn, boolean goesOn) {
    String who = turn.says("log-who") ? who(turn) : "";
    if (goesOn && isOnlyNamed(turn) && turn.lawns().isEmpty()) {
      return another(turn);
    }
    boolean another = goesOn && isOnlyNamed(turn) && !turn.lawns().isEmpty();
    boolean asked = turn.says("log-ask") || turn.says("log-show") || !who.isEmpty() || another;
    if (!asked || memory.isStranger() && turn.lawns().isEmpty()) {
      return Optional.empty();
    }
    if (diary.isEmpty()) {
      return turn.says("log-show")
          ? Optional.of(answer("The log is empty: tell me when something was sprayed.").build())
          : Optional.empty();
    }
    return Optional.of(found(turn, who));
  }

  private static boolean isOnlyNamed(Facts turn) {
    boolean figures = turn.all().stream().anyMatch(f -> f.value().isPresent());
    return turn.says("follow-up") && turn.asks().isEmpty() && !figures;
  }

  /** "and the front?", of which nothing was ever told. */
  private static Optional<Reply> another(Facts turn) {
    for (Token word : turn.tokens()) {
      if (PARTS.contains(word.norm())) {
        return Optional.of(answer("Nothing was logged on the " + word.norm() + ".").build());
      }
    }
    return Optional.empty();
  }

  /**
   * The person of the log whom a turn names by the whole name or the first part of it; or empty.
   */
  private String who(Facts turn) {
    for (String person : diary.people()) {
      String[] names = person.split(" ", -1);
      for (Token token : turn.tokens()) {
        String word = token.norm();
        if (word.equals(names[0]) || word.equals(names[0] + "s")) {
          return person;
        }
      }
    }
    return "";
  }

  private Reply found(Facts turn, String who) {
    LogSpan span = LogSpan.of(turn, today);
    List<LogEntry> entries = entries(turn, span);
    entries.removeIf(e -> !who.isEmpty() && !Memory.key(e.who().orElse("")).equals(who));
    String where = turn.lawns().isEmpty() ? "" : " on the " + String.join(", ", turn.lawns());
    String with = turn.labels().isEmpty() ? "" : " with the " + String.join(", ", turn.labels());
    String by = who.isEmpty() ? "" : " by " + name(who, entries);
    String about = by + where + with + (span.words().isEmpty() ? "" : " " + span.words());
    if (entries.isEmpty()) {
      return answer("Nothing was logged" + about + ".").build();
    }
    if (turn.says("log-last")) {
      LogEntry last = entries.get(entries.size() - 1);
      return answer("Last: " + Logger.told(last) + ".").build();
    }
    if (entries.size() == 1) {
      return answer("One spraying" + about + ": " + Logger.told(entries.get(0)) + ".")
          .suggest(EXPORT)
          .build();
    }
    String count = entries.size() + " sprayings";
    ReplyBuilder reply =
        answer(count + about + ", last " + Logger.told(entries.get(entries.size() - 1)) + ".");
    int hidden = Math.max(0, entries.size() - MOST_TOLD);
    entries.subList(hidden, entries.size()).forEach(e -> reply.say(line(e)));
    if (hidden > 0) {
      reply.say(hidden + " earlier ones are in the log as well; export it to see all.");
    }
    totals(entries)
        .forEach((label, sum) -> reply.say("In all " + Shown.of(sum) + " of the " + label + "."));
    return reply.suggest(EXPORT).build();
  }

  /** A name as the log has it, or each of its parts with a capital. */
  private static String name(String who, List<LogEntry> entries) {
    if (!entries.isEmpty()) {
      return entries.get(0).who().orElse(who);
    }
    StringBuilder name = new StringBuilder();
    for (String part : who.split(" ", -1)) {
      name.append(name.isEmpty() ? "" : " ")
          .append(part.substring(0, 1).toUpperCase(Locale.ROOT))
          .append(part.substring(1));
    }
    return name.toString();
  }

  private static String line(LogEntry entry) {
    String told = Logger.told(entry);
    return told.substring(0, 1).toUpperCase(Locale.ROOT) + told.substring(1) + ".";
  }

  /** The sprayings of a span on the lawns and with the labels that a turn names, or all. */
  List<LogEntry> entries(Facts turn, LogSpan span) {
    Collection<String> lawns = turn.lawns();
    if (lawns.isEmpty()) {
      List<String> all = new ArrayList<>(diary.lawns());
      all.add("");
      lawns = all;
    }
    List<LogEntry> entries = new ArrayList<>(diary.between(lawns, span.from(), span.end()));
    entries.removeIf(
        e -> !turn.labels().isEmpty() && !turn.labels().contains(Memory.key(e.label())));
    return entries;
  }

  /** The amounts of each label together, where all of its entries have amounts of one kind. */
  private static Map<String, Quantity> totals(List<LogEntry> entries) {
    Map<String, Quantity> sums = new TreeMap<>();
    List<String> open = new ArrayList<>();
    for (LogEntry entry : entries) {
      Optional<Quantity> product = entry.product();
      Quantity sum = sums.get(entry.label());
      boolean fits =
          product.isPresent() && (sum == null || sum.dimension().equals(product.get().dimension()));
      if (fits) {
        sums.merge(entry.label(), product.get(), Quantity::plus);
      } else {
        open.add(entry.label());
      }
    }
    open.forEach(sums::remove);
    return entries.size() < 2 ? Map.of() : sums;
  }

  private static ReplyBuilder answer(String headline) {
    return new ReplyBuilder(Kind.ANSWER).topic("record").headline(headline);
  }
}
