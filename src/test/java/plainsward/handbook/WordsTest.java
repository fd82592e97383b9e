package plainsward.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "The dog's paws DIDN'T dry|the dog paws didnt dry",
        "weed-and-feed, 2,4-D!|weed and feed 24d",
        "24-0-8 over 5,000 sq ft|n p k over 5000 sq ft",
        "a 3-way, 2-4 hours|a 3 way 2 4 hours",
        "neighbor’s rosé|neighbor rose",
        "40x60|40x60",
        "...|''",
      })
  void textIsCutIntoPlainWords(String text, String words) {
    assertEquals(words, String.join(" ", Words.of(text)));
  }

  @Test
  void stemsLeaveStopWordsOut() {
    assertEquals(List.of("treat", "wet", "lawn"), Words.stems("Treating the wet lawns"));
  }
}
