package org.drysill.physics.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.drysill.physics.air.MoistAir;
import org.junit.jupiter.api.Test;

class SurfaceTest {
  /** DIN 4108-2 (seen): 20 °C and 50 % need 12.6 °C against mould, f of 0.70 at −5 °C. */
  @Test
  void the_german_minimum_comes_out() {
    double pressure = MoistAir.vapourPressurePa(20, 0.5);
    assertThat(Iso13788Surface.coldestSurfaceCelsius(pressure, 0.8)).isCloseTo(12.6, within(0.05));
    assertThat(Iso13788Surface.requiredFactor(pressure, 0.8, 20, -5).orElseThrow())
        .isCloseTo(0.704, within(0.002));
  }

  @Test
  void where_it_is_not_warmer_indoors_no_factor_is_asked_for() {
    assertThat(Iso13788Surface.requiredFactor(1200, 0.8, 20, 19.1)).isEmpty();
    assertThat(Iso13788Surface.requiredFactor(1200, 0.8, 20, 25)).isEmpty();
    assertThat(Iso13788Surface.requiredFactor(1200, 0.8, 20, 19)).isPresent();
  }

  @Test
  void a_surface_as_warm_as_the_room_has_no_outdoor_temperature_of_onset() {
    assertThat(Iso13788Surface.onsetOutdoorCelsius(1200, 1, 20, 1)).isEmpty();
  }

  @Test
  void a_warm_surface_allows_every_humidity() {
    assertThat(Iso13788Surface.highestIndoorHumidity(0.5, 20, 30, 1)).isEqualTo(1);
  }

  @Test
  void a_surface_limit_is_a_ratio_above_nothing() {
    assertThatThrownBy(() -> Iso13788Surface.coldestSurfaceCelsius(1200, 80))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("highest surface humidity [ratio] must be from 0.0 to 1.0 but was 80.0");
    assertThatThrownBy(() -> Iso13788Surface.coldestSurfaceCelsius(1200, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** With ± 0.5 K thermometers at 10 K and f 0.7 about 0.06 (derived in the reference pack). */
  @Test
  void ten_kelvin_and_half_kelvin_thermometers_give_six_hundredths() {
    assertThat(TemperatureFactor.uncertainty(0.7, 10, 0.5, 0.5, 0.5))
        .isCloseTo(0.063, within(0.001));
  }

  @Test
  void a_u_value_beyond_its_own_surface_resistance_is_refused() {
    assertThatThrownBy(() -> TemperatureFactor.fromUValue(8, 0.13))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("1/U");
  }

  @Test
  void above_the_dew_point_nothing_settles() {
    assertThat(GlassCondensate.rateKgM2S(MoistAir.vapourPressurePa(20, 0.5), 12, 3)).isZero();
  }

  /** hc = 1.31·ΔT^⅓: 2.6 W/(m²·K) at 8 K, within the 2.5 to 4 of tall panes (memory). */
  @Test
  void a_pane_eight_kelvin_colder_stirs_the_air() {
    assertThat(GlassCondensate.naturalConvection(-8)).isCloseTo(2.62, within(1e-9));
  }

  /**
   * Own wall W1: plasterboard, layer without resistance, wool, brick: RT 1.9278 (reference rows).
   */
  @Test
  void layers_add_up_to_the_u_value() {
    List<Double> layers =
        List.of(
            Iso6946.layerResistance(0.0125, 0.25),
            Iso6946.layerResistance(0.05, 0.035),
            Iso6946.layerResistance(0.215, 0.77));
    assertThat(1 / Iso6946.uValue(0.13, layers, 0.04)).isCloseTo(1.9278, within(0.0001));
  }

  @Test
  void a_wall_of_nothing_has_no_u_value() {
    assertThatThrownBy(() -> Iso6946.uValue(0, List.of(), 0))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void a_window_without_area_is_refused() {
    assertThatThrownBy(() -> new Iso10077Window(0, 1, 0, 1, 1, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("area of the window");
  }
}
