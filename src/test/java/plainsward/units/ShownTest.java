package plainsward.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static plainsward.units.Amounts.q;
import static plainsward.units.Amounts.r;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShownTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "6 [foz_us] | 6 fl oz",
        "1.76 [foz_us] | 1.76 fl oz",
        "4000 [sft_i] | 4,000 sq ft",
        "0.8 [gal_us] | 0.8 gal",
        "40/3 [foz_us] | 13.3 fl oz",
        "1.5 [foz_us]/(1000.[sft_i]) | 1.5 fl oz per 1,000 sq ft",
        "2 [gal_us]/[acr_us] | 2 gal per acre",
        "2 [tsp_us]/[gal_us] | 2 tsp per gallon",
        "2 [lb_av]/(100.[gal_us]) | 2 lb per 100 gal",
        "15 mL/L | 15 mL per litre",
        "30 mL/(100.m2) | 30 mL per 100 m²",
        "2.5 L/har | 2.5 L per hectare",
        "0.3 [gal_us]/min | 0.3 gal per minute",
        "6 [foz_us]/[gal_us]/(300.[sft_i]) | 6 fl oz per gallon per 300 sq ft",
        "3 [mi_i]/h | 3 mph",
        "4.5 km/h | 4.5 km/h",
        "3 1000.[sft_i] | 3,000 sq ft",
        "85 [degF] | 85 °F",
        "2 % | 2%",
        "0.25 % | 0.25%",
        "3 1 | 3",
        "7 [oz_av] | 7 oz",
      })
  void quantitiesReadAsPeopleWriteThem(String given, String shown) {
    assertEquals(shown, Shown.of(q(given)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 [acr_us] | 1 acre",
        "0.5 [acr_us] | 0.5 acre",
        "2 [acr_us] | 2 acres",
        "0 [acr_us] | 0 acres",
        "1.125 [acr_us] | 1.125 acres",
        "1 [cup_us] | 1 cup",
        "1.5 [cup_us] | 1.5 cups",
        "1 d | 1 day",
        "21 d | 21 days",
        "-1 [acr_us] | −1 acres",
      })
  void oneIsSingularAndMoreIsPlural(String given, String shown) {
    assertEquals(shown, Shown.of(q(given)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0 | 0",
        "0.0459 | 0.0459",
        "0.00012345 | 0.000123",
        "0.99999 | 1",
        "0.375 | 0.375",
        "0.1 | 0.1",
        "1.125 | 1.125",
        "1.1255 | 1.13",
        "9.999 | 9.999",
        "9.9999 | 10",
        "10 | 10",
        "12.75 | 12.75",
        "12.755 | 12.8",
        "99.96 | 99.96",
        "99.961 | 100",
        "130.68 | 130.68",
        "1000/7 | 143",
        "217.8 | 217.8",
        "999.99 | 999.99",
        "999.999 | 1,000",
        "1000.4 | 1,000",
        "1000.5 | 1,001",
        "4356 | 4,356",
        "1234567.6 | 1,234,568",
        "1e20 | 100,000,000,000,000,000,000",
        "-3.5 | −3.5",
        "-0.0004 | −0.0004",
        "-1234.5 | −1,235",
      })
  void numbersKeepThreeDigitsAndShortDecimals(String given, String shown) {
    assertEquals(shown, Shown.number(r(given)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.11363 USD/(1000.[sft_i]) | $0.11 per 1,000 sq ft",
        "12 USD | $12",
        "3.5 USD | $3.50",
        "0.1 USD | $0.10",
        "0.05 USD | $0.05",
        "0.0568 USD | $0.057",
        "0.004321 USD | $0.0043",
        "1234.5 USD | $1,234.50",
        "-0.5 USD | −$0.50",
        "17.876 USD/[acr_us] | $17.88 per acre",
        "2.5 EUR/(100.m2) | €2.50 per 100 m²",
        "2.5 CAD | C$2.50",
        "2.5 GBP | £2.50",
        "0 USD | $0",
      })
  void moneyLeadsWithItsSignAndHasCents(String given, String shown) {
    assertEquals(shown, Shown.of(q(given)));
  }

  @Test
  void anAmountIsNeverShownAboveItsExactValueWhereALabelLimitsIt() {
    assertEquals("6.66 fl oz", Shown.notAbove(q("20/3 [foz_us]")));
    assertEquals("6.67 fl oz", Shown.of(q("20/3 [foz_us]")));
    assertEquals("1.5 fl oz per 1,000 sq ft", Shown.notAbove(q("1.5 [foz_us]/(1000.[sft_i])")));
    assertEquals("999 fl oz", Shown.notAbove(q("999.999 [foz_us]")));
    assertEquals("6.67 fl oz", Shown.notBelow(q("20/3 [foz_us]")));
    assertEquals("6.67 fl oz", Shown.notBelow(q("6.661 [foz_us]").plus(q("0.0001 [foz_us]"))));
  }

  @Test
  void aRangeNamesItsUnitOnceAndIsNeverShownAboveItsTop() {
    assertEquals("1.2 to 1.8 fl oz", Shown.range(q("1.2 [foz_us]"), q("1.8 [foz_us]")));
    assertEquals("1 to 6.66 fl oz", Shown.range(q("1 [foz_us]"), q("20/3 [foz_us]")));
    assertEquals("64 to 128 fl oz", Shown.range(q("64 [foz_us]"), q("1 [gal_us]")));
    assertEquals("2 fl oz", Shown.range(q("2 [foz_us]"), q("2 [foz_us]")));
    assertEquals("$1 to $2.50", Shown.range(q("1 USD"), q("2.5 USD")));
  }

  @Test
  void theComputersLanguageDoesNotChangeIt() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertEquals("4,356 sq ft", Shown.of(q("4356 [sft_i]")));
      assertEquals("1.76 fl oz", Shown.of(q("1.76 [foz_us]")));
      Locale.setDefault(Locale.forLanguageTag("ar-SA-u-nu-arab"));
      assertEquals("4,356 sq ft", Shown.of(q("4356 [sft_i]")));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void everyUnitHasItsWord() {
    for (String code : Atoms.codes()) {
      String shown = Shown.of(new Quantity(Ratio.of(2), Unit.of(code)));
      assertEquals(-1, shown.indexOf('['), code + " shown as " + shown);
    }
  }
}
