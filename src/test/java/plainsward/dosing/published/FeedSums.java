package plainsward.dosing.published;

import static plainsward.units.Amounts.q;

import java.util.Map;
import plainsward.dosing.Cost;
import plainsward.dosing.Nitrogen;
import plainsward.dosing.Nutrient;
import plainsward.dosing.Spreader;
import plainsward.units.Quantity;
import plainsward.units.Unit;
import plainsward.units.Units;

/** The examples on feeding, spreading and cost. */
final class FeedSums {
  private FeedSums() {}

  static void addTo(Sums sums) {
    feeding(sums);
    nutrients(sums);
    spreading(sums);
    costs(sums);
  }

  private static void feeding(Sums sums) {
    sums.put("fert-01", FeedSums::perThousandAndTotal);
    sums.put("fert-03", FeedSums::perThousandAndTotal);
    sums.put(
        "fert-04",
        x -> {
          Nitrogen feed = feed(x, "n").on(x.in("area"));
          return Map.of("per1000", feed.productRate(), "bags", feed.bags(x.in("bag")).result());
        });
    sums.put("fert-09", x -> Map.of("a", onThousand(x, "a"), "b", onThousand(x, "b")));
    sums.put("fert-10", x -> Map.of("per1000", feed(x, "n").productRate()));
    sums.put("gran-06", x -> Map.of("rate", feed(x, "n").productRate()));
  }

  private static void nutrients(Sums sums) {
    sums.put(
        "fert-06",
        x ->
            Map.of(
                "P", Nutrient.element(x.in("p2o5"), x.number("fp")).result(),
                "K", Nutrient.element(x.in("k2o"), x.number("fk")).result()));
    sums.put(
        "fert-07",
        x -> Map.of("product", Nutrient.productFor(x.in("k2o"), x.in("analysis")).result()));
    sums.put(
        "err-07",
        x ->
            Map.of(
                "n", Nutrient.perVolume(x.in("density"), x.in("n")).result(),
                "p", Nutrient.perVolume(x.in("density"), x.in("p")).result(),
                "k", Nutrient.perVolume(x.in("density"), x.in("k")).result()));
  }

  private static void spreading(Sums sums) {
    sums.put(
        "gran-01",
        x -> {
          Quantity rate = Spreader.rate(x.in("dropped"), x.in("strip")).result();
          return Map.of("per100", rate.in(Unit.of("[lb_av]/(100.[sft_i])")), "per1000", rate);
        });
    sums.put(
        "gran-03",
        x -> Map.of("length", Spreader.course(q("1000 [sft_i]"), x.in("swath")).result()));
    sums.put(
        "gran-04",
        x -> Map.of("weight", Spreader.testWeight(x.in("rate"), x.in("strip")).result()));
  }

  private static void costs(Sums sums) {
    sums.put("cost-01", x -> Map.of("per_lb_N", perPound(x.in("price"), x.in("bag"), x.in("n"))));
    sums.put(
        "cost-03",
        x -> {
          Quantity rate = Nitrogen.toReach(q("1 [lb_av]/(1000.[sft_i])"), x.in("n")).productRate();
          return Map.of("cost", perAcre(Cost.of(x.in("price"), x.in("bag"), rate)));
        });
    sums.put(
        "cost-04",
        x -> {
          Quantity price = x.in("per_lb_N").times(q("1 [lb_av]"), Units.DOLLAR);
          return Map.of("cost", perAcre(Cost.of(price, q("1 [lb_av]"), x.in("n_rate"))));
        });
    sums.put(
        "cost-06",
        x -> {
          Quantity price = x.in("price").times(q("50 [lb_av]"), Units.DOLLAR);
          return Map.of(
              "at_2pct", perPound(price, q("50 [lb_av]"), x.in("n_high")),
              "at_1pct", perPound(price, q("50 [lb_av]"), x.in("n_low")));
        });
    sums.put(
        "err-08",
        x -> Map.of("per_oz", Cost.each(x.in("price"), x.in("volume"), Units.FL_OZ).result()));
  }

  private static Nitrogen feed(Example x, String part) {
    return Nitrogen.toReach(x.in("n_rate"), x.in(part));
  }

  private static Map<String, Object> perThousandAndTotal(Example x) {
    Nitrogen feed = feed(x, "n").on(x.in("area"));
    return Map.of("per1000", feed.productRate(), "total", feed.product().get());
  }

  private static Quantity onThousand(Example x, String part) {
    Nitrogen feed = Nitrogen.toReach(x.in("n_total"), x.in(part));
    return feed.on(q("1000 [sft_i]")).product().get();
  }

  private static Quantity perPound(Quantity price, Quantity bag, Quantity part) {
    return Cost.eachOfNutrient(price, bag, part, Units.POUND).result();
  }

  private static Quantity perAcre(Cost cost) {
    return cost.rate().in(Unit.of("USD/[acr_us]"));
  }
}
