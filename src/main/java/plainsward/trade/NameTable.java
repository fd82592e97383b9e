package plainsward.trade;

import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The names that a trade table has for its ids, read when they are first asked for. */
public final class NameTable {
  private static final Map<String, Map<String, String>> TABLES = new ConcurrentHashMap<>();

  private NameTable() {}

  /** The name of an id in a table such as {@code grasses}, or the id where there is none. */
  public static String name(String table, String id) {
    return TABLES.computeIfAbsent(table, NameTable::load).getOrDefault(id, id);
  }

  private static Map<String, String> load(String table) {
    Map<String, String> names = new HashMap<>();
    Rows.of(table).forEach(row -> names.put(row.text("id"), row.text("name")));
    return names;
  }
}
