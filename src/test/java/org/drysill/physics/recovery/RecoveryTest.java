package org.drysill.physics.recovery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.drysill.physics.recovery.SupplyHalfCycle.Sample;
import org.junit.jupiter.api.Test;

class RecoveryTest {
  /** Common practice: 22 °C indoors, 11 °C outdoors, 17 °C supplied is 54.5 %. */
  @Test
  void the_common_practice_value_is_54_5_percent() {
    assertThat(RecoveryRatio.supply(22, 11, 17)).isCloseTo(0.545, within(0.0005));
  }

  /** With a perfect balance and no fan heat both ratios say the same. */
  @Test
  void supply_and_exhaust_ratio_meet_where_nothing_leaks() {
    assertThat(RecoveryRatio.exhaust(20, 0, 5))
        .isCloseTo(RecoveryRatio.supply(20, 0, 15), within(1e-12));
  }

  /** 12 W into 0.01 m³/s of 1200 J/(m³·K) warm the exhaust by 1 K of a difference of 20. */
  @Test
  void fan_heat_counts_for_the_exhaust_ratio() {
    assertThat(RecoveryRatio.exhaustWithFanHeat(20, 0, 5, 12, 12) - RecoveryRatio.exhaust(20, 0, 5))
        .isCloseTo(0.05, within(1e-12));
  }

  @Test
  void less_than_half_a_kelvin_gives_no_ratio() {
    assertThatThrownBy(() -> RecoveryRatio.supply(20, 19.6, 20))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("difference of warm and cold")
        .hasMessageContaining("0.5");
  }

  /** At the start 0.90, over the half-cycle 0.779 (own series, arithmetic). */
  @Test
  void a_reading_at_the_start_overstates() {
    List<Sample> series =
        List.of(
            Sample.of(18.5),
            Sample.of(17.9),
            Sample.of(17.2),
            Sample.of(16.6),
            Sample.of(16.0),
            Sample.of(15.5),
            Sample.of(15.1));
    assertThat(SupplyHalfCycle.meanRatio(series.subList(0, 1), 20, 5))
        .isCloseTo(0.90, within(1e-9));
    assertThat(SupplyHalfCycle.meanRatio(series, 20, 5)).isCloseTo(0.779, within(0.0005));
  }

  @Test
  void more_air_weighs_more() {
    List<Sample> samples = List.of(new Sample(18, 3), new Sample(14, 1));
    assertThat(SupplyHalfCycle.meanSupplyCelsius(samples)).isEqualTo(17);
  }

  @Test
  void without_samples_there_is_no_mean() {
    assertThatThrownBy(() -> SupplyHalfCycle.meanSupplyCelsius(List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("number of samples");
    assertThatThrownBy(() -> new Sample(18, 0)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void balanced_flows_lose_nothing_and_unbalance_is_the_same_either_way() {
    assertThat(RecoveryRatio.effectiveUnderUnbalance(0.8, 0.01, 0.01)).isEqualTo(0.8);
    assertThat(RecoveryRatio.effectiveUnderUnbalance(0.8, 0.01, 0.02))
        .isEqualTo(RecoveryRatio.effectiveUnderUnbalance(0.8, 0.02, 0.01))
        .isEqualTo(0.4);
  }

  /** 160 mm tube, lip of 30 mm: 0.01508 m². */
  @Test
  void a_lip_is_a_strip_of_the_tube() {
    assertThat(new Sleeve(160, 0.16, 0.001, 0.3).lipAreaM2(0.03)).isCloseTo(0.01508, within(5e-6));
  }
}
