package plainsward.records;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Files of version 0, which had no {@code version} field, as version 1 would have them. Version 0
 * wrote {@code nickname} for a name, {@code day} for a date, waits as whole days and a single
 * {@code rate}.
 */
final class OldVersions {
  private OldVersions() {}

  /** A label: {@code nickname}, one {@code rate}, {@code intervalDays}, {@code timesPerYear}. */
  static Node label(Node file) {
    Map<String, Object> fields = copy(file);
    move(fields, "nickname", "name");
    if (fields.containsKey("rate")) {
      fields.put("rates", List.of(present(fields.remove("rate"))));
    }
    Map<String, Object> season = new LinkedHashMap<>();
    if (fields.containsKey("intervalDays")) {
      Map<String, Object> wait = new LinkedHashMap<>();
      wait.put("amount", fields.remove("intervalDays"));
      wait.put("unit", "d");
      season.put("interval", wait);
    }
    if (fields.containsKey("timesPerYear")) {
      season.put("applications", fields.remove("timesPerYear"));
    }
    if (!season.isEmpty()) {
      fields.put("season", season);
    }
    return new Node(file.path(), fields);
  }

  private static Object present(Object value) {
    return value == null ? Map.of() : value;
  }

  /** A lawn: {@code nickname}. */
  static Node lawn(Node file) {
    Map<String, Object> fields = copy(file);
    move(fields, "nickname", "name");
    return new Node(file.path(), fields);
  }

  /** A sprayer: {@code nickname}, and {@code lastHeld} as a bare text. */
  static Node sprayer(Node file) {
    Map<String, Object> fields = copy(file);
    move(fields, "nickname", "name");
    if (fields.containsKey("lastHeld")) {
      Map<String, Object> held = new LinkedHashMap<>();
      held.put("product", fields.remove("lastHeld"));
      fields.put("held", held);
    }
    return new Node(file.path(), fields);
  }

  /** A line of the log: {@code day} for the date, no kind and no id. */
  static Node logLine(Node file, long number) {
    Map<String, Object> fields = copy(file);
    move(fields, "day", "date");
    fields.putIfAbsent("kind", "applied");
    if ("applied".equals(fields.get("kind"))) {
      fields.putIfAbsent("id", "line-" + number);
    }
    return new Node(file.path(), fields);
  }

  private static Map<String, Object> copy(Node file) {
    Map<String, Object> fields = new LinkedHashMap<>();
    file.object().forEach((key, value) -> fields.put((String) key, value));
    return fields;
  }

  private static void move(Map<String, Object> fields, String from, String to) {
    if (fields.containsKey(from)) {
      fields.putIfAbsent(to, fields.remove(from));
    }
  }
}
