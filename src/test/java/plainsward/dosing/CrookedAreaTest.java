package plainsward.dosing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static plainsward.dosing.Refused.refused;
import static plainsward.units.Amounts.q;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import plainsward.dosing.CrookedArea.Corner;
import plainsward.dosing.NotDosable.Why;
import plainsward.dosing.OutlineArea.Place;
import plainsward.units.Quantity;
import plainsward.units.Units;

class CrookedAreaTest {

  private static List<Quantity> feet(String... widths) {
    return Stream.of(widths).map(width -> q(width + " [ft_i]")).toList();
  }

  private static List<Corner> corners(int... numbers) {
    return IntStream.range(0, numbers.length / 2)
        .mapToObj(i -> new Corner(q(numbers[2 * i] + " m"), q(numbers[2 * i + 1] + " m")))
        .toList();
  }

  @Test
  void offsetsCountTheEndsByHalf() {
    LawnArea area = CrookedArea.offsets(feet("10", "20", "30", "20"), q("10 [ft_i]"));
    assertEquals(q("650 [sft_i]"), area.area());
    assertEquals(
        List.of(
            "10 ft + 20 ft = 30 ft",
            "30 ft ÷ 2 = 15 ft",
            "15 ft + 20 ft + 30 ft = 65 ft",
            "65 ft × 10 ft = 650 sq ft"),
        area.steps().stream().map(Step::line).toList());
    assertEquals(q("150 [sft_i]"), CrookedArea.offsets(feet("10", "20"), q("10 [ft_i]")).area());
  }

  @Test
  void stripsCountEveryWidthWhole() {
    LawnArea area = CrookedArea.strips(feet("10", "20", "30", "20"), q("10 [ft_i]"));
    assertEquals(q("800 [sft_i]"), area.area());
    assertEquals("10 ft + 20 ft + 30 ft + 20 ft = 80 ft", area.steps().get(0).line());
    assertEquals(q("60 [sft_i]"), CrookedArea.strips(feet("6"), q("10 [ft_i]")).area());
  }

  @Test
  void bothWaysAgreeWhereThePieceRunsOutToNothing() {
    Quantity spacing = q("10 [ft_i]");
    assertEquals(
        CrookedArea.strips(feet("20", "30", "20"), spacing).area(),
        CrookedArea.offsets(feet("0", "20", "30", "20", "0"), spacing).area());
  }

  @Test
  void tooFewOrSenselessOffsetsAreRefused() {
    Quantity spacing = q("10 [ft_i]");
    refused("shape", Why.NO_SHAPE, () -> CrookedArea.offsets(feet("10"), spacing));
    refused("shape", Why.NO_SHAPE, () -> CrookedArea.strips(List.of(), spacing));
    refused("shape", Why.BELOW_ZERO, () -> CrookedArea.offsets(feet("1", "-1"), spacing));
    refused("shape", Why.NOT_ABOVE_ZERO, () -> CrookedArea.offsets(feet("0", "0"), spacing));
    refused("shape", Why.WRONG_KIND, () -> CrookedArea.strips(List.of(q("1 m2")), spacing));
    refused("distance", Why.NOT_ABOVE_ZERO, () -> CrookedArea.strips(feet("1"), q("0 m")));
  }

  @Test
  void cornersInEitherOrderGiveTheArea() {
    assertEquals(q("50 m2"), CrookedArea.polygon(corners(0, 0, 10, 0, 10, 5, 0, 5)).area());
    assertEquals(q("50 m2"), CrookedArea.polygon(corners(0, 5, 10, 5, 10, 0, 0, 0)).area());
    LawnArea corner = CrookedArea.polygon(corners(0, 0, 10, 0, 10, 4, 4, 4, 4, 10, 0, 10));
    assertEquals(q("64 m2"), corner.area());
    assertEquals(7, corner.steps().size());
    assertEquals(q("50 m2"), CrookedArea.polygon(corners(-5, -5, 5, -5, 5, 0, -5, 0)).area());
  }

  @Test
  void cornersThatEncloseNothingAreRefused() {
    refused("shape", Why.NO_SHAPE, () -> CrookedArea.polygon(corners(0, 0, 10, 0)));
    refused("shape", Why.NO_SHAPE, () -> CrookedArea.polygon(corners(0, 0, 5, 5, 10, 10)));
    List<Corner> odd = List.of(new Corner(q("0 m"), q("0 m")), new Corner(q("1 m"), q("1 m")));
    refused(
        "shape",
        Why.WRONG_KIND,
        () ->
            CrookedArea.polygon(
                Stream.concat(odd.stream(), Stream.of(new Corner(q("1 m2"), q("1 m")))).toList()));
    refused(
        "shape",
        Why.WRONG_KIND,
        () ->
            CrookedArea.polygon(
                Stream.concat(odd.stream(), Stream.of(new Corner(q("1 m"), q("1 s")))).toList()));
  }

  /** The ellipsoid's whole surface of 510,065,621.7 km², of WGS 84: from memory. */
  @Test
  void aQuarterOfTheGlobeIsAQuarterOfItsSurface() {
    List<Place> quarter =
        List.of(new Place(-90, 0), new Place(-90, 90), new Place(90, 90), new Place(90, 0));
    double area = OutlineArea.of(quarter, Units.SQUARE_METRE).area().value().toDouble();
    assertEquals(510_065_621.7e6, 4 * area, 0.1e6);
  }

  /**
   * At 40° north a thousandth of a degree is 111.0346 m by latitude and 85.3938 m by longitude
   * (series for the WGS 84 ellipsoid: 111,132.95 − 559.85 cos 2φ + 1.17 cos 4φ and 111,412.88 cos φ
   * − 93.50 cos 3φ + 0.12 cos 5φ; from memory).
   */
  @Test
  void aSmallOutlineIsItsLengthTimesItsWidthOnTheGround() {
    List<Place> outline =
        List.of(
            new Place(39.9995, -83),
            new Place(39.9995, -82.999),
            new Place(40.0005, -82.999),
            new Place(40.0005, -83),
            new Place(39.9995, -83));
    double area = OutlineArea.of(outline, Units.SQUARE_METRE).area().value().toDouble();
    double phi = Math.toRadians(40);
    double north = 111.13295 - 0.55985 * Math.cos(2 * phi) + 0.00117 * Math.cos(4 * phi);
    double east =
        111.41288 * Math.cos(phi) - 0.0935 * Math.cos(3 * phi) + 0.00012 * Math.cos(5 * phi);
    assertEquals(north * east, area, 0.02);
    assertEquals(
        area,
        OutlineArea.of(outline.subList(0, 4), Units.SQUARE_METRE).area().value().toDouble(),
        1e-6);
  }

  @Test
  void outlinesOffTheGlobeOrWithoutInsideAreRefused() {
    refused("shape", Why.OUT_OF_RANGE, () -> new Place(90.1, 0));
    refused("shape", Why.OUT_OF_RANGE, () -> new Place(0, -180.1));
    refused("shape", Why.OUT_OF_RANGE, () -> new Place(Double.NaN, 0));
    refused("shape", Why.OUT_OF_RANGE, () -> new Place(0, Double.NaN));
    Place here = new Place(90, 180);
    refused("shape", Why.NO_SHAPE, () -> OutlineArea.of(List.of(here, here), Units.ACRE));
    refused("shape", Why.NO_SHAPE, () -> OutlineArea.of(List.of(here, here, here), Units.ACRE));
  }
}
