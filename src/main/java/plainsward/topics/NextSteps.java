package plainsward.topics;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import plainsward.trade.Row;
import plainsward.trade.Rows;

/** What is worth asking next where a topic itself has nothing to suggest. */
final class NextSteps {
  private static final Map<String, String> QUESTIONS = load();

  private NextSteps() {}

  /** The next question after a topic, where there is one. */
  static Optional<String> after(String topic) {
    return Optional.ofNullable(QUESTIONS.get(topic));
  }

  private static Map<String, String> load() {
    Map<String, String> questions = new HashMap<>();
    for (Row row : Rows.of("next-steps")) {
      questions.put(row.text("topic"), row.text("ask"));
    }
    return Map.copyOf(questions);
  }
}
