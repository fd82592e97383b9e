package plainsward.topics;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import plainsward.trade.Row;
import plainsward.trade.Rows;

/** What the grass calls for. */
final class GrassWords {
  private static final Map<String, Row> ALL = load();

  private GrassWords() {}

  private static Map<String, Row> load() {
    Map<String, Row> all = new HashMap<>();
    Rows.of("grasses").forEach(row -> all.put(row.text("id"), row));
    return all;
  }

  /** The grass that was named. */
  static Optional<Row> named(Request request) {
    return request.get("grass").flatMap(k -> k.fact().word()).map(ALL::get);
  }

  /** A tender grass brings its caution. */
  static void caution(Request request, Sheet sheet) {
    named(request).filter(row -> row.flag("tender")).ifPresent(row -> sheet.caution("grass-type"));
  }
}
