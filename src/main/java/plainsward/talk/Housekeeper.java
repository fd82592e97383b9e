package plainsward.talk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Facts;
import plainsward.records.Lawn;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.reply.Telling;
import plainsward.topics.Known;

/** Turns about the talk itself: what is known, forget this, show the sum, say it shorter. */
final class Housekeeper {
  private static final Set<String> THANKS = Set.of("thanks", "thank", "ty", "cheers", "great");
  private static final int MOST_TOLD = 20;

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
    if (turn.says("recall") && turn.all().stream().noneMatch(f -> f.value().isPresent())) {
      return new Recall(turn, memory).reply().or(() -> Optional.of(known(turn)));
    }
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
      return Optional.of(ReplyBuilder.from(last.get()).telling(Telling.IN_SHORT).build());
    }
    if (turn.says("hello") && nothing) {
      return Optional.of(Replies.greeted(turn.hasWord(THANKS)));
    }
    return Optional.empty();
  }

  private Reply known(Facts turn) {
    Optional<String> sprayer =
        SprayerName.in(turn).filter(name -> memory.sprayerCards().get(name).isPresent());
    boolean named = !turn.labels().isEmpty() || !turn.lawns().isEmpty() || sprayer.isPresent();
    boolean all = !named && !memory.isStranger();
    List<String> lines = new ArrayList<>();
    (all ? memory.labelNames() : turn.labels()).forEach(name -> label(name, lines));
    (all ? memory.lawnNames() : turn.lawns()).forEach(name -> lines.add(lawn(name)));
    memory.sprayerCards().names().stream()
        .filter(name -> all || sprayer.equals(Optional.of(name)))
        .flatMap(name -> memory.sprayerCards().get(name).stream())
        .forEach(s -> lines.add(sentence(SprayerDesk.words(s))));
    if (!named) {
      said(lines);
    }
    if (lines.isEmpty()) {
      return Replies.done("Nothing yet: tell me the lawn, the tank and the label's rate.");
    }
    ReplyBuilder reply =
        new ReplyBuilder(Kind.ANSWER).topic("label").topic("record").headline(lines.get(0));
    lines.subList(1, Math.min(MOST_TOLD, lines.size())).forEach(reply::say);
    if (lines.size() > MOST_TOLD) {
      reply.say("And " + (lines.size() - MOST_TOLD) + " more; ask for one by its name.");
    }
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

  private void label(String name, List<String> lines) {
    memory
        .labelCards()
        .get(name)
        .ifPresent(card -> lines.add("The " + name + ": " + LabelText.whole(card) + "."));
  }

  private String lawn(String name) {
    Lawn lawn = memory.lawnCards().get(name).orElseGet(() -> Lawn.named(name));
    return sentence(LawnDesk.words(lawn, memory.lawn(name)));
  }

  private void said(List<String> lines) {
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

  private static String sentence(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
  }
}
