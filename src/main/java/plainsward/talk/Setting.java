package plainsward.talk;

import java.time.LocalDate;
import java.util.Optional;
import plainsward.handbook.Handbook;
import plainsward.records.RecordBook;
import plainsward.units.UnitSystem;

/**
 * What a conversation reckons with from outside.
 *
 * @param today the date that replies reckon from
 * @param units the measures taken where a question does not tell
 * @param book the saved labels, lawns and log, where there are any to keep
 * @param handbook the notes that are searched
 */
public record Setting(
    LocalDate today, UnitSystem units, Optional<RecordBook> book, Handbook handbook) {

  /** A setting in which nothing is kept beyond the conversation. */
  public Setting(LocalDate today, UnitSystem units) {
    this(today, units, Optional.empty(), Handbook.shipped());
  }

  /** A setting with the notes that come with the program. */
  public Setting(LocalDate today, UnitSystem units, Optional<RecordBook> book) {
    this(today, units, book, Handbook.shipped());
  }
}
