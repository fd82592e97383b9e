package plainsward.dosing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plainsward.units.Quantity;
import plainsward.units.Ratio;

/**
 * What a job takes in all and in each tank load. Product = rate × area (or strength × spray); spray
 * = spray rate × area; loads = spray ÷ tank, rounded up. The product that the job takes by a rate
 * per area does not depend on the spray rate.
 *
 * @param area the ground treated, given or worked out, where known
 * @param product the product in all, where the job has one
 * @param spray the finished spray in all, where it can be known
 * @param adjuvant the wetting agent in all, where the job has one
 * @param fills the loads, where a tank and the spray are known
 * @param steps the working
 */
public record TankMix(
    Optional<Quantity> area,
    Optional<Quantity> product,
    Optional<Quantity> spray,
    Optional<Quantity> adjuvant,
    Optional<Fills> fills,
    List<Step> steps) {

  /** Keeps the steps as they are. */
  public TankMix {
    steps = List.copyOf(steps);
  }

  /**
   * Works a job out. Without an area and without a volume of spray the job is one full tank; with
   * both, the spray rate is what they come to.
   *
   * @throws NotDosable naming what is missing ({@code label_rate} where there is neither product
   *     nor wetting agent, {@code spray_rate}, {@code area}, {@code spray_volume}), or {@code
   *     spray_rate} where the product leaves no room for water
   */
  public static TankMix of(TankJob job) {
    return new MixSum(job).total();
  }

  /** The figures by the reply contract's names, in its order. */
  public Map<String, Quantity> figures() {
    Map<String, Quantity> figures = new LinkedHashMap<>();
    put(figures, "product_total", product);
    put(figures, "spray_total", spray);
    fills.ifPresent(loads -> addLoads(figures, loads));
    put(figures, "adjuvant_total", adjuvant);
    fills.ifPresent(loads -> put(figures, "adjuvant_per_fill", loads.each().adjuvant()));
    fills.ifPresent(loads -> put(figures, "adjuvant_last_fill", loads.last().adjuvant()));
    return figures;
  }

  private static void addLoads(Map<String, Quantity> figures, Fills loads) {
    figures.put("fills", Quantity.number(Ratio.of(loads.count())));
    put(figures, "product_per_fill", loads.each().product());
    figures.put("last_fill", loads.last().volume());
    put(figures, "product_last_fill", loads.last().product());
    put(figures, "area_per_fill", loads.areaPerFill());
    figures.put("water_per_fill", loads.each().water());
  }

  private static void put(Map<String, Quantity> figures, String name, Optional<Quantity> value) {
    value.ifPresent(there -> figures.put(name, there));
  }
}
