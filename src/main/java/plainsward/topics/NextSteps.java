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
  private static final List<Row> ROWS = Rows.of("next-steps");

  /** The rows of each topic; the rest of a row is read when it is asked for. */
  private static final Map<String, List<Row>> AFTER = new HashMap<>();

  static {
    for (Row row : ROWS) {
      for (String topic : row.texts("topic")) {
        AFTER.computeIfAbsent(topic, t -> new ArrayList<>()).add(row);
      }
    }
  }

  private NextSteps() {}

  /** The questions that may follow a topic, the best one first. */
  static List<String> after(String topic, Request request) {
    List<String> questions = new ArrayList<>();
    for (Row row : AFTER.getOrDefault(topic, List.of())) {
      if (isKnown(row, request)) {
        questions.add(row.text("ask"));
      }
    }
    return questions;
  }

  private static boolean isKnown(Row row, Request request) {
    for (String role : row.texts("known")) {
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
    for (Row row : ROWS) {
      if (row.text("ask").equals(question)) {
        return isTold(row, reply) || isAsked(row, asked);
      }
    }
    return false;
  }

  private static boolean isTold(Row row, Reply reply) {
    for (String figure : row.texts("figure")) {
      if (reply.figure(figure).isPresent()) {
        return true;
      }
    }
    return false;
  }

  private static boolean isAsked(Row row, Collection<List<Token>> asked) {
    for (String words : row.texts("unless")) {
      for (List<Token> tokens : asked) {
        if (areAllIn(words, tokens)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether each of these beginnings of words begins one of the tokens. */
  private static boolean areAllIn(String words, List<Token> tokens) {
    for (String word : words.split(" ", -1)) {
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
