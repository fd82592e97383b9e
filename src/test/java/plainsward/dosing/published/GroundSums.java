package plainsward.dosing.published;

import static plainsward.units.Amounts.q;

import java.util.Map;
import plainsward.dosing.LawnArea;
import plainsward.dosing.TankJob;
import plainsward.dosing.TankMix;
import plainsward.units.Quantity;
import plainsward.units.Unit;
import plainsward.units.Units;

/** The examples on areas and on converting units. */
final class GroundSums {
  private GroundSums() {}

  static void addTo(Sums sums) {
    areas(sums);
    largeAreas(sums);
    volumes(sums);
    lengths(sums);
    rates(sums);
  }

  private static void areas(Sums sums) {
    sums.put("area-01", x -> Map.of("area", LawnArea.rectangle(x.in("l"), x.in("w")).area()));
    sums.put("area-03", x -> Map.of("area", LawnArea.circleAcross(x.in("diameter")).area()));
    sums.put("area-04", x -> Map.of("area", triangle(x)));
    sums.put("area-06", x -> Map.of("area", triangle(x)));
    sums.put(
        "area-07",
        x ->
            Map.of(
                "rect", LawnArea.rectangle(x.in("l"), x.in("w")).area(),
                "tri", triangle(x),
                "circle", LawnArea.circleAcross(x.in("diameter")).area()));
  }

  private static void largeAreas(Sums sums) {
    sums.put("area-09", x -> Map.of("sqft", triangle(x), "acres", triangle(x).in(Units.ACRE)));
    sums.put(
        "area-10",
        x -> {
          Quantity circle = LawnArea.circleAcross(x.in("diameter")).area();
          return Map.of("sqft", circle, "acres", circle.in(Units.ACRE));
        });
    sums.put(
        "area-12",
        x -> Map.of("acres", LawnArea.trapezoid(x.in("a"), x.in("b"), x.in("h")).area()));
    sums.put(
        "area-13",
        x -> {
          Quantity square = LawnArea.rectangle(x.in("side"), x.in("side")).area();
          TankJob job = TankJob.start().onArea(square).atSprayRate(x.in("spray_volume"));
          return Map.of("mix", TankMix.of(job.withAdjuvant(q("0.25 %"))).spray().get());
        });
    sums.put(
        "conv-10", x -> Map.of("acres", LawnArea.rectangle(x.in("run"), x.in("swath")).area()));
  }

  private static void volumes(Sums sums) {
    sums.put("conv-01", x -> Map.of("L", x.in("v").in(Units.LITRE)));
    sums.put(
        "conv-03",
        x ->
            Map.of(
                "pt_mL", x.in("v").in(Units.MILLILITRE),
                "qt_L", q("1 [qt_us]").in(Units.LITRE)));
    sums.put(
        "conv-04",
        x ->
            Map.of(
                "gal_mL", x.in("v").in(Units.MILLILITRE),
                "floz_mL", q("1 [foz_us]").in(Units.MILLILITRE),
                "tbsp_mL", q("1 [tbs_us]").in(Units.MILLILITRE),
                "tsp_mL", q("1 [tsp_us]").in(Units.MILLILITRE),
                "cup_tbsp", q("1 [cup_us]").in(Units.TABLESPOON)));
    sums.put(
        "conv-06",
        x ->
            Map.of(
                "tbsp", x.in("tbsp").in(Units.MILLILITRE),
                "tsp", x.in("tsp").in(Units.MILLILITRE)));
    sums.put(
        "conv-16",
        x ->
            Map.of(
                "floz_mL", x.in("floz").in(Units.MILLILITRE),
                "acre_ha", x.in("acre").in(Units.HECTARE),
                "gal_L", x.in("gal").in(Units.LITRE)));
  }

  private static void lengths(Sums sums) {
    sums.put(
        "conv-07",
        x ->
            Map.of(
                "ha", x.in("v").in(Units.HECTARE),
                "acre_per_ha", q("1 har").in(Units.ACRE).value()));
    sums.put(
        "conv-09",
        x ->
            Map.of(
                "ft_min", x.in("v").in(Unit.of("[ft_i]/min")),
                "ft_s", x.in("v").in(Unit.of("[ft_i]/s"))));
    sums.put(
        "conv-18", x -> Map.of("a", x.in("a").in(Units.CELSIUS), "b", x.in("b").in(Units.CELSIUS)));
    sums.put("err-04", x -> Map.of("ft", x.in("v").in(Units.FOOT)));
  }

  private static void rates(Sums sums) {
    sums.put(
        "conv-12",
        x ->
            Map.of(
                "a", x.in("a").in(Unit.of("[lb_av]/[acr_us]")),
                "b", x.in("b").in(Unit.of("[lb_av]/[acr_us]"))));
    sums.put("conv-13", GroundSums::onThousand);
    sums.put("conv-15", GroundSums::onThousand);
  }

  private static Map<String, Object> onThousand(Example x) {
    return Map.of(
        "a", onThousand(x, "a"),
        "b", onThousand(x, "b"),
        "c", onThousand(x, "c"),
        "d", onThousand(x, "d"));
  }

  private static Quantity onThousand(Example x, String rate) {
    TankJob job = TankJob.start().onArea(q("1000 [sft_i]")).atRate(x.in(rate));
    return TankMix.of(job).product().get();
  }

  private static Quantity triangle(Example x) {
    return LawnArea.triangle(x.in("base"), x.in("height")).area();
  }
}
