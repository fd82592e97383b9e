package plainsward.talk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.reading.Token;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.topics.Known;
import plainsward.units.Shown;

/**
 * "what was my rate again", "and the label?": one thing of what was told, or what to tell of it.
 */
final class Recall {
  private static final List<String> RATE = List.of("label_rate", "strength");
  private static final Map<String, List<String>> ROLES =
      Map.ofEntries(
          Map.entry("rate", RATE),
          Map.entry("dose", RATE),
          Map.entry("strength", RATE),
          Map.entry("label", List.of("label_rate", "strength", "interval", "season_limit")),
          Map.entry("area", List.of("area")),
          Map.entry("size", List.of("area")),
          Map.entry("lawn", List.of("area")),
          Map.entry("yard", List.of("area")),
          Map.entry("footage", List.of("area")),
          Map.entry("tank", List.of("tank")),
          Map.entry("sprayer", List.of("tank", "spray_rate")),
          Map.entry("output", List.of("spray_rate")),
          Map.entry("interval", List.of("interval")),
          Map.entry("price", List.of("price")));

  private final Facts turn;
  private final Memory memory;

  Recall(Facts turn, Memory memory) {
    this.turn = turn;
    this.memory = memory;
  }

  /** What is known of the thing named, or the question for it; nothing where cards may have it. */
  Optional<Reply> reply() {
    for (Token word : turn.tokens()) {
      List<String> roles = ROLES.get(word.norm());
      if (roles != null) {
        return told(word.norm(), roles);
      }
    }
    return Optional.empty();
  }

  /** Whether labels or lawns are kept, none of them in hand, that may have it. */
  private boolean isKept(List<String> roles) {
    return !memory.isStranger()
        && (roles.contains("area")
            ? !memory.lawnNames().isEmpty()
            : !memory.labelNames().isEmpty());
  }

  private Optional<Reply> told(String thing, List<String> roles) {
    List<Fact> known = new ArrayList<>();
    for (String role : roles) {
      memory.all(role).forEach(told -> known.add(told.fact()));
    }
    if (known.isEmpty()) {
      return isKept(roles) ? Optional.empty() : Optional.of(asked(roles.get(0)));
    }
    List<String> words = known.stream().map(Recall::words).distinct().toList();
    return Optional.of(
        new ReplyBuilder(Kind.ANSWER)
            .topic("record")
            .headline("The " + thing + " that you told me: " + String.join(", ", words) + ".")
            .understood(Known.understood(known.stream().map(f -> new Known(f, "earlier")).toList()))
            .build());
  }

  private static String words(Fact fact) {
    String said = Replies.readBack(fact);
    boolean same = fact.value().isEmpty() || !fact.high().isEmpty() || said.contains("(");
    String shown = same ? said : Shown.of(fact.amount());
    return fact.name().equals("interval") ? shown + " between applications" : shown;
  }

  private static Reply asked(String role) {
    boolean area = role.equals("area");
    boolean rate = role.equals("label_rate");
    String question =
        rate
            ? "What does the label give: so much per 1,000 sq ft, per acre or per gallon?"
            : area ? "How big is the lawn: square feet, or its sides?" : "What is it?";
    return new ReplyBuilder(Kind.ASK)
        .topic(rate ? "label" : "record")
        .headline("You have not told me yet. " + question)
        .need(role)
        .build();
  }
}
