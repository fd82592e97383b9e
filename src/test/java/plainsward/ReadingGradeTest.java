package plainsward;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadingGradeTest {
  @ParameterizedTest
  @CsvSource({
    "grass, 1", "label, 2", "table, 2", "sprayed, 1", "treated, 2", "time, 1", "times, 1",
    "herbicide, 3", "dandelion, 3", "gallon, 2", "the, 1", "weeds, 1", "rinses, 2", "2, 1",
  })
  void syllablesAreCounted(String word, int syllables) {
    assertEquals(syllables, ReadingGrade.syllables(word));
  }

  @Test
  void theFormulaIsKincaids() {
    // 6 words, 1 sentence, 7 syllables: 0.39 * 6 + 11.8 * 7 / 6 - 15.59
    assertEquals(0.5167, ReadingGrade.of("Keep the dog off the label."), 0.001);
  }

  @Test
  void longWordsAndSentencesAskForMore() {
    String hard = "Considerable environmental contamination necessitates immediate intervention.";
    assertTrue(ReadingGrade.of(hard) > ReadingGrade.of("Spills are bad. Act at once."));
  }
}
