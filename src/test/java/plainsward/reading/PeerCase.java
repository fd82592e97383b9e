package plainsward.reading;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import plainsward.units.Ratio;

/**
 * A phrase of a peer with what the peer reads in it.
 *
 * @param file the file it stands in, without its ending
 * @param id its own name
 * @param input the phrase
 * @param wanted the quantities with a value
 */
record PeerCase(String file, String id, String input, List<Wanted> wanted) {

  /**
   * One quantity.
   *
   * @param from its first character
   * @param to the place after its last
   */
  record Wanted(String text, String kind, Ratio value, String unit, int from, int to) {}

  /** All phrases of a folder. */
  static List<PeerCase> all(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(f -> f.toString().endsWith(".jsonl"))
          .sorted()
          .flatMap(f -> JsonLines.read(f).stream())
          .map(PeerCase::of)
          .toList();
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }

  private static PeerCase of(JsonLines.Line line) {
    List<Wanted> wanted = new ArrayList<>();
    for (Map<String, Object> one : line.objects("expected")) {
      Object value = one.getOrDefault("seconds", one.get("value"));
      if (value != null && !value.equals("null")) {
        wanted.add(wanted(one, ((String) value).replace("%", "")));
      }
    }
    String file = line.file().replace(".jsonl", "");
    return new PeerCase(file, line.text("id"), line.text("input"), wanted);
  }

  private static Wanted wanted(Map<String, Object> one, String value) {
    int from = (Integer) one.get("start");
    int to =
        one.containsKey("endInclusive")
            ? (Integer) one.get("endInclusive") + 1
            : from + (Integer) one.get("length");
    return new Wanted(
        (String) one.get("text"),
        (String) one.get("kind"),
        Ratio.of(new BigDecimal(value)),
        String.valueOf(one.get("unit")),
        from,
        to);
  }
}
