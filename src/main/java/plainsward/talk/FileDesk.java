package plainsward.talk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Facts;
import plainsward.records.DateCalendar;
import plainsward.records.Imported;
import plainsward.records.Label;
import plainsward.records.Lawn;
import plainsward.records.LogEntry;
import plainsward.records.LogTable;
import plainsward.records.NextDate;
import plainsward.records.RecordBook;
import plainsward.records.RecordFault;
import plainsward.records.TextFile;
import plainsward.records.WholeBook;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;

/**
 * Puts the records into files of open formats, and reads lawns and labels from files. Files stand
 * in the folder of the records, or in the current one where that is said; none is overwritten.
 */
final class FileDesk {
  private static final int MOST_TOLD = 8;
  private static final String PLAIN_NAME =
      "Give a plain file name without a folder, such as %s: it goes into the folder of your records.";

  private final Memory memory;
  private final Keeper keeper;
  private final Setting setting;

  /** What is to be written: its default name, its endings, its text and what it holds. */
  private record Export(String name, Set<String> endings, String text, String holds) {}

  FileDesk(Memory memory, Keeper keeper, Setting setting) {
    this.memory = memory;
    this.keeper = keeper;
    this.setting = setting;
  }

  /** The reply to a turn that wants a file written or read, or nothing. */
  Optional<Reply> hear(Facts turn) {
    boolean writes = turn.says("export") && !turn.says("import");
    boolean reads = turn.says("import") && FileName.in(turn.text()).isPresent();
    if (!writes && !reads) {
      return Optional.empty();
    }
    Optional<RecordBook> book = keeper.book().filter(b -> b.home().isPresent());
    if (book.isEmpty()) {
      return Optional.of(
          reply(
              Kind.DECLINE,
              "No file is read or written here, because this talk keeps no records. Start the "
                  + "program with --home and a folder, and ask again."));
    }
    try {
      return Optional.of(reads ? read(turn, book.get()) : write(turn, book.get()));
    } catch (RecordFault fault) {
      return Optional.of(reply(Kind.DECLINE, fault.getMessage()));
    }
  }

  private Reply write(Facts turn, RecordBook book) {
    Export export = export(turn, book);
    if (export.text().isEmpty()) {
      return reply(Kind.DONE, "There is nothing to write yet: " + export.holds() + ".");
    }
    Optional<FileName> said = FileName.in(turn.text());
    boolean fits = said.map(n -> n.isPlain() && n.endsIn(export.endings())).orElse(true);
    if (!fits) {
      return reply(Kind.ASK, String.format(PLAIN_NAME, export.name()), "product");
    }
    String name = said.map(FileName::name).orElse(export.name());
    Path folder = folder(turn, book);
    boolean taken = Files.exists(folder.resolve(name));
    Path file = TextFile.writeNew(folder, name, export.text());
    return reply(
        Kind.DONE,
        "Written to "
            + file
            + ": "
            + export.holds()
            + "."
            + (taken ? " The " + name + " that was there stays as it is." : ""));
  }

  private static Path folder(Facts turn, RecordBook book) {
    return turn.says("here") ? Path.of("").toAbsolutePath() : book.home().orElseThrow();
  }

  private Export export(Facts turn, RecordBook book) {
    if (turn.hasWord(Set.of("calendar", "ics", "dates"))) {
      List<NextDate> dates = book.nextDates();
      String text =
          dates.isEmpty()
              ? ""
              : DateCalendar.text(dates, setting.today().atStartOfDay(ZoneOffset.UTC).toInstant());
      String none = "no label with an interval is in the log";
      return new Export(
          "next-dates.ics", Set.of("ics"), text, counted(dates.size(), "next date", none));
    }
    boolean log = turn.hasWord(Set.of("log", "csv", "markdown", "md", "history", "sprayings"));
    boolean table = turn.hasWord(Set.of("csv", "markdown", "md"));
    if (!log || !table && turn.hasWord(Set.of("json"))) {
      return new Export(
          "everything.json",
          Set.of("json"),
          WholeBook.json(book),
          "all labels, lawns, sprayers and the log");
    }
    return log(turn);
  }

  private Export log(Facts turn) {
    List<LogEntry> entries =
        new LogDesk(memory, keeper.diary(), setting.today())
            .entries(turn, LogSpan.of(turn, setting.today()));
    String holds = counted(entries.size(), "spraying", "nothing was logged");
    boolean markdown =
        turn.hasWord(Set.of("markdown", "md"))
            || FileName.in(turn.text()).filter(n -> n.endsIn(Set.of("md", "markdown"))).isPresent();
    String text =
        entries.isEmpty() ? "" : markdown ? LogTable.markdown(entries) : LogTable.csv(entries);
    return markdown
        ? new Export("log.md", Set.of("md", "markdown"), text, holds)
        : new Export("log.csv", Set.of("csv"), text, holds);
  }

  private static String counted(int count, String what, String none) {
    return count == 0 ? none : count + " " + what + (count == 1 ? "" : "s");
  }

  private Reply read(Facts turn, RecordBook book) {
    FileName name = FileName.in(turn.text()).orElseThrow();
    boolean label = turn.hasWord(Set.of("label", "labels")) && name.endsIn(Set.of("json"));
    boolean lawns = !label && name.endsIn(Set.of("csv", "geojson", "json"));
    if (!name.isPlain() || !label && !lawns) {
      return reply(
          Kind.ASK,
          "Give a plain file name without a folder, such as route.csv or front.geojson; put the "
              + "file into "
              + book.home().orElseThrow()
              + " or the current folder.",
          "product");
    }
    Path here = Path.of("").toAbsolutePath().resolve(name.name());
    Path file = Files.exists(here) ? here : book.home().orElseThrow().resolve(name.name());
    return label ? label(file, book) : lawns(file, book);
  }

  private Reply label(Path file, RecordBook book) {
    Label label = RecordBook.readLabel(file);
    book.save(label);
    Keeper.recall(memory, label);
    return reply(
        Kind.DONE,
        "Read from " + file + ": the " + label.name() + ": " + LabelText.whole(label) + ".");
  }

  private Reply lawns(Path file, RecordBook book) {
    Set<String> before = memory.lawnNames();
    Imported imported = book.importLawns(file);
    List<String> names = new ArrayList<>();
    List<String> replaced = new ArrayList<>();
    for (Lawn lawn : imported.lawns()) {
      Keeper.recall(memory, lawn);
      names.add(lawn.name());
      if (before.contains(Memory.key(lawn.name()))) {
        replaced.add(lawn.name());
      }
    }
    ReplyBuilder told =
        new ReplyBuilder(Kind.DONE)
            .topic("record")
            .headline(
                "Read from "
                    + file
                    + ": "
                    + counted(names.size(), "lawn", "no lawn")
                    + ": "
                    + some(names)
                    + ".");
    if (!replaced.isEmpty()) {
      told.say("In place of what was known of " + some(replaced) + ".");
    }
    imported.problems().stream().limit(MOST_TOLD).forEach(told::say);
    return told.build();
  }

  private static String some(List<String> names) {
    String more = names.size() > MOST_TOLD ? " and " + (names.size() - MOST_TOLD) + " more" : "";
    return String.join(", ", names.subList(0, Math.min(MOST_TOLD, names.size()))) + more;
  }

  private static Reply reply(Kind kind, String headline, String... needs) {
    ReplyBuilder reply = new ReplyBuilder(kind).topic("record").headline(headline);
    for (String need : needs) {
      reply.need(need);
    }
    return reply.build();
  }
}
