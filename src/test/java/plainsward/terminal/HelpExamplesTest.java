package plainsward.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plainsward.records.RecordBook;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.talk.Conversation;
import plainsward.talk.Setting;
import plainsward.units.UnitSystem;

/** What the help says can be asked gets an answer, each as it stands there and in its order. */
class HelpExamplesTest {
  private static final String APART = "    ";

  @Test
  void everyExampleIsUnderstood(@TempDir Path home) {
    Setting setting =
        new Setting(LocalDate.of(2026, 5, 20), UnitSystem.US, Optional.of(RecordBook.open(home)));
    Conversation talk = new Conversation(setting);
    List<String> examples = examples();
    assertTrue(examples.size() >= 20, examples::toString);
    List<String> lost = new ArrayList<>();
    for (String example : examples) {
      Reply reply = talk.answer(example);
      if (reply.kind() != Kind.ANSWER && reply.kind() != Kind.DONE) {
        lost.add(example + " -> " + reply.kind() + " " + reply.headline());
      }
    }
    assertEquals(List.of(), lost);
  }

  /** The lines under a task, several of them apart on one row. */
  private static List<String> examples() {
    List<String> all = new ArrayList<>();
    String help = HelpText.examples();
    for (String line : help.substring(0, help.indexOf("Words that help")).split("\n", -1)) {
      if (line.startsWith("  ")) {
        all.addAll(List.of(line.strip().split(APART, -1)));
      }
    }
    return all;
  }
}
