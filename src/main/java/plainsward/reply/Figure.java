package plainsward.reply;

import java.time.LocalDate;
import java.util.Optional;
import plainsward.units.Quantity;

/**
 * One figure of a reply: a quantity (with the high end of a range where the label gives one), a
 * date or a word.
 *
 * @param name the contract's name of the figure
 * @param value the quantity; for a range its low end
 * @param high the high end of a range
 * @param date a date figure's date
 * @param word a word figure's word
 * @param shown what a person reads
 */
public record Figure(
    String name,
    Optional<Quantity> value,
    Optional<Quantity> high,
    Optional<LocalDate> date,
    Optional<String> word,
    String shown) {

  /** A single quantity. */
  public static Figure of(String name, Quantity value, String shown) {
    return new Figure(
        name, Optional.of(value), Optional.empty(), Optional.empty(), Optional.empty(), shown);
  }

  /** A range, its value the low end. */
  public static Figure of(String name, Quantity low, Quantity high, String shown) {
    return new Figure(
        name, Optional.of(low), Optional.of(high), Optional.empty(), Optional.empty(), shown);
  }

  /** A date. */
  public static Figure of(String name, LocalDate date, String shown) {
    return new Figure(
        name, Optional.empty(), Optional.empty(), Optional.of(date), Optional.empty(), shown);
  }

  /** A word, such as a verdict. */
  public static Figure of(String name, String word, String shown) {
    return new Figure(
        name, Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(word), shown);
  }
}
