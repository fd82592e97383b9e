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
import plainsward.topics.Request;
import plainsward.topics.Topics;
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
    boolean asks = !facts.asks().isEmpty() || isFollowUp(facts);
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
    remember();
    Optional<Reply> kept = records(facts, tied);
    if (kept.isPresent()) {
      return kept.get();
    }
    List<Quantity> most = RatePick.most(memory);
    new Listener(memory, turn).hear(facts, tied);
    Optional<Reply> logged =
        new Logger(memory, keeper.diary(), setting.today(), turn).hear(facts, tied);
    if (logged.isPresent()) {
      return logged.get();
    }
    Facts heard = facts.with(tied);
    Optional<Reply> limit = Limits.check(request(heard, facts.asks()), most);
    if (limit.isPresent()) {
      return limit.get();
    }
    if (facts.says("vague-measure")) {
      Reply asked = Replies.vagueMeasure(facts);
      pending = new Pending(asked.needs(), List.of("mix"), facts.asks());
      return asked;
    }
    List<String> topics = new Chooser(heard, memory, keeper.diary()).topics();
    List<Ask> asks = facts.asks();
    boolean onlyGround = topics.equals(List.of("measure")) && facts.asks().isEmpty();
    if (onlyGround && (pending.needs("area") || pending.needs("label_rate"))) {
      topics = pending.topics();
      asks = pending.asks();
    } else if (onlyGround && isChange(heard) && !last.topics().isEmpty()) {
      topics = last.topics();
      asks = last.asks();
    }
    if (isRedo(heard)) {
      topics = last.topics();
      asks = last.asks();
    }
    if (pending.needs("label_rate") && new RatePick(heard, memory, turn).namesUse()) {
      topics = pending.topics();
      asks = pending.asks();
    }
    if (topics.isEmpty() && isOnlyTold(heard)) {
      return noted(tied);
    }
    if (topics.isEmpty() && pending.isOpen() && !tied.isEmpty()) {
      topics = pending.topics();
      asks = pending.asks();
    } else if (topics.isEmpty() && last.topics().contains("identify") && heard.has("grass")) {
      topics = List.of("choose");
    } else if (topics.isEmpty() && isRepeatable(last) && isFollowUp(heard)) {
      topics = last.topics();
      asks = last.asks();
    }
    if (topics.isEmpty()) {
      return inWords(heard).orElseGet(() -> noted(tied));
    }
    boolean redone = topics.equals(last.topics()) && asks.equals(last.asks()) && !pending.isOpen();
    Reply reply = answered(heard, topics, asks);
    return redone && reply.kind() == Kind.ANSWER ? changed(reply, tied) : reply;
  }

  /** "The label says 28 days between" after advice in words: a fact to keep, nothing to redo. */
  private boolean isOnlyTold(Facts facts) {
    boolean waits =
        !facts.all().isEmpty()
            && facts.all().stream().allMatch(f -> f.name().matches("interval|season_limit"));
    return waits && !pending.isOpen() && !last.topics().contains("repeat");
  }

  private static boolean isChange(Facts facts) {
    return facts.says("correction") || facts.says("follow-up");
  }

  /** Whether new figures change the answer: what the handbook told stays as it is. */
  private static boolean isRepeatable(Pending answered) {
    return answered.topics().stream()
        .anyMatch(code -> Topics.of(code).isPresent() && !isInWords(code));
  }

  private static boolean isInWords(String code) {
    return Topics.of(code).map(t -> t instanceof NoteTopic).orElse(false);
  }

  /** What is told for the records: labels; what is asked back for them is the open question. */
  private Optional<Reply> records(Facts facts, List<Fact> tied) {
    Diary diary = keeper.diary();
    Optional<Reply> reply =
        new FileDesk(memory, keeper, setting)
            .hear(facts)
            .or(() -> new LogDesk(memory, diary, setting.today()).hear(facts))
            .or(() -> new AgainDesk(memory, diary, setting.today()).hear(facts))
            .or(() -> new LabelDesk(memory, setting, turn).hear(facts, tied))
            .or(() -> new SprayerDesk(memory, setting.today(), turn).hear(facts, tied))
            .or(() -> new LawnDesk(memory, turn).hear(facts, tied));
    reply.ifPresent(r -> pending = new Pending(r.needs(), List.of(), List.of()));
    return reply;
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

  /** "what's that in ml", "and the white jug?": the last request with the one thing changed. */
  private boolean isRedo(Facts facts) {
    boolean sum = lastReply.map(r -> !r.figures().isEmpty() || !r.needs().isEmpty()).orElse(false);
    if (!sum || last.topics().isEmpty() || facts.tokens().size() > 9) {
      return false;
    }
    boolean values =
        facts.all().stream().anyMatch(f -> f.value().isPresent() || !f.sides().isEmpty());
    boolean unit = facts.has("wanted") && !values;
    boolean named =
        !values
            && (!facts.lawns().isEmpty() || !facts.labels().isEmpty())
            && (facts.says("follow-up") || facts.says("same") || facts.says("both"));
    boolean use = facts.says("follow-up") && new RatePick(facts, memory, turn).namesUse();
    boolean end = !values && (facts.says("high-end") || facts.says("low-end"));
    boolean both = !values && facts.says("both") && memory.lawnNames().size() > 1;
    return unit || named || end || both || use && !values;
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

  private boolean isFollowUp(Facts facts) {
    return facts.all().stream()
            .anyMatch(
                f -> f.value().isPresent() || !f.sides().isEmpty() || f.name().equals("wanted"))
        || !facts.lawns().isEmpty()
        || !facts.labels().isEmpty()
        || facts.says("same");
  }

  private void remember() {
    before.push(new Before(memory.copy(), keeper.diary().mark()));
    if (before.size() > MOST_UNDO) {
      before.removeLast();
    }
  }

  private Reply answered(Facts facts, List<String> topics, List<Ask> asks) {
    Optional<Reply> against =
        new DoseGuard(memory, keeper.diary(), setting.today())
            .check(facts, topics)
            .or(() -> new JobNotes(memory, setting.today()).harmed(topics));
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
    if (topics.stream().anyMatch(Conversation::isInWords)) {
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
