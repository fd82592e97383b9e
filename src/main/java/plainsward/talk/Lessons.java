package plainsward.talk;

import java.util.List;
import java.util.Optional;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.reply.Figure;
import plainsward.reply.Reply;
import plainsward.topics.IdentifyTopic;
import plainsward.units.Quantity;

/** What an answer itself teaches, to be remembered: an output that was measured, a weed found. */
final class Lessons {
  private static final List<String> OUTPUT = List.of("calibrate");

  private final Memory memory;
  private final Optional<Memory> before;
  private final int turn;

  /**
   * The lessons of a turn.
   *
   * @param before what was remembered before the turn, where it is known
   */
  Lessons(Memory memory, Optional<Memory> before, int turn) {
    this.memory = memory;
    this.before = before;
    this.turn = turn;
  }

  /** Remembers what the answer to a request of these topics found out. */
  void learn(Facts facts, List<String> topics, Reply reply) {
    if (topics.contains("identify") && !facts.has("weed")) {
      IdentifyTopic.likeliest(facts.tokens()).ifPresent(this::likely);
    }
    boolean output = topics.equals(OUTPUT);
    if (output) {
      measured(reply);
    }
    if (reply.figure("spread_rate").isPresent()) {
      thrown(reply.figure("spread_rate").get().value().orElseThrow());
    }
    if (output && reply.figure("spray_rate").isPresent()
        || reply.figure("spread_rate").isPresent()) {
      lawnAgain();
    }
  }

  /** A weed known by its looks is spoken of from now on, and said to be taken so. */
  private void likely(String weed) {
    Fact fact = Fact.of("weed", weed, "the weed you described", 0).doubting(List.of("likely"));
    memory.replace("weed", List.of(fact), turn);
  }

  /** What the sprayer was found to lay down counts from now on. */
  private void measured(Reply reply) {
    Optional<Quantity> rate = reply.figure("spray_rate").flatMap(Figure::value);
    if (rate.isPresent()) {
      Fact fact = Fact.of("spray_rate", rate.get(), "as measured", 0);
      memory.replace("spray_rate", List.of(fact), turn);
    }
  }

  /** What a spreader was found to throw is held against a rate that is told later. */
  private void thrown(Quantity rate) {
    memory.replace("spread_rate", List.of(Fact.of("spread_rate", rate, "as measured", 0)), turn);
    memory.drop("test_amount");
  }

  /** A test piece is not the lawn: what the lawn was before this turn, it is again. */
  private void lawnAgain() {
    if (memory.latest("area").map(t -> t.turn() != turn).orElse(true)) {
      return;
    }
    memory.drop("area");
    for (Memory.Told told : before.map(m -> m.all("area")).orElse(List.of())) {
      memory.add("area", told.fact(), told.turn());
    }
  }
}
