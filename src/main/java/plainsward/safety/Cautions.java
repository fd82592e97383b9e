package plainsward.safety;

import java.util.LinkedHashMap;
import java.util.Map;
import plainsward.reply.Caution;
import plainsward.trade.Row;
import plainsward.trade.Rows;

/** The cautions by id, from the table {@code cautions}. */
public final class Cautions {
  private static final Map<String, Caution> ALL = load();

  private Cautions() {}

  private static Map<String, Caution> load() {
    Map<String, Caution> all = new LinkedHashMap<>();
    for (Row row : Rows.of("cautions")) {
      all.put(row.text("id"), new Caution(row.text("id"), row.text("text")));
    }
    return all;
  }

  /**
   * The caution of this id.
   *
   * @throws IllegalArgumentException where the table has none
   */
  public static Caution of(String id) {
    Caution caution = ALL.get(id);
    if (caution == null) {
      throw new IllegalArgumentException("no caution of this id: " + id);
    }
    return caution;
  }

  /** Whether the table has a caution of this id. */
  public static boolean has(String id) {
    return ALL.containsKey(id);
  }
}
