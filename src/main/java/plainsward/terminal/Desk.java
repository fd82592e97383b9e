package plainsward.terminal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import plainsward.handbook.Handbook;
import plainsward.records.RecordBook;
import plainsward.records.RecordFault;
import plainsward.talk.Setting;
import plainsward.units.UnitSystem;

/** Opens conversations as the command line chose; the only place that makes a setting. */
final class Desk {
  private final Choices choices;
  private final Surroundings around;
  private final Handbook handbook;
  private Optional<RecordBook> book = Optional.empty();

  /**
   * A desk.
   *
   * @param handbook the notes that are searched
   */
  Desk(Choices choices, Surroundings around, Handbook handbook) {
    this.choices = choices;
    this.around = around;
    this.handbook = handbook;
  }

  /** The date that replies reckon from. */
  LocalDate today() {
    return choices.today().orElseGet(() -> LocalDate.now(around.clock()));
  }

  /** A conversation as chosen on the command line, with the saved records beside it. */
  Answering open() throws Unreadable {
    Optional<RecordBook> book = book(around.dataFolder(choices.home()));
    return open(Optional.empty(), Optional.empty(), book);
  }

  /**
   * A conversation of a batch: a date and measures of its own, and no records unless a home folder
   * was chosen.
   */
  Answering open(Optional<LocalDate> today, Optional<UnitSystem> units) throws Unreadable {
    return open(today, units, book(choices.home()));
  }

  /** The records of a folder, opened once: a batch of many lines reads a long log once. */
  private Optional<RecordBook> book(Optional<Path> folder) throws Unreadable {
    try {
      if (book.isEmpty()) {
        book = folder.map(RecordBook::open);
      }
      return book;
    } catch (RecordFault fault) {
      throw new Unreadable(fault.getMessage());
    }
  }

  private Answering open(
      Optional<LocalDate> today, Optional<UnitSystem> units, Optional<RecordBook> book) {
    LocalDate date = today.orElseGet(this::today);
    UnitSystem system = units.orElse(choices.units());
    return around.opening().apply(new Setting(date, system, book, handbook));
  }
}
