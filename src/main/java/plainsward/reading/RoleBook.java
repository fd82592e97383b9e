package plainsward.reading;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plainsward.trade.Row;
import plainsward.trade.Rows;

/**
 * The table of cues that decides which role a quantity plays: the words before and after it. The
 * highest weight wins; a cue counts only within its distance and within the sentence.
 */
final class RoleBook {
  private static final RoleBook SHIPPED = new RoleBook();

  /**
   * One cue.
   *
   * @param role the role it speaks for
   * @param of what kind of quantity it is about
   * @param after whether it stands after the quantity
   * @param weight how loud it speaks
   * @param within how many tokens may stand between
   */
  record Cue(String role, String of, boolean after, int weight, int within) {}

  private final PhraseBook<Cue> book = new PhraseBook<>();

  private RoleBook() {
    for (Row row : Rows.of("roles")) {
      String role = row.text("role");
      String of = row.text("of");
      int weight = row.number("weight").orElseThrow().intValue();
      int within = row.number("within").orElseThrow().intValue();
      row.texts("after").forEach(p -> book.add(p, new Cue(role, of, true, weight, within)));
      row.texts("before").forEach(p -> book.add(p, new Cue(role, of, false, weight, within)));
    }
  }

  static RoleBook shipped() {
    return SHIPPED;
  }

  List<PhraseBook.Found<Cue>> cues(List<Token> tokens) {
    return book.find(tokens);
  }

  /** The weight of each role for a quantity of a kind at a place. */
  static Map<String, Integer> weights(
      List<PhraseBook.Found<Cue>> cues, List<Token> tokens, String of, int from, int to) {
    Map<String, Integer> weights = new HashMap<>();
    for (PhraseBook.Found<Cue> cue : cues) {
      Cue said = cue.meaning();
      if (!said.of().equals(of)) {
        continue;
      }
      int gap = said.after() ? cue.from() - to : from - cue.to();
      boolean near =
          gap >= 0
              && gap <= said.within()
              && (said.after()
                  ? unbroken(tokens, to, cue.from())
                  : unbroken(tokens, cue.to(), from));
      if (near) {
        int length = Math.min(cue.to() - cue.from(), 4);
        weights.merge(said.role(), said.weight() * 10 + length - 2 * gap, Math::max);
      }
    }
    return weights;
  }

  private static boolean unbroken(List<Token> tokens, int from, int to) {
    for (int i = from; i < to; i++) {
      if (tokens.get(i).endsSentence() || tokens.get(i).is(",")) {
        return false;
      }
    }
    return true;
  }
}
