package plainsward.records;

import java.time.LocalDate;
import java.util.Set;
import plainsward.records.Amounts.Kind;

/** A line of the log: an application, or the undoing of an earlier one. */
sealed interface LogLine {
  /** The version that is written. */
  int VERSION = 1;

  /** The fields of an application. */
  Set<String> FIELDS =
      Set.of(
          "version", "kind", "id", "date", "label", "lawn", "product", "area", "sprayer", "weather",
          "who", "remark");

  /** The fields of an undoing. */
  Set<String> UNDOING = Set.of("version", "kind", "of");

  /** An application. */
  record Applied(LogEntry entry) implements LogLine {}

  /** The undoing of the entry with this id. */
  record Undone(String of) implements LogLine {}

  /** A line as read; {@code number} gives an old line without an id one. */
  static LogLine read(Node file, long number) {
    Node node = file.version(VERSION) == 0 ? OldVersions.logLine(file, number) : file;
    if ("undone".equals(node.get("kind").value())) {
      node.allow(UNDOING);
      return new Undone(node.get("of").name());
    }
    if (!"applied".equals(node.get("kind").value())) {
      throw node.get("kind").expected("\"applied\" or \"undone\"");
    }
    return new Applied(entry(node));
  }

  private static LogEntry entry(Node node) {
    node.allow(FIELDS);
    LocalDate date = node.get("date").date();
    if (date.getYear() < 1900 || date.getYear() > 2999) {
      throw node.get("date").expected("a date between 1900 and 2999");
    }
    return new LogEntry(
        node.get("id").name(),
        date,
        node.get("label").name(),
        node.optional("lawn", Node::name),
        node.optional("product", n -> Amounts.read(n, Kind.PRODUCT)),
        node.optional("area", n -> Amounts.read(n, Kind.AREA)),
        node.optional("sprayer", Node::name),
        node.optional("weather", Node::text),
        node.optional("who", Node::text),
        node.optional("remark", Node::text));
  }

  /** An application as it is written. */
  static Tree tree(LogEntry entry) {
    return new Tree()
        .put("version", VERSION)
        .put("kind", "applied")
        .put("id", entry.id())
        .put("date", entry.date())
        .put("label", entry.label())
        .put("lawn", entry.lawn())
        .put("product", entry.product().map(Amounts::tree))
        .put("area", entry.area().map(Amounts::tree))
        .put("sprayer", entry.sprayer())
        .put("weather", entry.weather())
        .put("who", entry.who())
        .put("remark", entry.remark());
  }

  /** An undoing as it is written. */
  static Tree undoing(String id) {
    return new Tree().put("version", VERSION).put("kind", "undone").put("of", id);
  }
}
