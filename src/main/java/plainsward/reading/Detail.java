package plainsward.reading;

import java.util.Optional;
import plainsward.units.Quantity;

/**
 * One thing that a label says, as told in words.
 *
 * @param field what it is about: a field of the table {@code label-fields}, or {@code rate}
 * @param item the word of a field that has words; for a rate what it is for; else empty
 * @param low an amount; for a range its low end
 * @param high the high end of a range
 * @param months whether the amount counts months
 * @param at the place of its first token
 * @param said the words themselves
 */
public record Detail(
    String field,
    String item,
    Optional<Quantity> low,
    Optional<Quantity> high,
    boolean months,
    int at,
    String said) {

  /** A word. */
  static Detail word(String field, String item, int at, String said) {
    return new Detail(field, item, Optional.empty(), Optional.empty(), false, at, said);
  }

  /** An amount. */
  static Detail amount(String field, Quantity low, Optional<Quantity> high, int at, String said) {
    return new Detail(field, "", Optional.of(low), high, false, at, said);
  }

  /** The same about another field. */
  Detail as(String other) {
    return new Detail(other, item, low, high, months, at, said);
  }

  /** The same with a word. */
  Detail with(String word) {
    return new Detail(field, word, low, high, months, at, said);
  }

  /** The amount, or for a range its far end, which is the careful one of a wait. */
  public Quantity longest() {
    return high.orElseGet(low::orElseThrow);
  }
}
