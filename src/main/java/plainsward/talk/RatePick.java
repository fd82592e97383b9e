package plainsward.talk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.records.Label;
import plainsward.records.Rate;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.units.Quantity;
import plainsward.units.Shown;

/** Which rate of a label with several is meant: by the words of its use, never by a guess. */
final class RatePick {
  /** The topics that reckon with a rate. */
  static final Set<String> DOSES = Set.of("mix", "strength", "coverage", "buy", "cost");

  private static final Set<String> SMALL =
      Set.of("for", "the", "and", "or", "of", "on", "in", "a", "weeds", "lawn", "grass", "grasses");

  private final Facts turn;
  private final Memory memory;
  private final int at;

  RatePick(Facts turn, Memory memory, int at) {
    this.turn = turn;
    this.memory = memory;
    this.at = at;
  }

  /** The most that the label allows for each use, as it was told in earlier turns. */
  static List<Quantity> most(Memory memory) {
    List<Quantity> most = new ArrayList<>();
    memory
        .latest("label_rate")
        .or(() -> memory.latest("strength"))
        .filter(told -> !told.fact().owner().isEmpty() || told.fact().doubts().contains("most"))
        .map(told -> told.fact().high().orElse(told.fact().amount()))
        .ifPresent(most::add);
    memory
        .labelCards()
        .get(memory.chosenLabel())
        .ifPresent(label -> label.rates().forEach(rate -> most.add(rate.amount().high())));
    return most;
  }

  /** Lays out the rate that is meant; the question back where that is open. */
  Optional<Reply> pick(List<String> topics) {
    Optional<Label> label = memory.labelCards().get(memory.chosenLabel());
    boolean dose = topics.stream().anyMatch(DOSES::contains);
    boolean own = turn.has("label_rate") || turn.has("strength");
    if (!dose || own || label.isEmpty() || label.get().rates().size() < 2) {
      return Optional.empty();
    }
    List<Rate> meant = meant(label.get());
    if (meant.size() == 1) {
      layOut(label.get(), meant.get(0));
      return Optional.empty();
    }
    boolean laidOut = memory.has("rate_use") && namesNone(label.get());
    return laidOut ? Optional.empty() : Optional.of(question(meant));
  }

  /** Whether the turn names the use of a rate of the label in hand, of which there are several. */
  boolean namesUse() {
    return memory
        .labelCards()
        .get(memory.chosenLabel())
        .filter(label -> label.rates().size() > 1)
        .map(label -> !namesNone(label))
        .orElse(false);
  }

  /** The rates whose use is named; where none is, those that fit what is to be filled. */
  private List<Rate> meant(Label label) {
    List<Rate> named = label.rates().stream().filter(this::isNamed).toList();
    if (!named.isEmpty()) {
      return named;
    }
    boolean ground = memory.has("area");
    List<Rate> fitting = label.rates(ground ? Rate.Basis.AREA : Rate.Basis.VOLUME);
    return fitting.isEmpty() ? label.rates() : fitting;
  }

  private boolean namesNone(Label label) {
    return label.rates().stream().noneMatch(this::isNamed);
  }

  private boolean isNamed(Rate rate) {
    List<String> words = new ArrayList<>();
    for (String word : rate.use().orElse("").toLowerCase(Locale.ROOT).split("[^a-z]+")) {
      if (!word.isEmpty() && !SMALL.contains(word)) {
        words.add(word);
      }
    }
    return turn.tokens().stream().anyMatch(t -> words.stream().anyMatch(w -> alike(t.norm(), w)));
  }

  private static boolean alike(String said, String word) {
    return said.equals(word) || said.equals(word + "s") || word.equals(said + "s");
  }

  private void layOut(Label label, Rate rate) {
    Fact fact = LabelFacts.rate(label, rate);
    memory.drop("label_rate");
    memory.drop("strength");
    memory.replace(fact.name(), List.of(fact), Keeper.SAVED);
    String use = rate.use().orElse("");
    memory.replace("rate_use", List.of(Fact.of("rate_use", use, use, 0)), at);
  }

  private static Reply question(List<Rate> rates) {
    List<String> told =
        rates.stream()
            .map(
                r ->
                    (r.amount().isRange()
                            ? Shown.range(r.amount().low(), r.amount().high())
                            : Shown.of(r.amount().low()))
                        + r.use().map(u -> " for " + u).orElse(""))
            .toList();
    return new ReplyBuilder(Kind.ASK)
        .topic("mix")
        .headline("Which of the label's rates: " + String.join(", or ", told) + "?")
        .need("label_rate")
        .build();
  }
}
