package plainsward.talk;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Ask;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.reading.Reader;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.safety.CautionGuard;
import plainsward.safety.Exposure;
import plainsward.safety.Refusals;
import plainsward.topics.IdentifyTopic;
import plainsward.topics.Known;
import plainsward.topics.Limits;
import plainsward.topics.NoteTopic;
import plainsward.topics.ProductKind;
import plainsward.topics.Request;
import plainsward.topics.UnclearGround;
import plainsward.units.Quantity;

/** One conversation: it remembers what was said and answers turn by turn. Not thread-safe. */
public final class Conversation {
  private static final int MOST_UNDO = 8;
  private static final int SHORT = 9;
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
  private static final Set<String> UNCHANGING = Set.of("number", "day", "planned", "said_today");
  private static final Set<String> DOSE_FACTS =
      Set.of(
          "label_rate",
          "strength",
          "area",
          "tank",
          "spray_rate",
          "spray_volume",
          "analysis",
          "adjuvant_rate",
          "container");

  /** What was known before a turn, and how much this talk had logged. */
  private record Before(Memory memory, int mark) {}

  private final Setting setting;
  private final Reader reader;
  private final Keeper keeper;
  private Memory memory = new Memory();
  private final Deque<Before> before = new ArrayDeque<>();
  private Pending pending = Pending.NOTHING;
  private Pending last = Pending.NOTHING;
  private Optional<Reply> lastReply = Optional.empty();
  private String lastWords = "";
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
    Facts facts = reader.read(said, memory.vocabulary());
    Reply reply = CautionGuard.guarded(sensible(facts), facts.tokens());
    if (ProductKind.concerns(reply)) {
      reply = ProductKind.cautioned(reply, request(facts, facts.asks()));
    }
    keeper.keep(memory, turn);
    reply = withTroubles(reply);
    lastReply = Optional.of(reply);
    return reply;
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
      return Replies.mixedUp("mix", request(facts, facts.asks()));
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

  /** What a note of the user's own plainly answers, whatever it is about. */
  private Optional<Reply> ownNote(Facts facts) {
    boolean dose = facts.all().stream().anyMatch(f -> DOSE_FACTS.contains(f.name()));
    return dose || !setting.handbook().hasOwn()
        ? Optional.empty()
        : NoteTopic.own(request(facts, facts.asks()));
  }

  /** What is outside the trade: says so, and what part is ours. */
  private Optional<Reply> outside(Facts facts) {
    boolean ours = facts.has("weed") || facts.has("active");
    if (ours || !TradeWords.areOutside(facts.tokens())) {
      return Optional.empty();
    }
    Request request = request(facts, facts.asks());
    return Optional.of(NoteTopic.outside(request));
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
    if (facts.says("undo") && !facts.says("unlog") && facts.all().isEmpty() && !before.isEmpty()) {
      Before earlier = before.pop();
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
    before.clear();
    pending = Pending.NOTHING;
    last = Pending.NOTHING;
    lastReply = Optional.empty();
    lastWords = "";
  }

  private Reply talk(Facts facts) {
    if (facts.says("senseless")) {
      return Replies.mixedUp("mix", request(facts, facts.asks()));
    }
    List<Fact> tied = new Understanding(facts, memory, pending, setting.units()).facts();
    AirNumbers air = new AirNumbers(facts, setting.units(), lastTopics().contains("weather"));
    tied.replaceAll(fact -> fact.name().equals("number") ? air.of(fact) : fact);
    PlainLabel.hear(facts, tied, memory, setting);
    remember();
    Clerk clerk = new Clerk(memory, keeper, setting, turn);
    Optional<Reply> kept = clerk.hear(facts, tied);
    if (kept.isPresent()) {
      pending = new Pending(kept.get().needs(), List.of(), List.of());
      return kept.get();
    }
    List<Quantity> most = RatePick.most(memory);
    Optional<Fact> unread = unread(tied);
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
    Optional<Reply> limit = Limits.check(request(heard, heard.asks()), most);
    boolean above =
        limit.isPresent()
            && limit.get().cautions().stream().anyMatch(c -> c.id().equals("above-label"));
    if (above) {
      memory.labelsAsIn(before.getFirst().memory());
    }
    return limit;
  }

  /** The answer to the request that the turn makes. */
  private Reply asked(Facts heard) {
    Subject subject = new Subject(heard, memory, turn, pending, last, lastReply);
    Subject.Choice choice = subject.choose(new Chooser(heard, memory, keeper.diary()).topics());
    if (choice.topics().isEmpty()) {
      return subject.isOnlyTold()
          ? noted(heard.all())
          : inWords(heard).orElseGet(() -> noted(heard.all()));
    }
    Optional<Reply> unclear = UnclearGround.check(request(heard, choice.asks()));
    if (unclear.isPresent()) {
      pending = new Pending(unclear.get().needs(), choice.topics(), choice.asks());
      return unclear.get();
    }
    boolean redone =
        choice.topics().equals(last.topics())
            && choice.asks().equals(last.asks())
            && !pending.isOpen();
    Reply reply = answered(heard, choice.topics(), choice.asks());
    return redone && reply.kind() == Kind.ANSWER ? changed(reply, heard.all()) : reply;
  }

  /** Says what was changed when the last request is redone. */
  private static Reply changed(Reply reply, List<Fact> facts) {
    List<String> said =
        facts.stream()
            .filter(f -> !UNCHANGING.contains(f.name()))
            .map(Fact::said)
            .filter(w -> !w.isEmpty())
            .distinct()
            .toList();
    return said.isEmpty()
        ? reply
        : ReplyBuilder.from(reply).say("Changed: " + String.join(", ", said) + ".").build();
  }

  private Reply noted(List<Fact> tied) {
    lastWords = "";
    boolean meant = tied.stream().anyMatch(f -> !EMPTY.contains(f.name()));
    return meant ? Replies.noted(tied) : Replies.notUnderstood();
  }

  /**
   * What the handbook says where no topic's cue was found: the words alone, or, for a fragment,
   * with the question before it.
   */
  private Optional<Reply> inWords(Facts facts) {
    boolean figures =
        facts.all().stream().anyMatch(f -> DOSE_FACTS.contains(f.name()) || !f.sides().isEmpty());
    boolean form = facts.says("ready-to-use") || facts.says("concentrate");
    boolean told =
        form && facts.asks().isEmpty()
            || !facts.labels().isEmpty()
                && facts.all().stream().anyMatch(f -> f.value().isPresent());
    if (figures || told) {
      return Optional.empty();
    }
    Request request = request(facts, facts.asks());
    boolean fragment = facts.tokens().size() <= SHORT && !lastWords.isEmpty();
    if (!fragment && !TradeWords.areIn(facts.tokens())) {
      return Optional.empty();
    }
    Optional<Reply> reply =
        fragment
            ? NoteTopic.anywhere(request, lastWords + " " + facts.text(), lastTopics())
            : NoteTopic.anywhere(request, facts.text(), Set.of());
    reply.ifPresent(r -> lastWords = facts.text());
    return reply;
  }

  private Set<String> lastTopics() {
    return lastReply.map(r -> Set.copyOf(r.topics().stream().limit(1).toList())).orElse(Set.of());
  }

  /** A number that can't be read whole, where a dose is spoken of. */
  private static Optional<Fact> unread(List<Fact> facts) {
    boolean dose =
        facts.stream().anyMatch(f -> DOSE_FACTS.contains(f.name()) || !f.sides().isEmpty());
    return facts.stream().filter(f -> dose && f.name().equals("unread")).findFirst();
  }

  private void remember() {
    before.push(new Before(memory.copy(), keeper.diary().mark()));
    if (before.size() > MOST_UNDO) {
      before.removeLast();
    }
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
    Request request = request(facts, asks);
    Optional<Reply> answer = Answers.of(topics, request, lastWords);
    if (answer.isEmpty()) {
      return Replies.notUnderstood();
    }
    Reply reply = new JobNotes(memory, setting.today()).noted(answer.get());
    if (topics.stream().anyMatch(Subject::isInWords)) {
      lastWords = facts.text();
    }
    pending = reply.kind() == Kind.ASK ? new Pending(reply.needs(), topics, asks) : Pending.NOTHING;
    last = new Pending(List.of(), topics, asks);
    if (topics.contains("identify") && !facts.has("weed")) {
      IdentifyTopic.likeliest(facts.tokens()).ifPresent(this::likely);
    }
    if (topics.equals(List.of("calibrate"))) {
      measured(reply);
    }
    boolean output = reply.figure("spray_rate").isPresent() && topics.equals(List.of("calibrate"));
    if (output || reply.figure("spread_rate").isPresent()) {
      lawnAgain();
    }
    return reply;
  }

  /** What the sprayer was found to lay down counts from now on. */
  private void measured(Reply reply) {
    reply.figures().stream()
        .filter(f -> f.name().equals("spray_rate"))
        .flatMap(f -> f.value().stream())
        .findFirst()
        .ifPresent(
            rate -> {
              Fact fact = Fact.of("spray_rate", rate, "as measured", 0);
              memory.replace("spray_rate", List.of(fact), turn);
            });
  }

  /** A test piece is not the lawn: what the lawn was before this turn, it is again. */
  private void lawnAgain() {
    if (memory.latest("area").map(t -> t.turn() != turn).orElse(true)) {
      return;
    }
    List<Memory.Told> lawn = before.isEmpty() ? List.of() : before.peek().memory().all("area");
    memory.drop("area");
    lawn.forEach(told -> memory.add("area", told.fact(), told.turn()));
  }

  /** A weed known by its looks is spoken of from now on, and said to be taken so. */
  private void likely(String weed) {
    Fact fact = Fact.of("weed", weed, "the weed you described", 0).doubting(List.of("likely"));
    memory.replace("weed", List.of(fact), turn);
  }

  private Request request(Facts facts, List<Ask> asks) {
    return new Request(
        facts, known(facts), asks, setting.units(), setting.today(), setting.handbook());
  }

  private Map<String, List<Known>> known(Facts facts) {
    Map<String, List<Known>> known = new LinkedHashMap<>();
    for (String name : memory.names()) {
      known.put(name, memory.all(name).stream().map(this::known).toList());
    }
    known.putAll(new LogFacts(memory, keeper.diary(), setting.today()).facts());
    Map<String, Set<Known>> here = new LinkedHashMap<>();
    for (Fact fact : facts.all()) {
      if (!memory.has(fact.name()) || fact.name().equals("wanted")) {
        here.computeIfAbsent(
                fact.name(), k -> new LinkedHashSet<>(known.getOrDefault(k, List.of())))
            .add(new Known(fact, "question"));
      }
    }
    here.forEach((name, all) -> known.put(name, List.copyOf(all)));
    return known;
  }

  private Known known(Memory.Told told) {
    boolean label =
        !told.fact().owner().isEmpty() && told.fact().owner().equals(memory.chosenLabel());
    String from =
        told.turn() == turn
            ? "question"
            : told.turn() == Keeper.SAVED && keeper.book().isPresent()
                ? "saved"
                : label ? "label" : "earlier";
    return new Known(told.fact(), from);
  }
}
