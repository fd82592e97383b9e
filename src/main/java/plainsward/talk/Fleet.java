package plainsward.talk;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.reading.Token;
import plainsward.units.Quantity;
import plainsward.units.Ratio;

/** Several lawns told in more than one turn: how many, how big each, "and for just one of them". */
final class Fleet {
  private static final Set<String> ONE = Set.of("one", "1", "each", "per", "every", "single");
  private static final Set<String> LAWN =
      Set.of("lawn", "yard", "house", "home", "property", "lot", "stop", "customer", "account");
  private static final Set<String> OF = Set.of("of");
  private static final Set<String> THEM = Set.of("them", "em", "those", "these", "the");

  private static final Set<String> WHO =
      Set.of(
          "guy",
          "guys",
          "lady",
          "customer",
          "customers",
          "client",
          "clients",
          "yard",
          "yards",
          "lawn",
          "lawns",
          "house",
          "houses",
          "stop",
          "stops",
          "account",
          "accounts");
  private static final Set<String> OFF =
      Set.of("cancelled", "canceled", "cancels", "skipped", "dropped", "quit");
  private static final List<String> FEW = List.of("one", "two", "three", "four", "five");

  private final Facts turn;
  private final Memory memory;

  Fleet(Facts turn, Memory memory) {
    this.turn = turn;
    this.memory = memory;
  }

  /** The ground of the lawns that are counted or singled out, where it is not told outright. */
  void join(List<Fact> all) {
    Fact count = find(all, "lawn_count");
    Fact each = find(all, "lawn_each");
    Fact area = find(all, "area");
    if (each != null && area != null && each.amount().isSameAmount(area.amount())) {
      Optional<Quantity> many = count != null ? count.value() : known("lawn_count");
      if (many.isPresent()) {
        all.set(all.indexOf(area), times(area, area.amount(), many.get()));
      }
      return;
    }
    if (area == null && count == null && turn.says("both") && memory.has("lawns_all")) {
      allOfThem(all);
      return;
    }
    boolean lawns = count != null || memory.has("lawn_each");
    if (!lawns || area != null || find(all, "shape") != null) {
      return;
    }
    Optional<Quantity> size = known("lawn_each").or(this::onlyLawn);
    if (size.isEmpty()) {
      return;
    }
    if (less(all, size.get())) {
      return;
    }
    if (count == null && memory.has("lawn_each") && some(all, size.get())) {
      return;
    }
    int one = memory.has("lawn_each") ? one() : -1;
    boolean meant = memory.has("lawn_each") || !turn.asks().isEmpty() || turn.says("follow-up");
    if (count != null && meant) {
      all.add(times(count, size.get(), count.amount()));
      all.add(Fact.of("lawn_each", size.get(), count.said(), count.at()));
    } else if (one >= 0) {
      String said = turn.tokens().get(one).said();
      all.add(Fact.of("area", size.get(), said, one).doubting(List.of("square")));
      all.add(Fact.of("lawn_each", size.get(), said, one));
    }
  }

  /** "and the whole day", after one of the lawns was spoken of: all of them again. */
  private void allOfThem(List<Fact> all) {
    Fact sum = memory.latest("lawns_all").orElseThrow().fact();
    all.add(sum.as("area"));
    known("lawn_each").ifPresent(each -> all.add(sum.as("lawn_each").with(each, Optional.empty())));
  }

  /** "two cancelled": so many lawns fewer. */
  private boolean less(List<Fact> all, Quantity each) {
    Optional<Quantity> area = onlyLawn();
    for (int i = 1; i < turn.tokens().size() && area.isPresent(); i++) {
      if (!turn.isWord(i, OFF) || !memory.has("lawn_each")) {
        continue;
      }
      int before = turn.isWord(i - 1, WHO) ? i - 2 : i - 1;
      int few = turn.isWord(i - 1, THEM) && turn.isWord(i - 2, OF) ? i - 3 : before;
      Optional<Ratio> many = few < 0 ? Optional.empty() : number(few);
      if (many.isPresent() && each.times(many.get()).compareTo(area.get()) < 0) {
        String said = turn.tokens().get(few).said() + " " + turn.tokens().get(i).said();
        Quantity rest = area.get().minus(each.times(many.get()));
        all.removeIf(fact -> fact.at() == few);
        all.add(Fact.of("area", rest, said, few).doubting(List.of("square")));
        all.add(Fact.of("lawn_each", each, said, few));
        return true;
      }
    }
    return false;
  }

  /** "just two of them": so many of the lawns. */
  private boolean some(List<Fact> all, Quantity each) {
    for (int i = 0; i + 2 < turn.tokens().size(); i++) {
      boolean ofThem = turn.isWord(i + 1, OF) && turn.isWord(i + 2, THEM);
      Optional<Ratio> many = ofThem ? number(i) : Optional.empty();
      if (many.filter(n -> n.isWhole() && n.compareTo(Ratio.ONE) > 0).isPresent()) {
        int at = i;
        String said = turn.tokens().get(i).said();
        all.removeIf(fact -> fact.at() == at);
        all.add(Fact.of("area", each.times(many.get()), said, i).doubting(List.of("square")));
        all.add(Fact.of("lawn_each", each, said, i));
        return true;
      }
    }
    return false;
  }

  private Optional<Ratio> number(int i) {
    for (Fact fact : turn.of("number")) {
      if (fact.at() == i && fact.high().isEmpty()) {
        return Optional.of(fact.amount().value());
      }
    }
    int word = FEW.indexOf(turn.tokens().get(i).norm());
    return word < 0 ? Optional.empty() : Optional.of(Ratio.of(word + 1));
  }

  private static Fact times(Fact told, Quantity each, Quantity many) {
    return told.as("area")
        .with(each.times(many.value()), Optional.empty())
        .doubting(List.of("square"));
  }

  private Optional<Quantity> known(String role) {
    return memory.latest(role).flatMap(told -> told.fact().value());
  }

  /** The one lawn that was spoken of so far. */
  private Optional<Quantity> onlyLawn() {
    return memory.all("area").size() == 1 ? known("area") : Optional.empty();
  }

  /** Where "one of them" or "per lawn" begins, or -1. */
  private int one() {
    List<Token> tokens = turn.tokens();
    for (int i = 0; i + 1 < tokens.size(); i++) {
      boolean lawn = LAWN.contains(tokens.get(i + 1).norm());
      boolean ofThem = turn.isWord(i + 1, OF) && turn.isWord(i + 2, THEM);
      if (ONE.contains(tokens.get(i).norm()) && (lawn || ofThem)) {
        return i;
      }
    }
    return -1;
  }

  private static Fact find(List<Fact> all, String name) {
    for (Fact fact : all) {
      if (fact.name().equals(name) && fact.value().isPresent()) {
        return fact;
      }
    }
    return null;
  }
}
