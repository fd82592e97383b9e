package plainsward.terminal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plainsward.reply.Understood;
import plainsward.units.Shown;

/** What is taken as known, in a row or two: the lawn, the tank, the label's rate, the spray. */
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
   * The rows, at least one.
   *
   * @param columns how many columns each may take
   */
  static List<String> of(List<Understood> standing, int columns) {
    List<String> parts = new ArrayList<>();
    for (Map.Entry<String, String> title : TITLES.entrySet()) {
      List<String> values =
          standing.stream()
              .filter(known -> known.name().equals(title.getKey()))
              .map(KnownLine::value)
              .distinct()
              .toList();
      if (!values.isEmpty()) {
        parts.add(CleanText.line(title.getValue() + ": " + String.join(" + ", values)));
      }
    }
    return parts.isEmpty()
        ? List.of(cut("No lawn, tank or label is known yet.", columns))
        : rows(parts, columns);
  }

  /** As many parts in a row as it holds; what two rows don't hold is cut. */
  private static List<String> rows(List<String> parts, int columns) {
    List<String> rows = new ArrayList<>();
    String row = "Known: " + parts.get(0);
    for (String part : parts.subList(1, parts.size())) {
      String longer = row + BETWEEN + part;
      boolean breaks = rows.isEmpty() && LineBreaker.columns(longer) > columns;
      if (breaks) {
        rows.add(cut(row, columns));
      }
      row = breaks ? part : longer;
    }
    rows.add(cut(row, columns));
    return rows;
  }

  private static String value(Understood known) {
    Optional<String> amount =
        known
            .value()
            .map(low -> known.high().map(high -> Shown.range(low, high)).orElse(Shown.of(low)));
    boolean leftOut = known.word().equals(Optional.of(Understood.LEFT_OUT));
    String words = (known.said() + " " + amount.orElse("")).strip();
    return leftOut ? "less " + words : words;
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
