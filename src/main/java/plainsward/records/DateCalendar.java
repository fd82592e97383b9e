package plainsward.records;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/** Next dates as a calendar (RFC 5545) that any calendar program can read. */
public final class DateCalendar {
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuuMMdd", Locale.ROOT);

  /** The longest line in octets, without its end: RFC 5545, section 3.1. */
  private static final int LONGEST = 75;

  private final StringBuilder out = new StringBuilder();

  private DateCalendar() {}

  /**
   * A calendar with an all-day entry for each date. The same dates give the same entries, so that
   * reading it in again changes nothing but what changed.
   *
   * @param made the moment to stand in it as the time of its making
   */
  public static String text(List<NextDate> dates, Instant made) {
    DateCalendar calendar = new DateCalendar();
    calendar.line("BEGIN:VCALENDAR");
    calendar.line("VERSION:2.0");
    calendar.line("PRODID:-//Plainsward//Next dates//EN");
    dates.forEach(date -> calendar.event(date, made));
    calendar.line("END:VCALENDAR");
    return calendar.out.toString();
  }

  private void event(NextDate next, Instant made) {
    LocalDate day = next.earliest();
    String where = next.lawn().isEmpty() ? "" : " on " + next.lawn();
    line("BEGIN:VEVENT");
    line("UID:" + uid(next));
    line("DTSTAMP:" + STAMP.format(made));
    line("DTSTART;VALUE=DATE:" + DAY.format(day));
    line("DTEND;VALUE=DATE:" + DAY.format(day.plusDays(1)));
    line("SUMMARY:" + escaped("Earliest day again: " + next.label() + where));
    line("DESCRIPTION:" + escaped(description(next)));
    line("TRANSP:TRANSPARENT");
    line("END:VEVENT");
  }

  private static String description(NextDate next) {
    return "Last applied on "
        + next.last()
        + ". The label's wait of "
        + words(next.interval())
        + " is over on "
        + next.earliest()
        + ". Read the label before every use.";
  }

  private static String words(Period wait) {
    long months = wait.toTotalMonths();
    long count = months == 0 ? wait.getDays() : months;
    String unit = months == 0 ? "day" : "month";
    return count + " " + unit + (count == 1 ? "" : "s");
  }

  /** An id that is the same for the same lawn and label, in plain letters. */
  private static String uid(NextDate next) {
    String key = Names.key(next.lawn()) + "\n" + Names.key(next.label());
    StringBuilder id = new StringBuilder();
    for (byte b : key.getBytes(StandardCharsets.UTF_8)) {
      id.append(String.format(Locale.ROOT, "%02x", b));
    }
    return id + "@plainsward";
  }

  /** A TEXT value: RFC 5545, section 3.3.11. Control characters have no place in one. */
  private static String escaped(String text) {
    return text.replace("\\", "\\\\")
        .replace(";", "\\;")
        .replace(",", "\\,")
        .replaceAll("\\R", "\\\\n")
        .replaceAll("\\p{Cntrl}", "");
  }

  /** A content line, folded between characters so that no part is longer than 75 octets. */
  private void line(String text) {
    int octets = 0;
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      int size = Character.toString(c).getBytes(StandardCharsets.UTF_8).length;
      if (octets + size > LONGEST) {
        out.append("\r\n ");
        octets = 1;
      }
      out.appendCodePoint(c);
      octets += size;
      i += Character.charCount(c);
    }
    out.append("\r\n");
  }
}
