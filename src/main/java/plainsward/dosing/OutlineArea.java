package plainsward.dosing;

import java.util.List;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.Units;

/**
 * A piece of ground by places on the globe, such as an outline walked with a phone. The WGS 84
 * ellipsoid is laid flat so that areas stay exact (the cylindrical equal-area projection with the
 * authalic latitude), and the corners' cross products are summed there. Sides are straight on that
 * map; over a lawn they differ from the shortest line by far less than a blade of grass.
 */
public final class OutlineArea {
  private static final double EQUATOR_RADIUS = 6_378_137.0;
  private static final double FLATTENING = 1 / 298.257223563;
  private static final double SQUARE_ECCENTRICITY = FLATTENING * (2 - FLATTENING);

  private OutlineArea() {}

  /**
   * A place.
   *
   * @param latitude degrees north, -90 to 90
   * @param longitude degrees east, -180 to 180
   */
  public record Place(double latitude, double longitude) {

    /** Refuses what is not on the globe. */
    public Place {
      if (!(Math.abs(latitude) <= 90) || !(Math.abs(longitude) <= 180)) {
        throw new NotDosable("shape", NotDosable.Why.OUT_OF_RANGE);
      }
    }
  }

  /**
   * The area inside an outline, in the unit asked for.
   *
   * @param outline three or more corners in order; the first may stand again at the end; it must
   *     not lie across the date line
   */
  public static LawnArea of(List<Place> outline, Unit unit) {
    if (outline.size() < 3) {
      throw new NotDosable("shape", NotDosable.Why.NO_SHAPE);
    }
    double sum = 0;
    for (int i = 0; i < outline.size(); i++) {
      sum += cross(outline.get(0), outline.get(i), outline.get((i + 1) % outline.size()));
    }
    if (sum == 0) {
      throw new NotDosable("shape", NotDosable.Why.NO_SHAPE);
    }
    Quantity area = new Quantity(Ratio.ofDouble(Math.abs(sum) / 2), Units.SQUARE_METRE);
    return LawnArea.of(area.in(unit));
  }

  private static double cross(Place origin, Place here, Place next) {
    return east(origin, here) * north(origin, next) - east(origin, next) * north(origin, here);
  }

  private static double east(Place origin, Place place) {
    return EQUATOR_RADIUS * Math.toRadians(place.longitude - origin.longitude);
  }

  private static double north(Place origin, Place place) {
    return EQUATOR_RADIUS * (authalic(place.latitude) - authalic(origin.latitude)) / 2;
  }

  /** Snyder's q (Map Projections: A Working Manual, USGS 1987, equation 3-12). */
  private static double authalic(double latitude) {
    double sine = Math.sin(Math.toRadians(latitude));
    double e = Math.sqrt(SQUARE_ECCENTRICITY);
    double ratio = sine / (1 - SQUARE_ECCENTRICITY * sine * sine);
    double log = Math.log((1 - e * sine) / (1 + e * sine)) / (2 * e);
    return (1 - SQUARE_ECCENTRICITY) * (ratio - log);
  }
}
