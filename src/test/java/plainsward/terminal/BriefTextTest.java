package plainsward.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import plainsward.reply.Caution;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;

class BriefTextTest {

  @Test
  void anAnswerIsItsNumberAndTheFirstCaution() {
    assertEquals(
        "Use 7.5 fl oz in all: 3 fl oz in each of two 2 gal fills, 1.5 fl oz in the last."
            + " Check the figure against your own label before you pour.",
        BriefText.of(SampleReplies.mix()));
  }

  @Test
  void aQuestionBackIsTheQuestion() {
    assertEquals("How big is the lawn?", BriefText.of(SampleReplies.ask()));
  }

  @Test
  void anEmergencyIsWhatToDoNow() {
    assertEquals(
        "Rinse the eye now with gently running water for 15 to 20 minutes. Then call."
            + " Step 1 matters.",
        BriefText.of(SampleReplies.emergency()));
  }

  @Test
  void neverMoreThanThreeSentences() {
    Reply reply =
        new ReplyBuilder(Kind.UNSURE)
            .headline("One. Two! Three? Four.")
            .say("Five. Six.")
            .caution(new Caution("read-label", "Seven. Eight."))
            .build();
    assertEquals("One. Two! Seven.", BriefText.of(reply));
  }

  @Test
  void aPointInANumberEndsNoSentence() {
    assertEquals(
        List.of("Use 1.5 fl oz.", "Then 2.25 gal (\"full\")."),
        BriefText.sentences("Use 1.5 fl oz. Then 2.25 gal (\"full\")."));
  }

  @Test
  void briefHoldsForTheScreenAndForJsonAlike() {
    Ran json = Ran.echo("", "--json", "--brief", "q");
    assertEquals("q|2026-05-01|us", JsonTree.object(json.out()).get("text"));
    Ran real = Ran.real("", "--brief", "lawn 5,000 sq ft, label 1.5 fl oz per 1000, 2 gal tank");
    assertEquals(1, real.lines().length);
    assertTrue(BriefText.sentences(real.out()).size() <= 3, real.out());
    assertFalse(real.out().contains("Take care"));
  }
}
