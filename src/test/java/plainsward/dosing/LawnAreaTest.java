package plainsward.dosing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static plainsward.dosing.Refused.refused;
import static plainsward.units.Amounts.q;
import static plainsward.units.Amounts.r;

import java.util.List;
import org.junit.jupiter.api.Test;
import plainsward.dosing.NotDosable.Why;
import plainsward.units.Quantity;

class LawnAreaTest {

  private static void about(String squareFeet, LawnArea area) {
    assertEquals(q("1 [sft_i]").unit(), area.area().unit());
    assertEquals(Double.parseDouble(squareFeet), area.area().value().toDouble(), 1e-9);
  }

  @Test
  void aRectangleIsLengthTimesWidthInTheFirstSidesSystem() {
    assertEquals(q("2400 [sft_i]"), LawnArea.rectangle(q("40 [ft_i]"), q("60 [ft_i]")).area());
    assertEquals(q("180 [sft_i]"), LawnArea.rectangle(q("10 [yd_i]"), q("6 [ft_i]")).area());
    assertEquals(q("50 m2"), LawnArea.rectangle(q("10 m"), q("500 cm")).area());
  }

  @Test
  void aTriangleGoesByBaseAndHeightOrByItsSides() {
    assertEquals(q("390 [sft_i]"), LawnArea.triangle(q("30 [ft_i]"), q("26 [ft_i]")).area());
    LawnArea sides = LawnArea.triangle(q("3 [ft_i]"), q("4 [ft_i]"), q("5 [ft_i]"));
    assertEquals(q("6 [sft_i]"), sides.area());
    assertEquals(
        List.of(
            "3 ft + 4 ft + 5 ft = 12 ft",
            "12 ft ÷ 2 = 6 ft",
            "6 ft − 3 ft = 3 ft",
            "6 ft − 4 ft = 2 ft",
            "6 ft − 5 ft = 1 ft",
            "√(6 ft × 3 ft × 2 ft × 1 ft) = 6 sq ft"),
        sides.steps().stream().map(Step::line).toList());
  }

  @Test
  void sidesThatDoNotMeetMakeNoTriangle() {
    refused("shape", Why.NO_SHAPE, () -> LawnArea.triangle(q("1 m"), q("2 m"), q("3 m")));
    refused("shape", Why.NO_SHAPE, () -> LawnArea.triangle(q("9 m"), q("2 m"), q("3 m")));
    refused("shape", Why.NO_SHAPE, () -> LawnArea.triangle(q("1 m"), q("9 m"), q("3 m")));
  }

  @Test
  void roundPiecesGoByTheWayAcrossOrTheRadius() {
    about("5026.5482457437", LawnArea.circleAcross(q("80 [ft_i]")));
    about("5026.5482457437", LawnArea.circle(q("40 [ft_i]")));
    about("942.4777960769", LawnArea.ring(q("20 [ft_i]"), q("10 [ft_i]")));
    about("942.4777960769", LawnArea.ellipse(q("40 [ft_i]"), q("30 [ft_i]")));
    assertEquals(
        "π × 80 ft × 80 ft ÷ 4 = 5,027 sq ft",
        LawnArea.circleAcross(q("80 [ft_i]")).steps().get(0).line());
    refused("area", Why.NOT_ABOVE_ZERO, () -> LawnArea.ring(q("10 m"), q("10 m")));
  }

  @Test
  void aTrapezoidIsTheMeanOfItsSidesTimesTheWayBetween() {
    LawnArea made = LawnArea.trapezoid(q("30 [ft_i]"), q("50 [ft_i]"), q("20 [ft_i]"));
    assertEquals(q("800 [sft_i]"), made.area());
    assertEquals("80 ft × 20 ft ÷ 2 = 800 sq ft", made.steps().get(1).line());
  }

  @Test
  void piecesAreAddedAndTheHouseTakenOff() {
    LawnArea lot = LawnArea.of(q("10000 [sft_i]"));
    LawnArea house = LawnArea.rectangle(q("40 [ft_i]"), q("50 [ft_i]"));
    LawnArea lawn = lot.minus(house);
    assertEquals(q("8000 [sft_i]"), lawn.area());
    assertEquals(2, lawn.steps().size());
    assertEquals("10,000 sq ft − 2,000 sq ft = 8,000 sq ft", lawn.steps().get(1).line());
    LawnArea more = lawn.plus(house);
    assertEquals(q("10000 [sft_i]"), more.area());
    assertEquals(4, more.steps().size());
    assertEquals(
        q("0.25 [acr_us]").minus(q("890 [sft_i]")),
        LawnArea.of(q("0.25 [acr_us]")).minus(LawnArea.of(q("890 [sft_i]"))).area());
    refused("area", Why.NOT_ABOVE_ZERO, () -> house.minus(house));
    refused("area", Why.NOT_ABOVE_ZERO, () -> house.minus(lot));
  }

  @Test
  void partsOfAnAcreArePartsOfIt() {
    assertEquals(q("1/3 [acr_us]"), LawnArea.partOf(r("1/3"), q("1 [acr_us]")).area());
    refused("area", Why.NOT_ABOVE_ZERO, () -> LawnArea.partOf(r("0"), q("1 [acr_us]")));
    refused("area", Why.NOT_ABOVE_ZERO, () -> LawnArea.partOf(r("1"), q("0 [acr_us]")));
    assertEquals(q("128 1"), LawnArea.piecesInAcre(Calibration.ACRE_PART).result());
    refused("area", Why.WRONG_KIND, () -> LawnArea.piecesInAcre(q("1 m")));
  }

  @Test
  void pacesNeedTheirLength() {
    assertEquals(q("75 [ft_i]"), LawnArea.paced(r("30"), q("2.5 [ft_i]")).result());
    refused("pace", Why.NOT_ABOVE_ZERO, () -> LawnArea.paced(r("30"), q("0 [ft_i]")));
    refused("distance", Why.NOT_ABOVE_ZERO, () -> LawnArea.paced(r("0"), q("1 [ft_i]")));
  }

  @Test
  void theOtherSideOfARectangleIsAreaOverSide() {
    Quantity other = LawnArea.otherSide(q("1000 [sft_i]"), q("6 [ft_i]")).result();
    assertEquals(q("500/3 [ft_i]"), other);
    refused("area", Why.NOT_ABOVE_ZERO, () -> LawnArea.otherSide(q("0 m2"), q("6 m")));
    refused("shape", Why.NOT_ABOVE_ZERO, () -> LawnArea.otherSide(q("1 m2"), q("0 m")));
  }

  @Test
  void sidesOfNoLengthAreRefused() {
    Quantity none = q("0 m");
    Quantity one = q("1 m");
    Why why = Why.NOT_ABOVE_ZERO;
    refused("shape", why, () -> LawnArea.rectangle(none, one));
    refused("shape", why, () -> LawnArea.rectangle(one, none));
    refused("shape", why, () -> LawnArea.triangle(none, one));
    refused("shape", why, () -> LawnArea.triangle(one, none));
    refused("shape", why, () -> LawnArea.triangle(none, one, one));
    refused("shape", why, () -> LawnArea.triangle(one, none, one));
    refused("shape", why, () -> LawnArea.triangle(one, one, none));
    refused("shape", why, () -> LawnArea.circle(none));
    refused("shape", why, () -> LawnArea.circleAcross(none));
    refused("shape", why, () -> LawnArea.ellipse(none, one));
    refused("shape", why, () -> LawnArea.ellipse(one, none));
    refused("shape", why, () -> LawnArea.trapezoid(none, one, one));
    refused("shape", why, () -> LawnArea.trapezoid(one, none, one));
    refused("shape", why, () -> LawnArea.trapezoid(one, one, none));
    refused("area", why, () -> LawnArea.of(q("0 m2")));
    refused("shape", Why.WRONG_KIND, () -> LawnArea.rectangle(q("1 m2"), one));
  }
}
