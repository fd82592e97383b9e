package plainsward.dosing;

import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.Units;

/**
 * What a sprayer lays down: finished spray per area. All of it is volume ÷ area, whichever of the
 * parts was measured; the "5,940" of gallons per acre = 5,940 × gpm ÷ (mph × inches) is nothing but
 * the units, which are exact here.
 */
public final class Calibration {
  /** The ground of the method in which fluid ounces used are gallons per acre: 340.3125 sq ft. */
  public static final Quantity ACRE_PART = new Quantity(Ratio.of(43_560, 128), Units.SQUARE_FOOT);

  private Calibration() {}

  /** Spray on a known area, in the trade's usual unit for what was measured. */
  public static Step onArea(Quantity volume, Quantity area) {
    return onArea(volume, area, Fitting.sprayRate(volume, area));
  }

  /** Spray on a known area: volume ÷ area. */
  public static Step onArea(Quantity volume, Quantity area, Unit unit) {
    Given.above("catch_volume", volume, Dimension.VOLUME);
    Given.above("area", area, Dimension.AREA);
    return Working.of("spray_rate", volume).over(area).as(unit);
  }

  /** By the clock: flow × the time that the area takes ÷ the area. */
  public static Step byClock(Quantity flow, Quantity time, Quantity area, Unit unit) {
    Given.above("nozzle_flow", flow, Dimension.FLOW);
    Given.above("walk_time", time, Dimension.TIME);
    Given.above("area", area, Dimension.AREA);
    return Working.of("spray_rate", flow).times(time).over(area).as(unit);
  }

  /** While walking: flow ÷ (speed × swath). */
  public static Step atSpeed(Quantity flow, Quantity speed, Quantity swath, Unit unit) {
    Given.above("nozzle_flow", flow, Dimension.FLOW);
    Given.above("walk_speed", speed, Dimension.SPEED);
    Given.above("swath", swath, Dimension.LENGTH);
    return Working.of("spray_rate", flow).over(speed).over(swath).as(unit);
  }

  /** What was used on, or caught in the time for, a 128th of an acre: ounces = gallons per acre. */
  public static Step onAcrePart(Quantity caught) {
    return onArea(caught, ACRE_PART, Units.GALLON_PER_ACRE);
  }

  /** The flow that a spray rate needs: spray rate × speed × swath. */
  public static Step flowFor(Quantity sprayRate, Quantity speed, Quantity swath, Unit unit) {
    Given.above("spray_rate", sprayRate, Dimension.VOLUME_PER_AREA);
    Given.above("walk_speed", speed, Dimension.SPEED);
    Given.above("swath", swath, Dimension.LENGTH);
    return Working.of("nozzle_flow", sprayRate).times(speed).times(swath).as(unit);
  }

  /** The speed that a spray rate needs: flow ÷ (spray rate × swath). */
  public static Step speedFor(Quantity sprayRate, Quantity flow, Quantity swath, Unit unit) {
    Given.above("spray_rate", sprayRate, Dimension.VOLUME_PER_AREA);
    Given.above("nozzle_flow", flow, Dimension.FLOW);
    Given.above("swath", swath, Dimension.LENGTH);
    return Working.of("walk_speed", flow).over(sprayRate).over(swath).as(unit);
  }

  /** The time in which an area must be walked for a spray rate: spray rate × area ÷ flow. */
  public static Step timeFor(Quantity sprayRate, Quantity area, Quantity flow, Unit unit) {
    Given.above("spray_rate", sprayRate, Dimension.VOLUME_PER_AREA);
    Given.above("area", area, Dimension.AREA);
    Given.above("nozzle_flow", flow, Dimension.FLOW);
    return Working.of("walk_time", sprayRate).times(area).over(flow).as(unit);
  }

  /** How long a course must be for an area at a swath: area ÷ swath. */
  public static Step course(Quantity area, Quantity swath, Unit unit) {
    Given.above("area", area, Dimension.AREA);
    Given.above("swath", swath, Dimension.LENGTH);
    return Working.of("distance", area).over(swath).as(unit);
  }

  /** How long the course of the 128th-of-an-acre method is for a swath. */
  public static Step acrePartCourse(Quantity swath) {
    return course(ACRE_PART, swath, Units.FOOT);
  }
}
