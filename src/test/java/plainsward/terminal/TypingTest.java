package plainsward.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jline.reader.Candidate;
import org.jline.reader.impl.history.DefaultHistory;
import org.junit.jupiter.api.Test;
import plainsward.reply.Reply;
import plainsward.talk.Conversation;
import plainsward.talk.Setting;
import plainsward.units.UnitSystem;

/** What helps while a turn is typed: the row of what is known, grey words, completed names. */
class TypingTest {
  private final Answering talk =
      new Talking(new Conversation(new Setting(LocalDate.of(2026, 5, 1), UnitSystem.US)));
  private final DefaultHistory history = new DefaultHistory();
  private final Suggestions suggestions = new Suggestions(talk, history);

  private static List<String> completed(String line, int cursor) {
    List<Candidate> found = new ArrayList<>();
    NameCompleter completer = new NameCompleter(() -> Set.of("back forty"));
    completer.complete(null, new WholeLine().parse(line, cursor, null), found);
    return found.stream().map(Candidate::value).toList();
  }

  @Test
  void theRowTellsTheLawnTheTankTheLabelAndTheRates() {
    assertEquals(
        List.of("No lawn, tank or label is known yet."), KnownLine.of(talk.standing().known(), 80));
    talk.answer("the back is 4,000 sq ft");
    talk.answer("2 gallon sprayer, the label says 1.2 to 1.5 fl oz per thousand");
    assertEquals(
        List.of(
            "Known: lawn: back 4,000 sq ft | tank: 2 gal | label: 1.2 to 1.5 fl oz per 1,000 sq ft"),
        KnownLine.of(talk.standing().known(), 120));
    assertEquals(
        List.of("Known: lawn: back 4,000 sq ft", "tank: 2 gal | label: 1.2 to 1.5 fl o..."),
        KnownLine.of(talk.standing().known(), 39));
  }

  @Test
  void piecesToldByTheirSidesStandInTheRowAsTheyWereSaid() {
    talk.answer("my lawn is 60 by 75 ft less a 20 by 30 ft patio");
    assertEquals(
        List.of("Known: lawn: 60 by 75 ft + less 20 by 30 ft"),
        KnownLine.of(talk.standing().known(), 80));
  }

  @Test
  void aNewCallerLeavesNothingKnown() {
    talk.answer("4,000 sq ft in a 2 gallon sprayer at 1.5 fl oz per thousand");
    talk.answer("new caller");
    assertEquals(List.of(), talk.standing().known());
  }

  @Test
  void whatWasAskedForIsBegunInGreyWithoutAFigure() {
    Reply reply = talk.answer("how much for 4,000 sq ft in a 2 gallon");
    assertEquals(List.of("label_rate"), reply.needs());
    assertEquals("the label says ", suggestions.after(""));
    assertEquals(" label says ", suggestions.after("The"));
    assertEquals("", suggestions.after("something else"));
  }

  @Test
  void theNextStepIsOfferedUnlessItHoldsAFigure() {
    suggestions.next(Optional.of("How long do I keep the dog off?"));
    assertEquals("ong do I keep the dog off?", suggestions.after("how l"));
    suggestions.next(Optional.of("How much for it? Tell me your label's rate."));
    assertEquals("How much for it?", suggestions.after(""));
    suggestions.next(Optional.of("How much for 4,000 sq ft?"));
    assertEquals("", suggestions.after(""));
  }

  @Test
  void whatWasTypedBeforeIsOfferedTheLatestFirst() {
    history.add("what kills clover");
    history.add("what kills moss");
    assertEquals("lls moss", suggestions.after("what ki"));
    assertEquals("is talk", suggestions.after("save th"));
  }

  @Test
  void tabCompletesNamesOfSeveralWordsAndKeepsWhatStandsAround() {
    assertEquals(List.of("what kills white clover"), completed("what kills white cl", 19));
    assertEquals(
        List.of("how big is the back forty"), completed("how big is the ba", 17).subList(0, 1));
    assertEquals(List.of("kill dandelion in fall"), completed("kill dandel in fall", 11));
    assertEquals(List.of("save this talk"), completed("save this t", 11));
    assertEquals(List.of(), completed("", 0));
    assertEquals(List.of(), completed("zzz", 3));
  }
}
