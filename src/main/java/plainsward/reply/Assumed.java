package plainsward.reply;

import plainsward.units.Quantity;

/**
 * Something taken as given that nobody said.
 *
 * @param name the contract's name
 * @param value what was taken
 * @param reason why, for the reader
 */
public record Assumed(String name, Quantity value, String reason) {}
