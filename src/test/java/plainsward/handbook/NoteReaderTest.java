package plainsward.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NoteReaderTest {
  private static final String GOOD =
      """
      ---
      id: wet-boots
      title: "Boots: wet or dry"
      topics: [gear]
      about: [boots, shoes]
      answer: Wear closed shoes.
      cautions: [wear-gear]
      basis: common practice, no source
      questions:
        - can i spray in sandals
      ---
      Shoes keep the feet dry.

      Wash them after.
      """;

  @Test
  void aNoteIsReadFieldByField() throws NoteFault {
    Note note = NoteReader.read("wet-boots.md", GOOD);
    assertEquals("wet-boots", note.id());
    assertEquals("Boots: wet or dry", note.title());
    assertEquals(List.of("gear"), note.topics());
    assertEquals(List.of("boots", "shoes"), note.about());
    assertEquals("Wear closed shoes.", note.answer());
    assertEquals(List.of("wear-gear"), note.cautions());
    assertEquals(List.of("common practice, no source"), note.basis());
    assertEquals(List.of("can i spray in sandals"), note.questions());
    assertEquals("Shoes keep the feet dry.\n\nWash them after.", note.body());
  }

  @Test
  void windowsLineEndsAndAByteOrderMarkDoNoHarm() throws NoteFault {
    String windows = "\uFEFF" + GOOD.replace("\n", "\r\n");
    assertEquals(NoteReader.read("wet-boots.md", GOOD), NoteReader.read("wet-boots.md", windows));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "title: \"Boots: wet or dry\"|title: Boots: wet or dry|line 3, the head is not YAML",
        "answer: Wear closed shoes.|answer:|field 'answer': it is missing, a text was expected",
        "basis: common practice, no source|about2: x|field 'basis': it is missing, one text or",
        "topics: [gear]|topics: []|field 'topics': it is missing, one text or a list",
        "about: [boots, shoes]|about: [{a: b}]|field 'about': a text was expected, put quotes",
        "id: wet-boots|id: Wet Boots|field 'id': lower-case words with hyphens between",
        "id: wet-boots|id: dry-boots|field 'id': 'dry-boots' was given, the file's name says",
        "title: \"Boots: wet or dry\"|title: ''|field 'title': it is empty, a text was expected",
      })
  void aBrokenHeadIsRefusedInOneSentence(String line, String broken, String message) {
    NoteFault fault =
        assertThrows(
            NoteFault.class, () -> NoteReader.read("wet-boots.md", GOOD.replace(line, broken)));
    assertTrue(fault.getMessage().startsWith("wet-boots.md: " + message), fault.getMessage());
    assertEquals(-1, fault.getMessage().indexOf('\n'), fault.getMessage());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "---",
        "---\n",
        "no head at all",
        "---\nid: a\n",
        "---\n- a\n---\nb",
        "---\n---\n"
      })
  void aTextWithoutAHeadIsRefused(String text) {
    assertThrows(NoteFault.class, () -> NoteReader.read("a.md", text));
  }

  @Test
  void aNoteWithoutABodyIsRefused() {
    String bare = GOOD.substring(0, GOOD.indexOf("Shoes keep"));
    NoteFault fault = assertThrows(NoteFault.class, () -> NoteReader.read("wet-boots.md", bare));
    assertEquals("wet-boots.md: a body was expected after the head.", fault.getMessage());
  }

  @Test
  void aFileThatIsNoTextIsRefused(@TempDir Path folder) throws Exception {
    Path file = Files.write(folder.resolve("a.md"), new byte[] {(byte) 0xC3, (byte) 0x28});
    NoteFault fault = assertThrows(NoteFault.class, () -> NoteReader.read(file));
    assertEquals("a.md: the text is not UTF-8.", fault.getMessage());
    assertThrows(NoteFault.class, () -> NoteReader.read(folder.resolve("missing.md")));
  }

  @Test
  void aHugeFileIsRefusedUnread(@TempDir Path folder) throws Exception {
    Path file = Files.writeString(folder.resolve("a.md"), "x".repeat(300_000));
    NoteFault fault = assertThrows(NoteFault.class, () -> NoteReader.read(file));
    assertEquals("a.md: the file is larger than a note may be.", fault.getMessage());
  }
}
