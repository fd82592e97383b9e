package plainsward.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TurnsTest {
  @TempDir private Path home;

  private Turns turns(Answering talk) {
    TalkFile file = new TalkFile(Optional.of(home), Ran.MAY_FIRST);
    return new Turns(talk, new PlainShowing(false), file);
  }

  private List<Path> saved() throws IOException {
    try (Stream<Path> files = Files.list(home.resolve("talks"))) {
      return files.sorted().toList();
    }
  }

  @Test
  void moreTellsWhatALongReplyKeptBack() {
    Turns turns = turns(said -> SampleReplies.tooLong());
    String first = turns.hear("what is it").text();
    assertTrue(first.endsWith(Hints.TALK.more()), first);
    String all = first + turns.hear("More, please.").text() + turns.hear("more").text();
    for (int i = 1; i <= 12; i++) {
      assertTrue(all.contains("number " + i + "."), "caution " + i);
      assertTrue(all.contains("step " + i + " of"), "step " + i);
    }
    assertEquals("That was all of it.", turns.hear("more").text());
  }

  @Test
  void aTalkIsSavedWithTheTimeOfEachTurnAndNothingIsOverwritten() throws IOException {
    Turns turns = turns(said -> SampleReplies.ask());
    assertEquals("There is no talk to save yet.", turns.hear("save this talk").text());
    turns.hear("how much\n# for ~~~~ it");
    String told = turns.hear("Save this talk please").text();
    Path file = saved().get(0);
    assertEquals("Saved this talk in " + file + ".", told);
    assertEquals("2026-05-01-1200.md", file.getFileName().toString());
    String text = Files.readString(file);
    assertTrue(text.contains("Friday, May 1, 2026."), text);
    assertTrue(text.contains("## 12:00\n\n> how much\n> # for ~~~~ it\n"), text);
    assertTrue(text.contains("How big is the lawn?"), text);
    turns.hear("save this talk");
    assertEquals(2, saved().size());
  }

  @Test
  void aNewCallersTalkHoldsNothingOfTheLastOne() throws IOException {
    Turns turns = turns(said -> SampleReplies.ask());
    turns.hear("my secret lawn");
    turns.hear("new caller, 4,000 sq ft");
    turns.hear("save this talk");
    String text = Files.readString(saved().get(0));
    assertFalse(text.contains("secret"), text);
    assertTrue(text.contains("4,000 sq ft"), text);
  }

  @Test
  void aFolderThatCannotBeWrittenIsToldInOneSentence() throws IOException {
    Files.createFile(home.resolve("talks"));
    Turns turns = turns(said -> SampleReplies.ask());
    turns.hear("question");
    assertTrue(turns.hear("save this talk").text().endsWith("so the talk is not saved."));
  }

  @Test
  void asJsonTheWordsGoToTheConversation() {
    Turns turns =
        new Turns(
            said -> SampleReplies.ask(),
            new JsonShowing(Length.SCREENFUL),
            new TalkFile(Optional.of(home), Ran.MAY_FIRST));
    assertTrue(turns.hear("more").text().startsWith("{\"kind\":"));
    assertTrue(turns.hear("help").text().startsWith("{\"kind\":"));
  }
}
