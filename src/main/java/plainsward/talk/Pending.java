package plainsward.talk;

import java.util.List;
import plainsward.reading.Ask;

/**
 * The question that is open: what was asked back, and what it was for.
 *
 * @param needs the contract's names that would answer it
 * @param topics what was being answered
 * @param asks what had been asked
 */
record Pending(List<String> needs, List<String> topics, List<Ask> asks) {
  static final Pending NOTHING = new Pending(List.of(), List.of(), List.of());

  boolean isOpen() {
    return !needs.isEmpty();
  }

  boolean needs(String name) {
    return needs.contains(name);
  }
}
