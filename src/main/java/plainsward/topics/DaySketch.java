package plainsward.topics;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plainsward.reply.DayHours;
import plainsward.reply.Milestone;
import plainsward.reply.Sketches;
import plainsward.trade.Row;
import plainsward.trade.Rows;

/** The days after a spraying and the hours of a day, to be drawn. */
final class DaySketch {
  /** The note that tells of the hours of a day. */
  static final String HOURS_NOTE = "best-time-of-day";

  private DaySketch() {}

  /**
   * The days after a spraying, up to the one that is asked about.
   *
   * @param end the day that is asked about
   * @param what what may be done from then on
   */
  static Sketches after(LocalDate sprayed, LocalDate end, String what, LocalDate today) {
    List<Milestone> days = new ArrayList<>();
    days.add(new Milestone(sprayed, "S", "sprayed"));
    for (Row row : Rows.of("after-spraying")) {
      LocalDate day = sprayed.plusDays(whole(row, "days"));
      if (day.isBefore(end)) {
        days.add(new Milestone(day, row.text("mark"), row.text("what")));
      }
    }
    days.add(new Milestone(end, "A", what));
    days.sort(Comparator.comparing(Milestone::day));
    return Sketches.ofDays(today, days);
  }

  /** The hours of a usual day, or of a hot one. */
  static Sketches hours(boolean hot) {
    List<DayHours> hours = new ArrayList<>();
    for (Row row : Rows.of("day-hours")) {
      int from = whole(row, "from");
      int to = whole(row, "to");
      hours.add(new DayHours(from, to, row.text(hot ? "hot" : "verdict"), row.text("why")));
    }
    return Sketches.ofHours(hours);
  }

  private static int whole(Row row, String key) {
    return row.number(key).orElseThrow().intValueExact();
  }
}
