package plainsward.dosing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static plainsward.dosing.Refused.refused;
import static plainsward.units.Amounts.q;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainsward.dosing.NotDosable.Why;
import plainsward.units.Units;

class DilutionTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2 [gal_us] | 4 [tsp_us]/[gal_us] | 8 [tsp_us]",
        "2 [gal_us] | 2 % | 5.12 [foz_us]",
        "1 [qt_us] | 1 % | 0.32 [foz_us]",
        "10 L | 2 % | 200 mL",
        "5 [gal_br] | 1 % | 8 [foz_br]",
        "50 [gal_us] | 2 [lb_av]/(100.[gal_us]) | 1 [lb_av]",
        "10 L | 40 g/(10.L) | 40 g",
        "10 L | 15 mL/L | 150 mL",
      })
  void productComesInTheStrengthsOwnMeasure(String volume, String strength, String product) {
    assertEquals(q(product), Dilution.of(q(volume), q(strength)).product());
  }

  @Test
  void waterIsTheRestForLiquidsAndTheWholeForDryOnes() {
    assertEquals(q("9.8 L"), Dilution.of(q("10 L"), q("2 %")).water());
    assertEquals(q("10 L"), Dilution.of(q("10 L"), q("4 g/L")).water());
    assertEquals(q("10 L"), Dilution.of(q("10 L"), q("4 g/L")).volume());
  }

  @Test
  void anyMeasureMayBeAskedFor() {
    Dilution mix = Dilution.of(q("2 [gal_us]"), q("2 %"), Units.TABLESPOON);
    assertEquals(q("10.24 [tbs_us]"), mix.product());
    assertEquals("2% × 2 gal = 10.24 tbsp", mix.steps().get(0).line());
  }

  @Test
  void aWeakerMixComesOutOfAStrongerOne() {
    Dilution mix = Dilution.from(q("48 %"), q("1 %"), q("48 [gal_us]"));
    assertEquals(q("1 [gal_us]"), mix.product());
    assertEquals(q("47 [gal_us]"), mix.water());
    assertEquals(q("10 L"), Dilution.from(q("5 %"), q("5 %"), q("10 L")).product());
    refused("strength", Why.TOO_LARGE, () -> Dilution.from(q("1 %"), q("2 %"), q("1 L")));
    refused("strength", Why.WRONG_KIND, () -> Dilution.from(q("1 %"), q("2 g/L"), q("1 L")));
    refused("strength", Why.NOT_ABOVE_ZERO, () -> Dilution.from(q("1 %"), q("0 %"), q("1 L")));
    refused("strength", Why.NOT_ABOVE_ZERO, () -> Dilution.from(q("0 %"), q("1 %"), q("1 L")));
    refused("spray_volume", Why.NOT_ABOVE_ZERO, () -> Dilution.from(q("2 %"), q("1 %"), q("0 L")));
  }

  @Test
  void anAmountOfProductMakesSoMuchMix() {
    Dilution mix = Dilution.using(q("32 [foz_us]"), q("1 [foz_us]/[gal_us]"), Units.GALLON);
    assertEquals(q("32 [gal_us]"), mix.volume());
    assertEquals(q("31.75 [gal_us]"), mix.water());
    assertEquals(q("32 [foz_us]"), mix.product());
    refused("product", Why.NOT_ABOVE_ZERO, () -> Dilution.using(q("0 L"), q("1 %"), Units.LITRE));
    refused("strength", Why.NOT_ABOVE_ZERO, () -> Dilution.using(q("1 L"), q("0 %"), Units.LITRE));
  }

  @Test
  void senselessVolumesAndStrengthsAreRefused() {
    refused("spray_volume", Why.NOT_ABOVE_ZERO, () -> Dilution.of(q("0 L"), q("1 %")));
    refused("strength", Why.NOT_ABOVE_ZERO, () -> Dilution.of(q("1 L"), q("0 %")));
  }
}
