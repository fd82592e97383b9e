package plainsward.dosing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Unit;
import plainsward.units.Units;

/**
 * How far an amount goes.
 *
 * @param area the ground that it covers
 * @param spray the finished spray that it makes, where that is worked out
 * @param fills how many tanks that is, the last perhaps a part, where a tank is known
 * @param steps the working
 */
public record Coverage(
    Quantity area, Optional<Quantity> spray, Optional<Tanks> fills, List<Step> steps) {

  /** Keeps the steps as they are. */
  public Coverage {
    steps = List.copyOf(steps);
  }

  /** The ground that a volume of spray covers, such as a tank: volume ÷ spray rate. */
  public static Coverage ofSpray(Quantity volume, Quantity sprayRate) {
    Given.above("spray_volume", volume, Dimension.VOLUME);
    Given.above("spray_rate", sprayRate, Dimension.VOLUME_PER_AREA);
    Step step = covered(volume, sprayRate);
    return new Coverage(step.result(), Optional.of(volume), Optional.empty(), List.of(step));
  }

  /** The ground that an amount of product covers at a rate per area: amount ÷ rate. */
  public static Coverage ofProduct(Quantity amount, Quantity rate) {
    Given.above("container", amount, Dimension.VOLUME, Dimension.MASS);
    Given.above("label_rate", rate, amount.dimension().per(Dimension.AREA));
    Step step = covered(amount, rate);
    return new Coverage(step.result(), Optional.empty(), Optional.empty(), List.of(step));
  }

  /** The ground that an amount of product covers at a strength and a spray rate. */
  public static Coverage ofProductAtStrength(
      Quantity amount, Quantity strength, Quantity sprayRate) {
    Given.above("spray_rate", sprayRate, Dimension.VOLUME_PER_AREA);
    Unit unit = sprayRate.unit().above().single();
    Dilution mix = Dilution.using(amount, strength, unit);
    Step ground = covered(mix.volume(), sprayRate);
    List<Step> steps = List.of(mix.steps().get(0), ground);
    return new Coverage(ground.result(), Optional.of(mix.volume()), Optional.empty(), steps);
  }

  /** The same with the tank loads that the covered ground takes at a spray rate. */
  public Coverage inTanks(Quantity tank, Quantity sprayRate) {
    Given.above("spray_rate", sprayRate, Dimension.VOLUME_PER_AREA);
    List<Step> all = new ArrayList<>(steps);
    Step mix = Working.of("spray_total", sprayRate).times(area).as(tank.unit());
    all.add(mix);
    Tanks tanks = Tanks.holding(mix.result(), tank);
    all.addAll(tanks.steps());
    return new Coverage(area, Optional.of(mix.result()), Optional.of(tanks), all);
  }

  /** The rate per area of an amount that is said to cover an area: "a pint does an acre". */
  public static Step rateOf(Quantity amount, Quantity area, Unit unit) {
    Given.above("container", amount, Dimension.VOLUME, Dimension.MASS);
    Given.above("area", area, Dimension.AREA);
    return Working.of("label_rate", amount).over(area).as(unit);
  }

  /** How many goes an amount is enough for on an area at a rate, as whole ones. */
  public static Step applications(Quantity amount, Quantity rate, Quantity area) {
    Given.above("area", area, Dimension.AREA);
    Quantity ground = ofProduct(amount, rate).area();
    return Working.of("applications", ground).over(area).roundedDown(Units.ONE);
  }

  private static Step covered(Quantity amount, Quantity rate) {
    Unit unit = Fitting.areaBelow(rate.unit());
    return Fitting.walkable(Working.of("area_covered", amount).over(rate).as(unit));
  }
}
