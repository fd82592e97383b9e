package plainsward.trade;

import java.util.List;

/** The rows of the trade tables: as the build packed them, else from the JSON files themselves. */
public final class Rows {
  private Rows() {}

  /** The rows of the table {@code corpus/tables/<name>.json}. */
  public static List<Row> of(String name) {
    return arePacked(name) ? PackedRows.of(name) : JsonRows.of(name);
  }

  /** Whether the build has packed a table of this name. */
  public static boolean arePacked(String name) {
    return PackedRows.has(name);
  }

  static String file(String name) {
    return "corpus/tables/" + name + ".json";
  }
}
