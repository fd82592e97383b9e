package plainsward.dosing.published;

import static plainsward.units.Amounts.q;

import java.util.Map;
import plainsward.dosing.ActiveIngredient;
import plainsward.dosing.Coverage;
import plainsward.dosing.Dilution;
import plainsward.dosing.Strength;
import plainsward.dosing.TankJob;
import plainsward.dosing.TankMix;
import plainsward.dosing.Working;
import plainsward.units.Quantity;
import plainsward.units.Unit;
import plainsward.units.Units;

/** The examples on mixing. */
final class MixSums {
  private MixSums() {}

  static void addTo(Sums sums) {
    rates(sums);
    volumes(sums);
    actives(sums);
    tables(sums);
  }

  private static void rates(Sums sums) {
    sums.put("mix-01", x -> Map.of("per_gallon", perGallon(x, "[foz_us]")));
    sums.put(
        "mix-03",
        x ->
            Map.of(
                "pints", perGallon(x, "[pt_us]"),
                "floz", perGallon(x, "[foz_us]"),
                "tbsp", perGallon(x, "[tbs_us]")));
    sums.put(
        "mix-04",
        x -> {
          Quantity load = product(job(x).fromTank(x.in("tank")));
          Quantity metric =
              Working.of("mL", load).times(x.in("ml_per_floz")).as(Units.MILLILITRE).result();
          return Map.of("per_gallon", perGallon(x, "[foz_us]"), "per_load", load, "ml", metric);
        });
    sums.put(
        "mix-07",
        x -> {
          TankMix mix = TankMix.of(job(x).onArea(x.in("area")));
          return Map.of("mix", mix.spray().get(), "product", mix.product().get());
        });
    sums.put("mix-18", x -> Map.of("product", product(job(x).withSpray(x.in("mix")))));
    sums.put(
        "mix-19",
        x ->
            Map.of(
                "spray_1000", x.in("spray_volume").in(Units.GALLON_PER_THOUSAND),
                "rate_1000", x.in("rate").in(Units.FL_OZ_PER_THOUSAND)));
    sums.put(
        "mix-21",
        x -> {
          Quantity all = product(TankJob.start().onArea(x.in("area")).atRate(x.in("rate")));
          return Map.of("pints", all, "gallons", all.in(Units.GALLON));
        });
    sums.put(
        "mix-24",
        x ->
            Map.of(
                "full_acres", Coverage.ofSpray(x.in("full"), x.in("spray_volume")).area(),
                "half_acres", Coverage.ofSpray(x.in("half"), x.in("spray_volume")).area()));
    sums.put(
        "mix-27",
        x -> {
          Quantity ground = x.in("acres_per_gallon").times(q("1 [gal_us]"), Units.ACRE);
          Unit unit = Unit.of("[foz_us]/[acr_us]");
          return Map.of("rate", Coverage.rateOf(q("1 [gal_us]"), ground, unit).result());
        });
  }

  private static void volumes(Sums sums) {
    sums.put("mix-06", x -> Map.of("product", mixed(x, "tank", "percent")));
    sums.put("mix-09", x -> Map.of("product", mixed(x, "tank", "rate")));
    sums.put(
        "mix-10",
        x ->
            Map.of(
                "tank_a_lb", mixed(x, "tank_a", "rate"),
                "tank_b_oz", mixed(x, "tank_b", "rate").in(Units.OUNCE)));
    sums.put(
        "mix-13",
        x -> {
          Dilution mix = Dilution.from(x.in("concentrate"), x.in("final"), x.in("batch"));
          return Map.of("concentrate_gal", mix.product(), "water", mix.water());
        });
    sums.put(
        "mix-25",
        x ->
            Map.of(
                "gal", Dilution.of(x.in("batch"), x.in("percent"), Units.GALLON).product(),
                "floz", Dilution.of(x.in("batch"), x.in("percent")).product()));
    sums.put(
        "mix-28",
        x ->
            Map.of(
                "oz_per_gal", x.in("rate").in(Unit.of("[oz_av]/[gal_us]")),
                "g_per_gal", x.in("rate").in(Unit.of("g/[gal_us]"))));
    sums.put(
        "mix-34",
        x -> Map.of("a", mixed(x, "batch_a", "percent"), "b", mixed(x, "batch_b", "percent")));
  }

  private static void actives(Sums sums) {
    sums.put(
        "mix-12",
        x -> {
          Quantity pints = active(x, "ai_rate", "strength", "[pt_us]/[acr_us]");
          TankJob job = TankJob.start().atRate(pints).atSprayRate(x.in("spray_volume"));
          Quantity tank = product(job.fromTank(x.in("tank")));
          return Map.of(
              "per_acre_gal", active(x, "ai_rate", "strength", "[gal_us]/[acr_us]"),
              "per_acre_pt", pints,
              "acres_per_tank", Coverage.ofSpray(x.in("tank"), x.in("spray_volume")).area(),
              "per_tank_pt", tank,
              "per_tank_gal", tank.in(Units.GALLON));
        });
    sums.put("mix-15", x -> Map.of("dust", active(x, "ai_rate", "strength", "[lb_av]/[acr_us]")));
    sums.put(
        "mix-16",
        x ->
            Map.of(
                "spray",
                ActiveIngredient.liquid(
                        x.in("ai_rate"), x.in("strength"), x.in("density"), Units.GALLON_PER_ACRE)
                    .result()));
    sums.put(
        "mix-22",
        x ->
            Map.of(
                "gal", active(x, "ai_rate", "strength", "[gal_us]/[acr_us]"),
                "qt", active(x, "ai_rate", "strength", "[qt_us]/[acr_us]"),
                "pt", active(x, "ai_rate", "strength", "[pt_us]/[acr_us]")));
    sums.put("err-03", x -> Map.of("pints", active(x, "ai", "strength", "[pt_us]/[acr_us]")));
  }

  private static void tables(Sums sums) {
    sums.put(
        "mix-30",
        x ->
            Map.of(
                "s2_qt", inHundred(x, "ai", "s2", Units.QUART),
                "s4_qt", inHundred(x, "ai", "s4", Units.QUART),
                "wp25_lb", inHundred(x, "ai", "wp25", Units.POUND),
                "wp15_lb", inHundred(x, "ai", "wp15", Units.POUND)));
    sums.put(
        "mix-31",
        x ->
            Map.of(
                "a",
                byWeight(x, "target_a", "strength_a"),
                "b",
                byWeight(x, "target_b", "strength_b")));
    sums.put(
        "mix-33",
        x ->
            Map.of(
                "liq4_ml", active(x, "ai", "liq4", "mL/(1000.[sft_i])"),
                "liq1_ml", active(x, "ai", "liq1", "mL/(1000.[sft_i])"),
                "dry50_g", active(x, "ai", "dry50", "g/(1000.[sft_i])"),
                "dry100_g", active(x, "ai", "dry100", "g/(1000.[sft_i])")));
    sums.put(
        "err-02",
        x ->
            Map.of(
                "a", inHundred(x, "ai_a", "strength", Units.QUART),
                "b", inHundred(x, "ai_b", "strength", Units.QUART)));
  }

  private static TankJob job(Example x) {
    return TankJob.start().atRate(x.in("rate")).atSprayRate(x.in("spray_volume"));
  }

  private static Quantity product(TankJob job) {
    return TankMix.of(job).product().get();
  }

  private static Quantity perGallon(Example x, String measure) {
    Unit unit = Unit.of(measure + "/[gal_us]");
    return Strength.ofRate(x.in("rate"), x.in("spray_volume"), unit).result();
  }

  private static Quantity mixed(Example x, String volume, String strength) {
    return Dilution.of(x.in(volume), x.in(strength)).product();
  }

  private static Quantity active(Example x, String active, String strength, String unit) {
    return ActiveIngredient.product(x.in(active), x.in(strength), Unit.of(unit)).result();
  }

  private static Quantity inHundred(Example x, String active, String strength, Unit unit) {
    Quantity whole = x.in(active).times(q("100 [gal_us]"), Units.POUND);
    return ActiveIngredient.product(whole, x.in(strength), unit).result();
  }

  private static Quantity byWeight(Example x, String target, String strength) {
    Quantity wanted = Strength.weightInVolume(x.in(target));
    Unit unit = Unit.of("[gal_us]/(100.[gal_us])");
    return ActiveIngredient.product(wanted, x.in(strength), unit).result();
  }
}
