package plainsward.reading;

import java.util.List;
import plainsward.trade.Row;

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

  private final List<Row> rows = PhraseColumn.AFTER_ROLES.rows();
  private final PhraseBook<Cue> after =
      PhraseBook.of(PhraseColumn.AFTER_ROLES, n -> cue(rows.get(n), true));
  private final PhraseBook<Cue> before =
      PhraseBook.of(PhraseColumn.BEFORE_ROLES, n -> cue(rows.get(n), false));

  private RoleBook() {}

  private static Cue cue(Row row, boolean after) {
    return new Cue(
        row.text("role"),
        row.text("of"),
        after,
        row.number("weight").orElseThrow().intValue(),
        row.number("within").orElseThrow().intValue());
  }

  static RoleBook shipped() {
    return SHIPPED;
  }

  /** The cues that stand in a text. */
  Cues cues(List<Token> tokens) {
    return new Cues(tokens, after.find(tokens), before.find(tokens));
  }
}
