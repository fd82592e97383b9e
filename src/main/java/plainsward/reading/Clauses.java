package plainsward.reading;

import java.util.List;
import java.util.Set;

/** The parts of a message: its sentences, the items of a numbered list, what "and" joins on. */
final class Clauses {
  private static final Set<String> STARTS =
      Set.of(
          "how", "what", "when", "can", "do", "does", "is", "should", "will", "where", "which",
          "could", "may", "and");
  private static final int SHORTEST = 4;

  private final String text;
  private final List<Token> tokens;
  private int from;
  private int to;
  private String part = "";

  Clauses(String text, List<Token> tokens) {
    this.text = text;
    this.tokens = tokens;
  }

  /** The part around a token, as it stands in the text; the last one is kept in mind. */
  String around(int at) {
    if (at >= from && at < to) {
      return part;
    }
    from = at;
    while (from > 0 && !edge(from)) {
      from--;
    }
    to = at + 1;
    while (to < tokens.size() && !edge(to)) {
      to++;
    }
    part = text.substring(tokens.get(from).start(), tokens.get(to - 1).end());
    return part;
  }

  /** Whether a part begins at this token. */
  private boolean edge(int i) {
    Token before = tokens.get(i - 1);
    boolean listed =
        before.isNumber() && tokens.get(i).is(")")
            || i >= 2 && before.is(")") && tokens.get(i - 2).isNumber();
    boolean joined =
        (before.is("and") || before.is(","))
            && STARTS.contains(tokens.get(i).norm())
            && tokens.size() - i >= SHORTEST;
    return before.endsSentence() || listed || joined;
  }
}
