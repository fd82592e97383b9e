package plainsward.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.format.UnitFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import systems.uom.ucum.format.UCUMFormat;

/**
 * Our units against a general-purpose UCUM library (systems-ucum of the Units of Measurement
 * project), which reckons with exact fractions. Money is not in UCUM.
 */
class UcumReferenceTest {
  /** Both sides are exact; only the last rounding to a double is left. */
  private static final double ALIKE = 1e-12;

  /**
   * In UCUM the US acre is 160 square rods of the survey foot (1200/3937 m). Extension bulletins
   * reckon 43,560 square feet of the ordinary foot to the acre, and so do we; that is smaller by 4
   * parts in a million (the square of 0.999998).
   */
  private static final double SURVEY_ACRE = 1 / (0.999998 * 0.999998);

  private final UnitFormat reference = UCUMFormat.getInstance(UCUMFormat.Variant.CASE_SENSITIVE);

  static Stream<String> atoms() {
    return Atoms.codes().stream()
        .filter(code -> !Unit.of(code).dimension().equals(Dimension.MONEY))
        .filter(code -> !Unit.of(code).dimension().equals(Dimension.TEMPERATURE));
  }

  static List<String> composites() {
    return List.of(
        "[foz_us]/(1000.[sft_i])",
        "[gal_us]/(1000.[sft_i])",
        "[qt_us]/(1000.[sft_i])",
        "[pt_us]/(1000.[sft_i])",
        "[tsp_us]/(1000.[sft_i])",
        "[tbs_us]/(1000.[sft_i])",
        "[lb_av]/(1000.[sft_i])",
        "[oz_av]/(1000.[sft_i])",
        "g/(1000.[sft_i])",
        "mL/(1000.[sft_i])",
        "[foz_us]/(100.[sft_i])",
        "[gal_us]/[acr_us]",
        "[foz_us]/[acr_us]",
        "[lb_av]/[acr_us]",
        "[oz_av]/[acr_us]",
        "mL/(100.m2)",
        "L/(100.m2)",
        "mL/m2",
        "L/har",
        "mL/har",
        "kg/har",
        "g/har",
        "g/m2",
        "[foz_us]/[gal_us]",
        "[tsp_us]/[gal_us]",
        "[tbs_us]/[gal_us]",
        "[oz_av]/[gal_us]",
        "[lb_av]/[gal_us]",
        "[lb_av]/(100.[gal_us])",
        "[foz_br]/[gal_br]",
        "mL/L",
        "g/L",
        "[gal_us]/min",
        "[foz_us]/min",
        "L/min",
        "mL/s",
        "[mi_i]/h",
        "[ft_i]/s",
        "[ft_i]/min",
        "m/s",
        "km/h",
        "1000.[sft_i]",
        "100.m2");
  }

  @ParameterizedTest
  @MethodSource({"atoms", "composites"})
  void everyUnitHasTheSizeThatUcumGivesIt(String code) throws Exception {
    Unit unit = Unit.of(code);
    double size = converted("1", code, base(unit.dimension()));
    assertEquals(1, size / expected(unit), ALIKE, code);
  }

  private double converted(String value, String from, String to) throws Exception {
    return reference
        .parse(from)
        .getConverterToAny(reference.parse(to))
        .convert(new BigDecimal(value))
        .doubleValue();
  }

  private static double expected(Unit unit) {
    double ours = unit.factor().toDouble();
    if (unit.code().equals("[acr_us]")) {
      return ours * SURVEY_ACRE;
    }
    return unit.code().endsWith("/[acr_us]") ? ours / SURVEY_ACRE : ours;
  }

  @Test
  void temperaturesConvertAsUcumHasIt() throws Exception {
    for (String degrees : List.of("32", "50", "85.5", "-40")) {
      double theirs = converted(degrees, "[degF]", "Cel");
      double ours = Quantity.of(degrees, "[degF]").in(Units.CELSIUS).value().toDouble();
      assertEquals(theirs, ours, ALIKE, degrees);
    }
  }

  @Test
  void nearlyAllUnitsAreCompared() {
    assertTrue(atoms().count() >= 40, "units got lost");
  }

  private static String base(Dimension dimension) {
    Map<Base, String> codes =
        Map.of(
            Base.VOLUME, "L",
            Base.MASS, "kg",
            Base.AREA, "m2",
            Base.LENGTH, "m",
            Base.TIME, "s",
            Base.PRESSURE, "Pa");
    String made =
        dimension.powers().entrySet().stream()
            .map(part -> part.getValue() == 1 ? codes.get(part.getKey()) : part(codes, part))
            .sorted((a, b) -> Boolean.compare(a.startsWith("/"), b.startsWith("/")))
            .collect(Collectors.joining());
    return made.isEmpty() ? "1" : made;
  }

  private static String part(Map<Base, String> codes, Map.Entry<Base, Integer> power) {
    return "/" + codes.get(power.getKey());
  }
}
