package plainsward.talk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Facts;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.topics.Known;

/** Turns about the talk itself: what is known, forget this, show the sum, say it shorter. */
final class Housekeeper {
  private static final Set<String> THANKS = Set.of("thanks", "thank", "ty", "cheers", "great");
  private final Memory memory;
  private final Keeper keeper;
  private final Optional<Reply> last;

  Housekeeper(Memory memory, Keeper keeper, Optional<Reply> last) {
    this.memory = memory;
    this.keeper = keeper;
    this.last = last;
  }

  /** The reply, where the turn is about the talk itself. */
  Optional<Reply> hear(Facts turn) {
    if (turn.says("what-known")) {
      return Optional.of(known(turn));
    }
    if (turn.says("forget") && (!turn.lawns().isEmpty() || !turn.labels().isEmpty())) {
      turn.lawns().forEach(memory::dropLawn);
      turn.labels().forEach(memory::dropLabel);
      keeper.forget(turn.labels(), turn.lawns());
      List<String> gone = new ArrayList<>(turn.lawns());
      gone.addAll(turn.labels());
      return Optional.of(Replies.done("Forgotten: " + String.join(", ", gone) + "."));
    }
    boolean nothing = turn.asks().isEmpty() && turn.all().isEmpty();
    if (turn.says("picture") && turn.all().isEmpty()) {
      return Optional.of(Replies.seesNothing());
    }
    if (turn.says("help") && turn.all().isEmpty()) {
      return Optional.of(Replies.about());
    }
    boolean bare = turn.all().stream().noneMatch(f -> f.value().isPresent());
    if (turn.says("show-sum") && last.isPresent() && bare) {
      return Optional.of(Replies.working(last.get()));
    }
    if (turn.says("shorter") && last.isPresent() && bare && turn.asks().isEmpty()) {
      return Optional.of(shorter(last.get()));
    }
    if (turn.says("hello") && nothing) {
      return Optional.of(Replies.greeted(turn.hasWord(THANKS)));
    }
    return Optional.empty();
  }

  /** The same without its text, to be told in short. */
  private static Reply shorter(Reply reply) {
    ReplyBuilder brief = new ReplyBuilder(reply.kind()).headline(reply.headline()).brief();
    reply.topics().forEach(brief::topic);
    reply.figures().forEach(brief::figure);
    reply.cautions().forEach(brief::caution);
    reply.needs().forEach(brief::need);
    reply.suggest().forEach(brief::suggest);
    return brief.understood(reply.understood()).build();
  }

  private Reply known(Facts turn) {
    ReplyBuilder reply = new ReplyBuilder(Kind.ANSWER).topic("label").topic("record");
    List<String> lines = new ArrayList<>();
    for (String label : turn.labels().isEmpty() ? memory.labelNames() : turn.labels()) {
      memory
          .labelCards()
          .get(label)
          .ifPresent(card -> lines.add("The " + label + ": " + LabelText.whole(card) + "."));
    }
    if (turn.labels().isEmpty()) {
      memory.lawnNames().forEach(lawn -> lines.add("The " + lawn + " lawn: " + lawn(lawn) + "."));
      List<String> rest = new ArrayList<>();
      for (String name : memory.names()) {
        memory.all(name).stream()
            .filter(t -> t.fact().owner().isEmpty())
            .forEach(t -> rest.add(name.replace('_', ' ') + " " + t.fact().said()));
      }
      if (!rest.isEmpty()) {
        lines.add("Said so far: " + String.join(", ", rest) + ".");
      }
    }
    if (lines.isEmpty()) {
      return Replies.done("Nothing yet: tell me the lawn, the tank and the label's rate.");
    }
    reply.headline(lines.get(0));
    lines.subList(1, lines.size()).forEach(reply::say);
    for (String name : memory.names()) {
      reply.understood(
          Known.understood(
              memory.all(name).stream()
                  .filter(t -> t.turn() != Keeper.SAVED)
                  .map(t -> new Known(t.fact(), "earlier"))
                  .toList()));
    }
    return reply.build();
  }

  private String lawn(String name) {
    memory.chooseLawns(List.of(name));
    return said(memory.all("area"));
  }

  private static String said(java.util.Collection<Memory.Told> facts) {
    return String.join(", ", facts.stream().map(t -> t.fact().said()).distinct().toList());
  }
}
