package plainsward.topics;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import plainsward.handbook.Note;

/**
 * Weeds that still stand: whether it is too soon to tell or time to look for the reason depends on
 * the day of the spraying, and not on the words.
 */
final class DeadYet {
  private static final String EARLY = "not-dead-after-a-week";
  private static final String LATE = "not-dead-after-three-weeks";

  /** Common practice, no source: broadleaf weeds are judged three weeks after the spraying. */
  private static final int DAYS = 21;

  private DeadYet() {}

  /** The note for the day that the lawn was sprayed; the one found where no day is known. */
  static Optional<Note> fitting(Request request, Optional<Note> found) {
    boolean one = found.isPresent() && isOne(found.get().id());
    if (!one && !request.wants("dead-yet")) {
      return found;
    }
    Optional<LocalDate> day = RepeatTopic.last(request);
    if (day.isEmpty() || day.get().isAfter(request.today())) {
      return found;
    }
    long since = ChronoUnit.DAYS.between(day.get(), request.today());
    Optional<Note> note = request.handbook().note(since < DAYS ? EARLY : LATE);
    return note.isPresent() ? note : found;
  }

  private static boolean isOne(String id) {
    return id.equals(EARLY) || id.equals(LATE);
  }
}
