package plainsward.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainsward.reply.Figure;
import plainsward.units.Quantity;

class MeasureWordsTest {

  @ParameterizedTest
  @CsvSource({
    "3, [foz_us], 6 tbsp",
    "0.25, [foz_us], 1.5 tsp",
    "3.1, [foz_us], just over 6 tbsp",
    "6, [foz_us], just over 175 mL",
    "2, [tbs_us], just over 25 mL",
    "62.5, mL, just over 60 mL",
    "1.27, L, just over 1.25 L",
    "2, [oz_av], just over 56 g",
  })
  void aMarkStandsBesideTheExactAmountAndNeverAboveIt(String value, String unit, String words) {
    Figure figure = Figure.of("product_total", Quantity.of(value, unit), "");
    assertEquals(Optional.of(words), MeasureWords.beside(figure));
  }

  @Test
  void nothingIsAddedWhereTheExactAmountIsAMark() {
    Figure figure = Figure.of("product_total", Quantity.of("60", "mL"), "");
    assertEquals(Optional.empty(), MeasureWords.beside(figure));
  }

  @Test
  void aRangeIsMeasuredFromItsLowEnd() {
    Figure figure =
        Figure.of("product_total", Quantity.of("1", "[foz_us]"), Quantity.of("2", "[foz_us]"), "");
    assertTrue(MeasureWords.beside(figure).orElseThrow().startsWith("from 2 tbsp"));
  }

  @Test
  void aTankThatASingleLoadDoesNotFillIsToldAsAPart() {
    Loads.Load only = Loads.of(SampleReplies.mix()).get(1);
    assertTrue(only.isPart());
    assertEquals(0, only.full().compareTo(Quantity.of("2", "[gal_us]")));
  }
}
