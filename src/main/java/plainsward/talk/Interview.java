package plainsward.talk;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.records.Label;
import plainsward.trade.Row;
import plainsward.trade.Rows;

/**
 * Where the asking for a label stands.
 *
 * @param label its name, or empty while that is asked for
 * @param open the field that was asked for last, or empty
 * @param skipped the fields that the label does not tell
 */
record Interview(String label, String open, Set<String> skipped) {
  /** What is asked first where no label was named. */
  static final String NAME = "name";

  /** One question of the interview. */
  record Question(String field, String needs, String text) {}

  private static final class Held {
    static final List<Question> ALL =
        Rows.of("label-questions").stream().map(Interview::question).toList();
  }

  /** Copies the fields. */
  Interview {
    skipped = Set.copyOf(skipped);
  }

  private static Question question(Row row) {
    return new Question(
        row.text("field"), row.text("needs"), row.text("ask") + " " + row.text("where"));
  }

  /** An interview about a label of which nothing was skipped yet. */
  static Interview about(String label) {
    return new Interview(label, "", Set.of());
  }

  /** The same with another question open. */
  Interview asking(String field) {
    return new Interview(label, field, skipped);
  }

  /** The same without the question that is open. */
  Interview skipping() {
    Set<String> more = new HashSet<>(skipped);
    more.add(open);
    return new Interview(label, "", more);
  }

  /** The next thing that is missing, in the order of the table; none where all was told. */
  Optional<Question> next(Label told) {
    Set<String> known = LabelText.lines(told).keySet();
    return Held.ALL.stream()
        .filter(q -> !skipped.contains(q.field()))
        .filter(q -> known.stream().noneMatch(field -> answers(field, q.field())))
        .findFirst();
  }

  /** What a field answers besides itself. */
  private static boolean answers(String known, String asked) {
    return switch (asked) {
      case "mow-after" -> known.startsWith("mow");
      case "water" -> known.startsWith("water");
      case "new-grass" -> known.startsWith("new-grass");
      case "spray-volume" -> known.equals("spray-volume") || known.equals("form-dry");
      default -> known.equals(asked);
    };
  }
}
