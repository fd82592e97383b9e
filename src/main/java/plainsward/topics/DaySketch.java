package plainsward.topics;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plainsward.reply.DayHours;
import plainsward.reply.Milestone;
import plainsward.reply.Sketches;
import plainsward.trade.Row;
import plainsward.trade.Rows;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Shown;
import plainsward.units.Units;

/** The days after a spraying and the hours of a day, to be drawn. */
final class DaySketch {
  /** The note that tells of the hours of a day. */
  static final String HOURS_NOTE = "best-time-of-day";

  private DaySketch() {}

  /**
   * The days after a spraying, up to the one that is asked about: the label's own waits where it
   * tells them, else what is common practice for that kind of product, and which of the two.
   *
   * @param end the day that is asked about
   * @param asked the row of the table that it is the day of
   */
  static Sketches after(Request request, LocalDate sprayed, LocalDate end, String asked) {
    String kind = ProductKind.of(request) == ProductKind.PRE ? "pre" : "post";
    List<Milestone> days = new ArrayList<>();
    days.add(new Milestone(sprayed, "S", kind.equals("pre") ? "put down" : "sprayed"));
    String last = "";
    for (Row row : Rows.of("after-spraying")) {
      if (row.text("id").equals(asked)) {
        last = row.text("over");
        continue;
      }
      Optional<Known> wait = ofLabel(request, row);
      Optional<Milestone> day =
          wait.isPresent()
              ? Optional.of(own(row, sprayed, wait.get()))
              : row.texts("for").contains(kind) ? usual(row, sprayed) : Optional.empty();
      if (day.isPresent() && day.get().day().isBefore(end)) {
        days.add(day.get());
      }
    }
    days.add(new Milestone(end, "A", last));
    days.sort(Comparator.comparing(Milestone::day));
    return Sketches.ofDays(request.today(), days);
  }

  private static Optional<Known> ofLabel(Request request, Row row) {
    Optional<String> limit = row.optional("limit");
    if (limit.isPresent()) {
      return LabelLimit.told(request, limit.get());
    }
    Optional<String> role = row.optional("role");
    return role.isPresent() ? request.get(role.get()) : Optional.empty();
  }

  /** A wait of the label: one under a day stands on the day itself. */
  private static Milestone own(Row row, LocalDate sprayed, Known wait) {
    LocalDate over = RepeatTopic.after(sprayed, wait);
    Quantity amount = wait.amount();
    boolean within =
        amount.dimension().equals(Dimension.TIME)
            && amount.compareTo(Quantity.of(1, Units.DAY)) < 0
            && row.optional("within").isPresent();
    return within
        ? milestone(row, sprayed, row.text("within").replace("#", Shown.of(amount)), "your label")
        : milestone(row, over, row.text("over"), "your label");
  }

  private static Optional<Milestone> usual(Row row, LocalDate sprayed) {
    return row.number("days").isEmpty()
        ? Optional.empty()
        : Optional.of(
            milestone(
                row, sprayed.plusDays(whole(row, "days")), row.text("what"), "common practice"));
  }

  private static Milestone milestone(Row row, LocalDate day, String what, String whose) {
    return new Milestone(day, row.text("mark"), what + " (" + whose + ")");
  }

  /** The two kinds of days, made when one is first told of. */
  private static final class Hours {
    static final Sketches USUAL = hours("verdict");
    static final Sketches HOT = hours("hot");
  }

  /** The hours of a usual day, or of a hot one. */
  static Sketches hours(boolean hot) {
    return hot ? Hours.HOT : Hours.USUAL;
  }

  private static Sketches hours(String verdict) {
    List<DayHours> hours = new ArrayList<>();
    for (Row row : Rows.of("day-hours")) {
      int from = whole(row, "from");
      int to = whole(row, "to");
      hours.add(new DayHours(from, to, row.text(verdict), row.text("why")));
    }
    return Sketches.ofHours(hours);
  }

  private static int whole(Row row, String key) {
    return row.number(key).orElseThrow().intValueExact();
  }
}
