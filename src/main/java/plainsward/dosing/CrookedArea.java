package plainsward.dosing;

import java.util.ArrayList;
import java.util.List;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Unit;

/** Pieces of ground with a crooked edge: by offsets from a straight line, or by corner points. */
public final class CrookedArea {
  private static final String AREA = "area";

  private CrookedArea() {}

  /**
   * A corner of a piece of ground.
   *
   * @param east how far it lies along
   * @param north how far it lies up
   */
  public record Corner(Quantity east, Quantity north) {}

  /**
   * Offsets measured from a straight line at even spacing, the first and the last at the ends of
   * the piece (the trapezoid rule): spacing × (half of the first and the last + all between).
   *
   * @param offsets two or more widths of at least 0, not all of them 0
   */
  public static LawnArea offsets(List<Quantity> offsets, Quantity spacing) {
    checkOffsets(offsets, spacing, 2);
    Quantity first = offsets.get(0);
    Step ends =
        Working.of("end_offsets", first).plus(offsets.get(offsets.size() - 1)).as(first.unit());
    Step half = Working.of("half_of_ends", ends.result()).over(2).as(first.unit());
    Working sum = Working.of("offset_sum", half.result());
    offsets.subList(1, offsets.size() - 1).forEach(sum::plus);
    Step all = sum.as(first.unit());
    return area(all, spacing, List.of(ends, half, all));
  }

  /**
   * Widths measured in the middle of strips of one breadth (the plain way that many bulletins
   * teach, with the ends' widths of 0 left out): all the widths × the spacing. Where the piece runs
   * out to nothing at both ends it comes to the same as {@link #offsets}.
   *
   * @param widths one or more widths of at least 0, not all of them 0
   */
  public static LawnArea strips(List<Quantity> widths, Quantity spacing) {
    checkOffsets(widths, spacing, 1);
    Quantity first = widths.get(0);
    Working sum = Working.of("offset_sum", first);
    widths.subList(1, widths.size()).forEach(sum::plus);
    Step all = sum.as(first.unit());
    return area(all, spacing, List.of(all));
  }

  /**
   * A piece by its corners, told in order around it (the surveyor's cross products): half the sum
   * of east × next north − next east × north, without its sign.
   *
   * @param corners three or more; lines that cross each other are not noticed
   */
  public static LawnArea polygon(List<Corner> corners) {
    if (corners.size() < 3) {
      throw new NotDosable("shape", NotDosable.Why.NO_SHAPE);
    }
    corners.forEach(CrookedArea::check);
    Unit unit = Fitting.area(corners.get(0).east().unit());
    List<Step> steps = new ArrayList<>();
    Quantity sum = Quantity.of(0, unit);
    for (int i = 0; i < corners.size(); i++) {
      Step cross = cross(corners.get(i), corners.get((i + 1) % corners.size()), unit, steps);
      sum = sum.plus(cross.result());
    }
    if (sum.signum() == 0) {
      throw new NotDosable("shape", NotDosable.Why.NO_SHAPE);
    }
    Quantity whole = sum.signum() < 0 ? new Quantity(sum.value().negate(), unit) : sum;
    steps.add(Working.of(AREA, whole).over(2).as(unit));
    return new LawnArea(steps.get(steps.size() - 1).result(), steps);
  }

  private static Step cross(Corner here, Corner next, Unit unit, List<Step> steps) {
    Step there = Working.of("corner", here.east()).times(next.north()).as(unit);
    Step back = Working.of("corner", next.east()).times(here.north()).as(unit);
    Step cross = Working.of("corner", there.result()).minus(back.result()).as(unit);
    steps.add(cross);
    return cross;
  }

  private static void check(Corner corner) {
    Given.ofKind("shape", corner.east(), Dimension.LENGTH);
    Given.ofKind("shape", corner.north(), Dimension.LENGTH);
  }

  private static LawnArea area(Step sum, Quantity spacing, List<Step> before) {
    Step area = Working.of(AREA, sum.result()).times(spacing).as(Fitting.area(sum.result().unit()));
    Given.above("shape", area.result(), Dimension.AREA);
    List<Step> all = new ArrayList<>(before);
    all.add(area);
    return new LawnArea(area.result(), all);
  }

  private static void checkOffsets(List<Quantity> offsets, Quantity spacing, int least) {
    if (offsets.size() < least) {
      throw new NotDosable("shape", NotDosable.Why.NO_SHAPE);
    }
    offsets.forEach(offset -> Given.notBelow("shape", offset, Dimension.LENGTH));
    Given.above("distance", spacing, Dimension.LENGTH);
  }
}
