package plainsward.talk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.reading.Token;
import plainsward.records.Sprayer;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.topics.Dates;
import plainsward.units.Dimension;
import plainsward.units.Shown;

/** Takes in what is told of a sprayer: its tank, what it lays down and since when, what it held. */
final class SprayerDesk {
  private static final Set<String> HELD = Set.of("was", "held", "had", "for", "is", "with", "were");
  private static final Set<String> WHEN = Set.of("in", "last", "on", "yesterday", "today");
  private static final Set<String> JOB =
      Set.of("label_rate", "strength", "area", "shape", "catch_volume", "test_area", "nozzle_flow");

  /** Words between what a sprayer held and the verb before it. */
  private static final Set<String> ARTICLES = Set.of("a", "an", "the", "some", "my", "our", "just");

  private final Memory memory;
  private final LocalDate today;
  private final int turn;

  SprayerDesk(Memory memory, LocalDate today, int turn) {
    this.memory = memory;
    this.today = today;
    this.turn = turn;
  }

  /** The reply to a turn that tells a sprayer and nothing else, or nothing. */
  Optional<Reply> hear(Facts facts, List<Fact> tied) {
    Optional<String> named = SprayerName.in(facts);
    named
        .filter(name -> memory.sprayerCards().get(name).isPresent())
        .ifPresent(memory::chooseSprayer);
    boolean job = tied.stream().anyMatch(f -> JOB.contains(f.name()));
    if (facts.says("question") || facts.says("log") || job) {
      return Optional.empty();
    }
    String name = named.orElseGet(memory::chosenSprayer);
    Optional<Fact> tank = first(tied, "tank");
    Optional<Fact> rate =
        first(tied, "spray_rate")
            .filter(f -> f.amount().dimension().equals(Dimension.VOLUME_PER_AREA));
    boolean told =
        named.isPresent() && tank.isPresent() || facts.says("calibrated") && rate.isPresent();
    boolean kept = memory.sprayerCards().get(name).isPresent();
    boolean content = kept && (facts.says("held-last") || facts.says("cleaned"));
    if (name.isEmpty() || !told && !content) {
      return Optional.empty();
    }
    return Optional.of(told(name, facts, tied, tank, rate));
  }

  private static Optional<Fact> first(List<Fact> tied, String role) {
    return tied.stream()
        .filter(f -> f.name().equals(role) && f.value().isPresent() && f.amount().signum() > 0)
        .findFirst();
  }

  private Reply told(
      String name, Facts facts, List<Fact> tied, Optional<Fact> tank, Optional<Fact> rate) {
    Sprayer sprayer = memory.sprayerCards().get(name).orElseGet(() -> Sprayer.named(name));
    if (tank.isPresent()) {
      sprayer = sprayer.withTank(tank.get().amount());
    }
    if (rate.isPresent()) {
      sprayer = sprayer.withSprayRate(rate.get().amount(), day(facts, tied));
    }
    if (facts.says("cleaned")) {
      sprayer = sprayer.withoutHeld();
    }
    Optional<String> held = facts.says("held-last") ? held(facts) : Optional.empty();
    if (held.isPresent()) {
      sprayer = sprayer.withHeld(held.get(), day(facts, tied));
    }
    memory.sprayerCards().put(name, sprayer, turn);
    memory.chooseSprayer(name);
    tank.ifPresent(f -> memory.replace("tank", List.of(f), turn));
    rate.ifPresent(f -> memory.replace("spray_rate", List.of(f), turn));
    return new ReplyBuilder(Kind.DONE)
        .topic("record")
        .headline("Noted: " + words(sprayer) + ".")
        .build();
  }

  /** The day that was said, or the first of a month that was; else today. */
  private LocalDate day(Facts facts, List<Fact> tied) {
    LogSpan span = LogSpan.of(facts, today);
    LocalDate usual = span.words().isEmpty() ? today : span.from();
    return tied.stream()
        .flatMap(f -> f.date().stream())
        .filter(d -> !d.isAfter(today))
        .findFirst()
        .orElse(usual);
  }

  /** The words behind the last "was", "held", "had" or "for". */
  private static Optional<String> held(Facts facts) {
    List<Token> tokens = facts.tokens();
    if (!facts.labels().isEmpty()) {
      return Optional.of(facts.labels().get(0));
    }
    int from = -1;
    for (int i = 0; i < tokens.size(); i++) {
      if (HELD.contains(tokens.get(i).norm())) {
        from = i + 1;
      }
    }
    while (from >= 0 && from < tokens.size() && ARTICLES.contains(tokens.get(from).norm())) {
      from++;
    }
    int to = from;
    while (to >= 0
        && to < tokens.size()
        && !tokens.get(to).endsSentence()
        && !tokens.get(to).is(",")
        && !WHEN.contains(tokens.get(to).norm())) {
      to++;
    }
    return from < 0 || to <= from
        ? Optional.empty()
        : Optional.of(
            facts.text().substring(tokens.get(from).start(), tokens.get(to - 1).end()).strip());
  }

  /** A sprayer in words. */
  static String words(Sprayer sprayer) {
    List<String> said = new ArrayList<>();
    sprayer.tank().ifPresent(t -> said.add("a tank of " + Shown.of(t)));
    sprayer
        .sprayRate()
        .ifPresent(
            r ->
                said.add(
                    Shown.of(r)
                        + sprayer
                            .calibrated()
                            .map(d -> ", calibrated on " + Dates.shown(d))
                            .orElse("")));
    sprayer
        .held()
        .ifPresent(
            h ->
                said.add(
                    "last held "
                        + h.product()
                        + h.day().map(d -> ", as of " + Dates.shown(d)).orElse("")));
    return "the "
        + sprayer.name()
        + ": "
        + (said.isEmpty() ? "nothing yet" : String.join("; ", said));
  }
}
