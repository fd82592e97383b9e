package plainsward.talk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.reply.Caution;
import plainsward.reply.Figure;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.units.Quantity;
import plainsward.units.Shown;

/**
 * The last request, worked out again with what was just told: what it changes is said, and where it
 * changes nothing and nothing was asked it is only taken in.
 */
final class Retold {
  private static final Set<String> UNCHANGING = Set.of("number", "day", "planned", "said_today");
  private static final List<String> ASKING = List.of("follow-up", "same", "correction", "both");

  private final Reply before;
  private final Facts turn;
  private final Memory memory;

  /**
   * A request that is worked out again.
   *
   * @param before its reply as it was
   * @param turn what was told since
   * @param memory what is known
   */
  Retold(Reply before, Facts turn, Memory memory) {
    this.before = before;
    this.turn = turn;
    this.memory = memory;
  }

  /**
   * The reply, where it is {@code now} with what was told.
   *
   * @param same whether the same is asked as before, so that what is another answer is a change
   */
  Reply told(Reply now, boolean same) {
    List<Fact> said = new ArrayList<>();
    for (Fact fact : turn.all()) {
      if (!UNCHANGING.contains(fact.name()) && !fact.said().isEmpty()) {
        said.add(fact);
      }
    }
    if (said.isEmpty()) {
      return now;
    }
    boolean told = !now.figures().isEmpty() && !asks();
    boolean taken = before.assumed().equals(now.assumed());
    if (told && taken && before.figures().equals(now.figures())) {
      return unchanged(said, now);
    }
    if (!same) {
      return now;
    }
    Set<String> words = new LinkedHashSet<>();
    said.forEach(fact -> words.add(Replies.readBack(fact)));
    return ReplyBuilder.from(now)
        .say("Changed: " + String.join(", ", words) + "." + instead(now))
        .build();
  }

  private boolean asks() {
    for (String sign : ASKING) {
      if (turn.says(sign)) {
        return true;
      }
    }
    return !turn.asks().isEmpty() || turn.says("question") || turn.has("wanted");
  }

  /** It is taken in, and what stands is said in a sentence; of the cautions only what is new. */
  private Reply unchanged(List<Fact> said, Reply now) {
    Reply noted = Replies.noted(said, memory);
    ReplyBuilder reply = new ReplyBuilder(Kind.DONE);
    reply.headline(noted.headline() + " Nothing else changes.").say(now.headline());
    now.topics().forEach(reply::topic);
    now.figures().forEach(reply::figure);
    reply.understood(noted.understood());
    for (Caution caution : now.cautions()) {
      if (caution.id().equals("read-label") || !before.cautions().contains(caution)) {
        reply.caution(caution);
      }
    }
    now.suggest().forEach(reply::suggest);
    return reply.build();
  }

  /** What the first figure is now, and what it was, where it is another amount. */
  private String instead(Reply again) {
    Figure figure = again.figures().isEmpty() ? null : again.figures().get(0);
    Optional<Figure> was = figure == null ? Optional.empty() : before.figure(figure.name());
    if (was.isEmpty() || figure.value().isEmpty() || was.get().value().isEmpty()) {
      return "";
    }
    Quantity is = figure.value().get();
    Quantity old = was.get().value().get();
    if (!is.dimension().equals(old.dimension()) || is.isSameAmount(old)) {
      return "";
    }
    String then = Shown.of(old.in(is.unit()));
    return figure.shown().equals(then) ? "" : " Now " + figure.shown() + ", it was " + then + ".";
  }
}
