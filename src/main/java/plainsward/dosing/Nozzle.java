package plainsward.dosing;

import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.Units;

/** A nozzle's flow: by the catch, and as pressure changes it (with the square root of pressure). */
public final class Nozzle {
  private Nozzle() {}

  /** The flow of what was caught in a time. */
  public static Step flow(Quantity caught, Quantity time, Unit unit) {
    Given.above("catch_volume", caught, Dimension.VOLUME);
    Given.above("catch_time", time, Dimension.TIME);
    return Working.of("nozzle_flow", caught).over(time).as(unit);
  }

  /** The flow of several like nozzles together. */
  public static Step together(Quantity flow, long nozzles) {
    Given.above("nozzle_flow", flow, Dimension.FLOW);
    return Working.of("nozzle_flow", flow)
        .times(Given.count("nozzle_count", nozzles))
        .as(flow.unit());
  }

  /** The flow at another pressure: flow × √(new ÷ old). */
  public static Step flowAt(Quantity flow, Quantity old, Quantity changed) {
    Given.above("nozzle_flow", flow, Dimension.FLOW);
    Given.above("pressure", old, Dimension.PRESSURE);
    Given.above("pressure", changed, Dimension.PRESSURE);
    Ratio root = Ratio.ofDouble(Math.sqrt(changed.ratioTo(old).toDouble()));
    return Working.of("nozzle_flow", flow).times(Quantity.number(root)).as(flow.unit());
  }

  /** The pressure for another flow: pressure × (new ÷ old)². */
  public static Step pressureFor(Quantity pressure, Quantity flow, Quantity wanted) {
    Given.above("pressure", pressure, Dimension.PRESSURE);
    Given.above("nozzle_flow", flow, Dimension.FLOW);
    Given.above("nozzle_flow", wanted, Dimension.FLOW);
    return Working.of("pressure", pressure)
        .times(wanted)
        .times(wanted)
        .over(flow)
        .over(flow)
        .as(pressure.unit());
  }

  /** How many times the pressure must be for so many times the flow: its square. */
  public static Step pressureTimes(Ratio flowTimes) {
    Quantity times = Given.above("nozzle_flow", Quantity.number(flowTimes), Dimension.NONE);
    return Working.of("pressure_times", times).times(times).as(Units.ONE);
  }
}
