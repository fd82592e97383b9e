package plainsward.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plainsward.units.Quantity;
import plainsward.units.Units;

class LawnFileTest {
  @TempDir Path folder;

  private Imported read(String name, String text) throws IOException {
    return LawnFile.read(Files.writeString(folder.resolve(name), text));
  }

  private static double squareMetres(Lawn lawn) {
    return lawn.area().orElseThrow().in(Units.SQUARE_METRE).value().toDouble();
  }

  @Test
  void aTableOfLawnsIsReadWithAllItsColumns() throws IOException {
    Imported imported =
        read(
            "lawns.csv",
            "Name,Area,Unit,Grass,Notes,Trees,Water near,Vegetables near\r\n"
                + "front,\"4,000\",sq ft,tall fescue,\"steep, \"\"wet\"\"\nin spring\",yes,no,\r\n"
                + "back,0.25 acre,,,,,,\r\n"
                + "strip,55.5,m²,,,,,y\r\n");
    assertEquals(List.of(), imported.problems());
    Lawn front =
        Lawn.named("front")
            .withArea(Samples.sqFt(4000))
            .withGrass("tall fescue")
            .withNotes("steep, \"wet\"\nin spring")
            .withTrees(true)
            .withWaterNear(false);
    assertEquals(front, imported.lawns().get(0));
    assertEquals(Optional.of(Quantity.of("0.25", "[acr_us]")), imported.lawns().get(1).area());
    assertEquals(Optional.of(Quantity.of("55.5", "m2")), imported.lawns().get(2).area());
  }

  @Test
  void rowsOfOneNameArePiecesOfOneLawn() throws IOException {
    Imported imported =
        read(
            "lawns.csv",
            "name,piece,area (sq. ft)\nfront,main,3000\nFront,strip,500\nfront,,100\n");
    assertEquals(1, imported.lawns().size());
    Lawn lawn = imported.lawns().get(0);
    assertEquals(Optional.of(Samples.sqFt(3600)), lawn.area());
    assertEquals(
        List.of("main", "strip", "piece 3"), lawn.pieces().stream().map(Lawn.Piece::name).toList());
  }

  @Test
  void semicolonsAByteOrderMarkAndUnknownColumnsAreTaken() throws IOException {
    Imported imported = read("lawns.csv", "\uFEFFname;area;colour\nfront;100 m2;green\n\n");
    assertEquals(Optional.of(Quantity.of("100", "m2")), imported.lawns().get(0).area());
    assertEquals(1, imported.problems().size());
    assertTrue(imported.problems().get(0).contains("\"colour\""));
  }

  @Test
  void aMissingFileIsTold() {
    RecordFault fault =
        assertThrows(RecordFault.class, () -> LawnFile.read(folder.resolve("none.csv")));
    assertEquals(RecordFault.Why.MISSING, fault.why());
    assertTrue(fault.getMessage().endsWith("none.csv cannot be read: there is no such file."));
  }

  /** A rectangle in degrees, as GeoJSON. */
  private static String ring(double west, double south, double east, double north) {
    return String.format(
        java.util.Locale.ROOT,
        "[[%f,%f],[%f,%f],[%f,%f],[%f,%f],[%f,%f]]",
        west,
        south,
        east,
        south,
        east,
        north,
        west,
        north,
        west,
        south);
  }

  private static Node json(String text) {
    return Json.read(text.getBytes(StandardCharsets.UTF_8));
  }

  private static Lawn outline(String coordinates) {
    return Outlines.read(
            json("{\"type\":\"Polygon\",\"coordinates\":[" + coordinates + "]}"), "lawn")
        .get(0);
  }

  /**
   * The ground of a small rectangle from the ellipsoid's radii of curvature, independent of the
   * library. The ellipsoid: a = 6378137 m, 1/f = 298.257223563, as NIMA TR8350.2 defines WGS 84.
   */
  private static double expected(double south, double north, double width) {
    double f = 1 / 298.257223563;
    double e2 = f * (2 - f);
    double middle = Math.toRadians((south + north) / 2);
    double w2 = 1 - e2 * Math.sin(middle) * Math.sin(middle);
    double alongMeridian = 6378137 * (1 - e2) / Math.pow(w2, 1.5);
    double alongParallel = 6378137 / Math.sqrt(w2) * Math.cos(middle);
    return alongMeridian * Math.toRadians(north - south) * alongParallel * Math.toRadians(width);
  }

  @Test
  void theAreaOfALawnsOutlineIsThatOnTheEllipsoidAtAnyLatitude() {
    for (double south : new double[] {0, 33.7, 45, -37.8, 61.2}) {
      double found = squareMetres(outline(ring(-84.4, south, -84.3995, south + 0.0004)));
      assertEquals(1, found / expected(south, south + 0.0004, 0.0005), 1e-6, "at " + south);
    }
  }

  /** From memory: the octahedron check of the geodesic library's own planimeter tests. */
  @Test
  void theAreaOfALargeOutlineIsGeodesic() {
    Lawn lawn = outline("[[-1,0],[0,-1],[1,0],[0,1],[-1,0]]");
    assertEquals(24619419146.0, squareMetres(lawn), 1.0);
  }

  @Test
  void whichWayRoundARingRunsMakesNoDifference() {
    double one = squareMetres(outline("[[0,0],[0.001,0],[0.001,0.001],[0,0]]"));
    double two = squareMetres(outline("[[0,0],[0.001,0.001],[0.001,0],[0,0]]"));
    assertEquals(one, two);
  }

  @Test
  void holesAreTakenOut() {
    double whole = squareMetres(outline(ring(0, 50, 0.001, 50.001)));
    double hole = squareMetres(outline(ring(0.0002, 50.0002, 0.0004, 50.0004)));
    double left =
        squareMetres(
            outline(ring(0, 50, 0.001, 50.001) + "," + ring(0.0002, 50.0002, 0.0004, 50.0004)));
    assertEquals(whole - hole, left, 0.001);
  }

  @Test
  void anOutlineAcrossThe180thMeridianIsAsLargeAsElsewhere() {
    double there =
        squareMetres(
            outline(
                "[[179.9995,-17],[-179.9995,-17],[-179.9995,-16.999],"
                    + "[179.9995,-16.999],[179.9995,-17]]"));
    double elsewhere = squareMetres(outline(ring(10, -17, 10.001, -16.999)));
    assertEquals(elsewhere, there, 0.01);
  }

  @Test
  void featuresAreLawnsAndThoseOfOneNameArePieces() throws IOException {
    String feature =
        "{\"type\":\"Feature\",\"properties\":{\"name\":\"%s\",\"grass\":\"zoysiagrass\"},"
            + "\"geometry\":{\"type\":\"Polygon\",\"coordinates\":["
            + ring(0, 50, 0.001, 50.001)
            + "]}}";
    Imported imported =
        read(
            "yard.geojson",
            "{\"type\":\"FeatureCollection\",\"features\":["
                + feature.formatted("front")
                + ","
                + feature.formatted("back")
                + ","
                + feature.formatted("Front")
                + "]}");
    assertEquals(List.of("front", "back"), imported.lawns().stream().map(Lawn::name).toList());
    assertEquals(2, imported.lawns().get(0).pieces().size());
    assertEquals(Optional.of("zoysiagrass"), imported.lawns().get(1).grass());
  }

  @Test
  void aMultipolygonIsOneLawnNamedAsItsFile() throws IOException {
    Imported imported =
        read(
            "back_yard.geojson",
            "{\"type\":\"Feature\",\"properties\":null,\"geometry\":{\"type\":\"MultiPolygon\","
                + "\"coordinates\":[["
                + ring(0, 50, 0.001, 50.001)
                + "],["
                + ring(0.002, 50, 0.003, 50.001)
                + "]]}}");
    Lawn lawn = imported.lawns().get(0);
    assertEquals("back yard", lawn.name());
    assertEquals(2 * squareMetres(outline(ring(0, 50, 0.001, 50.001))), squareMetres(lawn), 0.001);
  }
}
