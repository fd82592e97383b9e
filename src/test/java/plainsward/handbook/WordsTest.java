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
        "weed-and-feed, 2,4-D!|weed and feed 2 4 d",
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
