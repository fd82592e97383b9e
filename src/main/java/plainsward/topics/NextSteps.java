package plainsward.topics;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plainsward.reading.Token;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.trade.Row;
import plainsward.trade.Rows;

/**
 * What is worth asking next, from the table {@code next-steps}: of several questions the first that
 * was not just asked and that the reply does not answer already.
 */
public final class NextSteps {
  private static final Map<String, List<Step>> AFTER = new HashMap<>();
  private static final Map<String, Step> BY_QUESTION = new HashMap<>();

  /**
   * A row of the table.
   *
   * @param ask the question
   * @param known the roles that must be known for it
   * @param figures the figures of which any answers it already
   * @param unless beginnings of words: where all of one list were said, it was asked
   */
  private record Step(
      String ask, List<String> known, List<String> figures, List<String[]> unless) {}

  static {
    for (Row row : Rows.of("next-steps")) {
      List<String[]> unless = new ArrayList<>();
      for (String words : row.texts("unless")) {
        unless.add(words.split(" ", -1));
      }
      Step step = new Step(row.text("ask"), row.texts("known"), row.texts("figure"), unless);
      BY_QUESTION.putIfAbsent(step.ask, step);
      for (String topic : row.texts("topic")) {
        AFTER.computeIfAbsent(topic, t -> new ArrayList<>()).add(step);
      }
    }
  }

  private NextSteps() {}

  /** The questions that may follow a topic, the best one first. */
  static List<String> after(String topic, Request request) {
    List<String> questions = new ArrayList<>();
    for (Step step : AFTER.getOrDefault(topic, List.of())) {
      if (isKnown(step, request)) {
        questions.add(step.ask);
      }
    }
    return questions;
  }

  private static boolean isKnown(Step step, Request request) {
    for (String role : step.known) {
      if (!request.has(role)) {
        return false;
      }
    }
    return true;
  }

  /**
   * The reply with the one next step that is left.
   *
   * @param asked the words of this turn and of those shortly before it
   */
  public static Reply chosen(Reply reply, Collection<List<Token>> asked) {
    if (reply.suggest().isEmpty()) {
      return reply;
    }
    String next = "";
    for (String question : reply.suggest()) {
      if (next.isEmpty() && !isDone(question, reply, asked)) {
        next = question;
      }
    }
    return List.of(next).equals(reply.suggest()) ? reply : only(next, reply);
  }

  private static Reply only(String next, Reply reply) {
    ReplyBuilder made = ReplyBuilder.from(reply).suggestNothing();
    return (next.isEmpty() ? made : made.suggest(next)).build();
  }

  private static boolean isDone(String question, Reply reply, Collection<List<Token>> asked) {
    Step step = BY_QUESTION.get(question);
    return step != null && (isTold(step, reply) || isAsked(step, asked));
  }

  private static boolean isTold(Step step, Reply reply) {
    for (String figure : step.figures) {
      if (reply.figure(figure).isPresent()) {
        return true;
      }
    }
    return false;
  }

  private static boolean isAsked(Step step, Collection<List<Token>> asked) {
    for (String[] words : step.unless) {
      for (List<Token> tokens : asked) {
        if (areAllIn(words, tokens)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether each of these beginnings of words begins one of the tokens. */
  private static boolean areAllIn(String[] words, List<Token> tokens) {
    for (String word : words) {
      boolean found = false;
      for (Token token : tokens) {
        found |= token.norm().startsWith(word);
      }
      if (!found) {
        return false;
      }
    }
    return true;
  }
}
