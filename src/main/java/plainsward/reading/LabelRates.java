package plainsward.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Quantity;
import plainsward.units.Units;

/** The rates of a label with what each is for, and the shares of its active ingredients. */
final class LabelRates {
  /** The names that a rate may be for. */
  private static final Set<String> TARGETS = Set.of("weed", "grass");

  private static final Set<String> DENIED = Set.of("not", "never", "no", "except", "dont");
  private static final Set<String> RATES = Set.of("label_rate", "strength", "active_share");
  private static final Set<String> JOINS = Set.of("and", "or", ",", "&");

  /** How far a use may stand from its rate; a comma counts for more. */
  private static final int FARTHEST = 3;

  private static final Set<String> FOR = Set.of("for", "on", "of", "against", "the");

  private final Facts turn;
  private final List<Token> tokens;
  private final List<PhraseBook.Found<LabelBook.Cue>> cues;
  private final Set<Integer> claimed;
  private final boolean activesAsked;

  /** What a rate is for, with its place. */
  private record Use(String words, int from, int to) {}

  LabelRates(
      Facts turn,
      List<PhraseBook.Found<LabelBook.Cue>> cues,
      Set<Integer> claimed,
      boolean activesAsked) {
    this.activesAsked = activesAsked;
    this.turn = turn;
    this.tokens = turn.tokens();
    this.cues = cues;
    this.claimed = claimed;
  }

  List<Detail> details() {
    List<Detail> details = new ArrayList<>();
    List<Fact> rates = new ArrayList<>();
    for (Fact fact : turn.all()) {
      boolean rate = RATES.contains(fact.name()) && !claimed.contains(fact.at());
      Optional<Fact> active = rate ? active(fact) : Optional.empty();
      if (active.isPresent()) {
        details.add(
            Detail.amount("active", fact.amount(), Optional.empty(), fact.at(), fact.said())
                .with(active.get().word().orElseThrow()));
      } else if (rate && !fact.name().equals("active_share")) {
        rates.add(fact);
      }
    }
    rates.addAll(listed(rates));
    rates.sort((a, b) -> Integer.compare(a.at(), b.at()));
    List<Use> uses = uses();
    for (int i = 0; i < rates.size(); i++) {
      Fact rate = rates.get(i);
      details.add(
          Detail.amount("rate", rate.amount(), rate.high(), rate.at(), rate.said())
              .with(use(rates, i, uses)));
    }
    return details;
  }

  /** The active ingredient that a per cent stands beside: "24% 2,4-D", "dicamba at 2%". */
  private Optional<Fact> active(Fact share) {
    if (!share.amount().unit().equals(Units.PERCENT)) {
      return Optional.empty();
    }
    Optional<Fact> behind = beside(share.at() + 2, share.at() + 3);
    boolean told = activesAsked || turn.of("active").size() > 1;
    return !told && LabelBook.of(cues, "active").isEmpty()
        ? Optional.empty()
        : beside(share.at() - 3, share.at() - 1).or(() -> behind);
  }

  private Optional<Fact> beside(int first, int last) {
    for (int i = last; i >= Math.max(0, first); i--) {
      if (i < tokens.size() && tokens.get(i).is(",")) {
        return Optional.empty();
      }
      if (i < tokens.size() && tokens.get(i).tag().equals("active")) {
        int place = i;
        return turn.of("active").stream()
            .filter(a -> a.at() <= place)
            .max((a, b) -> Integer.compare(a.at(), b.at()));
      }
    }
    return Optional.empty();
  }

  /** "1.1 oz per thousand for clover and 1.5 for ground ivy": the second has the first's unit. */
  private List<Fact> listed(List<Fact> rates) {
    List<Fact> more = new ArrayList<>();
    for (Fact number : turn.of("number")) {
      Optional<Fact> before =
          rates.stream()
              .filter(r -> r.at() < number.at())
              .max((a, b) -> Integer.compare(a.at(), b.at()));
      int next = number.at() + 1;
      boolean isFor = next < tokens.size() && tokens.get(next).is("for");
      if (before.isPresent() && isFor && number.amount().signum() > 0) {
        Quantity amount = new Quantity(number.amount().value(), before.get().amount().unit());
        more.add(number.as(before.get().name()).with(amount, Optional.empty()));
      }
    }
    return more;
  }

  private List<Use> uses() {
    List<Use> uses = new ArrayList<>();
    LabelBook.of(cues, "use").forEach(c -> uses.add(new Use(c.meaning().item(), c.from(), c.to())));
    for (int i = 1; i < tokens.size(); i++) {
      boolean named = TARGETS.contains(tokens.get(i).tag());
      boolean begins = !TARGETS.contains(tokens.get(i - 1).tag());
      boolean denied = i > 1 && DENIED.contains(tokens.get(i - 2).norm());
      if (named && begins && !denied && FOR.contains(tokens.get(i - 1).norm())) {
        uses.add(named(i));
      }
    }
    uses.sort((a, b) -> Integer.compare(a.from(), b.from()));
    return uses;
  }

  private Use named(int from) {
    int to = from;
    int end = from;
    while (to < tokens.size()
        && (TARGETS.contains(tokens.get(to).tag()) || JOINS.contains(tokens.get(to).norm()))) {
      end = tokens.get(to).tag().isEmpty() ? end : to + 1;
      to++;
    }
    String words = turn.text().substring(tokens.get(from).start(), tokens.get(end - 1).end());
    return new Use(words.strip(), from, end);
  }

  /** What a rate is for: the use that stands nearest to it, and no nearer to another rate. */
  private String use(List<Fact> rates, int i, List<Use> uses) {
    Fact rate = rates.get(i);
    int first = i == 0 ? 0 : rates.get(i - 1).at();
    int last = i + 1 < rates.size() ? rates.get(i + 1).at() : tokens.size();
    String words = "";
    int nearest = FARTHEST;
    for (Use use : uses) {
      boolean before = use.to() <= rate.at();
      boolean own = use.from() >= first && use.from() < last;
      int gap = before ? gap(use.to(), rate.at()) : gap(end(rate), use.from());
      if (own && gap <= nearest) {
        nearest = gap;
        words = use.words();
      }
    }
    return words;
  }

  private int gap(int from, int to) {
    int gap = 0;
    for (int i = from; i < to; i++) {
      gap += JOINS.contains(tokens.get(i).norm()) || tokens.get(i).endsSentence() ? 4 : 1;
    }
    return gap;
  }

  /** The token after a fact's words. */
  private int end(Fact fact) {
    int end = tokens.get(fact.at()).start() + fact.said().length();
    int i = fact.at();
    while (i < tokens.size() && tokens.get(i).start() < end) {
      i++;
    }
    return i;
  }
}
