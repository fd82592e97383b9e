package plainsward.trade;

import java.util.List;

/** The rows of the trade tables: as the build packed them, else from the JSON files themselves. */
public final class Rows {
  /** The folder of what was packed on the class path. */
  public static final String FOLDER = "plainsward/trade/packed/";

  private static final Pack PACK = new Pack(FOLDER, PackedTables::pieces);

  private Rows() {}

  /** The rows of the table {@code corpus/tables/<name>.json}. */
  public static List<Row> of(String name) {
    return arePacked(name) ? PackedRows.of(file(name), packed(name)) : JsonRows.of(name);
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
