package plainsward.records;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Units;

/** The ground inside an outline, its holes taken out. */
final class Polygon {
  private Polygon() {}

  /** The area of all these polygons together, to a square centimetre. */
  static Quantity area(List<Node> polygons) {
    double squareMetres = polygons.stream().mapToDouble(Polygon::squareMetres).sum();
    BigDecimal rounded = BigDecimal.valueOf(squareMetres).setScale(4, RoundingMode.HALF_UP);
    return new Quantity(Ratio.of(rounded), Units.SQUARE_METRE);
  }

  private static double squareMetres(Node coordinates) {
    List<Node> rings = coordinates.items();
    if (rings.isEmpty()) {
      throw coordinates.expected("at least one ring");
    }
    Ring outer = Ring.read(rings.get(0));
    double area = outer.squareMetres();
    for (Node node : rings.subList(1, rings.size())) {
      Ring hole = Ring.read(node);
      if (!outer.holds(hole)) {
        throw FieldFault.saying(node.path(), "a hole was expected to lie inside the outline");
      }
      area -= hole.squareMetres();
    }
    if (area <= 0) {
      throw FieldFault.saying(coordinates.path(), "the holes leave no ground");
    }
    return area;
  }
}
