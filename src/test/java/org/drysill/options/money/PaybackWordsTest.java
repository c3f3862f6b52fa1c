package org.drysill.options.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.drysill.options.Payback;
import org.drysill.options.Payback.Kind;
import org.drysill.options.effect.Figures;
import org.drysill.physics.Range;
import org.drysill.reference.measures.OptionDefaults;
import org.junit.jupiter.api.Test;

class PaybackWordsTest {
  private static final PaybackWords WORDS = new PaybackWords(OptionDefaults.read(), "GBP");
  private static final Figures FIGURES = new Figures("test");

  private static Payback of(Range extra, Range saving, int life) {
    return WORDS.of(FIGURES, "payback", "doing nothing", extra, saving, life);
  }

  private static Payback of(double extra, double saving) {
    return of(Range.exactly(extra), Range.exactly(saving), 30);
  }

  @Test
  void a_first_cost_that_savings_repay_has_years() {
    Payback payback = of(600, 40);
    assertThat(payback.kind()).isEqualTo(Kind.YEARS);
    assertThat(payback.years().orElseThrow().likely()).isCloseTo(15, within(1e-9));
    assertThat(payback.words())
        .isEqualTo("Against doing nothing it pays for itself after 15 years.");
  }

  @Test
  void parts_of_a_year_are_rounded_up_and_less_than_one_is_said() {
    assertThat(of(610, 40).words()).contains("after 16 years");
    assertThat(of(10, 40).words()).contains("less than a year");
  }

  @Test
  void a_range_is_told_with_both_ends() {
    Payback payback = of(new Range(300, 600, 900), new Range(30, 40, 60), 30);
    assertThat(payback.words()).contains("15 years (5 to 30)");
    assertThat(payback.years().orElseThrow().value()).isEqualTo(new Range(5, 15, 30));
  }

  @Test
  void a_worst_end_without_saving_is_never() {
    Payback payback = of(new Range(300, 600, 900), new Range(-5, 40, 60), 30);
    assertThat(payback.words()).contains("(at best 5, at worst never)");
    assertThat(payback.years().orElseThrow().value()).isEqualTo(new Range(5, 15, 15));
  }

  @Test
  void what_wears_out_before_it_has_paid_never_pays_in_its_own_life() {
    assertThat(of(Range.exactly(500), Range.exactly(20), 15).words())
        .isEqualTo(
            "Against doing nothing it pays for itself after 25 years, but it lasts about 15 years:"
                + " in its own life, never.");
  }

  @Test
  void about_a_century_is_called_so() {
    assertThat(of(500, 5).words()).contains("about a century");
  }

  @Test
  void a_saving_that_outlasts_the_building_is_never() {
    Payback payback = of(7500, 2);
    assertThat(payback.kind()).isEqualTo(Kind.NEVER);
    assertThat(payback.words())
        .isEqualTo(
            "Against doing nothing it never pays for itself: £7,500 to save £2 a year outlasts"
                + " the building.");
  }

  @Test
  void what_costs_more_every_year_never_pays() {
    Payback payback = of(500, -40);
    assertThat(payback.kind()).isEqualTo(Kind.NEVER);
    assertThat(payback.words()).contains("it costs £40 more every year");
    assertThat(of(500, -0.5).words()).contains("less than £1 more every year");
    assertThat(of(500, 0).words()).contains("it saves no money");
  }

  /** A habit costs nothing to start and more heat every year: it is not paid at once. */
  @Test
  void nothing_at_the_start_and_more_every_year_is_never_not_at_once() {
    Payback payback = of(0, -11);
    assertThat(payback.kind()).isEqualTo(Kind.NEVER);
    assertThat(payback.words())
        .isEqualTo(
            "Against doing nothing it costs £11 more every year: it is not a measure that saves"
                + " money.");
  }

  @Test
  void cheaper_to_buy_and_dearer_to_run_says_both() {
    assertThat(of(-60, -8).words())
        .contains("it costs £60 less at the start but £8 more every year");
  }

  @Test
  void no_dearer_at_the_start_nor_later_is_at_once() {
    assertThat(of(0, 0).kind()).isEqualTo(Kind.AT_ONCE);
    assertThat(of(-50, 10).kind()).isEqualTo(Kind.AT_ONCE);
  }

  @Test
  void without_a_price_it_is_not_told() {
    Payback payback = WORDS.againstNothing(FIGURES, Optional.empty(), Range.exactly(20), 12);
    assertThat(payback.kind()).isEqualTo(Kind.NOT_TOLD);
    assertThat(payback.years()).isEmpty();
  }

  @Test
  void the_cheapest_way_to_the_same_air_says_so() {
    assertThat(WORDS.cheapest().kind()).isEqualTo(Kind.CHEAPEST);
  }
}
