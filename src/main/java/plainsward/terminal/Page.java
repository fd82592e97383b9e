package plainsward.terminal;

import java.util.List;

/**
 * What is shown of a reply, and what is kept for "more".
 *
 * @param shown the lines shown, painted
 * @param rest the lines kept back, painted; none where all is shown
 */
record Page(List<String> shown, List<String> rest) {

  /** Keeps the lines as they are. */
  Page {
    shown = List.copyOf(shown);
    rest = List.copyOf(rest);
  }

  /** The lines shown, as one text. */
  String text() {
    return String.join("\n", shown);
  }

  /** What was kept back, a screen of it at a time. */
  Page turned(int rows) {
    int cut = Math.min(rows, rest.size());
    return new Page(rest.subList(0, cut), rest.subList(cut, rest.size()));
  }
}
