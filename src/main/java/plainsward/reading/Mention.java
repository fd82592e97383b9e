package plainsward.reading;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;

/** Something that stands in the text: a measured amount, a rate, a piece of ground, a date ... */
sealed interface Mention {
  /** Its first token. */
  int from();

  /** The token after its last. */
  int to();

  /** An amount with a unit. */
  record Amount(Measured said) implements Mention {
    @Override
    public int from() {
      return said.from();
    }

    @Override
    public int to() {
      return said.to();
    }
  }

  /**
   * So much per area, per volume, or both ("30 ml in 5 litres over 50 m2").
   *
   * @param top what is laid down or poured in
   * @param volume what it is per, where that is a volume
   * @param area what it is per, where that is ground
   * @param firm whether it was said as a rate ("per", "/"), not only as "in", "on", "over"
   * @param covers whether ground is said to be covered ("does", "treats")
   */
  record Rate(
      int from,
      int to,
      Measured top,
      Optional<Measured> volume,
      Optional<Measured> area,
      boolean firm,
      boolean covers)
      implements Mention {}

  /** A number of which a part can't be read, so that nothing is made of it. */
  record Unread(int from, int to) implements Mention {}

  /** A number with no unit. */
  record Bare(Numeral number) implements Mention {
    @Override
    public int from() {
      return number.from();
    }

    @Override
    public int to() {
      return number.to();
    }
  }

  /**
   * A piece of ground told by its sides.
   *
   * @param form {@code rectangle}, {@code circle} ...
   * @param sides the lengths that tell it
   * @param unitSaid whether a unit was said
   */
  record Piece(int from, int to, String form, List<Quantity> sides, boolean unitSaid)
      implements Mention {}

  /** A day of the calendar. */
  record Day(int from, int to, LocalDate date) implements Mention {}

  /** A span of days, weeks or months. */
  record Wait(int from, int to, int low, Optional<Integer> high, Span unit) implements Mention {}

  /** What a wait counts. */
  enum Span {
    DAYS,
    WEEKS,
    MONTHS
  }

  /** How often: "twice a year", "2 applications". */
  record Times(int from, int to, int count, boolean aYear) implements Mention {}

  /** The three numbers of a fertilizer bag, in per cent. */
  record Analysis(int from, int to, Ratio nitrogen, Ratio phosphate, Ratio potash)
      implements Mention {}

  /** A price; of a range the low end and the high. */
  record Price(int from, int to, Quantity money, Optional<Quantity> high) implements Mention {}

  /** "1 to n" or "1 in n" or "1:n". */
  record Mix(int from, int to, Ratio small, Ratio large, boolean inAll) implements Mention {}

  /** A unit that something is wanted in: "in ml", "gal per thousand?". */
  record Wanted(int from, int to, Unit unit) implements Mention {}

  /** A part of a tank or of the lawn: "half a tank", "two thirds of my lawn". */
  record TankPart(int from, int to, Ratio part, String role) implements Mention {}

  /** A name from the trade tables or the user's own. */
  record Named(int from, int to, NameKind kind, String id) implements Mention {}
}
