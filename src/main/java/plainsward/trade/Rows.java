package plainsward.trade;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The rows of the trade tables: as the build packed them, else from the JSON files themselves. */
public final class Rows {
  /** The folder of what was packed on the class path. */
  public static final String FOLDER = "plainsward/trade/packed/";

  private static final Pack PACK = new Pack(FOLDER, PackedTables::pieces);

  /** What was asked for once; the tables are few and their rows are made as far as wanted. */
  private static final Map<String, List<Row>> KNOWN = new ConcurrentHashMap<>();

  private Rows() {}

  /** The rows of the table {@code corpus/tables/<name>.json}. */
  public static List<Row> of(String name) {
    List<Row> known = KNOWN.get(name);
    if (known == null) {
      known = arePacked(name) ? PackedRows.of(file(name), packed(name)) : JsonRows.of(name);
      KNOWN.put(name, known);
    }
    return known;
  }

  /** Whether the build has packed a table, or something made of tables, of this name. */
  public static boolean arePacked(String name) {
    return PACK.has(name);
  }

  /** The bytes of what the build has packed. */
  public static byte[] packed(String name) {
    return PACK.bytes(name);
  }

  static String file(String name) {
    return "corpus/tables/" + name + ".json";
  }
}
