package plainsward.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
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

  /** Of two sentences for the phone the second says something of its own, or it is not said. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "when may i mow",
        "can i spray with bees on the clover",
        "how soon may the dog go out on the dried lawn",
        "how long do the kids stay off after spraying",
        "can i spray in 95 degrees"
      })
  void aCautionIsNotSaidTwice(String question) {
    String said = Ran.real(question + "\nshorter\n").out();
    List<String> brief = BriefText.sentences(said.substring(said.lastIndexOf("> ") + 2));
    for (int i = 1; i < Math.min(3, brief.size()); i++) {
      assertFalse(SaidAlready.in(brief.get(i), brief.subList(0, i)), brief::toString);
    }
  }

  @Test
  void aDoseNamesTheLabelWhateverWasSaid() {
    Reply reply =
        ReplyBuilder.from(SampleReplies.mix())
            .headline("Check the figure against your own label before you pour.")
            .build();
    assertTrue(BriefText.of(reply).endsWith("before you pour."), BriefText.of(reply));
  }

  @Test
  void aPointInANumberEndsNoSentence() {
    assertEquals(
        List.of("Use 1.5 fl oz.", "Then 2.25 gal (\"full\")."),
        BriefText.sentences("Use 1.5 fl oz. Then 2.25 gal (\"full\")."));
  }

  @Test
  void shorterTellsTheLastReplyInShort() {
    Ran talk = Ran.real("2 gal tank, 4,000 sq ft, 1.5 fl oz per 1000. how much?\nshorter please\n");
    String shorter = talk.out().substring(talk.out().lastIndexOf("Use 6 fl oz"));
    String[] lines = shorter.split("\n", -1);
    assertTrue(BriefText.sentences(lines[0]).size() <= 3, shorter);
    assertTrue(shorter.contains("Write down: ") && shorter.contains("2 gal tank"), shorter);
    assertFalse(shorter.contains("How it was worked out"), shorter);
  }

  @Test
  void theSumIsShownWithEveryStepAlsoAfterItWasToldInShort() {
    String ask = "5,000 sq ft, 1.5 fl oz per k, 2 gal tank, how much?\n";
    String sum = Ran.real(ask + "shorter\nshow the sum\n").out();
    String last = sum.substring(sum.lastIndexOf("How it was worked out"));
    assertTrue(last.contains("5 gal ÷ 2 gal = 2.5 → 3"), last);
    assertTrue(last.contains("3 fl oz × 1 gal ÷ 2 gal = 1.5 fl oz"), last);
    assertFalse(last.contains("more steps"), last);
    assertFalse(sum.substring(sum.lastIndexOf("Use 7.5")).contains("Marks on the tank"), sum);
  }

  @Test
  void whatToWriteDownIsTheFactsAndTheFigures() {
    assertEquals(
        List.of(
            "Use 7.5 fl oz in all: 3 fl oz in each of two 2 gal fills, 1.5 fl oz in the last."
                + " Check the figure against your own label before you pour.",
            "Ask next: How long do I keep the dog off?",
            "Write down: 5,000 sq ft of lawn; 2 gal tank; Product total: 7.5 fl oz; Spray total: 5"
                + " gal; Fills: 3."),
        BriefText.paragraphs(SampleReplies.mix()));
  }

  @Test
  void briefHoldsForTheScreenAndForJsonAlike() {
    Ran json = Ran.echo("", "--json", "--brief", "q");
    assertEquals("q|2026-05-01|us", JsonTree.object(json.out()).get("text"));
    Ran real = Ran.real("", "--brief", "lawn 5,000 sq ft, label 1.5 fl oz per 1000, 2 gal tank");
    assertTrue(BriefText.sentences(real.lines()[0]).size() <= 3, real.out());
    assertTrue(real.lines()[1].startsWith("Ask next: "), real.out());
    assertTrue(real.lines()[2].startsWith("Write down: 5,000 sq ft of lawn; "), real.out());
    assertEquals(3, real.lines().length);
    assertFalse(real.out().contains("Take care"));
  }
}
