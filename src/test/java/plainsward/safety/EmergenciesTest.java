package plainsward.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainsward.reading.JsonLines;
import plainsward.reading.Reader;
import plainsward.reading.Vocabulary;
import plainsward.reply.Caution;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.units.UnitSystem;

/** What an emergency says first, what besides, and which cautions stand with it, in order. */
class EmergenciesTest {
  private static final Reader READER = new Reader(UnitSystem.US, LocalDate.of(2026, 6, 1));

  static Stream<JsonLines.Line> lines() {
    return JsonLines.read(Path.of("src/test/resources/safety/emergencies.jsonl")).stream();
  }

  @ParameterizedTest
  @MethodSource("lines")
  void theRightHelpComesFirst(JsonLines.Line line) {
    Reply reply = Exposure.check(READER.read(line.text("say"), Vocabulary.NONE)).orElseThrow();
    String body = String.join("\n", reply.body());

    assertEquals(Kind.EMERGENCY, reply.kind());
    assertEquals(List.of("exposure"), reply.topics());
    assertTrue(reply.headline().startsWith(line.text("starts")), reply.headline());
    assertFalse(body.contains(reply.headline()), "the headline stands twice");
    assertEquals(line.texts("cautions"), reply.cautions().stream().map(Caution::id).toList());
    line.texts("says").forEach(part -> assertTrue(body.contains(part), part));
    line.texts("not").forEach(part -> assertFalse((reply.headline() + body).contains(part), part));
    assertEquals(List.of(), reply.suggest(), "nothing stands beside the help");
  }
}
