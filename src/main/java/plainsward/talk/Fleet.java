package plainsward.talk;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.reading.Token;
import plainsward.units.Quantity;

/** Several lawns told in more than one turn: how many, how big each, "and for just one of them". */
final class Fleet {
  private static final Set<String> ONE = Set.of("one", "1", "each", "per", "every", "single");
  private static final Set<String> LAWN =
      Set.of("lawn", "yard", "house", "home", "property", "lot", "stop", "customer", "account");
  private static final Set<String> OF = Set.of("of");
  private static final Set<String> THEM = Set.of("them", "em", "those", "these", "the");

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
    boolean lawns = count != null || memory.has("lawn_each");
    if (!lawns || area != null || find(all, "shape") != null) {
      return;
    }
    Optional<Quantity> size = known("lawn_each").or(this::onlyLawn);
    if (size.isEmpty()) {
      return;
    }
    int one = memory.has("lawn_each") ? one() : -1;
    if (count != null && !turn.asks().isEmpty() || count != null && turn.says("follow-up")) {
      all.add(times(count, size.get(), count.amount()));
      all.add(Fact.of("lawn_each", size.get(), count.said(), count.at()));
    } else if (one >= 0) {
      String said = turn.tokens().get(one).said();
      all.add(Fact.of("area", size.get(), said, one).doubting(List.of("square")));
      all.add(Fact.of("lawn_each", size.get(), said, one));
    }
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
      boolean ofThem = isWord(i + 1, OF) && isWord(i + 2, THEM);
      if (ONE.contains(tokens.get(i).norm()) && (lawn || ofThem)) {
        return i;
      }
    }
    return -1;
  }

  private boolean isWord(int i, Set<String> words) {
    return i < turn.tokens().size() && words.contains(turn.tokens().get(i).norm());
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
