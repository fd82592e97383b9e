package plainsward.talk;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Ask;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.topics.IdentifyTopic;
import plainsward.topics.Limits;
import plainsward.topics.NoteTopic;
import plainsward.topics.Request;
import plainsward.topics.UnclearGround;
import plainsward.units.Quantity;

/**
 * What a turn tells and asks, heard and answered: the records first, then the facts into memory,
 * the limits of the label, the topics, and the handbook.
 */
final class TurnTalk {
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

  /** How sure a note must be to be told of a spraying that is logged (0 to 1). */
  private static final double TROUBLE = 0.8;

  private static final int SHORT = 7;
  private static final Set<String> OF_LABEL = Set.of("label", "labels", "says", "between");

  private final Memory memory;
  private final Keeper keeper;
  private final Setting setting;
  private final Undo undo;
  private final Course course;
  private final int turn;

  TurnTalk(Memory memory, Keeper keeper, Setting setting, Undo undo, Course course, int turn) {
    this.memory = memory;
    this.keeper = keeper;
    this.setting = setting;
    this.undo = undo;
    this.course = course;
    this.turn = turn;
  }

  /** The reply to a turn that no guard has answered. */
  Reply reply(Facts facts) {
    if (facts.says("senseless")) {
      return Replies.mixedUp("mix", request(facts));
    }
    List<Fact> tied = new Understanding(facts, memory, course.pending, setting.units()).facts();
    AirNumbers air =
        new AirNumbers(facts, setting.units(), course.lastTopics().contains("weather"));
    air.nights(tied);
    new PastDays(facts, setting.today()).join(tied);
    tied.replaceAll(fact -> fact.name().equals("number") ? air.of(fact) : fact);
    PlainLabel.hear(facts, tied, memory, setting);
    undo.keep(memory, keeper.diary().mark());
    Clerk clerk = new Clerk(memory, keeper, setting, turn);
    Optional<Reply> kept = clerk.hear(facts, tied, isOfLog());
    if (kept.isPresent()) {
      course.pending = new Pending(kept.get().needs(), List.of(), List.of());
      return kept.get();
    }
    List<Quantity> most = RatePick.most(memory);
    Optional<Fact> unread = DoseFacts.unread(tied);
    tied.removeIf(f -> f.name().equals("unread"));
    new Listener(memory, turn).hear(facts, tied);
    if (unread.isPresent()) {
      Reply reply = Replies.unread(unread.get(), memory);
      course.pending = new Pending(reply.needs(), List.of("mix"), facts.asks());
      return reply;
    }
    Facts heard = facts.with(tied);
    return clerk
        .logged(facts, tied)
        .map(logged -> facts.says("unlog") ? logged : withTrouble(logged, heard))
        .or(() -> limit(heard, most))
        .or(() -> vague(facts))
        .orElseGet(() -> asked(heard));
  }

  private boolean isOfLog() {
    return course
        .lastReply
        .filter(last -> last.kind() == Kind.ANSWER && last.topics().contains("record"))
        .isPresent();
  }

  /** "a splash of it": the open question is how much that is. */
  private Optional<Reply> vague(Facts facts) {
    if (!facts.says("vague-measure") || facts.has("piece_makes")) {
      return Optional.empty();
    }
    Reply asked = Replies.vagueMeasure(facts);
    course.pending = new Pending(asked.needs(), List.of("mix"), facts.asks());
    return Optional.of(asked);
  }

  /** A spraying that is told for what went wrong is logged, and that is answered first. */
  private Reply withTrouble(Reply logged, Facts heard) {
    return NoteTopic.plainly(request(heard), TROUBLE)
        .filter(answer -> !answer.topics().contains("record"))
        .map(answer -> ReplyBuilder.from(answer).topic("record").say(logged.headline()).build())
        .orElse(logged);
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
    Subject subject =
        new Subject(heard, memory, turn, course.pending, course.last, course.lastReply);
    Subject.Choice choice = subject.choose(new Chooser(heard, memory, keeper.diary()).topics());
    Optional<Reply> alike = sameThere(heard, choice);
    if (alike.isPresent()) {
      return alike.get();
    }
    Optional<Fact> open = OpenRate.number(heard, memory);
    course.openNumber = open.map(Fact::said).orElse("");
    if (choice.topics().isEmpty() && open.isPresent()) {
      Reply reply = OpenRate.asked(open.get());
      course.pending = new Pending(reply.needs(), List.of("mix"), heard.asks());
      return reply;
    }
    if (choice.topics().isEmpty()) {
      boolean told = subject.isOnlyTold() && !heard.says("question") && isShort(heard);
      return told
          ? noted(heard)
          : inWords(heard).or(() -> looks(heard)).orElseGet(() -> noted(heard));
    }
    Optional<Reply> unclear = UnclearGround.check(request(heard, choice.asks()));
    if (unclear.isPresent()) {
      course.pending = new Pending(unclear.get().needs(), choice.topics(), choice.asks());
      return unclear.get();
    }
    boolean same = choice.asks().equals(course.last.asks());
    boolean redone =
        choice.topics().equals(course.last.topics())
            && (same || choice.asks().isEmpty())
            && !course.pending.isOpen();
    Optional<Reply> before = redone ? course.lastAnswer : Optional.empty();
    Reply reply = answered(heard, choice.topics(), choice.asks());
    return before.isPresent() && reply.kind() == Kind.ANSWER
        ? new Retold(before.get(), heard, memory).told(reply, same)
        : reply;
  }

  /** "same for the back" after advice in words: it holds there too. */
  private Optional<Reply> sameThere(Facts heard, Subject.Choice choice) {
    boolean only = heard.says("same") && heard.asks().isEmpty() && choice.topics().isEmpty();
    boolean figures = heard.all().stream().anyMatch(f -> f.value().isPresent());
    return !only || figures
        ? Optional.empty()
        : course
            .lastReply
            .filter(last -> last.kind() == Kind.ANSWER && last.figures().isEmpty())
            .map(last -> Replies.sameAgain(last));
  }

  /** A wait told in many words is part of a tale. */
  private static boolean isShort(Facts heard) {
    return heard.tokens().size() <= SHORT || heard.hasWord(OF_LABEL);
  }

  private Reply noted(Facts heard) {
    course.lastWords = "";
    boolean meant = heard.all().stream().anyMatch(f -> !EMPTY.contains(f.name()));
    boolean tale = heard.says("question") && !isShort(heard) && !DoseFacts.areAmong(heard.all());
    return meant && !tale
        ? Replies.noted(heard.all(), memory)
        : Replies.form(heard).orElseGet(() -> Replies.notUnderstood(InWords.near(request(heard))));
  }

  /** A weed that is described and not asked about. */
  private Optional<Reply> looks(Facts heard) {
    boolean described =
        heard.all().isEmpty() && IdentifyTopic.likeliest(heard.tokens()).isPresent();
    return described
        ? Optional.of(answered(heard, List.of("identify"), heard.asks()))
        : Optional.empty();
  }

  private Optional<Reply> inWords(Facts facts) {
    Optional<Reply> reply = InWords.of(request(facts), course.lastWords, course.lastTopics());
    reply.ifPresent(r -> course.lastWords = facts.text());
    return reply;
  }

  private Reply answered(Facts facts, List<String> topics, List<Ask> asks) {
    Optional<Reply> against = new Clerk(memory, keeper, setting, turn).against(facts, topics);
    if (against.isPresent()) {
      return against.get();
    }
    Optional<Reply> which = new RatePick(facts, memory, turn).pick(topics);
    if (which.isPresent()) {
      course.pending = new Pending(which.get().needs(), topics, asks);
      course.last = new Pending(List.of(), topics, asks);
      return which.get();
    }
    Optional<Reply> answer = Answers.of(topics, request(facts, asks), course.lastWords);
    if (answer.isEmpty()) {
      return Replies.notUnderstood();
    }
    Reply reply = new JobNotes(memory, setting.today()).noted(answer.get());
    if (topics.stream().anyMatch(Subject::isInWords)) {
      course.lastWords = facts.text();
    }
    course.pending =
        reply.kind() == Kind.ASK ? new Pending(reply.needs(), topics, asks) : Pending.NOTHING;
    course.last = new Pending(List.of(), topics, asks);
    course.lastAnswer = Optional.of(reply);
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
