package plainsward.terminal;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import plainsward.reply.Milestone;
import plainsward.reply.Sketches;

/**
 * The days that matter after spraying, on a strip from the first to the last: a letter a day that
 * matters, and under it what each letter stands for.
 *
 * @param sketches the days
 */
record DayStrip(Sketches sketches) implements Drawing {
  private static final DateTimeFormatter SHORT =
      DateTimeFormatter.ofPattern("EEE MMM d", Locale.US);
  private static final int WIDEST = 61;
  private static final String TODAY = "T";

  @Override
  public List<String> rows(Ink ink, int width) {
    Map<LocalDate, Milestone> marks = marks();
    LocalDate first = sketches.days().get(0).day();
    LocalDate last = sketches.days().get(sketches.days().size() - 1).day();
    long span = Math.max(1, ChronoUnit.DAYS.between(first, last));
    int cells = (int) Math.min(span, Math.min(width, WIDEST) - 5L);
    String[] strip = new String[cells + 1];
    for (int cell = 0; cell <= cells; cell++) {
      LocalDate day = first.plusDays(cell * span / cells);
      strip[cell] = day.isBefore(sketches.today()) ? ink.across() : ink.dotted();
    }
    List<String> rows = new ArrayList<>();
    for (Milestone mark : List.copyOf(marks.values())) {
      int cell = (int) (ChronoUnit.DAYS.between(first, mark.day()) * cells / span);
      boolean free = strip[cell].equals(ink.across()) || strip[cell].equals(ink.dotted());
      strip[cell] = free || mark.mark().equals("A") ? mark.mark() : strip[cell];
    }
    rows.add("  " + String.join("", strip));
    for (Milestone mark : marks.values()) {
      String text = "  " + mark.mark() + "  " + mark.day().format(SHORT) + ": " + mark.what();
      rows.addAll(LineBreaker.lines(text, width, 5));
    }
    return rows;
  }

  @Override
  public String sentence() {
    return "The days: "
        + marks().values().stream()
            .map(mark -> mark.day().format(SHORT) + ", " + mark.what())
            .collect(Collectors.joining("; "))
        + ".";
  }

  /** A mark a day; today among them where it is one of these days. */
  private Map<LocalDate, Milestone> marks() {
    Map<LocalDate, Milestone> marks = new LinkedHashMap<>();
    List<Milestone> days = new ArrayList<>(sketches.days());
    LocalDate today = sketches.today();
    boolean within =
        !today.isBefore(days.get(0).day()) && today.isBefore(days.get(days.size() - 1).day());
    if (within) {
      int at = (int) days.stream().filter(mark -> !mark.day().isAfter(today)).count();
      days.add(at, new Milestone(today, TODAY, "today"));
    }
    for (Milestone mark : days) {
      String what = CleanText.line(mark.what());
      marks.merge(
          mark.day(),
          new Milestone(mark.day(), mark.mark(), what),
          (one, more) -> new Milestone(one.day(), one.mark(), one.what() + ", " + more.what()));
    }
    return marks;
  }
}
