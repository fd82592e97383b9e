package plainsward.dosing.published;

import static plainsward.units.Amounts.q;

import java.util.List;
import java.util.Map;
import plainsward.dosing.Calibration;
import plainsward.dosing.Catches;
import plainsward.dosing.LawnArea;
import plainsward.dosing.Nozzle;
import plainsward.dosing.WalkSpeed;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.Units;

/** The examples on calibrating. */
final class SprayerSums {
  private static final Unit GALLON_PER_MINUTE = Unit.of("[gal_us]/min");

  private SprayerSums() {}

  static void addTo(Sums sums) {
    onGround(sums);
    courses(sums);
    walking(sums);
    nozzles(sums);
  }

  private static void onGround(Sums sums) {
    sums.put("cal-01", x -> Map.of("gpa", gallons(x.in("caught"), x.in("side"), x.in("side"))));
    sums.put("cal-12", x -> Map.of("gpa", gallons(x.in("used"), x.in("course"), x.in("swath"))));
    sums.put("cal-13", x -> Map.of("gpa", x.in("used").in(Units.GALLON_PER_ACRE)));
    sums.put("cal-15", x -> Map.of("gpa", gallons(x.in("caught"), x.in("course"), x.in("band"))));
    sums.put("cal-16", x -> Map.of("gpa", gallons(x.in("caught"), x.in("course"), x.in("band"))));
    sums.put(
        "err-06", x -> Map.of("gpa", gallons(x.in("caught"), x.in("course"), x.in("spacing"))));
    sums.put(
        "err-05",
        x -> {
          Quantity square = LawnArea.rectangle(x.in("side"), x.in("side")).area();
          return Map.of("denominator", LawnArea.piecesInAcre(square).result().value());
        });
    sums.put(
        "cal-10",
        x -> {
          Quantity part = x.in("fraction");
          return Map.of(
              "full_acre_length", course(q("1 [acr_us]"), x.in("swath")),
              "course", course(part, x.in("swath")),
              "gpa", Calibration.onArea(x.in("refill"), part, Units.GALLON_PER_ACRE).result());
        });
  }

  private static void courses(Sums sums) {
    sums.put(
        "cal-03",
        x ->
            Map.of(
                "w20", acrePart(x, "w20"),
                "w30", acrePart(x, "w30"),
                "w18", acrePart(x, "w18"),
                "w14", acrePart(x, "w14"),
                "w10", acrePart(x, "w10")));
    sums.put("cal-04", x -> Map.of("length", acrePart(x, "swath")));
    sums.put(
        "cal-18",
        x -> Map.of("length", course(Calibration.ACRE_PART.times(Ratio.of(10)), x.in("swath"))));
  }

  private static void walking(Sums sums) {
    sums.put(
        "cal-19",
        x ->
            Map.of(
                "t3", WalkSpeed.timeFor(x.in("course"), x.in("v3"), Units.SECOND).result(),
                "t2", WalkSpeed.timeFor(x.in("course"), x.in("v2"), Units.SECOND).result()));
    sums.put(
        "cal-21",
        x -> {
          Quantity speed = x.in("distance");
          Unit unit = Unit.of("m2/min");
          return Map.of(
              "area", WalkSpeed.ground(speed, x.in("swath"), unit).result(),
              "rate",
                  Calibration.atSpeed(x.in("flow"), speed, x.in("swath"), Units.LITRE_PER_HECTARE)
                      .result());
        });
    sums.put(
        "cal-22",
        x -> {
          Quantity way = x.in("length");
          return Map.of(
              "area", WalkSpeed.ground(way, x.in("swath"), Units.SQUARE_METRE).result(),
              "speed_ms", WalkSpeed.of(way, x.in("time"), Unit.of("m/s")).result(),
              "speed_kmh", WalkSpeed.of(way, x.in("time"), Unit.of("km/h")).result());
        });
  }

  private static void nozzles(Sums sums) {
    sums.put("cal-06", x -> Map.of("gpm", flow(x)));
    sums.put("cal-09", x -> Map.of("gpm", flow(x)));
    sums.put(
        "cal-07",
        x ->
            Map.of(
                "mph",
                Calibration.speedFor(x.in("gpa"), x.in("gpm"), x.in("swath"), Units.MILE_PER_HOUR)
                    .result()));
    sums.put("err-01", x -> Map.of("gpa", atSpeed(x.in("flow"), x.in("speed"), x.in("spacing"))));
    sums.put(
        "cal-27",
        x -> {
          Quantity perFoot = atSpeed(q("1 [gal_us]/min"), q("1 [mi_i]/h"), q("1 [ft_i]"));
          return Map.of("k_feet", perFoot.value());
        });
    sums.put(
        "cal-24",
        x -> {
          Ratio window = x.in("window").inBase();
          Catches catches = Catches.of(List.of(x.in("mean")), window);
          return Map.of("low", catches.low(), "high", catches.high());
        });
    sums.put(
        "cal-25",
        x -> Map.of("pressure_ratio", Nozzle.pressureTimes(x.number("flow_ratio")).result()));
  }

  private static Quantity gallons(Quantity volume, Quantity length, Quantity width) {
    Quantity ground = LawnArea.rectangle(length, width).area();
    return Calibration.onArea(volume, ground, Units.GALLON_PER_ACRE).result();
  }

  private static Quantity course(Quantity area, Quantity swath) {
    return Calibration.course(area, swath, Units.FOOT).result();
  }

  private static Quantity acrePart(Example x, String width) {
    return Calibration.acrePartCourse(x.in(width)).result();
  }

  private static Quantity flow(Example x) {
    return Calibration.flowFor(x.in("gpa"), x.in("speed"), x.in("spacing"), GALLON_PER_MINUTE)
        .result();
  }

  private static Quantity atSpeed(Quantity flow, Quantity speed, Quantity swath) {
    return Calibration.atSpeed(flow, speed, swath, Units.GALLON_PER_ACRE).result();
  }
}
