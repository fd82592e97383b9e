package plainsward.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.units.Ratio;

class ReplyJsonTest {
  private static final List<String> KEYS =
      List.of(
          "kind",
          "topics",
          "headline",
          "text",
          "figures",
          "working",
          "assumed",
          "needs",
          "understood",
          "cautions",
          "notes",
          "suggest");

  private static Map<String, Object> json(Reply reply) {
    return JsonTree.object(JsonLine.of(reply, Length.WHOLE));
  }

  private static List<String> keys(Map<String, Object> object) {
    return List.copyOf(object.keySet());
  }

  @Test
  void everyKeyOfTheContractIsThereInItsOrderHoweverEmptyTheReply() {
    assertEquals(KEYS, keys(json(new ReplyBuilder(Kind.DONE).build())));
    assertEquals(KEYS, keys(json(SampleReplies.mix())));
  }

  @Test
  void theKindIsTheContractsWord() {
    for (Kind kind : Kind.values()) {
      assertEquals(kind.word(), json(new ReplyBuilder(kind).build()).get("kind"));
    }
  }

  @Test
  void textIsTheWholeReplyAsPlainShowsIt() {
    Reply reply = SampleReplies.tooLong();
    assertEquals(PlainText.of(reply, Length.WHOLE), json(reply).get("text"));
    assertTrue(((String) json(reply).get("text")).contains("number 12"));
  }

  @Test
  void aFigureHasItsValueItsUnitAndWhatIsShown() {
    Map<String, Object> figure = JsonTree.list(json(SampleReplies.mix()), "figures").get(0);
    assertEquals(List.of("name", "value", "unit", "shown"), keys(figure));
    assertEquals(new BigDecimal("7.5"), figure.get("value"));
    assertEquals("[foz_us]", figure.get("unit"));
  }

  @Test
  void aRangeHasBothEndsBesideItsLowValue() {
    Map<String, Object> figure = JsonTree.list(json(SampleReplies.range()), "figures").get(0);
    assertEquals(List.of("name", "value", "low", "high", "unit", "shown"), keys(figure));
    assertEquals(figure.get("value"), figure.get("low"));
    assertEquals(new BigDecimal("2"), figure.get("high"));
  }

  @Test
  void aDateAndAWordStandInPlaceOfValueAndUnit() {
    List<Map<String, Object>> figures = JsonTree.list(json(SampleReplies.dates()), "figures");
    assertEquals(List.of("name", "date", "shown"), keys(figures.get(0)));
    assertEquals("2026-05-31", figures.get(0).get("date"));
    assertEquals(List.of("name", "word", "shown"), keys(figures.get(1)));
    List<Map<String, Object>> read = JsonTree.list(json(SampleReplies.dates()), "understood");
    assertEquals(List.of("name", "word", "said", "from"), keys(read.get(0)));
    assertEquals("2026-05-01", read.get(1).get("date"));
  }

  @Test
  void whatWasReadAndAssumedHasTheContractsKeys() {
    Map<String, Object> reply = json(SampleReplies.mix());
    assertEquals(
        List.of("name", "value", "unit", "said", "from"),
        keys(JsonTree.list(reply, "understood").get(0)));
    assertEquals(
        List.of("name", "value", "unit", "reason"), keys(JsonTree.list(reply, "assumed").get(0)));
    assertEquals(List.of("id", "text"), keys(JsonTree.list(reply, "cautions").get(0)));
    assertEquals(List.of("id", "title"), keys(JsonTree.list(reply, "notes").get(0)));
  }

  @Test
  void numbersAreFullPrecisionAndNeverLocal() {
    assertEquals("1.3333333333333333", ReplyJson.number(Ratio.of(4, 3)));
    assertEquals("6", ReplyJson.number(Ratio.of("6.000")));
    assertEquals("0", ReplyJson.number(Ratio.ZERO));
    assertEquals("-0.45359237", ReplyJson.number(Ratio.of("-0.45359237")));
    assertEquals("4000000", ReplyJson.number(Ratio.of(4_000_000)));
    assertEquals("1E+300", ReplyJson.number(Ratio.of("1e300")));
    assertEquals("1E-300", ReplyJson.number(Ratio.of("1e-300")));
  }

  @Test
  void nothingHarmfulIsInAnyText() {
    String line = JsonLine.of(SampleReplies.hostile(), Length.WHOLE);
    assertFalse(line.contains("\\u0"), line);
    Map<String, Object> reply = JsonTree.object(line);
    assertHarmless((String) reply.get("headline"));
    assertHarmless(((String) reply.get("text")).replace("\n", ""));
    assertHarmless((String) JsonTree.list(reply, "figures").get(0).get("shown"));
    assertHarmless((String) JsonTree.list(reply, "understood").get(0).get("said"));
  }

  private static void assertHarmless(String text) {
    assertTrue(text.codePoints().allMatch(CleanTextTest::isHarmless), text);
  }
}
