package plainsward.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The cues of a text by the place that they touch, so that only those near a quantity are seen. */
final class Cues {
  private final List<Token> tokens;
  private int widest;
  private final Map<Integer, List<PhraseBook.Found<RoleBook.Cue>>> after = new HashMap<>();
  private final Map<Integer, List<PhraseBook.Found<RoleBook.Cue>>> before = new HashMap<>();

  /** Cues of a text: those that follow their quantity and those that go before it. */
  Cues(
      List<Token> tokens,
      List<PhraseBook.Found<RoleBook.Cue>> following,
      List<PhraseBook.Found<RoleBook.Cue>> leading) {
    this.tokens = tokens;
    for (PhraseBook.Found<RoleBook.Cue> cue : following) {
      put(after, cue.from(), cue);
    }
    for (PhraseBook.Found<RoleBook.Cue> cue : leading) {
      put(before, cue.to(), cue);
    }
  }

  private void put(
      Map<Integer, List<PhraseBook.Found<RoleBook.Cue>>> into,
      int place,
      PhraseBook.Found<RoleBook.Cue> cue) {
    into.computeIfAbsent(place, k -> new ArrayList<>()).add(cue);
    widest = Math.max(widest, cue.meaning().within());
  }

  /** The weight of each role for a quantity of a kind at a place. */
  Map<String, Integer> weights(String of, int from, int to) {
    Map<String, Integer> weights = new HashMap<>();
    for (int gap = 0; gap <= widest && isUnbroken(to, to + gap); gap++) {
      add(weights, after.getOrDefault(to + gap, List.of()), of, gap);
    }
    for (int gap = 0; gap <= widest && isUnbroken(from - gap, from); gap++) {
      add(weights, before.getOrDefault(from - gap, List.of()), of, gap);
    }
    return weights;
  }

  private static void add(
      Map<String, Integer> weights, List<PhraseBook.Found<RoleBook.Cue>> cues, String of, int gap) {
    for (PhraseBook.Found<RoleBook.Cue> cue : cues) {
      RoleBook.Cue said = cue.meaning();
      if (said.of().equals(of) && gap <= said.within()) {
        int length = Math.min(cue.to() - cue.from(), 4);
        weights.merge(said.role(), said.weight() * 10 + length - 2 * gap, Math::max);
      }
    }
  }

  /** Whether no sentence ends and no comma stands between these places of the text. */
  private boolean isUnbroken(int from, int to) {
    if (from < 0 || to > tokens.size()) {
      return false;
    }
    for (int i = from; i < to; i++) {
      if (tokens.get(i).endsSentence() || tokens.get(i).is(",")) {
        return false;
      }
    }
    return true;
  }
}
