package plainsward.talk;

import java.util.List;
import java.util.Optional;
import plainsward.reading.Facts;
import plainsward.reading.Reader;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.safety.CautionGuard;
import plainsward.safety.Exposure;
import plainsward.safety.Refusals;
import plainsward.topics.NextSteps;
import plainsward.topics.NoteTopic;
import plainsward.topics.ProductKind;
import plainsward.topics.Request;

/** One conversation: it remembers what was said and answers turn by turn. Not thread-safe. */
public final class Conversation {
  private final Setting setting;
  private final Reader reader;
  private final Keeper keeper;
  private Memory memory = new Memory();
  private final Undo undo = new Undo();
  private final Course course = new Course();
  private int turn;

  /** Starts with nothing remembered. */
  public Conversation(Setting setting) {
    this.setting = setting;
    this.reader = new Reader(setting.units(), setting.today());
    this.keeper = new Keeper(setting.book());
    keeper.recall(memory);
  }

  /** Answers one turn; never throws for anything typed. */
  public Reply answer(String said) {
    turn++;
    Facts facts = withOpenNumber(reader.read(said, memory.vocabulary()));
    Reply reply = CautionGuard.guarded(sensible(facts), facts.tokens());
    if (ProductKind.concerns(reply)) {
      reply = ProductKind.cautioned(reply, request(facts));
    }
    course.hear(facts);
    reply = NextSteps.chosen(reply, course.heard());
    keeper.keep(memory, turn);
    reply = withTroubles(reply);
    course.lastReply = Optional.of(reply);
    return reply;
  }

  /** Words that tell what a number said before is of are read with that number before them. */
  private Facts withOpenNumber(Facts facts) {
    if (course.openNumber.isEmpty() || !OpenRate.tells(facts)) {
      return facts;
    }
    Facts both = reader.read(course.openNumber + " " + facts.text(), memory.vocabulary());
    return both.has("label_rate") || both.has("strength") ? both : facts;
  }

  /** How the talk stands when the next question comes. */
  public Standing standing() {
    return Standing.of(memory, course.pending);
  }

  /** A nought where something must be divided by it makes no sum. */
  private Reply sensible(Facts facts) {
    try {
      return reply(facts);
    } catch (ArithmeticException nought) {
      return Replies.mixedUp("mix", request(facts));
    }
  }

  /** What could not be read or saved is said, and nothing is lost. */
  private Reply withTroubles(Reply reply) {
    List<String> troubles = keeper.troubles();
    if (troubles.isEmpty()) {
      return reply;
    }
    ReplyBuilder told = ReplyBuilder.from(reply);
    troubles.forEach(told::say);
    return told.build();
  }

  private Reply reply(Facts facts) {
    if (facts.isEmpty()) {
      return Replies.nothingToRead();
    }
    Optional<Reply> emergency = Exposure.check(facts);
    if (emergency.isPresent()) {
      return emergency.get();
    }
    return housekeeping(facts)
        .or(() -> moreOfTheMishap(facts))
        .or(() -> refused(facts))
        .or(() -> ownNote(facts))
        .or(() -> outside(facts))
        .orElseGet(() -> talk().reply(facts));
  }

  /** What is refused is what the next words speak of. */
  private Optional<Reply> refused(Facts facts) {
    Optional<Reply> refusal = Refusals.check(facts);
    refusal.ifPresent(r -> course.lastWords = facts.text());
    return refusal;
  }

  /** After an emergency, words that ask nothing and give no figure tell more of it. */
  private Optional<Reply> moreOfTheMishap(Facts facts) {
    boolean asks = !facts.asks().isEmpty() || Subject.isFollowUp(facts);
    return course
        .lastReply
        .filter(r -> r.kind() == Kind.EMERGENCY && !asks)
        .map(Replies::stillEmergency);
  }

  private Optional<Reply> ownNote(Facts facts) {
    return InWords.mayBeOwn(facts, setting.handbook())
        ? NoteTopic.own(request(facts))
        : Optional.empty();
  }

  /** What is outside the trade: says so, and what part is ours. */
  private Optional<Reply> outside(Facts facts) {
    return InWords.areOutside(facts)
        ? Optional.of(NoteTopic.outside(request(facts)))
        : Optional.empty();
  }

  private Optional<Reply> housekeeping(Facts facts) {
    if (facts.says("new-caller") || facts.says("start-over")) {
      forgetAll();
      if (facts.says("new-caller")) {
        memory.meetStranger();
      }
      boolean more =
          facts.all().stream().anyMatch(f -> f.value().isPresent()) || !facts.asks().isEmpty();
      return more
          ? Optional.empty()
          : Optional.of(Replies.done("All forgotten. What is the question?"));
    }
    if (facts.says("undo") && !facts.says("unlog") && facts.all().isEmpty() && undo.isPossible()) {
      Undo.Before earlier = undo.takeBack();
      keeper.restore(earlier.memory(), memory);
      memory = earlier.memory();
      keeper.diary().backTo(earlier.mark());
      course.pending = Pending.NOTHING;
      return Optional.of(Replies.done("Taken back. What should it be?"));
    }
    return new Housekeeper(memory, keeper, course.lastReply).hear(facts);
  }

  /** Forgets the talk; what was saved stays. */
  private void forgetAll() {
    memory.clear();
    keeper.diary().forgetTalk();
    keeper.recall(memory);
    undo.clear();
    course.clear();
  }

  private TurnTalk talk() {
    return new TurnTalk(memory, keeper, setting, undo, course, turn);
  }

  private Request request(Facts facts) {
    return new Requests(memory, keeper, setting, turn).of(facts, facts.asks());
  }
}
