package plainsward.talk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.dosing.NotDosable;
import plainsward.reading.Ask;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.topics.NoteTopic;
import plainsward.topics.Request;
import plainsward.topics.Topic;
import plainsward.topics.Topics;
import plainsward.units.DimensionMismatch;

/** The answers of several topics to one request, put together as one reply. */
final class Answers {
  private static final int MOST_CLAUSES = 2;

  private static final int FRAGMENT = 9;

  /** Topics that ask back for want of a name; the others for want of an amount. */
  private static final Set<String> OF_LOOKS = Set.of("choose", "identify", "weather");

  private static final double SURE = 0.5;
  private static final double SURER = 0.8;
  private static final Set<String> OF_AMOUNTS =
      Set.of("how", "much", "many", "rate", "mix", "amount", "dose", "what", "which");
  private static final double AMID_AMOUNTS = 0.93;
  private static final Set<String> POINTING =
      Set.of("it", "that", "them", "they", "those", "again", "out");

  private Answers() {}

  /**
   * The reply of these topics, the first the main one; nothing where none of them is known.
   *
   * @param before the words that a short question with "it" speaks of, or empty
   */
  static Optional<Reply> of(List<String> topics, Request request, String before) {
    List<Reply> replies = new ArrayList<>();
    for (String code : topics) {
      Optional<Topic> topic = Topics.of(code);
      topic.ifPresent(t -> replies.addAll(all(t, request, before)));
    }
    if (replies.isEmpty()) {
      return Optional.empty();
    }
    Reply all = joined(replies);
    return Optional.of(all.kind() == Kind.ASK ? plainly(topics.get(0), request).orElse(all) : all);
  }

  /**
   * A note that plainly answers spares asking back: not where an amount is wanted or given, for a
   * note has no figure of this lawn's, unless it is asked what such a figure means.
   */
  private static Optional<Reply> plainly(String topic, Request request) {
    boolean day = request.turn().all().stream().anyMatch(f -> f.date().isPresent());
    boolean amounts =
        request.turn().has("wanted")
            || request.turn().all().stream()
                .anyMatch(f -> f.value().isPresent() || !f.sides().isEmpty());
    if (day || amounts) {
      boolean inWords = request.turn().says("meaning") || topic.equals("repeat") && !day;
      return inWords ? NoteTopic.plainly(request, AMID_AMOUNTS) : Optional.empty();
    }
    boolean open = OF_LOOKS.contains(topic) || isOfWords(request) && !topic.equals("repeat");
    return NoteTopic.plainly(request, open ? SURE : SURER);
  }

  /** Whether it is asked if, when or why something is so, and not how much of it. */
  private static boolean isOfWords(Request request) {
    return request.turn().says("question") && !request.turn().hasWord(OF_AMOUNTS);
  }

  /** One reply, or one for each part of the message that asks about the topic in other words. */
  private static List<Reply> all(Topic topic, Request request, String before) {
    List<String> clauses =
        request.asks().stream()
            .filter(a -> a.topic().equals(topic.code()))
            .map(Ask::clause)
            .distinct()
            .limit(MOST_CLAUSES)
            .toList();
    boolean pointing =
        request.turn().tokens().size() <= FRAGMENT && request.turn().hasWord(POINTING);
    if (topic instanceof NoteTopic notes && pointing && !before.isEmpty()) {
      return List.of(notes.reply(request, before + " " + request.turn().text()));
    }
    if (topic instanceof NoteTopic notes) {
      return clauses.size() > 1
          ? clauses.stream().map(c -> notes.reply(request, c)).distinct().toList()
          : List.of(notes.reply(request));
    }
    return List.of(safely(topic, request));
  }

  private static Reply safely(Topic topic, Request request) {
    try {
      return topic.reply(request);
    } catch (NotDosable senseless) {
      return Replies.senseless(topic.code(), senseless, request);
    } catch (DimensionMismatch mixedUp) {
      return Replies.mixedUp(topic.code(), request);
    }
  }

  /** The first reply whole; of the others their first sentences, where they say something new. */
  private static Reply joined(List<Reply> replies) {
    ReplyBuilder all = ReplyBuilder.from(replies.get(0));
    Set<String> told = new HashSet<>(Set.of(replies.get(0).headline()));
    for (Reply more : replies.subList(1, replies.size())) {
      more.topics().forEach(all::topic);
      if (told.add(more.headline())) {
        all.say(more.headline());
      }
      more.figures().forEach(all::figure);
      more.working().forEach(all::work);
      more.assumed().forEach(all::assumed);
      more.cautions().forEach(all::caution);
      more.notes().forEach(all::note);
      all.sketch(more.sketches());
    }
    return all.build();
  }
}
