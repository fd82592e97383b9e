package plainsward.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpellingsTest {
  private static final Spellings WORDS =
      new Spellings(List.of("dandelion", "clover", "clever", "spray", "thatch", "ivy", "pond"));

  @ParameterizedTest
  @CsvSource({
    "dandylion, dandelion",
    "dandilions, dandelion",
    "clovr, clover",
    "sparyed, ''",
    "spary, spray",
    "thach, thatch",
    "hatch, ''",
    "ivi, ''",
    "pund, pond",
    "ponding, ''",
  })
  void aSlipFindsTheWordThatWasMeant(String typed, String meant) {
    assertEquals(meant, String.join(" ", WORDS.near(typed)));
  }

  @Test
  void wordsThatAreEquallyNearAreAllFound() {
    assertEquals(List.of("clover", "clever"), WORDS.near("clvver"));
  }

  @Test
  void aSwapOfNeighboursIsOneSlip() {
    assertEquals(1, Spellings.slips("weed", "ewed", 2));
    assertEquals(2, Spellings.slips("weed", "wd", 2));
    assertEquals(0, Spellings.slips("", "", 1));
    assertEquals(2, Spellings.slips("a", "abcd", 1));
  }
}
