package plainsward.reading;

import java.util.List;
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
  private int widest;

  private RoleBook() {
    for (Row row : Rows.of("roles")) {
      String role = row.text("role");
      String of = row.text("of");
      int weight = row.number("weight").orElseThrow().intValue();
      int within = row.number("within").orElseThrow().intValue();
      widest = Math.max(widest, within);
      row.texts("after").forEach(p -> book.add(p, new Cue(role, of, true, weight, within)));
      row.texts("before").forEach(p -> book.add(p, new Cue(role, of, false, weight, within)));
    }
  }

  static RoleBook shipped() {
    return SHIPPED;
  }

  /** The cues that stand in a text. */
  Cues cues(List<Token> tokens) {
    return new Cues(tokens, book.find(tokens), widest);
  }
}
