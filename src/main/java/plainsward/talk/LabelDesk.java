package plainsward.talk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Detail;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.reading.LabelWords;
import plainsward.records.Label;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.safety.Cautions;

/** Takes in what a label says, told over one or several turns, and asks for what is missing. */
final class LabelDesk {
  private static final Set<String> SUMS =
      Set.of("mix", "strength", "coverage", "calibrate", "measure", "convert", "cost", "buy");
  private static final Set<String> GROUND = Set.of("area", "shape", "tank", "catch_volume", "day");
  private static final Set<String> WEATHER = Set.of("wind", "heat", "cold");
  private static final Set<String> OF_LABEL =
      Set.of(
          "label_rate",
          "strength",
          "interval",
          "season_limit",
          "adjuvant_rate",
          "year_amount",
          "spray_rate");

  private final Memory memory;
  private final Setting setting;
  private final int turn;

  LabelDesk(Memory memory, Setting setting, int turn) {
    this.memory = memory;
    this.setting = setting;
    this.turn = turn;
  }

  /** The reply to a turn that tells a label or is about the asking for one, or nothing. */
  Optional<Reply> hear(Facts facts, List<Fact> tied) {
    Optional<Reply> asked = new Interviewer(memory, turn).hear(facts);
    if (asked.isPresent()) {
      return asked;
    }
    String name = inHand(facts);
    String open = open(name);
    if (name.isEmpty() || !isTelling(facts, open)) {
      return Optional.empty();
    }
    List<Fact> answers = new LabelAnswers(open, setting.units()).facts(tied);
    List<Detail> details = details(facts, answers, open);
    boolean more =
        details.stream().anyMatch(d -> !d.field().equals("rate") || !d.item().isEmpty())
            || answers.stream().anyMatch(f -> f.name().equals("year_amount"));
    boolean any = more || answers.stream().anyMatch(f -> OF_LABEL.contains(f.name()));
    boolean goesOn = memory.interview().isPresent() || facts.labels().isEmpty();
    return more || goesOn && any
        ? Optional.of(told(name, facts, answers, details))
        : Optional.empty();
  }

  private String open(String name) {
    return memory.interview().filter(i -> i.label().equals(name)).map(Interview::open).orElse("");
  }

  /** The label that is being told: named now, asked about, or told in the turn before. */
  private String inHand(Facts facts) {
    if (!facts.labels().isEmpty()) {
      return facts.labels().size() == 1 ? facts.labels().get(0) : "";
    }
    Optional<String> asked = memory.interview().map(Interview::label);
    if (asked.isPresent()) {
      return asked.get();
    }
    String chosen = memory.chosenLabel();
    boolean justTold =
        memory.labelCards().changedIn(turn - 1).stream()
            .anyMatch(l -> Memory.key(l.name()).equals(chosen));
    return justTold || facts.says("label-says") ? chosen : "";
  }

  private static boolean isTelling(Facts facts, String open) {
    boolean sum = facts.asks().stream().anyMatch(a -> SUMS.contains(a.topic()));
    boolean ground = facts.all().stream().anyMatch(f -> GROUND.contains(f.name()));
    boolean marked = facts.tokens().stream().anyMatch(t -> t.is("?"));
    boolean question = facts.says("question") && (open.isEmpty() || marked);
    return !question && !facts.says("log") && !sum && !ground;
  }

  private List<Detail> details(Facts facts, List<Fact> answers, String open) {
    boolean limit = facts.says("limit") || WEATHER.contains(open);
    return LabelWords.read(facts.with(answers), open, setting.units(), setting.today()).stream()
        .filter(d -> limit || !WEATHER.contains(d.field()))
        .toList();
  }

  private Reply told(String name, Facts facts, List<Fact> tied, List<Detail> details) {
    Optional<OddLabel.Question> odd = OddLabel.interval(details).or(() -> OddLabel.cap(tied));
    List<Fact> rest = rest(name, tied, details);
    new Listener(memory, turn).hear(facts, rest);
    Label before = memory.labelCards().get(name).orElseGet(() -> Label.named(name).label());
    LabelMerge merge =
        new LabelMerge(before)
            .facts(rest.stream().filter(f -> OF_LABEL.contains(f.name())).toList())
            .details(details, tied);
    memory.labelCards().put(name, merge.label(), turn);
    LabelFacts.doses(merge.label()).forEach(fact -> doubted(name, fact, rest));
    memory.layOutLabel(name);
    List<String> lines = LabelText.of(merge.label(), merge.fields());
    return reply(name, lines, odd, merge.label());
  }

  /** Keeps a dose fact of the label, as it was said where it was said in this turn. */
  private void doubted(String name, Fact fact, List<Fact> said) {
    Fact kept =
        said.stream()
            .filter(f -> f.name().equals(fact.name()) && f.value().equals(fact.value()))
            .findFirst()
            .map(f -> f.of(name))
            .orElse(fact);
    memory.label(name, kept, turn);
  }

  /** The facts of the turn without what is a matter of the label alone. */
  private static List<Fact> rest(String name, List<Fact> tied, List<Detail> details) {
    Set<Integer> claimed = new HashSet<>();
    details.stream()
        .filter(d -> !d.field().equals("rate") && d.low().isPresent())
        .forEach(d -> claimed.add(d.at()));
    Set<Integer> used = new HashSet<>();
    details.stream()
        .filter(d -> d.field().equals("rate") && !d.item().isEmpty())
        .forEach(d -> used.add(d.at()));
    List<Fact> rest = new ArrayList<>();
    for (Fact fact : tied) {
      boolean named = Set.of("weed", "grass", "active", "adjuvant").contains(fact.name());
      boolean ofUse = used.contains(fact.at()) && !fact.name().equals("spray_rate");
      boolean senseless = fact.name().equals("season_limit") && fact.amount().signum() < 0;
      if (!claimed.contains(fact.at()) && !named && !ofUse && !senseless) {
        rest.add(OF_LABEL.contains(fact.name()) ? fact.of(name) : fact);
      }
    }
    return rest;
  }

  private Reply reply(
      String name, List<String> lines, Optional<OddLabel.Question> odd, Label label) {
    String noted =
        lines.isEmpty() ? "" : "Noted for the " + name + ": " + String.join("; ", lines) + ".";
    if (odd.isPresent()) {
      return new ReplyBuilder(Kind.ASK)
          .topic("label")
          .headline((noted + " " + odd.get().text()).strip())
          .need(odd.get().needs())
          .build();
    }
    Interviewer interviewer = new Interviewer(memory, turn);
    ReplyBuilder reply =
        memory.interview().isPresent()
            ? interviewer.goOn(name, noted)
            : new ReplyBuilder(Kind.DONE)
                .topic("label")
                .headline(noted.isEmpty() ? "Noted." : noted)
                .suggest("What else do you need of the label?");
    OddLabel.kept(label)
        .ifPresent(question -> reply.say(question).caution(Cautions.of(odd(label))));
    return reply.build();
  }

  private static String odd(Label label) {
    boolean none = label.season().applications().equals(Optional.of(0));
    return none ? "season-cap" : "rate-unusual";
  }
}
