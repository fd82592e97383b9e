package plainsward.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds for any quantity; plain cases stand in {@link QuantityTest} and {@link ShownTest}. */
class UnitsPropertiesTest {
  private static final List<List<String>> KINDS =
      List.of(
          List.of("[foz_us]", "[gal_us]", "[tsp_us]", "mL", "L", "[gal_br]", "[foz_br]"),
          List.of("[oz_av]", "[lb_av]", "g", "kg"),
          List.of("[sft_i]", "[acr_us]", "m2", "har", "1000.[sft_i]", "100.m2"),
          List.of("[foz_us]/(1000.[sft_i])", "[gal_us]/[acr_us]", "L/har", "mL/(100.m2)"),
          List.of("%", "[foz_us]/[gal_us]", "mL/L", "1"),
          List.of("Cel", "[degF]"));

  /** A quantity, and two other units of its kind. */
  record Sample(Quantity given, Unit one, Unit other) {}

  @Property
  void convertingThereAndBackIsExact(@ForAll("samples") Sample sample) {
    Quantity there = sample.given().in(sample.one());
    assertEquals(sample.given(), there.in(sample.given().unit()));
    assertEquals(sample.given().in(sample.other()), there.in(sample.other()));
    assertEquals(0, sample.given().compareTo(there));
  }

  @Property
  void theOrderOfAddendsDoesNotMatter(
      @ForAll("ratios") Ratio a, @ForAll("ratios") Ratio b, @ForAll("ratios") Ratio c) {
    assertEquals(a.plus(b).plus(c), c.plus(a).plus(b));
    assertEquals(a.times(b).times(c), c.times(a).times(b));
    assertEquals(a, a.plus(b).minus(b));
    assertEquals(a.times(b.plus(c)), a.times(b).plus(a.times(c)));
  }

  @Property
  void anAmountIsShownWithinItsRoundingAndNeverAboveWhereLimited(@ForAll("ratios") Ratio value) {
    Quantity amount = new Quantity(value, Units.FL_OZ);
    Ratio shown = read(Shown.of(amount));
    Ratio limited = read(Shown.notAbove(amount));
    Ratio enough = read(Shown.notBelow(amount));
    assertTrue(limited.compareTo(value) <= 0);
    assertTrue(enough.compareTo(value) >= 0);
    double off = Math.abs(shown.minus(value).toDouble());
    assertTrue(off <= 0.0051 * Math.abs(value.toDouble()), Shown.of(amount) + " of " + value);
  }

  @Property
  void whatIsMeasuredNeverPassesTheMost(@ForAll("ratios") Ratio value) {
    Ratio size = value.signum() < 0 ? value.negate() : value;
    for (Unit measure : List.of(Units.TEASPOON, Units.TABLESPOON, Units.FL_OZ, Units.MILLILITRE)) {
      Quantity exact = new Quantity(size, Units.FL_OZ);
      Quantity marked = Measures.nearest(exact, measure, exact).amount();
      assertTrue(marked.compareTo(exact) <= 0, marked + " above " + exact);
    }
  }

  private static Ratio read(String shown) {
    String number = shown.substring(0, shown.indexOf(' ')).replace(",", "").replace('−', '-');
    return Ratio.of(number);
  }

  @Provide
  Arbitrary<Ratio> ratios() {
    return Combinators.combine(
            Arbitraries.longs().between(-99_999_999, 99_999_999),
            Arbitraries.longs().between(1, 99_999))
        .as(Ratio::of);
  }

  @Provide
  Arbitrary<Sample> samples() {
    return Arbitraries.of(KINDS)
        .flatMap(
            kind ->
                Combinators.combine(
                        ratios(), Arbitraries.of(kind), Arbitraries.of(kind), Arbitraries.of(kind))
                    .as(
                        (value, a, b, c) ->
                            new Sample(Quantity.of(value, a), Unit.of(b), Unit.of(c))));
  }
}
