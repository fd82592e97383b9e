package plainsward.topics;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Dates as people read them. */
public final class Dates {
  private static final DateTimeFormatter LONG =
      DateTimeFormatter.ofPattern("EEEE, MMMM d, yyyy", Locale.ENGLISH);

  private Dates() {}

  /** As in "Monday, June 1, 2026". */
  public static String shown(LocalDate date) {
    return LONG.format(date);
  }
}
