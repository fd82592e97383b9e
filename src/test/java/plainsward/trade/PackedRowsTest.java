package plainsward.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

/** The packed tables say what the tables say, to the letter and in their order. */
class PackedRowsTest {

  @Test
  void everyTableIsPackedAsItIsWritten() throws IOException {
    Assumptions.assumeTrue(Rows.arePacked("weeds"), "the tables were not packed");
    try (Stream<Path> files = Files.list(Path.of("corpus", "tables"))) {
      for (Path file : files.sorted().toList()) {
        String name = file.getFileName().toString().replace(".json", "");
        assertTrue(Rows.arePacked(name), name);
        assertEquals(values(JsonRows.of(name)), values(Rows.of(name)), name);
        assertEquals(places(JsonRows.of(name)), places(Rows.of(name)), name);
      }
    }
  }

  private static List<Map<String, Object>> values(List<Row> rows) {
    return rows.stream().map(Row::values).toList();
  }

  private static List<String> places(List<Row> rows) {
    return rows.stream().map(Row::place).toList();
  }
}
