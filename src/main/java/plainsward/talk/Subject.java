package plainsward.talk;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Ask;
import plainsward.reading.Facts;
import plainsward.reply.Reply;
import plainsward.topics.NoteTopic;
import plainsward.topics.Topics;

/**
 * Which request a turn makes: its own, the one that is waiting for what was asked back, or the last
 * one again with something changed.
 */
final class Subject {
  private static final int SHORT = 9;
  private static final Set<String> WAITS = Set.of("interval", "season_limit");
  private static final Set<String> OF_LABEL =
      Set.of("label_rate", "strength", "interval", "season_limit", "adjuvant_rate", "spray_rate");

  private final Facts turn;
  private final RatePick rates;
  private final Memory memory;
  private final Pending pending;
  private final Pending last;
  private final Optional<Reply> lastReply;

  /**
   * A request.
   *
   * @param topics what it is about; none where nothing is asked
   * @param asks what is asked
   */
  record Choice(List<String> topics, List<Ask> asks) {}

  Subject(Facts turn, Memory memory, int at, Pending pending, Pending last, Optional<Reply> reply) {
    this.turn = turn;
    this.rates = new RatePick(turn, memory, at);
    this.memory = memory;
    this.pending = pending;
    this.last = last;
    this.lastReply = reply;
  }

  /** The request, where the words and figures of the turn are about {@code own}. */
  Choice choose(List<String> own) {
    Choice its = new Choice(own, turn.asks());
    Choice waiting = new Choice(pending.topics(), pending.asks());
    Choice again = new Choice(last.topics(), last.asks());
    boolean onlyGround = own.equals(List.of("measure")) && turn.asks().isEmpty();
    if (turn.says("bare-when") && own.isEmpty()) {
      return when(its);
    }
    if (turn.says("after-that") && last.topics().contains("repeat")) {
      return new Choice(List.of("repeat"), List.of());
    }
    if (pending.needs("label_rate") && rates.namesUse()) {
      return waiting;
    }
    boolean dose = last.topics().contains("calibrate") && own.contains("mix");
    if (!dose && isRedo() || isForOtherGround(own)) {
      return again;
    }
    boolean bothTogether =
        pending.needs("area") && turn.says("both") && memory.all("area").size() > 1;
    if (bothTogether || onlyGround && (pending.needs("area") || pending.needs("label_rate"))) {
      return waiting;
    }
    if (onlyGround && isChange() && !last.topics().isEmpty()) {
      return again;
    }
    return own.isEmpty() && !isOnlyTold() ? goingOn(its, waiting, again) : its;
  }

  /** "when" alone: when to treat the weed that was spoken of, or when again. */
  private Choice when(Choice its) {
    if (last.topics().contains("repeat")) {
      return new Choice(List.of("repeat"), List.of());
    }
    boolean weed = last.topics().contains("choose") || last.topics().contains("identify");
    return weed ? new Choice(List.of("timing"), List.of()) : its;
  }

  /** What a turn goes on with that is about nothing by itself. */
  private Choice goingOn(Choice its, Choice waiting, Choice again) {
    if (pending.isOpen() && !turn.all().isEmpty()) {
      return waiting;
    }
    if (last.topics().contains("convert") && turn.has("area") && memory.has("label_rate")) {
      return new Choice(List.of("mix"), turn.asks());
    }
    if (last.topics().contains("identify") && turn.has("grass")) {
      return new Choice(List.of("choose"), turn.asks());
    }
    boolean form =
        (turn.says("dry-product") || turn.says("ready-to-use"))
            && last.topics().stream().anyMatch(RatePick.DOSES::contains);
    return isRepeatable() && (isFollowUp(turn) || form) ? again : its;
  }

  /** "The label says 28 days between" after advice in words: a fact to keep, nothing to redo. */
  boolean isOnlyTold() {
    boolean waits =
        !turn.all().isEmpty() && turn.all().stream().allMatch(f -> WAITS.contains(f.name()));
    boolean rates =
        !turn.labels().isEmpty()
            && last.topics().stream().noneMatch(RatePick.DOSES::contains)
            && turn.all().stream().allMatch(f -> OF_LABEL.contains(f.name()));
    return (waits && !last.topics().contains("repeat") || rates) && !pending.isOpen();
  }

  private boolean isChange() {
    return turn.says("correction") || turn.says("follow-up");
  }

  /** Whether new figures change the answer: what the handbook told stays as it is. */
  private boolean isRepeatable() {
    return last.topics().stream().anyMatch(code -> Topics.of(code).isPresent() && !isInWords(code));
  }

  /** Whether the handbook answers a topic. */
  static boolean isInWords(String code) {
    return Topics.of(code).map(t -> t instanceof NoteTopic).orElse(false);
  }

  /** "and for an 8k lawn" after what it costs: the cost again, and not a dose. */
  private boolean isForOtherGround(List<String> own) {
    return last.topics().contains("cost")
        && own.equals(List.of("mix"))
        && turn.asks().isEmpty()
        && turn.says("follow-up")
        && !turn.has("label_rate")
        && !turn.has("strength")
        && (turn.has("area") || turn.has("shape"));
  }

  /** "what's that in ml", "and the white jug?": the last request with the one thing changed. */
  private boolean isRedo() {
    boolean sum = lastReply.map(r -> !r.figures().isEmpty() || !r.needs().isEmpty()).orElse(false);
    if (!sum || last.topics().isEmpty() || turn.tokens().size() > SHORT) {
      return false;
    }
    if (turn.all().stream().anyMatch(f -> f.value().isPresent() || !f.sides().isEmpty())) {
      return false;
    }
    boolean named =
        (!turn.lawns().isEmpty() || !turn.labels().isEmpty())
            && (turn.says("follow-up") || turn.says("same") || turn.says("both"));
    boolean use = turn.says("follow-up") && rates.namesUse();
    boolean end =
        turn.says("high-end")
            || turn.says("low-end")
            || turn.says("middle-end")
            || turn.says("half-rate");
    boolean both =
        turn.says("both") && (memory.lawnNames().size() > 1 || memory.all("area").size() > 1);
    return turn.has("wanted") || named || use || end || both;
  }

  /** Whether a turn gives something that could change the last answer. */
  static boolean isFollowUp(Facts turn) {
    return turn.all().stream()
            .anyMatch(
                f -> f.value().isPresent() || !f.sides().isEmpty() || f.name().equals("wanted"))
        || !turn.lawns().isEmpty()
        || !turn.labels().isEmpty()
        || turn.says("same");
  }
}
