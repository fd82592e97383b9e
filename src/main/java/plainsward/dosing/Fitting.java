package plainsward.dosing;

import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.Units;

/** Chooses the unit that an outcome is given in from the units of what went in. */
final class Fitting {
  private Fitting() {}

  /** The measure for a product put into a volume of this unit: fluid ounces for gallons. */
  static Unit small(Unit volume) {
    String code = volume.single().code();
    if (code.endsWith("_br]")) {
      return Units.IMPERIAL_FL_OZ;
    }
    return code.endsWith("_us]") ? Units.FL_OZ : Units.MILLILITRE;
  }

  /** What a strength measures product in; for a bare part, the small measure of the volume. */
  static Unit product(Unit strength, Unit volume) {
    Unit above = strength.above();
    boolean bare = above.dimension().equals(Dimension.NONE);
    return bare ? small(volume) : above.single();
  }

  /** The measure of ground for lengths in this unit: square feet, or square metres. */
  static Unit area(Unit length) {
    return length.code().endsWith("_i]") ? Units.SQUARE_FOOT : Units.SQUARE_METRE;
  }

  /** The measure of ground that a rate is per: square feet, acres, square metres, hectares. */
  static Unit areaBelow(Unit rate) {
    return rate.below().map(Unit::single).orElse(Units.SQUARE_METRE);
  }

  /** The measure for a tank's worth of what was caught in this unit: gallons for ounces. */
  static Unit large(Unit volume) {
    String code = volume.single().code();
    if (code.endsWith("_br]")) {
      return Units.IMPERIAL_GALLON;
    }
    return code.endsWith("_us]") ? Units.GALLON : Units.LITRE;
  }

  /** The spray rate's unit for a volume on ground: gallons per 1,000 sq ft, litres per 100 m². */
  static Unit sprayRate(Quantity volume, Quantity ground) {
    return large(volume.unit()).per(plot(ground.unit()));
  }

  /** What a rate is told per on ground of this unit: itself if large, else a lawn's usual part. */
  static Unit plot(Unit ground) {
    return switch (ground.single().code()) {
      case "[acr_us]", "har" -> ground.single();
      case "m2" -> Units.HUNDRED_SQUARE_METRES;
      default -> Units.THOUSAND_SQUARE_FEET;
    };
  }

  /** What money is told per: 1,000 sq ft, or 100 m² for metric ground. */
  static Unit costPlot(Unit ground) {
    String code = ground.single().code();
    return code.equals("m2") || code.equals("har")
        ? Units.HUNDRED_SQUARE_METRES
        : Units.THOUSAND_SQUARE_FEET;
  }

  /** Ground in its own unit, but a part of an acre in square feet, of a hectare in m². */
  static Step walkable(Step ground) {
    if (ground.result().value().compareTo(Ratio.ONE) >= 0) {
      return ground;
    }
    return switch (ground.result().unit().code()) {
      case "[acr_us]" -> ground.in(Units.SQUARE_FOOT);
      case "har" -> ground.in(Units.SQUARE_METRE);
      default -> ground;
    };
  }
}
