package plainsward.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The cues of a text by the place that they touch, so that only those near a quantity are seen. */
final class Cues {
  private final List<Token> tokens;
  private final int widest;
  private final Map<Integer, List<PhraseBook.Found<RoleBook.Cue>>> after = new HashMap<>();
  private final Map<Integer, List<PhraseBook.Found<RoleBook.Cue>>> before = new HashMap<>();

  /**
   * Cues of a text.
   *
   * @param widest the most tokens that may stand between any cue and its quantity
   */
  Cues(List<Token> tokens, List<PhraseBook.Found<RoleBook.Cue>> found, int widest) {
    this.tokens = tokens;
    this.widest = widest;
    for (PhraseBook.Found<RoleBook.Cue> cue : found) {
      boolean follows = cue.meaning().after();
      (follows ? after : before)
          .computeIfAbsent(follows ? cue.from() : cue.to(), k -> new ArrayList<>())
          .add(cue);
    }
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
