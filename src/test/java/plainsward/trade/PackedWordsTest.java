package plainsward.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PackedWordsTest {
  @Test
  void everyWordIsFoundAndNoOther() {
    Map<String, Integer> all = new LinkedHashMap<>();
    for (int i = 0; i < 3000; i++) {
      all.put("word" + i * 7919, i);
    }
    // Two texts of the same hash code.
    all.put("Aa", 4000);
    all.put("BB", 4001);
    PackedWords words = new PackedWords(PackedWords.packed(all), 0);
    all.forEach((word, number) -> assertEquals(number, words.find(word), word));
    assertEquals(PackedWords.NONE, words.find("word"));
    assertEquals(PackedWords.NONE, words.find("C#"));
    assertEquals(PackedWords.NONE, words.find(""));
  }

  @Test
  void theBeginningOfAWordIsFoundByItsHash() {
    byte[] packed = PackedWords.packed(Map.of("spray", 7, "sp", 8));
    byte[] behind = new byte[packed.length + 5];
    System.arraycopy(packed, 0, behind, 5, packed.length);
    PackedWords words = new PackedWords(behind, 5);
    assertEquals(7, words.find("sprayer", 5, "spray".hashCode()));
    assertEquals(8, words.find("sprayer", 2, "sp".hashCode()));
    assertEquals(PackedWords.NONE, words.find("sprayer", 3, "spr".hashCode()));
  }

  @Test
  void noWordsAtAllAreWordsToo() {
    assertEquals(PackedWords.NONE, new PackedWords(PackedWords.packed(Map.of()), 0).find("a"));
  }

  @Test
  void whatDoesNotFitIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> PackedWords.packed(Map.of("\u2109", 1)));
    assertThrows(IllegalArgumentException.class, () -> PackedWords.packed(Map.of("a", 1 << 16)));
    String long256 = "a".repeat(256);
    assertThrows(IllegalArgumentException.class, () -> PackedWords.packed(Map.of(long256, 1)));
  }
}
