package plainsward.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import plainsward.reading.PhraseBook;
import plainsward.reading.PhraseColumn;
import plainsward.reading.Token;
import plainsward.trade.Row;
import plainsward.trade.Rows;

/**
 * Hears a mishap by who did what with what, in any words that the parts of the table {@code
 * exposure} know, where no phrase is known as a whole: the rows of the table {@code mishaps} say
 * who must have done it, to what, and what it is a sign of. What comes upon somebody is heard by
 * {@link Upon}.
 */
final class Mishaps {
  private static final List<Row> ROWS = PhraseColumn.EXPOSURE.rows();
  private static final PhraseBook<Part> WORDS =
      PhraseBook.of(PhraseColumn.EXPOSURE_WORDS, n -> Part.named(ROWS.get(n).text("part")));
  private static final List<Rule> RULES = rules();
  private static final String NOBODY = "nobody";
  private static final String ANIMAL = "animal";

  /**
   * A row of the table.
   *
   * @param act what is done
   * @param by who may do it
   * @param nobody whether nobody need be named
   * @param to what the next thing named must be, nothing for anything
   * @param not what it must not be
   * @param with what must be in the sentence, nothing for anything
   * @param sign what it is a sign of
   */
  private record Rule(
      Part act, long by, boolean nobody, long to, long not, long with, String sign) {}

  /** An act that was found, with its place. */
  record Act(Part part, int from, int to) {}

  private Mishaps() {}

  private static List<Rule> rules() {
    List<Rule> rules = new ArrayList<>();
    for (Row row : Rows.of("mishaps")) {
      List<String> by = row.texts("by");
      rules.add(
          new Rule(
              Part.named(row.text("act")),
              Part.set(by, NOBODY),
              by.isEmpty() || by.contains(NOBODY),
              Part.set(row.texts("to"), NOBODY),
              Part.set(row.texts("not"), NOBODY),
              Part.set(row.texts("with"), NOBODY),
              row.text("sign")));
    }
    return rules;
  }

  /** Adds the signs of what the acts tell, an animal's own as its own. */
  static void hear(List<Token> tokens, List<Act> acts, Set<String> signs) {
    Marked marked = new Marked(tokens);
    for (PhraseBook.Found<Part> f : WORDS.find(tokens)) {
      marked.mark(f.meaning(), f.from(), f.to());
    }
    acts.forEach(act -> marked.mark(act.part(), act.from(), act.to()));
    Upon upon = new Upon(marked, signs);
    for (Act act : acts) {
      upon.hear(act);
      for (Rule rule : RULES) {
        if (rule.act() == act.part() && holds(rule, act, marked)) {
          signs.add(sign(rule, act, marked));
        }
      }
    }
  }

  private static boolean holds(Rule rule, Act act, Marked marked) {
    int doer = marked.doer(act.from());
    if (doer < 0 ? !rule.nobody() : !marked.is(doer, rule.by() == 0 ? ~Part.SAFE.bit : rule.by())) {
      return false;
    }
    int next = marked.next(act.to());
    boolean toWhat =
        rule.to() == 0
            ? rule.by() == 0 || !marked.is(act.to(), Part.THE.bit)
            : isTo(rule, act, next, marked);
    return toWhat
        && !(next >= 0 && marked.is(next, rule.not()))
        && (rule.with() == 0 || marked.hasAround(act.from(), rule.with()))
        && !marked.isSupposed(act.from(), doer);
  }

  private static boolean isTo(Rule rule, Act act, int next, Marked marked) {
    if (next >= 0) {
      return marked.is(next, rule.to());
    }
    return marked.is(act.to() - 1, rule.to());
  }

  private static String sign(Rule rule, Act act, Marked marked) {
    int doer = marked.doer(act.from());
    boolean animal =
        marked.is(doer, Part.ANIMAL.bit)
            || marked.is(doer, Part.set(Part.BODY, Part.EYE, Part.MOUTH))
                && marked.is(doer - 1, Part.ANIMAL.bit);
    return animal && rule.act() != Part.SPILL ? ANIMAL : rule.sign();
  }
}
