package plainsward.dosing;

import java.util.ArrayList;
import java.util.List;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;

/**
 * Several catches, of one nozzle again and again or of a boom's nozzles: their average, and which
 * of them lie outside a window around it (5 % is the trade's usual one).
 *
 * @param average the average, in the first catch's unit
 * @param low the window's low end
 * @param high the window's high end
 * @param outside the places, from 0, of the catches outside the window
 * @param steps the working
 */
public record Catches(
    Quantity average, Quantity low, Quantity high, List<Integer> outside, List<Step> steps) {
  /** The usual window: 5 % to either side. */
  public static final Ratio USUAL_WINDOW = Ratio.of(1, 20);

  /** Keeps the lists as they are. */
  public Catches {
    outside = List.copyOf(outside);
    steps = List.copyOf(steps);
  }

  /** Averages catches with the usual window. */
  public static Catches of(List<Quantity> caught) {
    return of(caught, USUAL_WINDOW);
  }

  /**
   * Averages catches.
   *
   * @param caught volumes, flows or weights, all of one kind and above 0; at least one
   * @param window the part of the average by which a catch may differ, from 0 up
   */
  public static Catches of(List<Quantity> caught, Ratio window) {
    if (caught.isEmpty()) {
      throw new NotDosable("catch_volume", NotDosable.Why.MISSING);
    }
    Quantity first =
        Given.above(
            "catch_volume", caught.get(0), Dimension.VOLUME, Dimension.FLOW, Dimension.MASS);
    Working sum = Working.of("catch_sum", first);
    for (Quantity next : caught.subList(1, caught.size())) {
      sum.plus(Given.above("catch_volume", next, first.dimension()));
    }
    Step all = sum.as(first.unit());
    Step mean = Working.of("catch_average", all.result()).over(caught.size()).as(first.unit());
    return around(mean.result(), window, caught, List.of(all, mean));
  }

  private static Catches around(
      Quantity mean, Ratio window, List<Quantity> caught, List<Step> steps) {
    Quantity low = mean.times(Ratio.ONE.minus(window));
    Quantity high = mean.times(Ratio.ONE.plus(window));
    List<Integer> outside = new ArrayList<>();
    for (int i = 0; i < caught.size(); i++) {
      if (caught.get(i).compareTo(low) < 0 || caught.get(i).compareTo(high) > 0) {
        outside.add(i);
      }
    }
    return new Catches(mean, low, high, outside, steps);
  }
}
