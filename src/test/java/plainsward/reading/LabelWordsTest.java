package plainsward.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainsward.units.UnitSystem;

/** What is told of a label is read as its line says; with {@code open} as an answer to that. */
class LabelWordsTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 20);

  static Stream<JsonLines.Line> lines() {
    return JsonLines.files("label-words").stream().flatMap(f -> JsonLines.read(f).stream());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("lines")
  void theWordsAreReadAsTheLineSays(JsonLines.Line line) {
    Facts facts = new Reader(UnitSystem.US, TODAY).read(line.text("text"), Vocabulary.NONE);
    List<String> read =
        LabelWords.read(facts, line.text("open"), UnitSystem.US, TODAY).stream()
            .map(LabelWordsTest::told)
            .toList();
    assertEquals(line.texts("details"), read, line.place());
  }

  private static String told(Detail detail) {
    String item = detail.item().isEmpty() ? "" : " " + detail.item();
    String amount =
        detail
            .low()
            .map(q -> " " + q.value() + (detail.months() ? " months" : " " + q.unit().code()))
            .orElse("");
    return (detail.field() + item + amount).replaceFirst(" 1$", "");
  }
}
