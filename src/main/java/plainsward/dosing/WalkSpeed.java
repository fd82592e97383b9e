package plainsward.dosing;

import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Unit;

/** How fast somebody walks or drives. */
public final class WalkSpeed {
  private WalkSpeed() {}

  /** Distance ÷ time. */
  public static Step of(Quantity distance, Quantity time, Unit unit) {
    Given.above("distance", distance, Dimension.LENGTH);
    Given.above("walk_time", time, Dimension.TIME);
    return Working.of("walk_speed", distance).over(time).as(unit);
  }

  /** The time that a distance takes at a speed. */
  public static Step timeFor(Quantity distance, Quantity speed, Unit unit) {
    Given.above("distance", distance, Dimension.LENGTH);
    Given.above("walk_speed", speed, Dimension.SPEED);
    return Working.of("walk_time", distance).over(speed).as(unit);
  }

  /** The ground that a swath passes over in a time, or on a distance: speed or length × swath. */
  public static Step ground(Quantity distance, Quantity swath, Unit unit) {
    Given.above("distance", distance, Dimension.LENGTH, Dimension.SPEED);
    Given.above("swath", swath, Dimension.LENGTH);
    return Working.of("area", distance).times(swath).as(unit);
  }
}
