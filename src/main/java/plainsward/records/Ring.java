package plainsward.records;

import java.util.List;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.PolygonArea;
import plainsward.units.Ratio;

/**
 * A closed line of an outline. Its area is that on the WGS 84 ellipsoid with geodesics between the
 * corners (Karney 2013, "Algorithms for geodesics"), by the author's library.
 *
 * @param longitudes degrees east; they run on past 180 where the ring crosses that meridian
 * @param latitudes degrees north
 */
record Ring(double[] longitudes, double[] latitudes) {
  private static final int FEWEST = 4;
  private static final int MOST = 5000;

  /** Reads a ring; one that is not closed, crosses itself or lies off the earth is refused. */
  static Ring read(Node node) {
    List<Node> positions = node.items();
    if (positions.size() < FEWEST) {
      throw FieldFault.saying(
          node.path(), "at least 4 positions were expected, found " + positions.size());
    }
    if (positions.size() > MOST) {
      throw FieldFault.saying(node.path(), "there are more than " + MOST + " positions");
    }
    Ring ring = new Ring(new double[positions.size()], new double[positions.size()]);
    for (int i = 0; i < positions.size(); i++) {
      ring.set(i, positions.get(i));
    }
    ring.check(node);
    return ring;
  }

  private void set(int i, Node position) {
    List<Node> numbers = position.items();
    if (numbers.size() < 2 || numbers.size() > 4) {
      throw position.expected("[longitude, latitude]");
    }
    double east = degrees(numbers.get(0), 180, "a longitude from -180 to 180");
    latitudes[i] = degrees(numbers.get(1), 90, "a latitude from -90 to 90");
    double turn = i == 0 ? 0 : Math.rint((longitudes[i - 1] - east) / 360);
    longitudes[i] = east + 360 * turn;
  }

  private static double degrees(Node node, int most, String expected) {
    Ratio value = node.number();
    if (value.compareTo(Ratio.of(most)) > 0 || value.compareTo(Ratio.of(-most)) < 0) {
      throw node.expected(expected);
    }
    return value.toDouble();
  }

  private void check(Node node) {
    int last = longitudes.length - 1;
    if (longitudes[0] != longitudes[last] || latitudes[0] != latitudes[last]) {
      throw FieldFault.saying(
          node.path(), "the ring is not closed: its last position is not its first");
    }
    for (int i = 0; i < last; i++) {
      for (int j = i + 2; j < last; j++) {
        if (!(i == 0 && j == last - 1) && crosses(i, j)) {
          throw FieldFault.saying(node.path(), "the outline crosses itself");
        }
      }
    }
    if (squareMetres() <= 0) {
      throw FieldFault.saying(node.path(), "the ring encloses no ground");
    }
  }

  /** Whether the sides that start at these corners cross; touching is no crossing. */
  private boolean crosses(int i, int j) {
    return side(i, j) * side(i, j + 1) < 0 && side(j, i) * side(j, i + 1) < 0;
  }

  /** On which side of the side that starts at corner i a corner lies. */
  private double side(int i, int corner) {
    return Math.signum(
        (longitudes[i + 1] - longitudes[i]) * (latitudes[corner] - latitudes[i])
            - (latitudes[i + 1] - latitudes[i]) * (longitudes[corner] - longitudes[i]));
  }

  /** The area inside, whichever way round the ring runs. */
  double squareMetres() {
    PolygonArea area = new PolygonArea(Geodesic.WGS84, false);
    for (int i = 0; i < longitudes.length - 1; i++) {
      area.AddPoint(latitudes[i], longitudes[i]);
    }
    return Math.abs(area.Compute(false, true).area);
  }

  /** Whether all corners of another ring lie inside this one or on its line. */
  boolean holds(Ring other) {
    for (int i = 0; i < other.longitudes.length; i++) {
      if (!isOnLine(other.longitudes[i], other.latitudes[i])
          && !isInside(other.longitudes[i], other.latitudes[i])) {
        return false;
      }
    }
    return true;
  }

  private boolean isOnLine(double east, double north) {
    for (int i = 0; i < longitudes.length - 1; i++) {
      double across =
          (longitudes[i + 1] - longitudes[i]) * (north - latitudes[i])
              - (latitudes[i + 1] - latitudes[i]) * (east - longitudes[i]);
      if (across == 0 && isBetween(i, east, north)) {
        return true;
      }
    }
    return false;
  }

  private boolean isBetween(int i, double east, double north) {
    return east >= Math.min(longitudes[i], longitudes[i + 1])
        && east <= Math.max(longitudes[i], longitudes[i + 1])
        && north >= Math.min(latitudes[i], latitudes[i + 1])
        && north <= Math.max(latitudes[i], latitudes[i + 1]);
  }

  private boolean isInside(double east, double north) {
    boolean inside = false;
    for (int i = 0; i < longitudes.length - 1; i++) {
      boolean spans = latitudes[i] > north != latitudes[i + 1] > north;
      if (spans && east < crossing(i, north)) {
        inside = !inside;
      }
    }
    return inside;
  }

  private double crossing(int i, double north) {
    double share = (north - latitudes[i]) / (latitudes[i + 1] - latitudes[i]);
    return longitudes[i] + share * (longitudes[i + 1] - longitudes[i]);
  }
}
