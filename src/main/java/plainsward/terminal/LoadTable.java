package plainsward.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import plainsward.reply.Figure;
import plainsward.reply.Reply;
import plainsward.units.Ratio;
import plainsward.units.Shown;

/**
 * What goes in each load, in the order in which it is poured (half the water, the product, the
 * wetting agent, the rest of the water: common practice, no source), with the mark of a measure
 * beside each exact amount.
 */
final class LoadTable {
  private static final Set<String> HELD =
      Set.of(
          "fills",
          "spray_total",
          "product_per_fill",
          "last_fill",
          "product_last_fill",
          "area_per_fill",
          "water_per_fill",
          "adjuvant_per_fill",
          "adjuvant_last_fill");
  private static final int GAP = 2;

  private final List<String[]> rows = new ArrayList<>();

  private LoadTable() {}

  /**
   * The lines of the table; none where nothing is poured.
   *
   * @param gauge draws how full the tank is with a load
   */
  static List<Line> of(Reply reply, Function<Loads.Load, String> gauge) {
    List<Line> lines = new ArrayList<>();
    List<Loads.Load> loads = Loads.of(reply);
    List<LoadTable> tables = loads.stream().map(LoadTable::rows).toList();
    int name = tables.stream().mapToInt(t -> t.widest(0)).max().orElse(0);
    int amount = tables.stream().mapToInt(t -> t.widest(1)).max().orElse(0);
    boolean drawn = loads.stream().anyMatch(Loads.Load::isPart);
    for (int i = 0; i < loads.size(); i++) {
      Loads.Load load = loads.get(i);
      String title = title(load, loads.size() == 1) + (drawn ? gauge.apply(load) : "");
      lines.add(Line.title(Line.Part.LOADS, title));
      for (String[] row : tables.get(i).rows) {
        String text = padded(row[0], name + GAP) + padded(row[1], amount + GAP) + row[2];
        lines.add(new Line(Line.Part.LOADS, Line.Look.PLAIN, "  " + text.stripTrailing(), 7));
      }
    }
    return lines;
  }

  /** Whether the table tells this figure. */
  static boolean holds(String figure) {
    return HELD.contains(figure);
  }

  /** What a load is called. */
  private static String title(Loads.Load load, boolean isOnly) {
    String volume = CleanText.line(Shown.of(load.volume()));
    String each = load.count() > 1 ? " each)" : ")";
    String area = load.area().map(a -> " (" + CleanText.line(a.shown()) + each).orElse("");
    if (load.isPart()) {
      return (isOnly ? "In the one load, " : "In the last load, ") + volume;
    }
    String loads = load.count() == 1 ? "In one load" : "In each of " + count(load) + " loads";
    return loads + " of " + volume + area;
  }

  private static String count(Loads.Load load) {
    return Shown.number(Ratio.of(load.count()));
  }

  private static LoadTable rows(Loads.Load load) {
    LoadTable table = new LoadTable();
    String half = Shown.of(load.volume().dividedBy(Ratio.of(2)));
    table.row("Water", half, "half");
    load.product().ifPresent(figure -> table.pour("Product", figure));
    load.adjuvant().ifPresent(figure -> table.pour("Wetting agent", figure));
    table.row("Water", "to " + Shown.of(load.volume()), "the rest");
    return table;
  }

  private void pour(String what, Figure figure) {
    Optional<String> mark = MeasureWords.beside(figure);
    row(what, CleanText.line(figure.shown()), mark.orElse(""));
  }

  private void row(String what, String amount, String beside) {
    rows.add(new String[] {rows.size() + 1 + ". " + what, amount, beside});
  }

  private int widest(int column) {
    return rows.stream().mapToInt(row -> row[column].length()).max().orElse(0);
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }
}
