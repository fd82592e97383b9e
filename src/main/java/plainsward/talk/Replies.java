package plainsward.talk;

import java.util.List;
import java.util.Optional;
import plainsward.dosing.NotDosable;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.reading.Token;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.reply.Telling;
import plainsward.topics.Known;
import plainsward.topics.Request;
import plainsward.units.Shown;
import plainsward.units.Units;

/** The replies that belong to the talk itself and to no topic. */
final class Replies {
  private static final String CAN_DO =
      "I work out doses, tanks, areas, sprayer output, nitrogen, costs and dates from your label. I "
          + "answer questions about lawn weeds and spraying too.";

  private static final String EXAMPLE =
      "How much for 4,000 sq ft at 1.5 fl oz per 1,000 sq ft in a 2 gal sprayer?";

  private Replies() {}

  static Reply nothingToRead() {
    return unsure("There was nothing to read. Ask me about lawn weeds or a spray mix.");
  }

  static Reply notUnderstood() {
    return unsure("I did not understand that.");
  }

  /** The same, with the titles of notes that may be what is meant. */
  static Reply notUnderstood(List<String> titles) {
    if (titles.isEmpty()) {
      return notUnderstood();
    }
    return ReplyBuilder.from(
            unsure("I'm not sure what you mean. Is it this: " + String.join("; or ", titles) + "?"))
        .say("Say which, or put it in other words.")
        .build();
  }

  private static Reply unsure(String headline) {
    return new ReplyBuilder(Kind.UNSURE).headline(headline).say(CAN_DO).suggest(EXAMPLE).build();
  }

  /** What this is and what it can do. */
  static Reply about() {
    return new ReplyBuilder(Kind.ANSWER)
        .topic("about")
        .headline("I am Plainsward, a program that helps kill lawn weeds and keep the grass thick.")
        .say(CAN_DO)
        .say(
            "I know no product: you read me the rate off your label, and I never go above it. I "
                + "see no pictures, sell nothing, and what you tell me stays on this machine.")
        .suggest(EXAMPLE)
        .build();
  }

  /** Asked to look at something. */
  static Reply seesNothing() {
    return new ReplyBuilder(Kind.ANSWER)
        .topic("about")
        .headline("No, I see no pictures. Tell me the leaf, the flower and how it grows.")
        .say("Of a label, read me the rate and what it is per: so much per 1,000 sq ft, say.")
        .suggest("Round scalloped leaves, square stem, smells of mint. What is it?")
        .build();
  }

  /** A greeting or thanks, with nothing asked. */
  static Reply greeted(boolean thanks) {
    return new ReplyBuilder(Kind.ANSWER)
        .topic("about")
        .headline(
            thanks
                ? "You are welcome. Ask away if there is more."
                : "Hello. Ask me about lawn weeds, a spray mix, or feeding the lawn.")
        .suggest(EXAMPLE)
        .build();
  }

  /** A capful, a glug, a scoop: no two hold the same. */
  static Reply vagueMeasure(Facts turn) {
    String of =
        turn.tokens().stream()
            .map(Token::norm)
            .filter(w -> w.matches("gallon|gallons|gal|litre|liter|litres|liters"))
            .findFirst()
            .map(w -> w.startsWith("l") ? "litre" : "gallon")
            .orElse("");
    return new ReplyBuilder(Kind.ASK)
        .topic("mix")
        .headline(
            "How many fluid ounces, tablespoons or mL is that in all for each "
                + (of.isEmpty() ? "1,000 sq ft" : of)
                + "?")
        .say(
            "A cap, a scoop or a glug is no fixed measure: one may hold many times what another "
                + "does. Look for marks inside the cap, or measure it with water. The label gives "
                + "the rate under \"Directions for use\".")
        .need(of.isEmpty() ? "label_rate" : "strength")
        .build();
  }

  /** A number in words that can't be read whole is asked for in figures, never guessed. */
  static Reply unread(Fact number, Memory memory) {
    boolean ground = memory.has("area") || memory.has("shape") || memory.has("spray_volume");
    boolean rate = memory.has("label_rate") || memory.has("strength");
    return new ReplyBuilder(Kind.ASK)
        .topic("mix")
        .headline("I can't make out \"" + number.said() + "\". What is it, in figures?")
        .need(ground && !rate ? "label_rate" : "area")
        .build();
  }

  /** More of the same mishap: it goes on, and the first advice stands. */
  static Reply stillEmergency(Reply before) {
    ReplyBuilder reply = new ReplyBuilder(Kind.EMERGENCY).topic("exposure");
    reply.headline("Keep on with that first, and tell this to whoever you call.");
    reply.say(before.headline());
    before.body().forEach(reply::say);
    before.cautions().forEach(reply::caution);
    before.suggest().forEach(reply::suggest);
    return reply.build();
  }

  /** The last answer, which holds for what is spoken of now as well. */
  static Reply sameAgain(Reply last) {
    return ReplyBuilder.from(last).headline("The same: " + last.headline()).build();
  }

  static Reply done(String headline) {
    return new ReplyBuilder(Kind.DONE).headline(headline).build();
  }

  /** How the product is sold, where that alone was told. */
  static Optional<Reply> form(Facts turn) {
    if (!turn.asks().isEmpty() || turn.says("question")) {
      return Optional.empty();
    }
    if (turn.says("ready-to-use")) {
      return Optional.of(done("Noted: ready to use. Nothing is mixed with it, no water either."));
    }
    if (turn.says("concentrate")) {
      return Optional.of(done("Noted: a concentrate, to be mixed with water by the label."));
    }
    return turn.says("dry-product")
        ? Optional.of(done("Noted: a dry product. Weigh it; do not use a spoon or cup."))
        : Optional.empty();
  }

  /** Says back what was taken in. */
  static Reply noted(List<Fact> facts, Memory memory) {
    StringBuilder line = new StringBuilder("Noted: ");
    line.append(String.join(", ", facts.stream().map(Replies::readBack).distinct().toList()));
    ReplyBuilder reply = new ReplyBuilder(Kind.DONE).headline(line.append('.').toString());
    reply.understood(facts.stream().map(f -> new Known(f, "question").understood()).toList());
    return reply.suggest(next(memory)).build();
  }

  /** What the next sum wants that is not known. */
  private static String next(Memory memory) {
    boolean rate = memory.has("label_rate") || memory.has("strength");
    boolean ground = memory.has("area") || memory.has("shape");
    if (!rate) {
      return ground
          ? "How much for my lawn? Tell me the label's rate."
          : "How much for 4,000 sq ft? Tell me your label's rate.";
    }
    if (!ground) {
      return "How much for my lawn? Tell me its size.";
    }
    return memory.has("interval") && memory.has("last_applied")
        ? "When can I spray again?"
        : "How much for my lawn?";
  }

  /** What was said, with what it was taken for where the words leave that open. */
  static String readBack(Fact fact) {
    boolean open =
        fact.leavesOpen("square") || fact.leavesOpen("square-metre") || fact.leavesOpen("unit");
    if (!open || fact.value().isEmpty()) {
      return new Known(fact, "question").understood().said();
    }
    String taken = Shown.of(fact.amount());
    boolean metres = fact.leavesOpen("square-metre");
    String words =
        metres
            ? taken + ", square metres, about " + Shown.of(fact.amount().in(Units.SQUARE_FOOT))
            : taken;
    return fact.said() + " (taken as " + words + ")";
  }

  /** The last sum, step by step. */
  static Reply working(Reply last) {
    if (last.working().isEmpty()) {
      return unsure("There is no sum to show yet.");
    }
    return ReplyBuilder.from(last).telling(Telling.THE_SUM).build();
  }

  /** Things that can't be put together, such as a speed and a bottle. */
  static Reply mixedUp(String topic, Request request) {
    String said =
        String.join(
            ", ",
            request.turn().all().stream()
                .filter(f -> f.value().isPresent())
                .map(Fact::said)
                .toList());
    return new ReplyBuilder(Kind.ASK)
        .topic(topic)
        .headline(
            "I can't put these together: " + said + ". Say again what each of them is, please.")
        .need("label_rate")
        .understood(Known.understood(request.used()))
        .build();
  }

  /** A sum that makes no sense with what was given. */
  static Reply senseless(String topic, NotDosable fault, Request request) {
    String name = fault.name().replace('_', ' ');
    String value = request.amount(fault.name()).map(q -> " (" + Shown.of(q) + ")").orElse("");
    return new ReplyBuilder(Kind.ASK)
        .topic(topic)
        .headline("The " + name + value + " " + fault.why().words() + ". What should it be?")
        .need(fault.name())
        .understood(Known.understood(request.used()))
        .build();
  }
}
