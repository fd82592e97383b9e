package plainsward.talk;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Ask;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.reading.Reader;
import plainsward.reading.Token;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.safety.CautionGuard;
import plainsward.safety.Exposure;
import plainsward.safety.Refusals;
import plainsward.topics.Limits;
import plainsward.topics.NextSteps;
import plainsward.topics.NoteTopic;
import plainsward.topics.ProductKind;
import plainsward.topics.Request;
import plainsward.topics.UnclearGround;
import plainsward.units.Quantity;

/** One conversation: it remembers what was said and answers turn by turn. Not thread-safe. */
public final class Conversation {
  /** Facts that say nothing by themselves. */
  private static final Set<String> EMPTY =
      Set.of(
          "number",
          "wanted",
          "price",
          "times",
          "other",
          "length",
          "time",
          "height",
          "elapsed",
          "said_today",
          "day",
          "adjuvant",
          "product",
          "active");

  /** So many turns back something counts as just asked. */
  private static final int LATELY = 4;

  private final Setting setting;
  private final Reader reader;
  private final Keeper keeper;
  private Memory memory = new Memory();
  private final Undo undo = new Undo();
  private final Deque<List<Token>> heard = new ArrayDeque<>();
  private Pending pending = Pending.NOTHING;
  private Pending last = Pending.NOTHING;
  private Optional<Reply> lastAnswer = Optional.empty();
  private Optional<Reply> lastReply = Optional.empty();
  private String lastWords = "";
  private String openNumber = "";
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
    heardNow(facts);
    reply = NextSteps.chosen(reply, heard);
    keeper.keep(memory, turn);
    reply = withTroubles(reply);
    lastReply = Optional.of(reply);
    return reply;
  }

  /** Words that tell what a number said before is of are read with that number before them. */
  private Facts withOpenNumber(Facts facts) {
    if (openNumber.isEmpty() || !OpenRate.tells(facts)) {
      return facts;
    }
    Facts both = reader.read(openNumber + " " + facts.text(), memory.vocabulary());
    return both.has("label_rate") || both.has("strength") ? both : facts;
  }

  private void heardNow(Facts facts) {
    heard.add(facts.tokens());
    if (heard.size() > LATELY) {
      heard.remove();
    }
  }

  /** How the talk stands when the next question comes. */
  public Standing standing() {
    return Standing.of(memory, pending);
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
        .orElseGet(() -> talk(facts));
  }

  /** What is refused is what the next words speak of. */
  private Optional<Reply> refused(Facts facts) {
    Optional<Reply> refusal = Refusals.check(facts);
    refusal.ifPresent(r -> lastWords = facts.text());
    return refusal;
  }

  /** After an emergency, words that ask nothing and give no figure tell more of it. */
  private Optional<Reply> moreOfTheMishap(Facts facts) {
    boolean asks = !facts.asks().isEmpty() || Subject.isFollowUp(facts);
    return lastReply.filter(r -> r.kind() == Kind.EMERGENCY && !asks).map(Replies::stillEmergency);
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
      pending = Pending.NOTHING;
      return Optional.of(Replies.done("Taken back. What should it be?"));
    }
    return new Housekeeper(memory, keeper, lastReply).hear(facts);
  }

  /** Forgets the talk; what was saved stays. */
  private void forgetAll() {
    memory.clear();
    keeper.diary().forgetTalk();
    keeper.recall(memory);
    undo.clear();
    heard.clear();
    pending = Pending.NOTHING;
    last = Pending.NOTHING;
    lastAnswer = Optional.empty();
    lastReply = Optional.empty();
    lastWords = "";
    openNumber = "";
  }

  private Reply talk(Facts facts) {
    if (facts.says("senseless")) {
      return Replies.mixedUp("mix", request(facts));
    }
    List<Fact> tied = new Understanding(facts, memory, pending, setting.units()).facts();
    AirNumbers air = new AirNumbers(facts, setting.units(), lastTopics().contains("weather"));
    tied.replaceAll(fact -> fact.name().equals("number") ? air.of(fact) : fact);
    PlainLabel.hear(facts, tied, memory, setting);
    undo.keep(memory, keeper.diary().mark());
    Clerk clerk = new Clerk(memory, keeper, setting, turn);
    Optional<Reply> kept = clerk.hear(facts, tied);
    if (kept.isPresent()) {
      pending = new Pending(kept.get().needs(), List.of(), List.of());
      return kept.get();
    }
    List<Quantity> most = RatePick.most(memory);
    Optional<Fact> unread = DoseFacts.unread(tied);
    tied.removeIf(f -> f.name().equals("unread"));
    new Listener(memory, turn).hear(facts, tied);
    if (unread.isPresent()) {
      Reply reply = Replies.unread(unread.get(), memory);
      pending = new Pending(reply.needs(), List.of("mix"), facts.asks());
      return reply;
    }
    Facts heard = facts.with(tied);
    return clerk
        .logged(facts, tied)
        .or(() -> limit(heard, most))
        .or(() -> vague(facts))
        .orElseGet(() -> asked(heard));
  }

  /** "a splash of it": the open question is how much that is. */
  private Optional<Reply> vague(Facts facts) {
    if (!facts.says("vague-measure")) {
      return Optional.empty();
    }
    Reply asked = Replies.vagueMeasure(facts);
    pending = new Pending(asked.needs(), List.of("mix"), facts.asks());
    return Optional.of(asked);
  }

  /** What the label forbids; a rate above the label's is not kept as the label's. */
  private Optional<Reply> limit(Facts heard, List<Quantity> most) {
    Optional<Reply> limit = Limits.check(request(heard), most);
    boolean above =
        limit.isPresent()
            && limit.get().cautions().stream().anyMatch(c -> c.id().equals("above-label"));
    if (above) {
      undo.memory().ifPresent(memory::labelsAsIn);
    }
    return limit;
  }

  /** The answer to the request that the turn makes. */
  private Reply asked(Facts heard) {
    Subject subject = new Subject(heard, memory, turn, pending, last, lastReply);
    Subject.Choice choice = subject.choose(new Chooser(heard, memory, keeper.diary()).topics());
    Optional<Fact> open = OpenRate.number(heard, memory);
    openNumber = open.map(Fact::said).orElse("");
    if (choice.topics().isEmpty() && open.isPresent()) {
      Reply reply = OpenRate.asked(open.get());
      pending = new Pending(reply.needs(), List.of("mix"), heard.asks());
      return reply;
    }
    if (choice.topics().isEmpty()) {
      boolean told = subject.isOnlyTold() && !heard.says("question");
      return told ? noted(heard) : inWords(heard).orElseGet(() -> noted(heard));
    }
    Optional<Reply> unclear = UnclearGround.check(request(heard, choice.asks()));
    if (unclear.isPresent()) {
      pending = new Pending(unclear.get().needs(), choice.topics(), choice.asks());
      return unclear.get();
    }
    boolean same = choice.asks().equals(last.asks());
    boolean redone =
        choice.topics().equals(last.topics())
            && (same || choice.asks().isEmpty())
            && !pending.isOpen();
    Optional<Reply> before = redone ? lastAnswer : Optional.empty();
    Reply reply = answered(heard, choice.topics(), choice.asks());
    return before.isPresent() && reply.kind() == Kind.ANSWER
        ? new Retold(before.get(), heard, memory).told(reply, same)
        : reply;
  }

  private Reply noted(Facts heard) {
    lastWords = "";
    boolean meant = heard.all().stream().anyMatch(f -> !EMPTY.contains(f.name()));
    return meant
        ? Replies.noted(heard.all(), memory)
        : Replies.form(heard).orElseGet(() -> Replies.notUnderstood(InWords.near(request(heard))));
  }

  private Optional<Reply> inWords(Facts facts) {
    Optional<Reply> reply = InWords.of(request(facts), lastWords, lastTopics());
    reply.ifPresent(r -> lastWords = facts.text());
    return reply;
  }

  private Set<String> lastTopics() {
    return lastReply.map(r -> Set.copyOf(r.topics().stream().limit(1).toList())).orElse(Set.of());
  }

  private Reply answered(Facts facts, List<String> topics, List<Ask> asks) {
    Optional<Reply> against = new Clerk(memory, keeper, setting, turn).against(facts, topics);
    if (against.isPresent()) {
      return against.get();
    }
    Optional<Reply> which = new RatePick(facts, memory, turn).pick(topics);
    if (which.isPresent()) {
      pending = new Pending(which.get().needs(), topics, asks);
      last = new Pending(List.of(), topics, asks);
      return which.get();
    }
    Optional<Reply> answer = Answers.of(topics, request(facts, asks), lastWords);
    if (answer.isEmpty()) {
      return Replies.notUnderstood();
    }
    Reply reply = new JobNotes(memory, setting.today()).noted(answer.get());
    if (topics.stream().anyMatch(Subject::isInWords)) {
      lastWords = facts.text();
    }
    pending = reply.kind() == Kind.ASK ? new Pending(reply.needs(), topics, asks) : Pending.NOTHING;
    last = new Pending(List.of(), topics, asks);
    lastAnswer = Optional.of(reply);
    new Lessons(memory, undo.memory(), turn).learn(facts, topics, reply);
    return reply;
  }

  private Request request(Facts facts) {
    return request(facts, facts.asks());
  }

  private Request request(Facts facts, List<Ask> asks) {
    return new Requests(memory, keeper, setting, turn).of(facts, asks);
  }
}
