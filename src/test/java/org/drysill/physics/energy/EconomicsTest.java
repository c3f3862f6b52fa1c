package org.drysill.physics.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class EconomicsTest {
  @ParameterizedTest(name = "{0} at {1} over {2} years is {3} ({5})")
  @CsvFileSource(resources = "/reference/discount_factors.csv", numLinesToSkip = 1)
  void a_discount_factor_is_as_tabled(
      String factor, double rate, double years, double expected, double tolerance, String source) {
    double found =
        switch (factor) {
          case "present_value_of_annuity" -> PresentValue.annuityPresentValueFactor(rate, years);
          case "discount" -> PresentValue.discountFactor(rate, years);
          default -> throw new AssertionError(factor + " of " + source);
        };
    assertThat(found).isCloseTo(expected, within(tolerance));
  }

  /** EN 15459-1 form with 3.5 % over 30 years; own case, derived by hand. */
  @Test
  void a_fan_is_bought_twice_in_thirty_years() {
    GlobalCost fan = new GlobalCost(350, 15, 30, 0.035);
    assertThat(fan.replacements()).isOne();
    assertThat(fan.purchases()).isCloseTo(558.91, within(0.01));
    assertThat(fan.finalValue()).isZero();
    assertThat(fan.total(10 + 12 * 0.2769)).isCloseTo(803.95, within(0.02));
  }

  /** The second own case: half of the second life is left at the end and is worth something. */
  @Test
  void what_outlives_the_horizon_has_a_final_value() {
    GlobalCost system = new GlobalCost(4500, 20, 30, 0.035);
    assertThat(system.purchases()).isCloseTo(6761.55, within(0.3));
    assertThat(system.finalValue()).isCloseTo(2250, within(1e-9));
    assertThat(system.total(0)).isCloseTo(5959.92, within(0.3));
  }

  @Test
  void one_purchase_suffices_where_life_covers_the_horizon() {
    GlobalCost insulation = new GlobalCost(1000, 40, 30, 0);
    assertThat(insulation.replacements()).isZero();
    assertThat(insulation.total(0)).isCloseTo(750, within(1e-9));
    assertThat(insulation.perYear(0)).isCloseTo(25, within(1e-9));
  }

  @Test
  void a_yearly_saving_lowers_the_global_cost() {
    GlobalCost measure = new GlobalCost(1000, 10, 10, 0.03);
    assertThat(measure.total(-117.23)).isCloseTo(0, within(0.05));
  }

  /** Annuity factor as reciprocal; without discounting it is 1/n. */
  @Test
  void the_annuity_repays() {
    assertThat(PresentValue.annuityFactor(0, 20)).isEqualTo(0.05);
    assertThat(PresentValue.annuityFactor(0.03, 20)).isCloseTo(1 / 14.8775, within(1e-6));
  }

  /** Fisher: 5 % on the market and 2 % inflation is 2.94 % real. */
  @Test
  void inflation_is_taken_out_of_the_market_rate() {
    assertThat(PresentValue.realRate(0.05, 0.02)).isCloseTo(0.0294118, within(1e-7));
  }

  /** UPW* of the NIST handbook: n where growth equals the rate; below that the sum of its terms. */
  @Test
  void growing_prices_weigh_more() {
    assertThat(PresentValue.growingPresentValueFactor(0.03, 0.03, 20)).isEqualTo(20);
    double sum = 0;
    for (int year = 1; year <= 20; year++) {
      sum += Math.pow(1.02 / 1.035, year);
    }
    assertThat(PresentValue.growingPresentValueFactor(0.035, 0.02, 20))
        .isCloseTo(sum, within(1e-9));
  }

  @Test
  void rates_close_to_each_other_lose_no_digits() {
    assertThat(PresentValue.annuityPresentValueFactor(1e-12, 30)).isCloseTo(30, within(1e-8));
    assertThat(PresentValue.growingPresentValueFactor(0.03, 0.03 + 1e-13, 30))
        .isCloseTo(30, within(1e-8));
  }

  @ParameterizedTest
  @CsvSource({"1000, 100, 10", "0, 0, 0", "-50, -5, 0"})
  void payback_is_cost_by_saving(double cost, double saving, double years) {
    assertThat(Payback.years(cost, saving)).hasValue(years);
  }

  @ParameterizedTest
  @CsvSource({"1000, 0", "1000, -20", "1e300, 1e-300"})
  void without_a_saving_it_is_never_paid(double cost, double saving) {
    assertThat(Payback.years(cost, saving)).isEmpty();
  }

  @Test
  void a_percentage_taken_for_a_rate_is_refused() {
    assertThatThrownBy(() -> PresentValue.discountFactor(3.5, 10))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("yearly rate")
        .hasMessageContaining("3.5");
    assertThatThrownBy(() -> new GlobalCost(10, 5, 30, -1))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
