package plainsward.talk;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import plainsward.reading.Facts;
import plainsward.reading.Token;
import plainsward.records.Label;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;

/**
 * Asks for what is missing of a label, one thing at a time, and says where on a label it stands.
 */
final class Interviewer {
  private static final Set<String> NO_NAME =
      Set.of("the", "my", "a", "it", "its", "is", "call", "called", "name", "just", "i", "we", "s");
  private static final int MOST_WORDS = 4;

  private final Memory memory;
  private final int turn;

  Interviewer(Memory memory, int turn) {
    this.memory = memory;
    this.turn = turn;
  }

  /** The reply to a turn that begins, ends or leads the asking, or nothing. */
  Optional<Reply> hear(Facts facts) {
    boolean bare = facts.all().stream().noneMatch(f -> f.value().isPresent());
    if (facts.says("put-label") && bare) {
      return Optional.of(begin(facts));
    }
    Optional<Interview> now = memory.interview();
    boolean resumes = facts.says("what-missing") && bare;
    if (now.isEmpty()) {
      boolean known = memory.labelCards().get(memory.chosenLabel()).isPresent();
      return resumes && known ? Optional.of(begin(facts)) : Optional.empty();
    }
    if (facts.says("enough")) {
      memory.interview(Optional.empty());
      return Optional.of(end(now.get().label()));
    }
    if (now.get().open().equals(Interview.NAME)) {
      return facts.says("question") ? Optional.empty() : named(facts);
    }
    if (resumes) {
      return Optional.of(goOn(now.get().label(), "").build());
    }
    boolean skips = bare && (facts.says("skip") || facts.says("dont-know"));
    if (skips) {
      memory.interview(Optional.of(now.get().skipping()));
      return Optional.of(goOn(now.get().label(), "").build());
    }
    return Optional.empty();
  }

  private Reply begin(Facts facts) {
    String name = facts.labels().isEmpty() ? memory.chosenLabel() : facts.labels().get(0);
    boolean fresh = facts.says("another-label") && facts.labels().isEmpty();
    if (name.isEmpty() || fresh) {
      memory.interview(Optional.of(Interview.about("").asking(Interview.NAME)));
      return new ReplyBuilder(Kind.ASK)
          .topic("label")
          .headline("What do you call it? Any name will do, such as \"the blue jug\".")
          .need("product")
          .build();
    }
    return start(name);
  }

  private Reply start(String name) {
    Label label = memory.labelCards().get(name).orElseGet(() -> Label.named(name).label());
    memory.labelCards().put(name, label, turn);
    memory.chooseLabel(name);
    memory.interview(Optional.of(Interview.about(name)));
    return goOn(name, "The " + name + ".").build();
  }

  private Optional<Reply> named(Facts facts) {
    String name =
        facts.labels().isEmpty()
            ? facts.tokens().stream()
                .filter(Token::isWord)
                .map(Token::norm)
                .filter(word -> !NO_NAME.contains(word))
                .limit(MOST_WORDS)
                .collect(Collectors.joining(" "))
            : facts.labels().get(0);
    return name.isEmpty() ? Optional.empty() : Optional.of(start(name));
  }

  /** The next question, after what was just noted; or the whole label where nothing is missing. */
  ReplyBuilder goOn(String name, String noted) {
    Interview interview = memory.interview().orElseGet(() -> Interview.about(name));
    Label label = memory.labelCards().get(name).orElseGet(() -> Label.named(name).label());
    Optional<Interview.Question> next = interview.next(label);
    if (next.isEmpty()) {
      memory.interview(Optional.empty());
      return ReplyBuilder.from(end(name));
    }
    memory.interview(Optional.of(interview.asking(next.get().field())));
    return new ReplyBuilder(Kind.ASK)
        .topic("label")
        .headline((noted + " " + next.get().text()).strip())
        .need(next.get().needs())
        .suggest("Skip that.")
        .suggest("That's all.");
  }

  private Reply end(String name) {
    List<String> lines =
        memory
            .labelCards()
            .get(name)
            .map(l -> List.copyOf(LabelText.lines(l).values()))
            .orElse(List.of());
    String told =
        lines.isEmpty()
            ? "Nothing is noted of the label yet."
            : "That is the " + name + ": " + String.join("; ", lines) + ".";
    return new ReplyBuilder(Kind.DONE).topic("label").headline(told).build();
  }
}
