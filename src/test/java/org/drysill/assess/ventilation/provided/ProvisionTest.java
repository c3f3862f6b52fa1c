package org.drysill.assess.ventilation.provided;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.ventilation.VentilationFixtures;
import org.drysill.physics.Range;
import org.junit.jupiter.api.Test;

/** All air of a home that is measured, so that the figures can be reckoned by hand. */
class ProvisionTest {
  /** Leaks of 10 × 216 / 20 m³/h = 30 l/s likely. */
  private static ProvidedAir air(String... fans) {
    return Provision.of(
        VentilationFixtures.home(
            "england",
            "floor_area: 90, storeys: 1, volume: 216, airtightness: {n50: 10 /h, basis: measured}",
            "- {id: bath, use: bathroom, fans: [" + String.join(", ", fans) + "]}"),
        VentilationFixtures.DEFAULTS,
        Map.of());
  }

  private static String fan(String id, String kind, String flow) {
    return "{id: "
        + id
        + ", kind: "
        + kind
        + ", run: continuous, measured_flow: {value: "
        + flow
        + "}}";
  }

  @Test
  void a_home_without_fans_gets_what_leaks_in() {
    ProvidedAir air = air();
    assertThat(air.wholeHome().likely()).isCloseTo(0.030, within(1e-12));
    assertThat(air.byFans().value()).isEqualTo(Range.exactly(0));
    assertThat(air.supply().basis()).isEqualTo(Basis.CALCULATED);
    assertThat(air.fansIn("bath")).isEmpty();
  }

  @Test
  void extract_and_leaks_combine_in_quadrature() {
    ProvidedAir air = air(fan("a", "continuous extract", "40..40 l/s"));
    assertThat(air.wholeHome().likely()).isCloseTo(0.050, within(1e-12));
    assertThat(air.byFans().likely()).isCloseTo(0.040, within(1e-12));
    assertThat(air.balance().infiltration()).isCloseTo(0.050, within(1e-12));
    assertThat(air.balance().exfiltration()).isCloseTo(0.010, within(1e-12));
  }

  @Test
  void positive_input_combines_as_extract_does() {
    ProvidedAir air = air(fan("a", "positive input", "40..40 l/s"));
    assertThat(air.wholeHome().likely()).isCloseTo(0.050, within(1e-12));
    assertThat(air.balance().supply()).isCloseTo(0.040, within(1e-12));
    assertThat(air.balance().exfiltration()).isCloseTo(0.050, within(1e-12));
    assertThat(air.fans().get(0).why()).startsWith("Blows air in");
  }

  @Test
  void a_passive_stack_draws_out_and_has_no_power() {
    ProvidedAir air = air("{id: a, kind: passive stack}");
    FanFlow stack = air.fans().get(0);
    assertThat(stack.why()).contains("it has no fan");
    assertThat(stack.specificFanPower()).isEmpty();
    assertThat(stack.shareOfDay().value()).isEqualTo(Range.exactly(1));
    assertThat(air.wholeHome().likely())
        .isCloseTo(Math.hypot(0.030, stack.running().likely()), within(1e-12));
  }

  @Test
  void exchange_adds_and_extract_beyond_it_combines() {
    ProvidedAir air =
        air(
            fan("a", "simultaneous heat recovery", "10..10 l/s"),
            fan("b", "continuous extract", "40..40 l/s"));
    assertThat(air.wholeHome().likely()).isCloseTo(0.060, within(1e-12));
    assertThat(air.supply().likely()).isCloseTo(0.010, within(1e-12));
    assertThat(air.extract().likely()).isCloseTo(0.050, within(1e-12));
    assertThat(air.fansIn("bath")).hasSize(2);
    assertThat(air.fansIn("hall")).isEmpty();
  }

  /** Half of the day √(40² + 30²), half of it 30: 40 l/s. */
  @Test
  void an_intermittent_fan_is_averaged_over_its_states() {
    ProvidedAir air =
        air(
            "{id: a, kind: intermittent extract, hours_per_day: 12 h,"
                + " measured_flow: {value: 40..40 l/s}}");
    assertThat(air.wholeHome().likely()).isCloseTo(0.040, within(1e-12));
    assertThat(air.wholeHome().working().note().orElseThrow()).contains("independently");
  }

  /** 30 l/s in 216 m³ are half an air change. */
  @Test
  void air_changes_are_of_the_whole_volume() {
    assertThat(air().airChange().likely()).isCloseTo(0.5, within(1e-12));
  }

  @Test
  void what_rests_on_an_assumed_part_is_assumed_itself() {
    assertThat(air(fan("a", "continuous extract", "40..40 l/s")).byFans().basis())
        .isEqualTo(Basis.CALCULATED);
    assertThat(air("{id: a, kind: continuous extract}").wholeHome().basis())
        .isEqualTo(Basis.ASSUMED);
  }

  @Test
  void every_figure_can_tell_how_it_came_about() {
    ProvidedAir air = air("{id: a, kind: alternating heat recovery, power: 3 W}");
    FanFlow fan = air.fans().get(0);
    for (Figure figure :
        new Figure[] {
          air.wholeHome(),
          air.byFans(),
          air.supply(),
          air.extract(),
          air.leaks(),
          air.ventilators(),
          air.infiltration(),
          air.ventilatorsAtTestPressure(),
          air.airChange(),
          fan.running(),
          fan.shareOfDay(),
          fan.supply(),
          fan.extract(),
          fan.specificFanPower().orElseThrow()
        }) {
      assertThat(figure.working().formula()).as(figure.id()).contains("=");
      assertThat(figure.working().inputs()).as(figure.id()).isNotEmpty();
    }
  }
}
