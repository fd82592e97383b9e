package plainsward.talk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plainsward.dosing.NotDosable;
import plainsward.dosing.Step;
import plainsward.dosing.Working;
import plainsward.reading.Facts;
import plainsward.records.Label;
import plainsward.records.Rate;
import plainsward.reply.Figure;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.safety.Cautions;
import plainsward.topics.Ground;
import plainsward.units.DimensionMismatch;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;

/**
 * What is needed for the rest of the year: each kept label on each kept lawn, as often as its cap
 * leaves by the log, at its highest rate.
 */
final class SeasonDesk {
  private static final int MOST_LINES = 12;

  private final Memory memory;
  private final Diary diary;
  private final LocalDate today;

  /** What one label needs: its amount, with the working and what was taken for want of a cap. */
  private record Need(String label, Quantity amount, List<String> lines, boolean isOnce) {}

  SeasonDesk(Memory memory, Diary diary, LocalDate today) {
    this.memory = memory;
    this.diary = diary;
    this.today = today;
  }

  /**
   * The reply to the question for a season's needs, where labels and lawns are kept; or nothing.
   */
  Optional<Reply> hear(Facts turn) {
    boolean figures =
        turn.has("label_rate") || turn.has("strength") || turn.has("area") || turn.has("shape");
    boolean stranger = memory.isStranger() && turn.labels().isEmpty() && turn.lawns().isEmpty();
    if (!turn.says("season-need") || figures || stranger) {
      return Optional.empty();
    }
    Collection<String> labels = turn.labels().isEmpty() ? memory.labelNames() : turn.labels();
    List<Need> needs = new ArrayList<>();
    for (String name : labels) {
      memory.labelCards().get(name).flatMap(card -> need(turn, name, card)).ifPresent(needs::add);
    }
    return needs.isEmpty() ? Optional.empty() : Optional.of(reply(needs));
  }

  private Optional<Need> need(Facts turn, String name, Label label) {
    Optional<Quantity> rate =
        label.rates(Rate.Basis.AREA).stream()
            .map(r -> r.amount().high())
            .max(Comparator.comparing(q -> q.value()));
    List<String> lines = new ArrayList<>();
    Quantity sum = null;
    for (String lawn : rate.isEmpty() ? List.<String>of() : lawns(turn, name)) {
      Optional<Quantity> ground = ground(lawn);
      int times = left(lawn, label);
      if (ground.isEmpty() || times == 0) {
        continue;
      }
      Step step =
          Working.of("product_total", rate.get())
              .times(ground.get())
              .times(Quantity.number(Ratio.of(times)))
              .as(rate.get().unit().above());
      lines.add("The " + lawn + " lawn with the " + name + ": " + step.line());
      sum = sum == null ? step.result() : sum.plus(step.result());
    }
    boolean once = label.season().applications().isEmpty();
    return Optional.ofNullable(sum).map(amount -> new Need(name, amount, lines, once));
  }

  /** The lawns that had a label by the log; all lawns where none had it. */
  private Collection<String> lawns(Facts turn, String label) {
    if (!turn.lawns().isEmpty()) {
      return turn.lawns();
    }
    List<String> had =
        memory.lawnNames().stream()
            .filter(
                lawn ->
                    diary
                        .last(List.of(lawn), label)
                        .filter(e -> Memory.key(e.label()).equals(label) && e.lawn().isPresent())
                        .isPresent())
            .toList();
    return had.isEmpty() ? memory.lawnNames() : had;
  }

  private Optional<Quantity> ground(String lawn) {
    try {
      return Ground.together(memory.lawn(lawn).stream().map(Memory.Told::fact).toList());
    } catch (NotDosable | DimensionMismatch noGround) {
      return Optional.empty();
    }
  }

  /** How often the cap still allows it this year; once where no cap was told. */
  private int left(String lawn, Label label) {
    int done = diary.count(List.of(lawn), Memory.key(label.name()), today.getYear());
    return label.season().applications().map(most -> Math.max(0, most - done)).orElse(1);
  }

  private Reply reply(List<Need> needs) {
    List<String> told =
        needs.stream().map(n -> Shown.of(n.amount()) + " of the " + n.label()).toList();
    ReplyBuilder reply =
        new ReplyBuilder(Kind.ANSWER)
            .topic("buy")
            .headline(
                "For the rest of " + today.getYear() + " you need " + String.join(", ", told) + ".")
            .caution(Cautions.of("read-label"));
    Quantity first = needs.get(0).amount();
    reply.figure(Figure.of("product_total", first, Shown.of(first)));
    needs.stream().flatMap(n -> n.lines().stream()).limit(MOST_LINES).forEach(reply::work);
    needs.stream()
        .filter(Need::isOnce)
        .forEach(
            n ->
                reply.say(
                    "For the "
                        + n.label()
                        + " that is one application: tell me how many a year its label allows."));
    reply.say("It is reckoned at the highest rate of each label, on the lawns that had it.");
    return reply.suggest("What would that cost?").build();
  }
}
