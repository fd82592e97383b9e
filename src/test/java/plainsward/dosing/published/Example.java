package plainsward.dosing.published;

import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import plainsward.units.Quantity;
import plainsward.units.Ratio;

/** One worked example of {@code published/checks.json}, its source beside it. */
record Example(
    String id,
    String what,
    Map<String, Printed> inputs,
    Map<String, Printed> answer,
    Map<String, Printed> recomputed,
    Map<String, Double> tolerance,
    boolean isPrintedWrong,
    String source) {

  private static final List<Example> ALL = read();

  /** All examples, in the file's order. */
  static List<Example> all() {
    return ALL;
  }

  private static List<Example> read() {
    try (InputStream file = Example.class.getResourceAsStream("/published/checks.json")) {
      List<?> rows = (List<?>) new Load(LoadSettings.builder().build()).loadFromInputStream(file);
      List<Example> all = new ArrayList<>();
      rows.forEach(row -> all.add(of((Map<?, ?>) row)));
      return List.copyOf(all);
    } catch (IOException unreadable) {
      throw new IllegalStateException("published/checks.json can't be read", unreadable);
    }
  }

  private static Example of(Map<?, ?> row) {
    Map<String, Double> tolerance = new LinkedHashMap<>();
    ((Map<?, ?>) row.get("tolerance"))
        .forEach((key, value) -> tolerance.put((String) key, ((Number) value).doubleValue()));
    return new Example(
        (String) row.get("id"),
        (String) row.get("what"),
        printed(row.get("inputs")),
        printed(row.get("answer")),
        printed(row.get("recomputed")),
        tolerance,
        row.get("verdict").equals("wrong"),
        source((Map<?, ?>) row.get("source"), row.get("basis").equals("memory")));
  }

  private static Map<String, Printed> printed(Object node) {
    Map<String, Printed> values = new LinkedHashMap<>();
    ((Map<?, ?>) node).forEach((key, value) -> values.put((String) key, Printed.of(value)));
    return values;
  }

  private static String source(Map<?, ?> source, boolean isFromMemory) {
    String place = source.get("title") + "; " + source.get("publisher") + "; " + source.get("ref");
    return isFromMemory ? "from memory; " + place : place;
  }

  /** An input as a quantity. */
  Quantity in(String name) {
    Printed given = inputs.get(name);
    return Quantity.of(String.valueOf(given.value()), SourceUnits.code(given.unit()));
  }

  /** An input as a plain number. */
  Ratio number(String name) {
    return Ratio.of(String.valueOf(inputs.get(name).value()));
  }

  /** An input as a day. */
  LocalDate day(String name) {
    return LocalDate.parse((String) inputs.get(name).value());
  }
}
