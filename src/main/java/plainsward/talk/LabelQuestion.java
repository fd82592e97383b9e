package plainsward.talk;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Facts;
import plainsward.reading.LabelWords;
import plainsward.reading.TradeNames;
import plainsward.records.Label;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.safety.Cautions;

/** Answers what a kept label says about something: rain, gloves, a grass. */
final class LabelQuestion {
  private final Memory memory;

  LabelQuestion(Memory memory) {
    this.memory = memory;
  }

  /** The reply, where a kept label is asked about by its name; else nothing. */
  Optional<Reply> hear(Facts turn) {
    boolean asked = turn.says("label-ask") && turn.labels().size() == 1;
    boolean figures = turn.all().stream().anyMatch(f -> f.value().isPresent());
    Optional<Label> label =
        asked && !figures ? memory.labelCards().get(turn.labels().get(0)) : Optional.empty();
    return label.flatMap(card -> grass(turn, card).or(() -> fields(turn, card)));
  }

  private static Optional<Reply> grass(Facts turn, Label label) {
    Optional<String> id = turn.first("grass").flatMap(f -> f.word());
    boolean harmed = id.filter(g -> names(label.grasses().harms(), g)).isPresent();
    boolean allowed = id.filter(g -> names(label.grasses().allows(), g)).isPresent();
    if (!harmed && !allowed) {
      return Optional.empty();
    }
    String said = turn.first("grass").orElseThrow().said();
    String name = turn.labels().get(0);
    return Optional.of(
        answer(
                harmed
                    ? "No: the " + name + "'s label, as you told it, is not for " + said + "."
                    : "Yes: the " + name + "'s label, as you told it, lists " + said + ".")
            .caution(Cautions.of("grass-type"))
            .caution(Cautions.of("read-label"))
            .build());
  }

  private static boolean names(List<String> grasses, String id) {
    return grasses.stream().anyMatch(g -> TradeNames.grass(g).equals(Optional.of(id)));
  }

  private static Optional<Reply> fields(Facts turn, Label label) {
    Set<String> fields = LabelWords.fields(turn);
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    List<String> told =
        LabelText.lines(label).entrySet().stream()
            .filter(line -> fields.stream().anyMatch(f -> line.getKey().startsWith(f)))
            .map(line -> line.getValue())
            .toList();
    return told.isEmpty()
        ? Optional.empty()
        : Optional.of(
            answer("The " + turn.labels().get(0) + "'s label: " + String.join("; ", told) + ".")
                .caution(Cautions.of("read-label"))
                .build());
  }

  private static ReplyBuilder answer(String headline) {
    return new ReplyBuilder(Kind.ANSWER).topic("label").headline(headline);
  }
}
