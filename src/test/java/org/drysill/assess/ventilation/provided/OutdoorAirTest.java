package org.drysill.assess.ventilation.provided;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.drysill.assess.ventilation.provided.OutdoorAir.Source;
import org.junit.jupiter.api.Test;

/** Quadrature over the states of fans; values by hand. */
class OutdoorAirTest {
  private static final double I = 0.003;

  @Test
  void a_balanced_fan_adds() {
    assertThat(OutdoorAir.meanM3S(List.of(new Source(0.004, 0.004, 1)), I))
        .isCloseTo(0.007, within(1e-15));
  }

  @Test
  void an_unbalanced_fan_combines_in_quadrature() {
    assertThat(OutdoorAir.meanM3S(List.of(new Source(0, 0.004, 1)), I))
        .isCloseTo(0.005, within(1e-15));
    assertThat(OutdoorAir.meanM3S(List.of(new Source(0.004, 0, 1)), I))
        .isCloseTo(0.005, within(1e-15));
  }

  /** Supply 4 and extract 8 l/s: 4 balanced, 4 unbalanced: 4 + √(16 + 9) = 9. */
  @Test
  void supply_and_extract_balance_each_other_first() {
    List<Source> fans = List.of(new Source(0.004, 0, 1), new Source(0, 0.008, 1));
    assertThat(OutdoorAir.meanM3S(fans, I)).isCloseTo(0.009, within(1e-15));
  }

  /** A quarter of the day 5, else 3: 3.5; the quadrature of the mean flow of 1 would give 3.16. */
  @Test
  void a_fan_that_switches_counts_by_its_states_and_not_by_its_mean() {
    assertThat(OutdoorAir.meanM3S(List.of(new Source(0, 0.004, 0.25)), I))
        .isCloseTo(0.0035, within(1e-15));
  }

  @Test
  void a_fan_that_never_runs_does_nothing() {
    assertThat(OutdoorAir.meanM3S(List.of(new Source(0, 0.004, 0)), I)).isEqualTo(I);
    assertThat(OutdoorAir.meanM3S(List.of(), I)).isEqualTo(I);
  }

  /**
   * Of many fans the strongest twelve are switched, the others run at their mean: near the same.
   */
  @Test
  void many_fans_come_out_near_to_those_that_are_all_switched() {
    List<Source> fans = Collections.nCopies(14, new Source(0, 0.001, 0.5));
    double many = OutdoorAir.meanM3S(fans, I);
    double states = 0;
    for (int on = 0; on <= 14; on++) {
      states += binomial(14, on) * Math.pow(0.5, 14) * Math.hypot(0.001 * on, I);
    }
    assertThat(many).isCloseTo(states, within(0.01 * states));
  }

  private static double binomial(int n, int k) {
    double value = 1;
    for (int i = 1; i <= k; i++) {
      value *= (double) (n - k + i) / i;
    }
    return value;
  }

  @Property(tries = 300)
  void more_flow_time_or_leakage_never_gives_less_air(
      @ForAll @DoubleRange(min = 0, max = 0.05) double supply,
      @ForAll @DoubleRange(min = 0, max = 0.05) double extract,
      @ForAll @DoubleRange(min = 0, max = 1) double share,
      @ForAll @DoubleRange(min = 0, max = 0.05) double infiltration,
      @ForAll @DoubleRange(min = 0, max = 0.02) double more) {
    Source other = new Source(0.002, 0.007, 0.4);
    double before = total(supply, extract, share, infiltration, other);
    double after = before - 1e-15;
    assertThat(total(supply + more, extract, share, infiltration, other))
        .isGreaterThanOrEqualTo(after);
    assertThat(total(supply, extract + more, share, infiltration, other))
        .isGreaterThanOrEqualTo(after);
    assertThat(total(supply, extract, Math.min(1, share + more), infiltration, other))
        .isGreaterThanOrEqualTo(after);
    assertThat(total(supply, extract, share, infiltration + more, other))
        .isGreaterThanOrEqualTo(after);
  }

  private static double total(
      double supply, double extract, double share, double infiltration, Source other) {
    return OutdoorAir.meanM3S(List.of(new Source(supply, extract, share), other), infiltration);
  }
}
