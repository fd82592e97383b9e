package plainsward.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plainsward.reply.DayHours;

/**
 * The hours of a usual day with go, wait and no.
 *
 * @param hours the hours in order, without gaps
 */
record HoursStrip(List<DayHours> hours) implements Drawing {
  private static final int WIDE = 80;

  @Override
  public List<String> rows(Ink ink, int width) {
    int cell = width < WIDE ? 2 : 4;
    StringBuilder clock = new StringBuilder("  ");
    StringBuilder strip = new StringBuilder("  ");
    for (DayHours part : hours) {
      int wide = (part.to() - part.from()) * cell;
      String hour = hour(part.from());
      clock.append(hour).append(" ".repeat(Math.max(0, wide - hour.length())));
      strip.append(paint(ink, part).repeat(wide));
    }
    clock.append(hour(hours.get(hours.size() - 1).to()));
    List<String> rows = new ArrayList<>(List.of(clock.toString(), strip.toString()));
    for (DayHours part : hours) {
      String text = "  " + paint(ink, part) + " " + span(part) + ": " + words(part);
      rows.addAll(LineBreaker.lines(text, width, 4));
    }
    return rows;
  }

  @Override
  public String sentence() {
    return "A usual day by the hour: "
        + hours.stream()
            .map(part -> span(part) + " " + words(part))
            .collect(Collectors.joining("; "))
        + ".";
  }

  private static String words(DayHours part) {
    return part.verdict() + ", " + CleanText.line(part.why());
  }

  private static String span(DayHours part) {
    return hour(part.from()) + " to " + hour(part.to());
  }

  private static String paint(Ink ink, DayHours part) {
    return switch (part.verdict()) {
      case "go" -> ink.full();
      case "wait" -> ink.half();
      default -> ink.dotted();
    };
  }

  private static String hour(int hour) {
    int twelve = hour % 12 == 0 ? 12 : hour % 12;
    return twelve + (hour % 24 < 12 ? "am" : "pm");
  }
}
