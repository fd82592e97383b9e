package plainsward.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder of the user's own notes beside the handbook, through the whole program. */
class OwnNotesRunTest {
  private static final String NOTES = "src/test/resources/handbook/own-notes";

  @Test
  void anOwnNoteAnswersThoughItIsNoMatterOfTheTrade() {
    Ran ran = Ran.real("", "--notes", NOTES, "how do I get in at Hollow Lane?");
    assertTrue(ran.out().contains("left post"), ran.out());
    assertEquals(0, ran.status());
    assertFalse(Ran.real("", "how do I get in at Hollow Lane?").out().contains("left post"));
  }

  @Test
  void aBrokenNoteIsToldInOneSentenceAndTheOthersWork() {
    Ran ran = Ran.real("", "--notes", NOTES, "what does rainfast mean");
    assertEquals(
        "A note is left out: broken.md: field 'answer': it is missing, a text was expected.\n",
        ran.err());
    assertTrue(ran.out().contains("From the handbook: "), ran.out());
    assertEquals(0, ran.status());
  }

  @Test
  void manyBrokenNotesDoNotFillTheScreen(@TempDir Path folder) throws IOException {
    for (int i = 0; i < 9; i++) {
      Files.writeString(folder.resolve("note-" + i + ".md"), "no head");
    }
    Ran ran = Ran.real("", "--notes", folder.toString(), "what does rainfast mean");
    assertEquals(6, ran.err().lines().count(), ran.err());
    assertTrue(ran.err().endsWith("And 4 more notes are left out.\n"), ran.err());
  }

  @Test
  void aDoseIsStillASumAndAnEmergencyStillComesFirst() {
    Ran dose = Ran.real("", "--notes", NOTES, "Hollow Lane, 4,000 sq ft at 1.5 fl oz per 1000");
    assertTrue(dose.out().startsWith("Use 6 fl oz"), dose.out());
    Ran eye = Ran.real("", "--notes", NOTES, "got some in my eye at Hollow Lane");
    assertTrue(eye.out().startsWith("Rinse the eye"), eye.out());
  }

  @Test
  void aFolderThatIsNotThereIsToldInOneSentence(@TempDir Path folder) {
    Ran ran = Ran.real("", "--notes", folder.resolve("none").toString(), "q");
    assertEquals(1, ran.status());
    assertEquals("There is no folder " + folder.resolve("none") + " of notes.\n", ran.err());
  }
}
