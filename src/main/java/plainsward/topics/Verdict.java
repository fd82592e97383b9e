package plainsward.topics;

import java.util.ArrayList;
import java.util.List;

/** Go, wait or no, with the reasons; the sternest reason decides. */
final class Verdict {
  private enum Word {
    GO,
    WAIT,
    NO
  }

  private Word word;
  private final List<String> against = new ArrayList<>();
  private final List<String> reasons = new ArrayList<>();

  void go(String reason) {
    take(Word.GO, reason);
  }

  void hold(String reason) {
    take(Word.WAIT, reason);
  }

  void no(String reason) {
    take(Word.NO, reason);
  }

  private void take(Word said, String reason) {
    reasons.add(reason);
    if (said != Word.GO) {
      against.add(reason);
    }
    if (word == null || said.compareTo(word) > 0) {
      word = said;
    }
  }

  /** Whether nothing was looked at. */
  boolean isOpen() {
    return word == null;
  }

  /** Whether nothing speaks against it. */
  boolean isGo() {
    return word == Word.GO;
  }

  String word() {
    return word.name().toLowerCase(java.util.Locale.ROOT);
  }

  List<String> reasons() {
    return List.copyOf(reasons);
  }

  String headline() {
    return switch (word) {
      case GO -> "Go, as far as you told me; your label's own limits come first.";
      case WAIT -> "Wait: not now.";
      case NO -> "No: don't spray now.";
    };
  }
}
