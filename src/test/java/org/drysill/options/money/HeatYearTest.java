package org.drysill.options.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.regex.Pattern;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Home;
import org.drysill.physics.Range;
import org.drysill.physics.energy.DegreeDays.Month;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Heat of what is added to the losses of a home, against a monthly balance of the whole home. */
class HeatYearTest {
  private static final double DAY_KWH = 0.024;

  /**
   * Free heat of a home of 84 m² by month [W]: 450 W of people and appliances, and sun through its
   * windows, from 120 W in December to 950 W in June (made up, of the size that SAP reckons with).
   */
  private static final List<Double> FREE =
      List.of(
          600.0, 750.0, 950.0, 1200.0, 1350.0, 1400.0, 1350.0, 1250.0, 1050.0, 830.0, 650.0, 570.0);

  private static final Range GAINS = OptionsFixtures.basis().defaults().gains().range();

  private static Home home(double indoor) {
    return OptionsFixtures.assess(
            Pattern.compile("climate: \\{monthly[^\n]*")
                .matcher(OptionsFixtures.text("small-flat"))
                .replaceFirst("climate: uk-midlands")
                .replaceFirst("setpoint: [0-9.]+ C", "setpoint: " + indoor + " C"))
        .home();
  }

  private static List<Month> months(Home home) {
    return home.climate().months().stream().map(m -> new Month(m.temperature(), m.days())).toList();
  }

  /**
   * Heat that a home needs in a year [K·d times W/K] by the monthly method of EN ISO 13790
   * (memory): Q = L − η G, η = (1 − γ^a)/(1 − γ^(a+1)), a/(a + 1) at 1, γ = G/L, a = 1 + τ/15 h, of
   * 200 kJ/(K·m²) on 84 m².
   */
  private static double needs(List<Month> months, double lossWK, double indoor, double mass) {
    double a = 1 + 84 * 200_000 / mass / 3600 / 15;
    double sum = 0;
    for (int m = 0; m < months.size(); m++) {
      double loss = lossWK * (indoor - months.get(m).meanCelsius());
      double ratio = FREE.get(m) / loss;
      double used =
          Math.abs(ratio - 1) < 1e-9
              ? a / (a + 1)
              : (1 - Math.pow(ratio, a)) / (1 - Math.pow(ratio, a + 1));
      sum += Math.max(0, loss - used * FREE.get(m)) * months.get(m).days();
    }
    return sum;
  }

  private static double added(Home home, double lossWK) {
    double indoor = home.setpoint().likely();
    List<Month> months = months(home);
    return needs(months, lossWK + 1, indoor, lossWK) - needs(months, lossWK, indoor, lossWK);
  }

  private static Range degreeDays(Home home) {
    return new HeatYear(home, GAINS)
        .perWattPerKelvin()
        .times(home.money().heatingEfficiency().value().likely() / DAY_KWH);
  }

  /** A balance temperature 3 K below, up to which alone all were warmed, had 2207 K·d here. */
  @Test
  void an_ordinary_home_takes_for_one_watt_more_what_its_monthly_balance_takes() {
    Home home = home(19);
    assertThat(added(home, 200)).isCloseTo(2835, within(1.0));
    assertThat(degreeDays(home).likely()).isCloseTo(2840.2, within(0.1));
  }

  @ParameterizedTest
  @CsvSource({"18, 200", "19, 200", "20, 200"})
  void it_is_within_five_hundredths_of_the_balance_whatever_it_is_kept_at(
      double indoor, double lossWK) {
    Home home = home(indoor);
    assertThat(degreeDays(home).likely() / added(home, lossWK)).isBetween(0.95, 1.05);
  }

  @ParameterizedTest
  @CsvSource({"19, 120", "19, 300"})
  void homes_that_lose_little_or_much_lie_within_its_range(double indoor, double lossWK) {
    Home home = home(indoor);
    assertThat(added(home, lossWK)).isBetween(degreeDays(home).low(), degreeDays(home).high());
  }

  /** October to May have 243 days. */
  @Test
  void heating_runs_from_october_to_may() {
    assertThat(new HeatYear(home(19), GAINS).heatedHours()).isEqualTo(243 * 24.0);
  }
}
