package org.drysill.reference.prices;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.stream.Stream;
import org.drysill.survey.Fuel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PriceDefaultsTest {
  static Stream<Fuel> fuels() {
    return Arrays.stream(Fuel.values());
  }

  @ParameterizedTest
  @MethodSource("fuels")
  void every_fuel_of_a_survey_has_a_price_a_carbon_factor_and_an_efficiency(Fuel fuel) {
    assertThat(MoneyDefaults.read().heatingEfficiency(fuel.word())).isPresent();
    assertThat(PriceDefaults.all())
        .hasSizeGreaterThan(2)
        .allSatisfy(p -> assertThat(p.energyPrice(fuel.word())).isPresent())
        .allSatisfy(p -> assertThat(p.carbonDioxide(fuel.word())).isPresent());
  }

  /** Default tariff cap of Great Britain, January to March 2026: 27.69 and 5.93 p/kWh (seen). */
  @Test
  void the_british_tariff_is_the_one_of_its_date() {
    PriceDefaults british = PriceDefaults.of("GBP").orElseThrow();
    assertThat(british.electricity().orElseThrow().value().value()).isEqualTo(0.2769);
    assertThat(british.energyPrice("mains gas").orElseThrow().value().value()).isEqualTo(0.0593);
    assertThat(british.from()).hasToString("2026-01-01");
  }

  @Test
  void a_currency_without_published_prices_has_none() {
    assertThat(PriceDefaults.of("XXX")).isEmpty();
  }
}
