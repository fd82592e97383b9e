package plainsward.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A conversation as a Markdown page: a title, a line on what it shows, then sittings. A sitting is
 * a heading with its date, and with the options it was started with; below it stand the person's
 * line as a quote and the reply as a fenced block, turn by turn. A later sitting finds what an
 * earlier one saved.
 *
 * @param title the page's name
 * @param shows what it shows, one line
 * @param sittings in their order
 */
record Transcript(String title, String shows, List<Sitting> sittings) {
  private static final String FENCE = "```";
  private static final Pattern SITTING =
      Pattern.compile("## (\\d{4}-\\d\\d-\\d\\d)(?:, started with `(.+)`)?");

  /** One run of the program: its date as YYYY-MM-DD, its options, and its turns. */
  record Sitting(String date, String options, List<Turn> turns) {
    /** All the options, as on the command line. */
    List<String> arguments() {
      List<String> all = new ArrayList<>(List.of("--plain", "--today", date));
      all.addAll(options.isEmpty() ? List.of() : List.of(options.split(" ")));
      return all;
    }
  }

  /** What was said, and what was answered. */
  record Turn(String said, String reply) {}

  /**
   * Reads a page.
   *
   * @throws IllegalArgumentException where a line has no place in such a page, naming it
   */
  static Transcript read(String page) {
    List<String> lines = page.lines().toList();
    List<Sitting> sittings = new ArrayList<>();
    int at = 3;
    while (at < lines.size()) {
      String line = lines.get(at);
      Matcher sitting = SITTING.matcher(line);
      if (sitting.matches()) {
        String options = sitting.group(2) == null ? "" : sitting.group(2);
        sittings.add(new Sitting(sitting.group(1), options, new ArrayList<>()));
      } else if (line.startsWith("> ")) {
        int end = replyEnd(lines, at);
        String reply = String.join("\n", lines.subList(Math.min(at + 3, end), end));
        sittings.get(sittings.size() - 1).turns().add(new Turn(line.substring(2), reply));
        at = Math.max(end, at);
      } else if (!line.isBlank()) {
        throw new IllegalArgumentException("line " + (at + 1) + " has no place here: " + line);
      }
      at++;
    }
    return new Transcript(lines.get(0).replaceFirst("# ", ""), lines.get(2), sittings);
  }

  /** Where the reply to the turn at a line ends; a turn that has none yet ends where it stands. */
  private static int replyEnd(List<String> lines, int turn) {
    if (turn + 2 >= lines.size() || !lines.get(turn + 2).startsWith(FENCE)) {
      return turn;
    }
    int at = turn + 3;
    while (!lines.get(at).equals(FENCE)) {
      at++;
    }
    return at;
  }

  /** The page. */
  String written() {
    StringBuilder page = new StringBuilder("# " + title + "\n\n" + shows + "\n");
    for (Sitting sitting : sittings) {
      page.append("\n## ").append(sitting.date());
      if (!sitting.options().isEmpty()) {
        page.append(", started with `").append(sitting.options()).append('`');
      }
      page.append('\n');
      for (Turn turn : sitting.turns()) {
        page.append("\n> ").append(turn.said()).append("\n\n");
        page.append(FENCE).append("text\n").append(turn.reply()).append('\n');
        page.append(FENCE).append('\n');
      }
    }
    return page.toString();
  }
}
