package plainsward.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OwnNotesTest {
  private static final Path OWN = Path.of("src/test/resources/handbook/own-notes");

  private final Handbook both = Handbook.shipped().plus(OWN, Progress.SILENT);

  @Test
  void aNoteOfTheUsersIsFound() {
    List<Hit> hits = both.search("how do I get in at Hollow Lane?", Search.first(3));
    assertEquals("gate-code", hits.get(0).note().id());
    assertTrue(hits.get(0).confidence() > 0.5, () -> "confidence " + hits.get(0).confidence());
    assertEquals("gate-code", both.note("gate-code").map(Note::id).orElse(""));
  }

  @Test
  void aBrokenNoteIsListedAndTheOthersAreTaken() {
    assertEquals(
        List.of("broken.md: field 'answer': it is missing, a text was expected."), both.refused());
  }

  @Test
  void progressIsTold() {
    List<String> heard = new ArrayList<>();
    Handbook.shipped().plus(OWN, (done, total) -> heard.add(done + " of " + total));
    assertEquals(List.of("1 of 2", "2 of 2"), heard);
  }

  @Test
  void theShippedNotesStayAsTheyWere() {
    assertEquals(Optional.empty(), Handbook.shipped().note("gate-code"));
  }

  @Test
  void aNewerNoteOfTheSameIdStandsInForTheOlder(@TempDir Path folder) throws Exception {
    String text = Files.readString(OWN.resolve("gate-code.md"));
    Files.writeString(folder.resolve("gate-code.md"), text.replace("left post", "right post"));
    Handbook newer = both.plus(folder, Progress.SILENT);
    List<Hit> hits = newer.search("where is the padlock", Search.first(5));
    assertEquals(1, hits.stream().filter(h -> h.note().id().equals("gate-code")).count());
    assertTrue(hits.get(0).note().answer().contains("right post"));
    assertTrue(newer.note("gate-code").orElseThrow().answer().contains("right post"));
  }

  @Test
  void aFolderThatIsNotThereAddsNothing(@TempDir Path folder) {
    Handbook same = Handbook.shipped().plus(folder.resolve("none"), Progress.SILENT);
    assertFalse(same.note("gate-code").isPresent());
    assertEquals(List.of(), same.refused());
  }

  @Test
  void topicsCanBeRequired() {
    assertEquals(List.of(), both.search("padlock", Search.first(5).requiring(Set.of("gear"))));
    assertEquals(
        "gate-code",
        both.search("padlock", Search.first(5).requiring(Set.of("record"))).get(0).note().id());
  }
}
