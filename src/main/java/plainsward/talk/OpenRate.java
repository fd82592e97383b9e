package plainsward.talk;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.units.Ratio;

/**
 * A rate of which only the number was said: "4k lawn at 1.5". What it is of and per what is asked,
 * and the words that answer, "per thousand, ounces", are read with the number before them.
 */
final class OpenRate {
  private static final Set<String> BEFORE = Set.of("at", "@", "rate", "is", "of", "using");
  private static final Ratio MOST = Ratio.of(100);

  private OpenRate() {}

  /** The number of such a rate, where a turn gives one and no rate. */
  static Optional<Fact> number(Facts turn, Memory memory) {
    boolean rate =
        turn.has("label_rate")
            || turn.has("strength")
            || memory.has("label_rate")
            || memory.has("strength");
    List<Fact> amounts = turn.of("product_amount");
    if (!rate && amounts.size() == 1 && turn.of("number").isEmpty()) {
      return Optional.of(amounts.get(0));
    }
    List<Fact> numbers = turn.of("number");
    boolean alone = !rate && numbers.size() == 1 && turn.all().size() == 1 && memory.has("area");
    if (alone && turn.asks().isEmpty() && numbers.get(0).amount().value().compareTo(MOST) < 0) {
      return Optional.of(numbers.get(0));
    }
    if (rate
        || numbers.size() != 1
        || !turn.has("area") && !turn.has("shape") && !turn.has("tank")) {
      return Optional.empty();
    }
    Fact number = numbers.get(0);
    boolean listed = turn.has("tank") && number.at() == turn.tokens().size() - 1;
    boolean named =
        number.at() > 0
            && (listed || BEFORE.contains(turn.tokens().get(number.at() - 1).norm()))
            && number.amount().value().compareTo(MOST) < 0;
    return named ? Optional.of(number) : Optional.empty();
  }

  /** Asks what the number is of, and per what. */
  static Reply asked(Fact number) {
    boolean unit = !number.name().equals("number");
    return new ReplyBuilder(Kind.ASK)
        .topic("mix")
        .headline(
            unit
                ? number.said()
                    + " per what: per 1,000 sq ft, per acre, or per gallon? It stands beside the "
                    + "amount on the label, under \"Directions for Use\"."
                : number.said()
                    + " of what, and per what? Say the unit and what it is per, such as fluid ounces "
                    + "per 1,000 sq ft, per acre, or per gallon.")
        .need("label_rate")
        .build();
  }

  /** Whether a turn has no figure of its own, so that it may tell what a number was of. */
  static boolean tells(Facts turn) {
    boolean unitFirst =
        turn.first("wanted").map(f -> f.at() == 0).orElse(false)
            || !turn.tokens().isEmpty() && turn.tokens().get(0).is("per");
    boolean figures =
        turn.all().stream().anyMatch(f -> f.value().isPresent() || !f.sides().isEmpty());
    return unitFirst || !figures && turn.asks().isEmpty();
  }
}
