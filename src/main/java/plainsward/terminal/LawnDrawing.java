package plainsward.terminal;

import java.util.ArrayList;
import java.util.List;
import plainsward.reply.Piece;

/**
 * The pieces of a lawn side by side, all drawn to one scale, a letter under each; where they lie is
 * not known and not shown. A character is taken to be twice as high as wide.
 *
 * @param pieces the pieces, at least one
 */
record LawnDrawing(List<Piece> pieces) implements Drawing {
  private static final int MOST_PIECES = 8;
  private static final int HIGHEST = 7;
  private static final int WIDEST = 72;
  private static final int GAP = 2;

  @Override
  public List<String> rows(Ink ink, int width) {
    if (pieces.size() > MOST_PIECES) {
      return List.of();
    }
    List<Outline> outlines = pieces.stream().map(Outline::of).toList();
    int room = Math.min(width, WIDEST) - 2 - GAP * (pieces.size() - 1);
    double across = outlines.stream().mapToDouble(Outline::width).sum();
    double up = outlines.stream().mapToDouble(Outline::height).max().orElse(1);
    double scale = Math.max(across / (room - pieces.size()), up / (2 * HIGHEST));
    int height = rows(up, scale);
    List<String> rows = new ArrayList<>();
    for (int row = height - 1; row >= 0; row--) {
      rows.add(row(ink, outlines, scale, row));
    }
    rows.add(letters(outlines, scale));
    named().forEach(name -> rows.addAll(LineBreaker.lines("  " + name, width, 4)));
    return rows;
  }

  @Override
  public String sentence() {
    return "The pieces: " + String.join("; ", named()) + ".";
  }

  private String row(Ink ink, List<Outline> outlines, double scale, int row) {
    StringBuilder text = new StringBuilder("  ");
    for (int i = 0; i < outlines.size(); i++) {
      Outline outline = outlines.get(i);
      String paint = pieces.get(i).isLeftOut() ? ink.out() : ink.half();
      int cells = columns(outline.width(), scale);
      int high = rows(outline.height(), scale);
      for (int column = 0; column < cells; column++) {
        double x = (column + 0.5) / cells * outline.width();
        double y = (row + 0.5) / high * outline.height();
        text.append(row < high && outline.holds(x, y) ? paint : " ");
      }
      text.append(" ".repeat(GAP));
    }
    return text.toString().stripTrailing();
  }

  private static int columns(double width, double scale) {
    return Math.max(1, (int) Math.round(width / scale));
  }

  private static int rows(double height, double scale) {
    return Math.max(1, (int) Math.round(height / (2 * scale)));
  }

  private static String letters(List<Outline> outlines, double scale) {
    StringBuilder text = new StringBuilder("  ");
    for (int i = 0; i < outlines.size(); i++) {
      int cells = columns(outlines.get(i).width(), scale);
      int left = (cells - 1) / 2;
      text.append(" ".repeat(left)).append((char) ('A' + i));
      text.append(" ".repeat(cells - 1 - left + GAP));
    }
    return text.toString().stripTrailing();
  }

  private List<String> named() {
    List<String> named = new ArrayList<>();
    for (Piece piece : pieces) {
      String letter = named.size() < MOST_PIECES ? (char) ('A' + named.size()) + " " : "";
      named.add(letter + CleanText.line(piece.said()) + (piece.isLeftOut() ? ", left out" : ""));
    }
    return named;
  }
}
