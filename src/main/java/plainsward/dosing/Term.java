package plainsward.dosing;

import plainsward.units.Quantity;

/**
 * One term of a step.
 *
 * @param sign what is done with it
 * @param value the quantity
 */
public record Term(Sign sign, Quantity value) {}
