package plainsward.reply;

import java.util.Optional;
import plainsward.units.Quantity;

/**
 * Something that was said and what it was read as.
 *
 * @param name the contract's name
 * @param value the quantity; for a range its low end; empty for names and dates
 * @param high the high end of a range
 * @param word what was read, where it is no quantity
 * @param said the words themselves
 * @param from {@code question}, {@code earlier}, {@code saved} or {@code label}
 */
public record Understood(
    String name,
    Optional<Quantity> value,
    Optional<Quantity> high,
    Optional<String> word,
    String said,
    String from) {

  /** The word of a piece of ground that is taken off and not treated. */
  public static final String LEFT_OUT = "left out";
}
