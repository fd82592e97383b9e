package plainsward.dosing;

import java.util.ArrayList;
import java.util.List;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.Units;

/**
 * A piece of ground by its measured lengths, in square feet or square metres as the first length
 * is. Pieces are put together with {@link #plus} and {@link #minus}. Crooked pieces are in {@link
 * CrookedArea}.
 *
 * @param area the ground
 * @param steps the working
 */
public record LawnArea(Quantity area, List<Step> steps) {
  private static final String AREA = "area";

  /** Keeps the steps as they are. */
  public LawnArea {
    steps = List.copyOf(steps);
  }

  /** A piece whose area is known. */
  public static LawnArea of(Quantity area) {
    return new LawnArea(Given.above(AREA, area, Dimension.AREA), List.of());
  }

  /** A part of a known area, such as a third of an acre; the part above 0. */
  public static LawnArea partOf(Ratio part, Quantity area) {
    Given.above(AREA, area, Dimension.AREA);
    Quantity times = Given.above(AREA, Quantity.number(part), Dimension.NONE);
    return done(Working.of(AREA, times).times(area).as(area.unit()));
  }

  /** Length × width. */
  public static LawnArea rectangle(Quantity length, Quantity width) {
    return done(Working.of(AREA, side(length)).times(side(width)).as(unit(length)));
  }

  /** Half the base × the height. */
  public static LawnArea triangle(Quantity base, Quantity height) {
    return done(Working.of(AREA, side(base)).times(side(height)).over(2).as(unit(base)));
  }

  /**
   * A triangle by its three sides: √(s (s − a) (s − b) (s − c)), s being half of all the way round
   * (Heron's formula).
   *
   * @throws NotDosable where one side is as long as the other two together, or longer
   */
  public static LawnArea triangle(Quantity a, Quantity b, Quantity c) {
    Unit unit = a.unit();
    Step round = Working.of("way_round", side(a)).plus(side(b)).plus(side(c)).as(unit);
    Step half = Working.of("half_way_round", round.result()).over(2).as(unit);
    Quantity s = half.result();
    List<Step> rests = List.of(rest(s, a), rest(s, b), rest(s, c));
    Working product = Working.of(AREA, s);
    rests.forEach(step -> product.times(step.result()));
    List<Step> all = new ArrayList<>(List.of(round, half));
    all.addAll(rests);
    all.add(product.root(unit(a)));
    return new LawnArea(all.get(all.size() - 1).result(), all);
  }

  private static Step rest(Quantity half, Quantity side) {
    Step rest = Working.of("half_less_side", half).minus(side).as(half.unit());
    if (rest.result().signum() <= 0) {
      throw new NotDosable("shape", NotDosable.Why.NO_SHAPE);
    }
    return rest;
  }

  /** A circle by the distance across: π × d × d ÷ 4. */
  public static LawnArea circleAcross(Quantity diameter) {
    side(diameter);
    return done(
        Working.of(AREA, Step.PI).times(diameter).times(diameter).over(4).as(unit(diameter)));
  }

  /** A circle by its radius: π × r × r. */
  public static LawnArea circle(Quantity radius) {
    side(radius);
    return done(Working.of(AREA, Step.PI).times(radius).times(radius).as(unit(radius)));
  }

  /**
   * A ring, such as a strip round a round bed: the outer circle less the inner one.
   *
   * @throws NotDosable where the outer radius is not the larger
   */
  public static LawnArea ring(Quantity outerRadius, Quantity innerRadius) {
    return circle(outerRadius).minus(circle(innerRadius));
  }

  /** An oval by its two widths, each all the way across: π × a × b ÷ 4. */
  public static LawnArea ellipse(Quantity length, Quantity width) {
    return done(
        Working.of(AREA, Step.PI).times(side(length)).times(side(width)).over(4).as(unit(length)));
  }

  /** Two sides that run alike and the distance between them: (a + b) × h ÷ 2. */
  public static LawnArea trapezoid(Quantity a, Quantity b, Quantity height) {
    Step sides = Working.of("both_sides", side(a)).plus(side(b)).as(a.unit());
    Step area = Working.of(AREA, sides.result()).times(side(height)).over(2).as(unit(a));
    return new LawnArea(area.result(), List.of(sides, area));
  }

  /** This and another piece. */
  public LawnArea plus(LawnArea other) {
    return joined(other, Working.of(AREA, area).plus(other.area).as(area.unit()));
  }

  /**
   * This without another piece, such as the house.
   *
   * @throws NotDosable where nothing is left
   */
  public LawnArea minus(LawnArea other) {
    Step left = Working.of(AREA, area).minus(other.area).as(area.unit());
    Given.above(AREA, left.result(), Dimension.AREA);
    return joined(other, left);
  }

  /** A length in paces: steps × the length of one; both above 0. */
  public static Step paced(Ratio paces, Quantity pace) {
    Quantity many = Given.above("distance", Quantity.number(paces), Dimension.NONE);
    Given.above("pace", pace, Dimension.LENGTH);
    return Working.of("distance", many).times(pace).as(pace.unit());
  }

  /** The other side of a rectangle of a given area: area ÷ side. */
  public static Step otherSide(Quantity area, Quantity side) {
    Given.above(AREA, area, Dimension.AREA);
    return Working.of("distance", area).over(side(side)).as(side.unit());
  }

  /** What part of an acre it is: how many of this go into an acre. */
  public static Step piecesInAcre(Quantity area) {
    Given.above(AREA, area, Dimension.AREA);
    return Working.of("pieces", Quantity.of(1, Units.ACRE)).over(area).as(Units.ONE);
  }

  private LawnArea joined(LawnArea other, Step last) {
    List<Step> all = new ArrayList<>(steps);
    all.addAll(other.steps);
    all.add(last);
    return new LawnArea(last.result(), all);
  }

  private static LawnArea done(Step step) {
    return new LawnArea(step.result(), List.of(step));
  }

  private static Quantity side(Quantity length) {
    return Given.above("shape", length, Dimension.LENGTH);
  }

  private static Unit unit(Quantity length) {
    return Fitting.area(length.unit());
  }
}
