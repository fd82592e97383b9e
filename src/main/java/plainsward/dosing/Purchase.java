package plainsward.dosing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Units;

/**
 * What to buy for a season: rate × area × applications, in whole containers.
 *
 * @param product the product in all
 * @param containers how many containers, where their content is known
 * @param left what is left over in the last one, where their content is known
 * @param steps the working
 */
public record Purchase(
    Quantity product, Optional<Quantity> containers, Optional<Quantity> left, List<Step> steps) {

  /** Keeps the steps as they are. */
  public Purchase {
    steps = List.copyOf(steps);
  }

  /** The product for so many applications, at least 1. */
  public static Purchase of(Quantity rate, Quantity area, long applications) {
    Given.above("label_rate", rate, Dimension.VOLUME_PER_AREA, Dimension.MASS_PER_AREA);
    Given.above("area", area, Dimension.AREA);
    Given.count("applied_count", applications);
    Working working = Working.of("product_total", rate).times(area);
    if (applications > 1) {
      working.times(applications);
    }
    Step all = working.as(rate.unit().above().single());
    return new Purchase(all.result(), Optional.empty(), Optional.empty(), List.of(all));
  }

  /** An amount that is known already, such as a strength's for so much spray. */
  public static Purchase ofAmount(Quantity product) {
    Given.above("product", product, Dimension.VOLUME, Dimension.MASS);
    return new Purchase(product, Optional.empty(), Optional.empty(), List.of());
  }

  /** The same in containers of one content. */
  public Purchase inContainers(Quantity content) {
    Given.above("container", content, product.dimension());
    Step count = Working.of("containers", product).over(content).roundedUp(Units.ONE);
    List<Step> both = new ArrayList<>(steps);
    both.add(count);
    Quantity rest = content.times(count.result().value()).minus(product);
    return new Purchase(product, Optional.of(count.result()), Optional.of(rest), both);
  }
}
