package plainsward.talk;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import plainsward.reading.TradeNames;
import plainsward.records.Label;
import plainsward.records.Lawn;
import plainsward.records.Sprayer;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.safety.Cautions;
import plainsward.topics.Dates;
import plainsward.trade.NameTable;
import plainsward.trade.Row;
import plainsward.trade.Rows;

/**
 * What the kept lawn, label and sprayer of a job call for: a grass that the label harms gets no
 * amount; the sprayer's last content, an old calibration, trees, water and vegetables are
 * mentioned.
 */
final class JobNotes {
  private static final Set<String> DOSES = Set.of("mix", "strength", "coverage");

  private final Memory memory;
  private final LocalDate today;

  private static final class Held {
    static final int OLD_MONTHS =
        Rows.of("record-limits").stream()
            .filter(row -> row.text("id").equals("calibration-age"))
            .map(Held::months)
            .findFirst()
            .orElseThrow();

    private static int months(Row row) {
      return row.number("months").orElseThrow().intValue();
    }
  }

  JobNotes(Memory memory, LocalDate today) {
    this.memory = memory;
    this.today = today;
  }

  private static boolean isDose(List<String> topics) {
    return topics.stream().anyMatch(DOSES::contains);
  }

  /** The refusal, where the lawn spoken of has a grass that the label in hand harms. */
  Optional<Reply> harmed(List<String> topics) {
    Optional<Label> label = memory.labelCards().get(memory.chosenLabel());
    if (!isDose(topics) || label.isEmpty()) {
      return Optional.empty();
    }
    Set<String> harms =
        Set.copyOf(memory.all("grass_harmed").stream().map(JobNotes::word).toList());
    return grasses()
        .filter(grass -> harms.contains(grass))
        .findFirst()
        .map(
            grass ->
                new ReplyBuilder(Kind.DECLINE)
                    .topic("mix")
                    .headline(
                        "No: your label says that it harms "
                            + NameTable.name("grasses", grass)
                            + ", so I give no amount for it. Find a label that lists that grass.")
                    .caution(Cautions.of("grass-type"))
                    .caution(Cautions.of("off-label"))
                    .caution(Cautions.of("read-label"))
                    .build());
  }

  private static String word(Memory.Told told) {
    return told.fact().word().orElse("");
  }

  /** The grasses of the lawns spoken of, and one that was spoken of where no lawn has its own. */
  private Stream<String> grasses() {
    List<String> ofLawns =
        lawns()
            .flatMap(l -> l.grass().stream())
            .flatMap(g -> TradeNames.grass(g).stream())
            .toList();
    return ofLawns.isEmpty()
        ? memory.latest("grass").map(JobNotes::word).stream()
        : ofLawns.stream();
  }

  private Stream<Lawn> lawns() {
    return memory.chosenLawns().stream().flatMap(name -> memory.lawnCards().get(name).stream());
  }

  /** The answer with what is to be mentioned. */
  Reply noted(Reply reply) {
    if (reply.kind() != Kind.ANSWER || !isDose(reply.topics())) {
      return reply;
    }
    ReplyBuilder more = ReplyBuilder.from(reply);
    memory
        .sprayerCards()
        .get(memory.chosenSprayer())
        .ifPresent(
            sprayer -> {
              residue(sprayer, more);
              age(sprayer, more);
            });
    lawns().forEach(lawn -> surroundings(lawn, more));
    return more.build();
  }

  private void residue(Sprayer sprayer, ReplyBuilder more) {
    sprayer
        .held()
        .filter(h -> !Memory.key(h.product()).equals(memory.chosenLabel()))
        .ifPresent(
            held ->
                more.caution(Cautions.of("sprayer-residue"))
                    .say(
                        "The "
                            + sprayer.name()
                            + " last held "
                            + held.product()
                            + ": rinse it three times, with a cleaner if that was a weed killer of "
                            + "another kind, or take another sprayer."));
  }

  private void age(Sprayer sprayer, ReplyBuilder more) {
    sprayer
        .calibrated()
        .filter(day -> day.plusMonths(Held.OLD_MONTHS).isBefore(today))
        .ifPresent(
            day ->
                more.caution(Cautions.of("calibrate-first"))
                    .say(
                        "The "
                            + sprayer.name()
                            + " was calibrated on "
                            + Dates.shown(day)
                            + ", more than "
                            + Held.OLD_MONTHS
                            + " months ago: measure it again before you trust the figure. "
                            + "(Common practice, no source.)"));
  }

  private static void surroundings(Lawn lawn, ReplyBuilder more) {
    if (lawn.trees().orElse(false)) {
      more.caution(Cautions.of("tree-roots"));
    }
    if (lawn.waterNear().orElse(false)) {
      more.caution(Cautions.of("water-nearby"));
    }
    if (lawn.vegetablesNear().orElse(false)) {
      more.caution(Cautions.of("food-plants")).caution(Cautions.of("drift-plants"));
    }
  }
}
