package plainsward.records;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainsward.records.RecordFault.Why;

/**
 * The labels, lawns, sprayers and the log of one user, in a folder or in memory. What a method
 * saved is on the disk when it returns. Any failure is a {@link RecordFault} with one sentence; a
 * file that can't be read is no failure but a sentence among the {@link #problems}, and all others
 * are read. Nothing is made in the folder before something is saved.
 */
public final class RecordBook {
  private static final Duration PATIENCE = Duration.ofSeconds(5);

  private final Optional<Path> home;
  private final Shelf<Label> labels;
  private final Shelf<Lawn> lawns;
  private final Shelf<Sprayer> sprayers;
  private final LogStore log;

  private RecordBook(Path home, Guard guard, Disk disk) {
    this.home = Optional.of(home);
    labels = new FileShelf<>(home.resolve("labels"), new LabelCodec(), guard, disk);
    lawns = new FileShelf<>(home.resolve("lawns"), new LawnCodec(), guard, disk);
    sprayers = new FileShelf<>(home.resolve("sprayers"), new SprayerCodec(), guard, disk);
    log = new FileLog(home.resolve("log.jsonl"), guard, disk);
  }

  private RecordBook() {
    home = Optional.empty();
    labels = new MemoryShelf<>(Label::name);
    lawns = new MemoryShelf<>(Lawn::name);
    sprayers = new MemoryShelf<>(Sprayer::name);
    log = new MemoryLog();
  }

  /**
   * The book in a folder, which need not exist yet.
   *
   * @throws RecordFault where a file stands in the folder's place
   */
  public static RecordBook open(Path home) {
    return open(home, PATIENCE, new Disk());
  }

  static RecordBook open(Path home, Duration patience, Disk disk) {
    if (Files.exists(home) && !Files.isDirectory(home)) {
      throw new RecordFault(
          Why.NOT_A_FOLDER, home, home + " is a file, and a folder is needed there.", null);
    }
    return new RecordBook(home, new Guard(home, patience), disk);
  }

  /** A book of its own that leaves nothing behind. */
  public static RecordBook inMemory() {
    return new RecordBook();
  }

  /** The folder, where there is one. */
  public Optional<Path> home() {
    return home;
  }

  /** All labels, by name. */
  public List<Label> labels() {
    return labels.all();
  }

  /** The label of this name; case and spacing don't count. */
  public Optional<Label> label(String name) {
    return labels.find(name);
  }

  /** Keeps a label, in place of one of the same name. */
  public void save(Label label) {
    labels.put(label);
  }

  /** Forgets a label; false where there is none of this name. The log keeps its entries. */
  public boolean forgetLabel(String name) {
    return labels.remove(name);
  }

  /** All lawns, by name. */
  public List<Lawn> lawns() {
    return lawns.all();
  }

  /** The lawn of this name; case and spacing don't count. */
  public Optional<Lawn> lawn(String name) {
    return lawns.find(name);
  }

  /** Keeps a lawn, in place of one of the same name. */
  public void save(Lawn lawn) {
    lawns.put(lawn);
  }

  /** Forgets a lawn; false where there is none of this name. The log keeps its entries. */
  public boolean forgetLawn(String name) {
    return lawns.remove(name);
  }

  /** All sprayers, by name. */
  public List<Sprayer> sprayers() {
    return sprayers.all();
  }

  /** The sprayer of this name; case and spacing don't count. */
  public Optional<Sprayer> sprayer(String name) {
    return sprayers.find(name);
  }

  /** Keeps a sprayer, in place of one of the same name. */
  public void save(Sprayer sprayer) {
    sprayers.put(sprayer);
  }

  /** Forgets a sprayer; false where there is none of this name. */
  public boolean forgetSprayer(String name) {
    return sprayers.remove(name);
  }

  /** The log, with what another running copy appended up to now. */
  public Log log() {
    return log.log();
  }

  /** Appends an entry and gives it back with its id. */
  public LogEntry append(LogEntry entry) {
    return log.append(entry);
  }

  /** Undoes the latest entry by appending that it is undone; empty where there is none. */
  public Optional<LogEntry> undoLast() {
    return log.undoLast();
  }

  /** Undoes the entry of this id; empty where there is none, or it is undone. */
  public Optional<LogEntry> undo(String id) {
    return log.undo(id);
  }

  /** What a sprayer held last, by the log or by what was told, whichever is later. */
  public Optional<Sprayer.Held> heldLast(String sprayer) {
    Optional<Sprayer.Held> logged =
        log().lastIn(sprayer).map(e -> new Sprayer.Held(e.label(), Optional.of(e.date())));
    Optional<Sprayer.Held> told = sprayer(sprayer).flatMap(Sprayer::held);
    boolean toldLater =
        told.flatMap(Sprayer.Held::day)
            .filter(day -> logged.isPresent())
            .filter(day -> day.isAfter(logged.get().day().orElseThrow()))
            .isPresent();
    return toldLater || logged.isEmpty() ? told : logged;
  }

  /** The next dates of all lawns and labels in the log whose label has an interval, by day. */
  public List<NextDate> nextDates() {
    return log().nextDates(labels());
  }

  /**
   * Keeps the lawns of a CSV table or a GeoJSON outline, and tells what could not be read.
   *
   * @throws RecordFault where nothing of it can be read, with the place in the file
   */
  public Imported importLawns(Path file) {
    Imported imported = LawnFile.read(file);
    imported.lawns().forEach(this::save);
    return imported;
  }

  /**
   * Reads a label file from anywhere, without keeping it.
   *
   * @throws RecordFault where it is not as expected, with the path of the field
   */
  public static Label readLabel(Path file) {
    try {
      return ShelfFile.content(file, new LabelCodec());
    } catch (IOException fault) {
      throw Faults.reading(file, fault);
    }
  }

  /** A sentence for each file or line that could not be read. */
  public List<String> problems() {
    List<String> all = new ArrayList<>(labels.problems());
    all.addAll(lawns.problems());
    all.addAll(sprayers.problems());
    all.addAll(log.problems());
    return all;
  }
}
