package plainsward.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

class PackedRowsTest {
  @Test
  void everyTableComesBackAsItIs() throws Exception {
    try (Stream<Path> files = Files.list(Path.of("corpus/tables"))) {
      List<String> names =
          files.map(f -> f.getFileName().toString().replace(".json", "")).sorted().toList();
      assertTrue(names.size() > 20);
      for (String name : names) {
        List<Row> rows = JsonRows.of(name);
        List<Row> back = PackedRows.of(Rows.file(name), RowPacker.packed(rows));
        assertEquals(rows.size(), back.size(), name);
        for (int i = 0; i < rows.size(); i++) {
          assertEquals(rows.get(i).values(), back.get(i).values(), rows.get(i).place());
          assertEquals(rows.get(i).place(), back.get(i).place());
          for (Map.Entry<String, Object> each : rows.get(i).values().entrySet()) {
            assertEquals(each.getValue(), back.get(i).values().get(each.getKey()));
          }
        }
      }
    }
  }

  /** The packed tables say what the tables say, to the letter and in their order. */
  @Test
  void everyTableIsPackedAsItIsWritten() throws Exception {
    Assumptions.assumeTrue(Rows.arePacked("weeds"), "the tables were not packed");
    try (Stream<Path> files = Files.list(Path.of("corpus/tables"))) {
      for (Path file : files.sorted().toList()) {
        String name = file.getFileName().toString().replace(".json", "");
        assertTrue(Rows.arePacked(name), name);
        assertEquals(values(JsonRows.of(name)), values(Rows.of(name)), name);
      }
    }
  }

  private static List<Map<String, Object>> values(List<Row> rows) {
    return rows.stream().map(Row::values).toList();
  }

  @Test
  void aValueThatIsMissingIsToldWithItsPlace() {
    Row row = new Row("file", 0, Map.of("say", "caf\u00e9 \u2192"));
    Row back = PackedRows.of("file", RowPacker.packed(List.of(row))).get(0);
    assertEquals("caf\u00e9 \u2192", back.text("say"));
    assertEquals(
        "file[0].word: a text was expected",
        assertThrows(IllegalStateException.class, () -> back.text("word")).getMessage());
  }
}
