package plainsward.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
  private static final int TANK_GAP = 4;

  private final List<String[]> rows = new ArrayList<>();

  private LoadTable() {}

  /**
   * The lines of the table, with each tank drawn beside it; none where nothing is poured.
   *
   * @param pen draws, or tells in words
   */
  static List<Line> of(Reply reply, Pen pen) {
    List<Line> lines = new ArrayList<>();
    List<Loads.Load> loads = Loads.of(reply);
    List<LoadTable> tables = loads.stream().map(LoadTable::rows).toList();
    int name = tables.stream().mapToInt(t -> t.widest(0)).max().orElse(0);
    int amount = tables.stream().mapToInt(t -> t.widest(1)).max().orElse(0);
    for (int i = 0; i < loads.size(); i++) {
      Loads.Load load = loads.get(i);
      LoadTable table = tables.get(i);
      List<Line> rows = new ArrayList<>();
      rows.add(Line.title(Line.Part.LOADS, title(load, loads.size() == 1)));
      for (String[] row : table.rows) {
        String text = padded(row[0], name + GAP) + padded(row[1], amount + GAP) + row[2];
        rows.add(new Line(Line.Part.LOADS, Line.Look.PLAIN, "  " + text.stripTrailing(), 7));
      }
      lines.addAll(drawn(rows, new TankDrawing(load, table.rows.size()), pen));
    }
    return lines;
  }

  /** The tank at the right of the rows, where there is room for both; else under them. */
  private static List<Line> drawn(List<Line> rows, TankDrawing tank, Pen pen) {
    int left = rows.stream().mapToInt(row -> LineBreaker.columns(row.text())).max().orElse(0);
    int free = pen.width() - left - TANK_GAP;
    boolean beside = pen.draws() && free >= tank.columns();
    List<Line> under = pen.lines(Line.Part.LOADS, tank);
    if (!beside) {
      List<Line> all = new ArrayList<>(rows);
      under.stream().limit(under.size() > 1 ? 0 : 1).forEach(all::add);
      return all;
    }
    List<Line> all = new ArrayList<>();
    for (int i = 0; i < Math.max(rows.size(), under.size()); i++) {
      Line row = i < rows.size() ? rows.get(i) : Line.of(Line.Part.LOADS, "");
      String tail = i < under.size() ? under.get(i).text() : "";
      String gap = " ".repeat(left + TANK_GAP - LineBreaker.columns(row.text()));
      all.add(new Line(row.part(), row.look(), row.text(), row.hang(), gap + tail));
    }
    return all;
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
