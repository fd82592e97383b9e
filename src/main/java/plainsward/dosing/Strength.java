package plainsward.dosing;

import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;

/**
 * Strengths of a spray mix: product per volume of finished spray. A strength by volume is a plain
 * part ({@code %}, {@code [foz_us]/[gal_us]}, {@code mL/L}, {@code [ppm]}); one by weight is mass
 * per volume. 1 % by volume is 1.28 fl oz per gallon and 10 mL per litre.
 */
public final class Strength {
  /** What a litre of water weighs when "per cent weight in volume" is meant: a kilogram. */
  private static final Quantity WATER = Quantity.of(1, Unit.of("kg/L"));

  private Strength() {}

  /** One part to so many parts of water: 1/(n+1) of the mix; {@code parts} above 0. */
  public static Quantity oneTo(Ratio parts) {
    Given.above("strength", Quantity.number(parts), Dimension.NONE);
    return Quantity.number(Ratio.ONE.dividedBy(parts.plus(Ratio.ONE)));
  }

  /** One part in so many parts of mix: 1/n of it; {@code parts} at least 1. */
  public static Quantity oneIn(Ratio parts) {
    Given.above("strength", Quantity.number(parts), Dimension.NONE);
    return checked("strength", Quantity.number(Ratio.ONE.dividedBy(parts)));
  }

  /** The strength of an amount of product in a finished volume, in the unit asked for. */
  public static Step of(Quantity product, Quantity volume, Unit unit) {
    Given.above("product", product, Dimension.VOLUME, Dimension.MASS);
    Given.above("spray_volume", volume, Dimension.VOLUME);
    Step step = Working.of("strength", product).over(volume).as(unit);
    checked("strength", step.result());
    return step;
  }

  /** The strength that a rate per area makes at a spray rate: ounces per gallon. */
  public static Step ofRate(Quantity rate, Quantity sprayRate, Unit unit) {
    Given.above("label_rate", rate, Dimension.VOLUME_PER_AREA, Dimension.MASS_PER_AREA);
    Given.above("spray_rate", sprayRate, Dimension.VOLUME_PER_AREA);
    return Working.of("strength", rate).over(sprayRate).as(unit);
  }

  /** The rate per area that a strength lays down at a spray rate. */
  public static Step rateOf(Quantity strength, Quantity sprayRate, Unit unit) {
    checked("strength", strength);
    Given.above("spray_rate", sprayRate, Dimension.VOLUME_PER_AREA);
    return Working.of("label_rate", strength).times(sprayRate).as(unit);
  }

  /** Per cent weight in volume, as grams in 100 mL, as a strength by weight. */
  public static Quantity weightInVolume(Quantity part) {
    return Given.part("strength", part).times(WATER, Unit.of("g/L"));
  }

  /** Whether a wetting agent's figure is per area and not per volume. */
  static boolean isPerArea(Quantity figure) {
    return figure.dimension().equals(Dimension.VOLUME_PER_AREA)
        || figure.dimension().equals(Dimension.MASS_PER_AREA);
  }

  /** A strength that makes sense: a part of at most the whole, or a weight per volume above 0. */
  static Quantity checked(String name, Quantity strength) {
    return strength.dimension().equals(Dimension.NONE)
        ? Given.part(name, strength)
        : Given.above(name, strength, Dimension.MASS_PER_VOLUME);
  }
}
