package org.drysill.assess.ventilation.provided;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Working.Input;
import org.drysill.assess.ventilation.VentilationFixtures;
import org.drysill.physics.Range;
import org.junit.jupiter.api.Test;

/** Air through leaks and ventilators; one storey, normal shelter: divisor 10..., likely 20. */
class LeaksTest {
  private static final String TESTED =
      "floor_area: 84, storeys: 1, volume: 360, airtightness: {n50: 10 /h, basis: measured}";

  private static ProvidedAir air(String windows) {
    return air(TESTED, "- {id: bed, use: bedroom, windows: [" + windows + "]}");
  }

  private static ProvidedAir air(String dwelling, String rooms) {
    return Provision.of(
        VentilationFixtures.home("england", dwelling, rooms),
        VentilationFixtures.DEFAULTS,
        Map.of());
  }

  /** 10 /h × 360 m³ / 20 = 180 m³/h = 50 l/s; by the Finnish decree 35, by ISO 13789 14.3. */
  @Test
  void leaks_follow_from_the_pressure_test_and_the_divisors() {
    ProvidedAir air = air("");
    assertThat(air.leaks().likely()).isCloseTo(0.050, within(1e-12));
    assertThat(air.leaks().value().low()).isCloseTo(1.0 / 35, within(1e-12));
    assertThat(air.leaks().value().high()).isCloseTo(1 / 14.0, within(1e-12));
    assertThat(air.leaks().basis()).isEqualTo(Basis.CALCULATED);
    assertThat(air.leaks().working().sources()).hasSize(5);
    assertThat(air.leaks().working().note().orElseThrow()).contains("factor of about two");
    assertThat(air.leaks().working().inputs()).hasSize(3);
  }

  /** E15 of the worked rows: 8000 mm² pass 6.300 l/s at 1 Pa with Cd 0.61 and 1.2 kg/m³. */
  @Test
  void ventilators_pass_at_one_pascal_what_their_equivalent_area_means() {
    ProvidedAir air = air("{id: w, background_ventilator: 8000 mm2}");
    assertThat(air.ventilatorsAtTestPressure().likely() * 1000).isCloseTo(6.3, within(0.001));
    assertThat(air.ventilatorsAtTestPressure().working().inputs())
        .extracting(Input::symbol)
        .containsExactly("A", "Δp", "Cd", "ρ");
  }

  /**
   * By hand: half of the leaks pass q50/20 at w = 50 (2/20)^(1/0.65) = 1.447 Pa; half of the area
   * passes 6.3 √1.447 / 2 = 3.79 l/s there. None at least, since they may be shut.
   */
  @Test
  void ventilators_pass_at_the_pressure_of_the_leaks_and_may_be_shut() {
    ProvidedAir air = air("{id: w, background_ventilator: 8000 mm2}");
    assertThat(air.ventilators().value().low()).isZero();
    assertThat(air.ventilators().likely() * 1000).isCloseTo(3.789, within(0.002));
    assertThat(air.infiltration().likely())
        .isCloseTo(air.leaks().likely() + air.ventilators().likely(), within(1e-15));
    assertThat(air.infiltration().working().inputs()).hasSize(2);
    assertThat(air.ventilators().working().inputs())
        .extracting(Input::symbol)
        .containsExactly("A", "N", "n", "w", "Cd", "ρ");
  }

  @Test
  void a_window_where_nobody_looked_may_have_one_and_is_listed() {
    ProvidedAir air = air("{id: v}, {id: w, background_ventilator: 0 mm2}");
    Range area = air.ventilatorsAtTestPressure().value();
    assertThat(area.likely()).isZero();
    assertThat(area.high() * 1000).isCloseTo(3.15, within(0.001));
    assertThat(air.assumptions())
        .filteredOn(a -> a.id().equals("ventilation.ventilators"))
        .extracting(Assumption::about)
        .containsExactly("background ventilators at 1 of 2 windows");
    assertThat(air("{id: w, background_ventilator: 0 mm2}").assumptions())
        .extracting(Assumption::id)
        .doesNotContain("ventilation.ventilators");
  }

  @Test
  void windows_of_the_loft_do_not_air_the_home() {
    ProvidedAir air =
        air(TESTED, "- {id: loft, use: loft, windows: [{id: w, background_ventilator: 9000 mm2}]}");
    assertThat(air.ventilators().value()).isEqualTo(Range.exactly(0));
  }
}
