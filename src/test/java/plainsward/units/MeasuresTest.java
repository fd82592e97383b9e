package plainsward.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainsward.units.Amounts.q;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainsward.units.Measures.Measured;
import plainsward.units.Measures.Rounding;

class MeasuresTest {

  /** The marks: common practice, no source. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.3 [tsp_us] | 1.25 [tsp_us]",
        "1.4 [tsp_us] | 1.5 [tsp_us]",
        "2.7 [tbs_us] | 2.5 [tbs_us]",
        "2.75 [tbs_us] | 3 [tbs_us]",
        "1.3 [cup_us] | 1.25 [cup_us]",
        "0.94 [foz_us] | 0.9 [foz_us]",
        "1 [foz_us] | 1 [foz_us]",
        "1.3 [foz_us] | 1.25 [foz_us]",
        "6.7 [foz_us] | 6.75 [foz_us]",
        "8 [foz_us] | 8 [foz_us]",
        "8.2 [foz_us] | 8 [foz_us]",
        "13.3 [foz_us] | 13.5 [foz_us]",
        "32 [foz_us] | 32 [foz_us]",
        "32.4 [foz_us] | 32 [foz_us]",
        "4.56 mL | 4.6 mL",
        "5 mL | 5 mL",
        "5.4 mL | 5 mL",
        "19.4 mL | 19 mL",
        "20 mL | 20 mL",
        "22.4 mL | 20 mL",
        "44.4 mL | 45 mL",
        "200 mL | 200 mL",
        "204 mL | 200 mL",
        "2.32 L | 2.3 L",
        "1.07 [gal_us] | 1.125 [gal_us]",
        "1.3 [qt_us] | 1.25 [qt_us]",
        "1.3 [pt_us] | 1.25 [pt_us]",
        "1.3 [foz_br] | 1.25 [foz_br]",
        "9.44 g | 9.4 g",
        "10 g | 10 g",
        "10.4 g | 10 g",
        "2.32 kg | 2.3 kg",
        "15.94 [oz_av] | 15.9 [oz_av]",
        "16 [oz_av] | 16 [oz_av]",
        "16.1 [oz_av] | 16 [oz_av]",
        "9.94 [lb_av] | 9.9 [lb_av]",
        "10 [lb_av] | 10 [lb_av]",
        "10.1 [lb_av] | 10 [lb_av]",
        "49.9 [lb_av] | 50 [lb_av]",
        "50 [lb_av] | 50 [lb_av]",
        "50.4 [lb_av] | 50 [lb_av]",
      })
  void amountsGoToTheNearestMark(String exact, String marked) {
    Quantity given = q(exact);
    Measured made = Measures.nearest(given, given.unit());
    assertEquals(q(marked), made.amount());
    assertEquals(given, made.exact());
    assertFalse(made.isFiner());
  }

  @Test
  void theWayOfRoundingIsTold() {
    assertEquals(Rounding.UP, Measures.nearest(q("1.4 [tsp_us]"), Units.TEASPOON).rounding());
    assertEquals(Rounding.DOWN, Measures.nearest(q("1.3 [tsp_us]"), Units.TEASPOON).rounding());
    assertEquals(Rounding.EXACT, Measures.nearest(q("1.5 [tsp_us]"), Units.TEASPOON).rounding());
  }

  @Test
  void anotherMeasureThanTheAmountsOwnIsRead() {
    Measured made = Measures.nearest(q("1 [foz_us]"), Units.TABLESPOON);
    assertEquals(q("2 [tbs_us]"), made.amount());
    assertEquals(q("2 [tbs_us]"), made.exact());
  }

  @Test
  void upGoesDownWhereItWouldPassTheLabelsMost() {
    Quantity exact = q("1.4 [tsp_us]");
    Measured made = Measures.nearest(exact, Units.TEASPOON, exact);
    assertEquals(q("1.25 [tsp_us]"), made.amount());
    assertEquals(Rounding.DOWN, made.rounding());
    assertEquals(
        q("1.5 [tsp_us]"), Measures.nearest(exact, Units.TEASPOON, q("1.5 [tsp_us]")).amount());
  }

  @Test
  void anAmountTooSmallForTheMeasureGoesToAFinerOne() {
    Measured made = Measures.nearest(q("0.1 [tsp_us]"), Units.TEASPOON);
    assertEquals(q("0.5 mL"), made.amount());
    assertEquals(q("0.492892159375 mL"), made.exact());
    assertTrue(made.isFiner());
    Measured weighed = Measures.nearest(q("0.02 [lb_av]"), Units.POUND);
    assertEquals(q("9.1 g"), weighed.amount());
    assertTrue(weighed.isFiner());
  }

  @Test
  void aMarkMoreThanATenthOffGoesToAFinerOne() {
    Measured made = Measures.nearest(q("0.35 [tsp_us]"), Units.TEASPOON);
    assertEquals(q("1.7 mL"), made.amount());
    Measured tenth = Measures.nearest(q("2.5 [tsp_us]").times(Ratio.of(10, 11)), Units.TEASPOON);
    assertEquals(Units.TEASPOON, tenth.amount().unit());
  }

  @Test
  void aMarkDownToNoughtGoesToAFinerOne() {
    Quantity exact = q("0.2 [tsp_us]");
    Measured made = Measures.nearest(exact, Units.TEASPOON, exact);
    assertEquals(q("0.9 mL"), made.amount());
    assertEquals(Rounding.DOWN, made.rounding());
  }

  @Test
  void whatNoMeasureCanTellStaysWhereItIs() {
    Measured made = Measures.nearest(q("0.01 mL"), Units.MILLILITRE);
    assertEquals(q("0 mL"), made.amount());
    assertFalse(made.isFiner());
    Measured none = Measures.nearest(q("0 [tsp_us]"), Units.TEASPOON);
    assertEquals(q("0 [tsp_us]"), none.amount());
    assertFalse(none.isFiner());
  }

  @Test
  void weightIsNeverTurnedIntoSpoons() {
    assertThrows(DimensionMismatch.class, () -> Measures.nearest(q("1 [oz_av]"), Units.TABLESPOON));
  }

  @Test
  void aUnitWithoutMarksIsRefusedByName() {
    String why =
        assertThrows(
                IllegalArgumentException.class,
                () -> Measures.nearest(q("1 [sft_i]"), Units.SQUARE_FOOT))
            .getMessage();
    assertEquals("no measure has marks in [sft_i]", why);
  }
}
