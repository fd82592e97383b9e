package plainsward.dosing;

import java.util.Optional;
import plainsward.units.Quantity;

/**
 * A job parted into tank loads.
 *
 * @param count how many loads, the last of which may be a part of a tank; at least 1
 * @param full how many of them are full tanks
 * @param each what a full tank takes
 * @param last what the last load takes; a full tank where the job divides exactly
 * @param areaPerFill the ground that a full tank covers, where the spray rate is known
 */
public record Fills(long count, long full, Load each, Load last, Optional<Quantity> areaPerFill) {

  /** Whether the last load is less than a full tank. */
  public boolean endsInPart() {
    return full < count;
  }
}
