package plainsward.reply;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * What a reply holds to be drawn, where looking beats reading; mostly nothing.
 *
 * @param pieces the pieces of a lawn
 * @param today the date that the days are seen from, {@link LocalDate#MIN} where there are none
 * @param days the days that matter after spraying, in order
 * @param hours the hours of a day, in order
 */
public record Sketches(
    List<Piece> pieces, LocalDate today, List<Milestone> days, List<DayHours> hours) {
  /** Nothing to draw. */
  public static final Sketches NONE = new Sketches(List.of(), LocalDate.MIN, List.of(), List.of());

  /** Copies the lists, so that it never changes. */
  public Sketches {
    pieces = List.copyOf(pieces);
    days = List.copyOf(days);
    hours = List.copyOf(hours);
  }

  /** A lawn's pieces. */
  public static Sketches ofPieces(List<Piece> pieces) {
    return new Sketches(pieces, LocalDate.MIN, List.of(), List.of());
  }

  /** Days, seen from today. */
  public static Sketches ofDays(LocalDate today, List<Milestone> days) {
    return new Sketches(List.of(), today, days, List.of());
  }

  /** The hours of a day. */
  public static Sketches ofHours(List<DayHours> hours) {
    return new Sketches(List.of(), LocalDate.MIN, List.of(), hours);
  }

  /** These and, of each kind that is not here, the others. */
  public Sketches and(Sketches others) {
    List<Piece> all = new ArrayList<>(pieces);
    others.pieces.stream().filter(piece -> !all.contains(piece)).forEach(all::add);
    boolean mine = !days.isEmpty();
    return new Sketches(
        all,
        mine ? today : others.today,
        mine ? days : others.days,
        hours.isEmpty() ? others.hours : hours);
  }
}
