package plainsward.safety;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import plainsward.reply.Caution;
import plainsward.trade.Row;
import plainsward.trade.Rows;

/** The cautions by id, from the table {@code cautions}. */
public final class Cautions {
  /** The field with the text for a product that works before the weeds are up. */
  private static final String PREVENTER = "pre";

  private static final Map<String, Caution> ALL = new LinkedHashMap<>();
  private static final Map<String, Caution> OF_PREVENTERS = new LinkedHashMap<>();

  static {
    for (Row row : Rows.of("cautions")) {
      String id = row.text("id");
      ALL.put(id, new Caution(id, row.text("text")));
      if (row.values().containsKey(PREVENTER)) {
        OF_PREVENTERS.put(id, new Caution(id, row.text(PREVENTER)));
      }
    }
  }

  private Cautions() {}

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

  /** What the caution of this id is for a preventer, where that is something else. */
  public static Optional<Caution> ofPreventer(String id) {
    return Optional.ofNullable(OF_PREVENTERS.get(id));
  }

  /** Whether the table has a caution of this id. */
  public static boolean has(String id) {
    return ALL.containsKey(id);
  }
}
