package plainsward.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainsward.reading.Facts;
import plainsward.reading.Reader;
import plainsward.reading.Vocabulary;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.units.UnitSystem;

/** What must not be done is refused ({@code +} in the file), and nothing else is ({@code -}). */
class RefusalsTest {
  private static final Reader READER = new Reader(UnitSystem.US, LocalDate.of(2026, 6, 1));

  static Stream<String> lines() throws IOException {
    try (InputStream in = RefusalsTest.class.getResourceAsStream("/safety/refusals.txt")) {
      List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
      return lines.stream().filter(line -> !line.isBlank());
    }
  }

  @ParameterizedTest
  @MethodSource("lines")
  void onlyWhatMustNotBeDoneIsRefused(String line) {
    Facts facts = READER.read(line.substring(2), Vocabulary.NONE);

    assertEquals(line.charAt(0) == '+', Refusals.check(facts).isPresent(), line);
  }

  @Test
  void aRefusalSaysWhyWhatInsteadAndGivesNoFigure() {
    Facts facts = READER.read("can i double the rate to be sure", Vocabulary.NONE);
    Reply reply = Refusals.check(facts).orElseThrow();

    assertEquals(Kind.DECLINE, reply.kind());
    assertFalse(reply.topics().isEmpty());
    assertFalse(reply.headline().isBlank());
    assertFalse(reply.body().isEmpty());
    assertEquals(List.of(), reply.figures());
    assertTrue(reply.cautions().stream().anyMatch(c -> c.id().equals("above-label")));
  }
}
