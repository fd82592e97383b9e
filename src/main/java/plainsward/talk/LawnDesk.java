package plainsward.talk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.reading.PhraseBook;
import plainsward.reading.PhraseColumn;
import plainsward.records.Lawn;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.trade.NameTable;
import plainsward.trade.Row;
import plainsward.units.Shown;

/** Takes in what stands in and near a named lawn: its grass, trees, water, vegetables. */
final class LawnDesk {
  private static final Set<String> DENIED = Set.of("no", "not", "without", "arent", "isnt", "any");
  private static final Set<String> JOB =
      Set.of(
          "label_rate", "strength", "tank", "weed", "day", "catch_volume", "minus", "minus_shape");

  private final Memory memory;
  private final int turn;

  private static final class Held {
    static final List<Row> ROWS = PhraseColumn.LAWN_NOTES.rows();
    static final PhraseBook<String> NOTES =
        PhraseBook.of(PhraseColumn.LAWN_NOTES, n -> ROWS.get(n).text("note"));
  }

  LawnDesk(Memory memory, int turn) {
    this.memory = memory;
    this.turn = turn;
  }

  /** The reply to a turn that tells what a lawn is like, or nothing. */
  Optional<Reply> hear(Facts facts, List<Fact> tied) {
    Set<String> names = new LinkedHashSet<>(facts.lawns());
    if (names.isEmpty()) {
      Spraying.spoken(facts).stream()
          .filter(lawn -> facts.tokens().get(1).is(lawn))
          .forEach(names::add);
    }
    tied.stream()
        .filter(f -> f.name().equals("area") || f.name().equals("shape"))
        .map(Fact::owner)
        .filter(owner -> !owner.isEmpty())
        .forEach(names::add);
    boolean job = tied.stream().anyMatch(f -> JOB.contains(f.name()));
    if (names.size() != 1 || job || facts.says("question") || facts.says("log")) {
      return Optional.empty();
    }
    String name = names.iterator().next();
    Lawn before = memory.lawnCards().get(name).orElseGet(() -> Lawn.named(name));
    Lawn lawn = noted(grassed(before, tied), facts);
    if (lawn.equals(before)) {
      return Optional.empty();
    }
    new Listener(memory, turn)
        .hear(facts, tied.stream().filter(f -> !f.name().equals("grass")).toList());
    memory.lawnCards().put(name, lawn, turn);
    memory.chooseLawns(List.of(name));
    return Optional.of(
        new ReplyBuilder(Kind.DONE)
            .topic("record")
            .headline("Noted: " + words(lawn, memory.lawn(name)) + ".")
            .build());
  }

  private static Lawn grassed(Lawn lawn, List<Fact> tied) {
    return tied.stream()
        .filter(f -> f.name().equals("grass"))
        .findFirst()
        .flatMap(Fact::word)
        .map(id -> lawn.withGrass(NameTable.name("grasses", id)))
        .orElse(lawn);
  }

  private static Lawn noted(Lawn lawn, Facts facts) {
    Lawn told = lawn;
    for (PhraseBook.Found<String> found : Held.NOTES.find(facts.tokens())) {
      boolean is = !isDenied(facts, found.from());
      told =
          switch (found.meaning()) {
            case "trees" -> told.withTrees(is);
            case "water" -> told.withWaterNear(is);
            default -> told.withVegetablesNear(is);
          };
    }
    return told;
  }

  private static boolean isDenied(Facts facts, int at) {
    for (int i = Math.max(0, at - 2); i < at; i++) {
      if (DENIED.contains(facts.tokens().get(i).norm())) {
        return true;
      }
    }
    return false;
  }

  /** A lawn in words. */
  static String words(Lawn lawn, List<Memory.Told> ground) {
    List<String> said = new ArrayList<>();
    if (lawn.area().isPresent()) {
      said.add(Shown.of(lawn.area().get()));
    } else {
      ground.forEach(told -> said.add(told.fact().said()));
    }
    lawn.grass().ifPresent(said::add);
    lawn.trees().ifPresent(is -> said.add(is ? "trees root in it" : "no trees"));
    lawn.waterNear().ifPresent(is -> said.add(is ? "water near" : "no water near"));
    lawn.vegetablesNear().ifPresent(is -> said.add(is ? "vegetables near" : "no vegetables near"));
    lawn.notes().ifPresent(said::add);
    return "the "
        + lawn.name()
        + " lawn: "
        + (said.isEmpty() ? "nothing yet" : String.join("; ", said));
  }
}
