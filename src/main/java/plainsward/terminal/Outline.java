package plainsward.terminal;

import java.util.List;
import plainsward.reply.Piece;
import plainsward.units.Quantity;

/**
 * The outline of a piece of lawn as it is drawn, in the metre of its first side, lying on its
 * longer side. A piece of which only the area is known is drawn as a square.
 *
 * @param width how wide it is, above nought
 * @param height how high it is, above nought
 * @param shape whether a place lies within it
 */
record Outline(double width, double height, Shape shape) {

  /** Tells whether a place lies within, both coordinates from 0 to 1. */
  @FunctionalInterface
  interface Shape {
    /** Whether the place lies within. */
    boolean holds(double x, double y);
  }

  /** The outline of a piece. */
  static Outline of(Piece piece) {
    if (piece.sides().isEmpty()) {
      double side = Math.sqrt(piece.area().map(Outline::size).orElse(1.0));
      return full(side, side);
    }
    List<Double> sides = piece.sides().stream().map(Outline::size).toList();
    double first = sides.get(0);
    double second = sides.size() > 1 ? sides.get(1) : first;
    return switch (piece.shape()) {
      case "circle" -> new Outline(first, first, Outline::round);
      case "radius" -> new Outline(2 * first, 2 * first, Outline::round);
      case "ellipse" -> new Outline(larger(first, second), smaller(first, second), Outline::round);
      case "triangle" -> triangle(sides);
      case "trapezoid" -> trapezoid(first, second, sides.get(sides.size() - 1));
      case "offsets" -> offsets(first, sides.subList(1, sides.size()));
      default -> full(larger(first, second), smaller(first, second));
    };
  }

  /** Whether a place, measured from the lower left, lies within. */
  boolean holds(double x, double y) {
    return shape.holds(x / width, y / height);
  }

  /** In metres or square metres, so that pieces told in different units are to one scale. */
  private static double size(Quantity quantity) {
    return quantity.value().times(quantity.unit().factor()).toDouble();
  }

  private static double larger(double one, double other) {
    return Math.max(one, other);
  }

  private static double smaller(double one, double other) {
    return Math.min(one, other);
  }

  private static Outline full(double width, double height) {
    return new Outline(width, height, (x, y) -> true);
  }

  private static boolean round(double x, double y) {
    return Math.hypot(x - 0.5, y - 0.5) <= 0.5;
  }

  /** Base and height, or three sides, of which the longest lies below (Heron's formula). */
  private static Outline triangle(List<Double> sides) {
    if (sides.size() < 3) {
      return new Outline(sides.get(0), sides.get(sides.size() - 1), (x, y) -> y <= x);
    }
    double base = sides.stream().mapToDouble(Double::doubleValue).max().orElse(1);
    double s = sides.stream().mapToDouble(Double::doubleValue).sum() / 2;
    double area =
        Math.sqrt(Math.max(0, s * (s - sides.get(0)) * (s - sides.get(1)) * (s - sides.get(2))));
    return new Outline(
        base, Math.max(2 * area / base, base / 100), (x, y) -> y <= 2 * smaller(x, 1 - x));
  }

  /** Two sides that run alike, the longer below, and the height between them. */
  private static Outline trapezoid(double one, double other, double height) {
    double base = larger(one, other);
    double slope = (base - smaller(one, other)) / base;
    return new Outline(base, height, (x, y) -> x <= 1 - slope * y);
  }

  /** Widths taken at equal steps along a crooked bed. */
  private static Outline offsets(double step, List<Double> widths) {
    double high = widths.stream().mapToDouble(Double::doubleValue).max().orElse(1);
    int last = Math.max(1, widths.size() - 1);
    return new Outline(
        step * last,
        high,
        (x, y) -> {
          int at = (int) smaller(x * last, last - 1.0);
          double left = widths.get(at);
          double right = widths.get((int) smaller(at + 1.0, widths.size() - 1.0));
          return y * high <= left + (right - left) * (x * last - at);
        });
  }
}
