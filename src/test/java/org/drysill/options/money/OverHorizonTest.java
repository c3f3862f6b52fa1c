package org.drysill.options.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.drysill.assess.Figure;
import org.drysill.assess.HomeFixtures;
import org.drysill.assess.MoneyFacts;
import org.drysill.assess.Unit;
import org.drysill.options.CostParts;
import org.drysill.options.effect.Figures;
import org.drysill.physics.Range;
import org.junit.jupiter.api.Test;

class OverHorizonTest {
  private static final Figures FIGURES = new Figures("test");

  private static MoneyFacts money(double rate) {
    MoneyFacts plain = HomeFixtures.money();
    return new MoneyFacts(
        plain.currency(),
        plain.electricity(),
        plain.heat(),
        plain.heatingEfficiency(),
        HomeFixtures.figure("rate", Range.exactly(rate), Unit.PERCENT),
        plain.horizon());
  }

  private static OverHorizon horizon(MoneyFacts money, int life, Range first, Range running) {
    return new OverHorizon(
        money,
        life,
        figure("first", first, Unit.MONEY),
        figure("run", running, Unit.MONEY_PER_YEAR));
  }

  private static Figure figure(String id, Range value, Unit unit) {
    return FIGURES.of(id, id, value, unit, "own case", List.of(), List.of());
  }

  private static OverHorizon fan(double rate, double first, double running) {
    return horizon(money(rate), 12, Range.exactly(first), Range.exactly(running));
  }

  /**
   * EN 15459-1:2017 (memory) in the form Cg = CI (1 + Σ d) + Ca f − V d, worked by hand. A fan of
   * 450 that lasts 12 years and costs 30 a year, 20 years at 3.5 %:
   *
   * <pre>
   * d(12) = 1.035^−12 = 0.66178        bought twice: 450 · 1.66178      = 747.80
   * f(20) = (1 − 1.035^−20)/0.035      = (1 − 0.50257)/0.035 = 14.2124
   *                                    30 a year: 30 · 14.2124           = 426.37
   * d(20) = 0.50257                    8 of 12 years of the second are lived:
   *                                    V = 450 · 4/12 = 150; 150 · 0.50257 = 75.38
   * Cg = 747.80 + 426.37 − 75.38       = 1098.79
   * a(20) = 1/14.2124 = 0.070361       yearly 1098.79 · 0.070361         = 77.31
   * </pre>
   */
  @Test
  void a_fan_bought_twice_in_twenty_years() {
    OverHorizon fan = fan(0.035, 450, 30);
    assertThat(fan.globalCost(FIGURES).likely()).isCloseTo(1098.79, within(0.02));
    assertThat(fan.annualCost(FIGURES).likely()).isCloseTo(77.31, within(0.01));
  }

  /** The same fan by its parts: 10 a year for upkeep, 15 for electricity, 5 for heat. */
  @Test
  void its_parts_are_the_terms_of_the_sum() {
    CostParts parts = fan(0.035, 450, 30).parts(10, 15, 5);
    assertThat(parts.firstCost()).isEqualTo(450);
    assertThat(parts.replacements()).isCloseTo(297.80, within(0.01));
    assertThat(parts.upkeep()).isCloseTo(142.12, within(0.01));
    assertThat(parts.electricity()).isCloseTo(213.19, within(0.01));
    assertThat(parts.heat()).isCloseTo(71.06, within(0.01));
    assertThat(parts.residualValue()).isCloseTo(-75.38, within(0.01));
    assertThat(parts.total())
        .isCloseTo(fan(0.035, 450, 30).globalCost(FIGURES).likely(), within(1e-9));
  }

  /** Without discounting: 450 · 2 + 30 · 20 − 150 = 1350, and 67.50 a year. */
  @Test
  void without_discounting_it_is_plain_addition() {
    assertThat(fan(0, 450, 30).globalCost(FIGURES).likely()).isCloseTo(1350, within(1e-9));
    assertThat(fan(0, 450, 30).annualCost(FIGURES).likely()).isCloseTo(67.5, within(1e-9));
  }

  /**
   * Of 60 years 40 are left after 20: V = 2/3 of the price, worth 0.95^−20 = 2.79 times as much.
   */
  @Test
  void below_a_rate_of_0_the_dearer_may_cost_less() {
    OverHorizon range = horizon(money(-0.05), 60, new Range(300, 450, 900), Range.exactly(0));
    double factor = 1 - 2 / 3.0 * Math.pow(0.95, -20);
    assertThat(factor).isNegative();
    Range cost = range.globalCost(FIGURES).value();
    assertThat(cost.low()).isCloseTo(900 * factor, within(1e-9));
    assertThat(cost.likely()).isCloseTo(450 * factor, within(1e-9));
    assertThat(cost.high()).isCloseTo(300 * factor, within(1e-9));
    assertThat(range.annualCost(FIGURES).value().low()).isLessThan(0);
  }

  @Test
  void ends_pair_low_with_low_and_high_with_high() {
    OverHorizon range = horizon(money(0.035), 12, new Range(300, 450, 900), new Range(20, 30, 50));
    assertThat(range.globalCost(FIGURES).value().low())
        .isEqualTo(fan(0.035, 300, 20).globalCost(FIGURES).likely());
    assertThat(range.globalCost(FIGURES).value().high())
        .isEqualTo(fan(0.035, 900, 50).globalCost(FIGURES).likely());
  }

  @Property
  void more_discount_never_raises_the_present_worth_of_later_costs(
      @ForAll @DoubleRange(max = 0.1) double rate,
      @ForAll @DoubleRange(max = 0.1) double more,
      @ForAll @DoubleRange(max = 500) double yearly) {
    double low = fan(rate, 0, yearly).globalCost(FIGURES).likely();
    double high = fan(rate + more, 0, yearly).globalCost(FIGURES).likely();
    assertThat(high).isLessThanOrEqualTo(low + 1e-9);
  }

  @Property
  void what_is_dearer_to_buy_or_to_run_is_dearer_over_the_horizon(
      @ForAll @DoubleRange(max = 5000) double first,
      @ForAll @DoubleRange(min = 1, max = 5000) double dearer,
      @ForAll @DoubleRange(min = -300, max = 300) double yearly,
      @ForAll @DoubleRange(min = 1, max = 300) double more,
      @ForAll @IntRange(min = 1, max = 60) int life) {
    OverHorizon cheap = horizon(money(0.035), life, Range.exactly(first), Range.exactly(yearly));
    OverHorizon toBuy =
        horizon(money(0.035), life, Range.exactly(first + dearer), Range.exactly(yearly));
    OverHorizon toRun =
        horizon(money(0.035), life, Range.exactly(first), Range.exactly(yearly + more));
    double cost = cheap.annualCost(FIGURES).likely();
    assertThat(toBuy.annualCost(FIGURES).likely()).isGreaterThan(cost);
    assertThat(toRun.annualCost(FIGURES).likely()).isGreaterThan(cost);
  }
}
