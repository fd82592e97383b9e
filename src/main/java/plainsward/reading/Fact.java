package plainsward.reading;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Quantity;

/**
 * One thing that was said, in the role it plays.
 *
 * @param name the role, by the contract's names
 * @param value the quantity; for a range the low end; for a count the number
 * @param high the high end of a range
 * @param word a name's id, a form, or empty
 * @param date a day
 * @param sides the sides of a piece of ground
 * @param said the words themselves
 * @param at the place of its first token, to keep what was said in order
 * @param doubts what the words leave open: {@code ounce}, {@code gallon}, {@code unit} ...
 * @param owner the lawn or the label that it belongs to, by the user's own name, or empty
 */
public record Fact(
    String name,
    Optional<Quantity> value,
    Optional<Quantity> high,
    Optional<String> word,
    Optional<LocalDate> date,
    List<Quantity> sides,
    String said,
    int at,
    List<String> doubts,
    String owner) {
  private static final Set<String> OF_LABEL =
      Set.of(
          "label_rate",
          "strength",
          "interval",
          "season_limit",
          "adjuvant_rate",
          "label_limit",
          "year_amount");

  /** A quantity. */
  public static Fact of(String name, Quantity value, String said, int at) {
    return new Fact(
        name,
        Optional.of(value),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        said,
        at,
        List.of(),
        "");
  }

  /** A word. */
  public static Fact of(String name, String word, String said, int at) {
    return new Fact(
        name,
        Optional.empty(),
        Optional.empty(),
        Optional.of(word),
        Optional.empty(),
        List.of(),
        said,
        at,
        List.of(),
        "");
  }

  /** A piece of ground of a form, by its sides. */
  static Fact shape(String form, List<Quantity> sides, String said, int at) {
    return new Fact(
        "shape",
        Optional.empty(),
        Optional.empty(),
        Optional.of(form),
        Optional.empty(),
        sides,
        said,
        at,
        List.of(),
        "");
  }

  /** A day. */
  public static Fact of(String name, LocalDate date, String said, int at) {
    return new Fact(
        name,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(date),
        List.of(),
        said,
        at,
        List.of(),
        "");
  }

  /** The same in another role. */
  public Fact as(String role) {
    return new Fact(role, value, high, word, date, sides, said, at, doubts, owner);
  }

  /** The same with another amount. */
  public Fact with(Quantity amount, Optional<Quantity> end) {
    return new Fact(name, Optional.of(amount), end, word, date, sides, said, at, doubts, owner);
  }

  /** The same with what its words leave open. */
  public Fact doubting(List<String> open) {
    return new Fact(name, value, high, word, date, sides, said, at, open, owner);
  }

  /** The same with a word beside it. */
  public Fact worded(String extra) {
    return new Fact(name, value, high, Optional.of(extra), date, sides, said, at, doubts, owner);
  }

  /** The same as the lawn's or label's of this name. */
  public Fact of(String lawnOrLabel) {
    return new Fact(name, value, high, word, date, sides, said, at, doubts, lawnOrLabel);
  }

  /** The same with the words that say it, and their place. */
  Fact saidAs(String words, int place) {
    return new Fact(name, value, high, word, date, sides, words, place, doubts, owner);
  }

  /** Whether it is what a label says, so that a nickname beside it is the label's. */
  public boolean isOfLabel() {
    return OF_LABEL.contains(name);
  }

  /** The quantity, which must be there. */
  public Quantity amount() {
    return value.orElseThrow();
  }

  /** Whether its words leave this open. */
  public boolean leavesOpen(String what) {
    return doubts.contains(what);
  }
}
