package org.drysill.options.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.drysill.OptionsFixtures;
import org.drysill.options.FanRunningCost;
import org.junit.jupiter.api.Test;

/** What the fans of today cost, by hand in the flat in which it is 5 °C outdoors all year. */
class FanCostsTest {
  private static final double GAS_KWH_PER_FLOW = 1224 * 131_400 / 1000.0 / 0.85;
  private static final String FLAT = OptionsFixtures.text("small-flat");

  private static FanRunningCost cost(String survey) {
    return OptionsFixtures.study(survey).fansNow().get(0);
  }

  private static String with(String fan) {
    return FLAT.replaceAll("fans: \\[.*\\]", "fans: [" + fan + "]");
  }

  /** 30 W · 4/24 · 8760 h = 43.8 kWh; 6 l/s · 4/24 = 1 l/s of air. */
  @Test
  void an_extract_fan_costs_electricity_and_the_heat_of_its_air() {
    FanRunningCost fan = cost(FLAT);
    assertThat(fan.electricity().orElseThrow().likely()).isCloseTo(43.8, within(1e-6));
    assertThat(fan.heatLost().orElseThrow().likely())
        .isCloseTo(GAS_KWH_PER_FLOW / 1000, within(0.01));
    assertThat(fan.heatRecovered()).isEmpty();
    assertThat(fan.netKept()).isEmpty();
    assertThat(fan.likeMeasure()).isEmpty();
    assertThat(fan.cost().orElseThrow().likely())
        .isCloseTo(43.8 * 0.27 + GAS_KWH_PER_FLOW / 1000 * 0.06, within(0.001));
  }

  /** Half of 6 l/s is exchanged; measured 0.5 goes before the declared 0.9. */
  @Test
  void a_measured_ratio_goes_before_the_declared_one() {
    String unit =
        "{id: u, kind: alternating heat recovery, measured_flow: {value: 6 l/s, instrument: hood}, power: 4 W, run: continuous, declared_heat_recovery: 90 %";
    FanRunningCost measured =
        cost(
            with(
                unit
                    + ", heat_recovery_tests: [{at: 2026-01-22T09:15, indoor: 20 C, outdoor: 5 C, supply: 12.5 C, whole_cycle: yes, instrument: th}]}"));
    assertThat(measured.heatRecovered().orElseThrow().likely())
        .isCloseTo(3 * 0.5 / 1000 * GAS_KWH_PER_FLOW, within(0.01));
    assertThat(measured.heatLost().orElseThrow().likely())
        .isCloseTo(3 * 0.5 / 1000 * GAS_KWH_PER_FLOW, within(0.01));
    double kept = 3 * 0.5 / 1000 * GAS_KWH_PER_FLOW;
    assertThat(measured.netKept().orElseThrow().likely()).isCloseTo(kept - 4 * 8.76, within(0.01));
    assertThat(measured.netSaved().orElseThrow().likely())
        .isCloseTo(kept * 0.06 - 4 * 8.76 * 0.27, within(0.01));
    assertThat(measured.likeMeasure()).contains("single-room-recovery-pair");
    assertThat(cost(with(unit.replace("power: 4 W, ", "") + "}")).netKept()).isEmpty();
    FanRunningCost declared = cost(with(unit + "}"));
    assertThat(declared.heatRecovered().orElseThrow().likely())
        .isCloseTo(3 * 0.9 * 0.65 / 1000 * GAS_KWH_PER_FLOW, within(0.01));
  }

  @Test
  void a_fan_out_of_use_costs_nothing_that_could_be_told() {
    FanRunningCost dead = cost(with("{id: dead, kind: fitted but not working}"));
    assertThat(dead.electricity()).isEmpty();
    assertThat(dead.heatLost()).isEmpty();
    assertThat(dead.cost()).isEmpty();
  }

  @Test
  void a_fan_that_blows_in_is_charged_for_what_it_blows_in() {
    FanRunningCost input =
        cost(
            with(
                "{id: p, kind: positive input, measured_flow: {value: 10 l/s, instrument: hood}, run: continuous}"));
    assertThat(input.electricity()).isEmpty();
    assertThat(input.heatLost().orElseThrow().likely())
        .isCloseTo(10 / 1000.0 * GAS_KWH_PER_FLOW, within(0.01));
    assertThat(input.cost()).isPresent();
  }
}
