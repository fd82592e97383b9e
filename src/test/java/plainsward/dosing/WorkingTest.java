package plainsward.dosing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static plainsward.units.Amounts.q;

import java.util.List;
import org.junit.jupiter.api.Test;
import plainsward.units.DimensionMismatch;
import plainsward.units.Units;

class WorkingTest {

  @Test
  void aStepKeepsItsTermsAndReckonsFromThem() {
    Step step =
        Working.of("product_total", q("1.5 [foz_us]/(1000.[sft_i])"))
            .times(q("4000 [sft_i]"))
            .as(Units.FL_OZ);
    assertEquals("product_total", step.what());
    assertEquals(q("6 [foz_us]"), step.result());
    assertEquals(q("6 [foz_us]"), step.exact());
    assertFalse(step.root());
    assertEquals(
        List.of(
            new Term(Sign.START, q("1.5 [foz_us]/(1000.[sft_i])")),
            new Term(Sign.TIMES, q("4000 [sft_i]"))),
        step.terms());
    assertEquals("1.5 fl oz per 1,000 sq ft × 4,000 sq ft = 6 fl oz", step.line());
  }

  @Test
  void everySignHasItsSymbol() {
    Step step =
        Working.of("x", q("9 1")).times(4).over(3).plus(q("2 1")).minus(q("1 1")).as(Units.ONE);
    assertEquals(q("13 1"), step.result());
    assertEquals("9 × 4 ÷ 3 + 2 − 1 = 13", step.line());
  }

  @Test
  void lengthTimesLengthIsGround() {
    assertEquals(
        q("1250 [sft_i]"),
        Working.of("area", q("50 [ft_i]")).times(q("25 [ft_i]")).as(Units.SQUARE_FOOT).result());
    assertEquals(
        q("25 [ft_i]"),
        Working.of("side", q("1250 [sft_i]")).over(q("50 [ft_i]")).as(Units.FOOT).result());
    assertEquals(
        q("3000 [sft_i]"),
        Working.of("area", q("2000 [sft_i]"))
            .plus(q("1000 [sft_i]"))
            .as(Units.SQUARE_FOOT)
            .result());
  }

  @Test
  void outcomesAreRoundedToWholeOnesOnlyWhenAsked() {
    Step up = Working.of("fills", q("9 [gal_us]")).over(q("4 [gal_us]")).roundedUp(Units.ONE);
    assertEquals(q("2.25 1"), up.exact());
    assertEquals(q("3 1"), up.result());
    assertEquals("9 gal ÷ 4 gal = 2.25 → 3", up.line());
    Step down = Working.of("goes", q("9 [gal_us]")).over(q("4 [gal_us]")).roundedDown(Units.ONE);
    assertEquals(q("2.25 1"), down.exact());
    assertEquals(q("2 1"), down.result());
    Step whole = Working.of("fills", q("8 [gal_us]")).over(q("4 [gal_us]")).roundedUp(Units.ONE);
    assertEquals("8 gal ÷ 4 gal = 2", whole.line());
  }

  @Test
  void aRootIsShownAsOne() {
    Step side = Working.of("side", q("9 [ft_i]")).times(q("16 [ft_i]")).root(Units.FOOT);
    assertEquals(q("12 [ft_i]"), side.result());
    assertTrue(side.root());
    assertEquals("√(9 ft × 16 ft) = 12 ft", side.line());
    assertThrows(DimensionMismatch.class, () -> Working.of("side", q("9 [ft_i]")).root(Units.FOOT));
  }

  @Test
  void differentThingsAreNotAddedOrGivenInTheWrongUnit() {
    Working volume = Working.of("x", q("1 [gal_us]"));
    assertThrows(DimensionMismatch.class, () -> volume.plus(q("1 [lb_av]")));
    assertThrows(DimensionMismatch.class, () -> volume.minus(q("1 [lb_av]")));
    assertThrows(DimensionMismatch.class, () -> volume.as(Units.POUND));
    assertEquals(q("1 [gal_us]"), volume.as(Units.GALLON).result());
  }

  @Test
  void aLineThatWouldReadWronglyIsNotMade() {
    Working sum = Working.of("x", q("1 1")).plus(q("2 1"));
    assertThrows(IllegalStateException.class, () -> sum.times(3));
    assertThrows(IllegalStateException.class, () -> sum.over(3));
    Working rest = Working.of("x", q("1 1")).minus(q("2 1"));
    assertThrows(IllegalStateException.class, () -> rest.times(3));
  }

  @Test
  void anAmountOfProductIsNeverShownAboveItsExactValue() {
    Step dose = Working.of("product_per_fill", q("20 [foz_us]")).over(3).as(Units.FL_OZ);
    assertEquals("20 fl oz ÷ 3 = 6.66 fl oz", dose.line());
    Step agent = Working.of("adjuvant_total", q("20 [oz_av]")).over(3).as(Units.OUNCE);
    assertEquals("20 oz ÷ 3 = 6.66 oz", agent.line());
    Step water = Working.of("water", q("20 [gal_us]")).over(3).as(Units.GALLON);
    assertEquals("20 gal ÷ 3 = 6.67 gal", water.line());
    Step part = Working.of("product_part", q("20 1")).over(3).as(Units.ONE);
    assertEquals("20 ÷ 3 = 6.67", part.line());
  }

  @Test
  void aStepCanBeToldInAnotherUnit() {
    Step step = Working.of("x", q("1 [gal_us]")).times(2).as(Units.GALLON).in(Units.FL_OZ);
    assertEquals(q("256 [foz_us]"), step.result());
    assertEquals(q("256 [foz_us]"), step.exact());
  }

  @Test
  void temperaturesKeepTheirOffset() {
    assertEquals(q("50 [degF]"), Working.of("t", q("10 Cel")).as(Units.FAHRENHEIT).result());
  }
}
