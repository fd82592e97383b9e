package plainsward.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SynonymsTest {
  @TempDir Path folder;

  private Synonyms table(String json) throws Exception {
    Path file = Files.writeString(folder.resolve("synonyms.json"), json);
    return new Synonyms(SynonymTable.read(file).packed());
  }

  private static List<List<String>> others(Synonyms table, String question) {
    return table.at(Words.of(question), 0).map(Synonyms.Match::others).orElse(List.of());
  }

  @Test
  void theLongestPhraseWinsAndAPluralIsLookedUpAsItsSingular() throws Exception {
    Synonyms table =
        table(
            """
            [{"same": ["ground ivy", "creeping charlie"]},
             {"say": ["creeping"], "means": ["low"]}]
            """);
    assertEquals(List.of(List.of("ground", "ivi")), others(table, "Creeping Charlies here"));
    assertEquals(List.of(List.of("low")), others(table, "creeping things"));
    assertEquals(Optional.empty(), table.at(Words.of("low ground"), 1));
  }

  @Test
  void sayAndMeansGoesOneWay() throws Exception {
    Synonyms table = table("[{\"say\": [\"pup\"], \"means\": [\"dog\"]}]");
    assertEquals(List.of(List.of("dog")), others(table, "pups"));
    assertEquals(List.of(), others(table, "dog"));
  }

  @Test
  void whatIsPackedIsFound() throws Exception {
    Synonyms table =
        table(
            """
            [{"same": ["2,4-D", "2 4 d"]}, {"say": ["pup"], "means": ["dog", "pet"]},
             {"light": ["please", "thanks"]}]
            """);
    assertEquals(List.of(List.of("24d")), others(table, "2 4 D"));
    assertTrue(table.isLight("thanks"));
    assertTrue(table.knows("pups"));
    assertFalse(table.knows("cat"));
    assertEquals(List.of("24d", "2", "4", "d", "pup"), table.words());
  }

  @Test
  void aBrokenRowIsNamed() {
    IllegalArgumentException fault =
        assertThrows(IllegalArgumentException.class, () -> table("[{\"say\": \"pup\"}]"));
    assertTrue(fault.getMessage().endsWith("row 0: 'say' must be a list of phrases."));
  }

  @Test
  void theShippedTableIsSound() throws Exception {
    Synonyms shipped =
        new Synonyms(SynonymTable.read(Path.of("corpus/tables/synonyms.json")).packed());
    assertTrue(shipped.words().size() > 300);
    assertEquals(List.of("ground", "ivi"), others(shipped, "creeping charlie").get(0));
  }
}
