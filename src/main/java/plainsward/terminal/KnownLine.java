package plainsward.terminal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plainsward.reply.Understood;
import plainsward.units.Shown;

/** What is taken as known, in one row: the lawn, the tank, the label and its rate, the spray. */
final class KnownLine {
  private static final String BETWEEN = " | ";
  private static final Map<String, String> TITLES = titles();

  private KnownLine() {}

  private static Map<String, String> titles() {
    Map<String, String> titles = new LinkedHashMap<>();
    titles.put("area", "lawn");
    titles.put("tank", "tank");
    titles.put("label_rate", "label");
    titles.put("strength", "label");
    titles.put("spray_rate", "spray");
    return titles;
  }

  /**
   * The row.
   *
   * @param columns how many columns it may take
   */
  static String of(List<Understood> standing, int columns) {
    List<String> parts = new ArrayList<>();
    for (Map.Entry<String, String> title : TITLES.entrySet()) {
      List<String> values =
          standing.stream()
              .filter(known -> known.name().equals(title.getKey()))
              .map(KnownLine::value)
              .distinct()
              .toList();
      if (!values.isEmpty()) {
        parts.add(title.getValue() + ": " + String.join(" + ", values));
      }
    }
    String row =
        parts.isEmpty()
            ? "No lawn, tank or label is known yet."
            : "Known: " + String.join(BETWEEN, parts);
    return cut(CleanText.line(row), columns);
  }

  private static String value(Understood known) {
    String name = known.said().isEmpty() ? "" : known.said() + " ";
    Optional<String> amount =
        known
            .value()
            .map(low -> known.high().map(high -> Shown.range(low, high)).orElse(Shown.of(low)));
    return name + amount.or(known::word).orElse("");
  }

  private static String cut(String row, int columns) {
    if (LineBreaker.columns(row) <= columns) {
      return row;
    }
    StringBuilder kept = new StringBuilder();
    int wide = 0;
    for (int c : row.codePoints().toArray()) {
      wide += LineBreaker.columns(Character.toString(c));
      if (wide > columns - 3) {
        break;
      }
      kept.appendCodePoint(c);
    }
    return kept + "...";
  }
}
