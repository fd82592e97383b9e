package plainsward.talk;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** What was known before each of the last turns, so that they can be taken back. */
final class Undo {
  private static final int MOST = 8;

  private final Deque<Before> before = new ArrayDeque<>();

  /**
   * How a talk stood before a turn.
   *
   * @param memory what was known
   * @param mark how much this talk had logged
   */
  record Before(Memory memory, int mark) {}

  /** Keeps how the talk stands, before a turn is heard. */
  void keep(Memory memory, int mark) {
    before.push(new Before(memory.copy(), mark));
    if (before.size() > MOST) {
      before.removeLast();
    }
  }

  /** Whether there is a turn to be taken back. */
  boolean isPossible() {
    return !before.isEmpty();
  }

  /** Takes the last turn back: how the talk stood before it. */
  Before takeBack() {
    return before.pop();
  }

  /** What was known before this turn. */
  Optional<Memory> memory() {
    return Optional.ofNullable(before.peek()).map(Before::memory);
  }

  /** Forgets it all. */
  void clear() {
    before.clear();
  }
}
