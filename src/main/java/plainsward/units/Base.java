package plainsward.units;

/**
 * The kinds of thing that are measured. A volume is not a length cubed here and an area not a
 * length squared: in the trade they are never mixed, and keeping them apart catches slips.
 */
public enum Base {
  /** Liquids, in litres. */
  VOLUME,
  /** Weights, in kilograms. */
  MASS,
  /** Ground, in square metres. */
  AREA,
  /** Distances, in metres. */
  LENGTH,
  /** Times, in seconds. */
  TIME,
  /** Pressures, in pascals. */
  PRESSURE,
  /** Temperatures, in degrees Celsius. */
  TEMPERATURE,
  /** Money, whatever its currency. */
  MONEY
}
