package plainsward.terminal;

import java.util.ArrayList;
import java.util.List;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;

/**
 * A tank with a load in it: the marks to fill it to, and the numbers of the steps at the height at
 * which they are poured. A load that is a part of a tank fills that part of it.
 *
 * @param load the load
 * @param steps how many steps it is poured in: 3, or 4 with a wetting agent
 */
record TankDrawing(Loads.Load load, int steps) implements Drawing {
  private static final int HEIGHT = 4;
  private static final int INSIDE = 9;
  private static final int BAR = 10;
  private static final int NARROW = 60;

  /** How many columns it takes, whatever its marks. */
  int columns() {
    return INSIDE + 5 + Math.max(mark(load.volume()).length(), mark(half()).length());
  }

  @Override
  public List<String> rows(Ink ink, int width) {
    return width < NARROW ? List.of(bar(ink, width)) : tank(ink);
  }

  @Override
  public String sentence() {
    String marks = "Marks on the tank: " + mark(half()) + " of water first, " + mark(load.volume());
    return load.isPart()
        ? marks + " when done, which is " + part() + " of the " + mark(load.full()) + " it holds."
        : marks + " when full.";
  }

  private String part() {
    Ratio percent = load.volume().ratioTo(load.full()).times(Ratio.of(100));
    return percent.equals(Ratio.of(50)) ? "half" : Math.round(percent.toDouble()) + "%";
  }

  /** From the rim to the floor. */
  private List<String> tank(Ink ink) {
    int filled = filled(HEIGHT);
    List<String> rows = new ArrayList<>();
    for (int row = HEIGHT; row >= 1; row--) {
      boolean first = 2 * row <= filled;
      String paint = row > filled ? " " : first ? ink.full() : ink.half();
      String inside = middle(row > filled ? "" : numbers(row, filled), paint);
      rows.add(ink.wall() + inside + ink.wall() + pointer(ink, row, filled));
    }
    rows.add(ink.lowerLeft() + ink.across().repeat(INSIDE) + ink.lowerRight());
    return rows;
  }

  private int filled(int height) {
    double part = load.volume().ratioTo(load.full()).toDouble();
    return part >= 1 ? height : Math.max(1, Math.min(height - 1, (int) Math.round(part * height)));
  }

  /** The steps that are poured at a height: water, then the product, then the rest of the water. */
  private String numbers(int row, int filled) {
    String products = steps == HEIGHT ? "2 3" : "2";
    if (filled == 1) {
      return "1-" + steps;
    }
    int lower = Math.max(1, filled / 2);
    if (row == filled) {
      return String.valueOf(steps);
    }
    if (row == lower) {
      return lower == 1 ? "1 " + products : products;
    }
    return row == 1 ? "1" : "";
  }

  private String pointer(Ink ink, int row, int filled) {
    if (row == filled) {
      return ink.arrow() + " " + mark(load.volume());
    }
    boolean half = filled % 2 == 0 && 2 * row == filled;
    return half ? ink.arrow() + " " + mark(half()) : "";
  }

  private static String middle(String text, String paint) {
    String words = text.isEmpty() ? "" : " " + text + " ";
    int left = (INSIDE - words.length()) / 2;
    return paint.repeat(left) + words + paint.repeat(INSIDE - words.length() - left);
  }

  /** The tank lying on its side, for a narrow screen, with as many marks as there is room for. */
  private String bar(Ink ink, int width) {
    int filled = filled(BAR);
    int first = filled / 2;
    String bar =
        "  ["
            + ink.full().repeat(first)
            + ink.half().repeat(filled - first)
            + ink.dotted().repeat(BAR - filled)
            + "] ";
    String marks = "marks: " + mark(half()) + ", " + mark(load.volume());
    return bar.length() + marks.length() <= width ? bar + marks : bar + mark(load.volume());
  }

  private Quantity half() {
    return load.volume().dividedBy(Ratio.of(2));
  }

  private static String mark(Quantity volume) {
    return CleanText.line(Shown.of(volume));
  }
}
