package plainsward.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainsward.reading.Reader;
import plainsward.reading.Token;
import plainsward.reading.Vocabulary;
import plainsward.reply.Caution;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.units.UnitSystem;

/** An answer gets the cautions of its topic and of the question's words, and no other. */
class CautionGuardTest {
  private static List<Token> words(String text) {
    return new Reader(UnitSystem.US, LocalDate.of(2026, 6, 1)).read(text, Vocabulary.NONE).tokens();
  }

  private static Reply reply(Kind kind, String... topics) {
    ReplyBuilder reply = new ReplyBuilder(kind).headline("So it is.");
    List.of(topics).forEach(reply::topic);
    return reply.build();
  }

  private static List<String> cautions(Kind kind, String text, String... topics) {
    Reply guarded = CautionGuard.guarded(reply(kind, topics), words(text));
    return guarded.cautions().stream().map(Caution::id).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "gear, anything at all, wear-gear",
    "clean, how do i rinse it, sprayer-residue",
    "rules, may i, local-rules",
    "keep-off, when can the dog go out, keep-off-until-dry;pets",
    "weather, is it too windy, wind",
    "convert, is it too windy, ''",
    "measure, there is a pond behind it, water-nearby",
    "measure, it is as well, ''",
    "mix, beside the tomatoes, drift-plants;food-plants"
  })
  void theTopicAndTheWordsCallForCautions(String topic, String text, String wanted) {
    assertEquals(
        wanted.isEmpty() ? List.of() : List.of(wanted.split(";")),
        cautions(Kind.ANSWER, text, topic));
  }

  @Test
  void onlyTheMainTopicBringsItsOwnCaution() {
    assertTrue(cautions(Kind.ANSWER, "so", "gear", "mix").contains("wear-gear"));
    assertFalse(cautions(Kind.ANSWER, "so", "mix", "gear").contains("wear-gear"));
    assertEquals(List.of(), cautions(Kind.ANSWER, "so"));
  }

  @Test
  void anyTopicLetsAWordOfTheQuestionCount() {
    assertTrue(cautions(Kind.ANSWER, "is it windy", "mix", "weather").contains("wind"));
  }

  @Test
  void answersAndQuestionsBackAreGuardedAndNothingElseIs() {
    assertEquals(List.of("wear-gear"), cautions(Kind.ASK, "so", "gear"));
    for (Kind kind : List.of(Kind.DECLINE, Kind.EMERGENCY, Kind.DONE, Kind.UNSURE)) {
      Reply plain = reply(kind, "gear");
      assertSame(plain, CautionGuard.guarded(plain, words("so")));
    }
  }

  @Test
  void aCautionIsFoundByItsId() {
    assertTrue(Cautions.has("wind"));
    assertEquals("wind", Cautions.of("wind").id());
    assertFalse(Cautions.of("wind").text().isBlank());
    assertFalse(Cautions.has("no-such"));
    assertThrows(IllegalArgumentException.class, () -> Cautions.of("no-such"));
  }
}
