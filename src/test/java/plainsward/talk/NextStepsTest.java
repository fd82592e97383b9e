package plainsward.talk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import plainsward.reading.JsonLines;
import plainsward.trade.Row;
import plainsward.trade.Rows;

/** What a reply says may be asked next is answered when it is asked: each has a talk of its own. */
class NextStepsTest {
  @Test
  void everyNextStepIsAskedInATalk() {
    Set<String> missing = new TreeSet<>();
    for (Row row : Rows.of("next-steps")) {
      missing.add(row.text("ask"));
    }
    for (Path file : JsonLines.files("talk")) {
      for (JsonLines.Line line : JsonLines.read(file)) {
        List<String> turns = line.texts("turns");
        missing.remove(turns.get(turns.size() - 1));
      }
    }
    assertEquals(Set.of(), missing);
  }
}
