package plainsward.talk;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What is kept under the user's own names, with the turn in which each was told or changed.
 *
 * @param <T> labels, lawns or sprayers
 */
final class Cards<T> {
  private static final int MOST = 10_000;

  private record Card<T>(T thing, int turn) {}

  private final Map<String, Card<T>> cards = new LinkedHashMap<>();

  /** The same cards, to be changed apart. */
  Cards<T> copy() {
    Cards<T> copy = new Cards<>();
    copy.cards.putAll(cards);
    return copy;
  }

  /** Keeps a thing in place of one of the same name; beyond a bound new names are not kept. */
  void put(String name, T thing, int turn) {
    if (cards.size() < MOST || cards.containsKey(name)) {
      cards.put(name, new Card<>(thing, turn));
    }
  }

  Optional<T> get(String name) {
    return Optional.ofNullable(cards.get(name)).map(Card::thing);
  }

  void remove(String name) {
    cards.remove(name);
  }

  Set<String> names() {
    return Set.copyOf(cards.keySet());
  }

  /** All things, in the order in which they were first named. */
  List<T> all() {
    return cards.values().stream().map(Card::thing).toList();
  }

  boolean isEmpty() {
    return cards.isEmpty();
  }

  /** What was told or changed in a turn. */
  List<T> changedIn(int turn) {
    return cards.values().stream().filter(c -> c.turn() == turn).map(Card::thing).toList();
  }
}
