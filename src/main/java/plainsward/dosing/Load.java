package plainsward.dosing;

import java.util.Optional;
import plainsward.units.Quantity;

/**
 * What goes into one tank load.
 *
 * @param volume the finished spray
 * @param product the product, where the job has one
 * @param adjuvant the wetting agent, where the job has one
 * @param water the water, what is dry taking up no room
 */
public record Load(
    Quantity volume, Optional<Quantity> product, Optional<Quantity> adjuvant, Quantity water) {}
