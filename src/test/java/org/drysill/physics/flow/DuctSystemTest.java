package org.drysill.physics.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.drysill.physics.flow.FanCurve.Point;
import org.drysill.physics.flow.RoundDuct.Air;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DuctSystemTest {
  private static final FanCurve FAN =
      new FanCurve(List.of(new Point(0, 45), new Point(0.015, 30), new Point(0.026, 0)));

  private static DuctSystem duct(double length, double roughness, double slackness, double k) {
    return new DuctSystem(new RoundDuct(0.1, roughness), length, slackness, k / 2, k / 2);
  }

  /** E36 of the worked rows: 15 l/s in 100 mm of smooth plastic lose 0.646 Pa by metre. */
  @Test
  void ten_metres_lose_ten_times_what_one_metre_loses() {
    assertThat(duct(10, 3e-5, 1, 0).frictionPa(0.015, Air.ROOM)).isCloseTo(6.46, within(0.01));
    assertThat(duct(10, 3e-5, 4, 0).frictionPa(0.015, Air.ROOM)).isCloseTo(25.84, within(0.04));
  }

  /** By an independent reckoning: fixed-point Colebrook, halving, in another language. */
  @ParameterizedTest
  @CsvSource({
    "10, 4.5, 14.547802763, 30.452197",
    "7, 3.15, 16.281628398, 26.504650",
    "4, 1.8, 18.719706779, 19.855345"
  })
  void the_working_point_is_where_curve_and_duct_meet(
      double slackness, double k, double litres, double pascal) {
    DuctSystem duct = duct(2.5, 0.0009, slackness, k);
    double flow = duct.flowM3S(FAN, Air.ROOM);
    assertThat(flow * 1000).isCloseTo(litres, within(1e-6));
    assertThat(FAN.pressurePa(flow)).isCloseTo(pascal, within(1e-5));
    assertThat(duct.lossPa(flow, Air.ROOM)).isCloseTo(pascal, within(1e-5));
  }

  @Test
  void without_a_duct_the_fan_gives_its_free_flow() {
    assertThat(duct(0, 0, 1, 0).flowM3S(FAN, Air.ROOM)).isEqualTo(0.026);
  }

  @Test
  void no_curve_is_drawn_out_beyond_its_points() {
    FanCurve rated = new FanCurve(List.of(new Point(0.010, 30), new Point(0.012, 25)));
    assertThat(rated.mostM3S()).isEqualTo(0.012);
    assertThat(rated.pressurePa(0)).isEqualTo(30);
    assertThat(rated.pressurePa(0.010)).isEqualTo(30);
    assertThat(rated.pressurePa(0.011)).isCloseTo(27.5, within(1e-9));
    assertThat(duct(1, 0, 1, 0).flowM3S(rated, Air.ROOM)).isEqualTo(0.012);
    assertThatThrownBy(() -> rated.pressurePa(0.013)).hasMessageContaining("flow");
  }

  @Test
  void a_curve_that_rises_or_turns_back_is_refused() {
    assertThatThrownBy(() -> new FanCurve(List.of(new Point(0, 1)))).hasMessageContaining("points");
    assertThatThrownBy(() -> new FanCurve(List.of(new Point(0, 1), new Point(0, 0))))
        .hasMessageContaining("later point");
    assertThatThrownBy(() -> new FanCurve(List.of(new Point(0, 1), new Point(1, 2))))
        .hasMessageContaining("earlier point");
  }

  /** 1.2 · 9.80665 · 5 · 14 / 285.15 Pa; then Colebrook and halving in another language. */
  @ParameterizedTest
  @CsvSource({"1.5, 16.239516", "3.5, 12.242426", "5.5, 10.251617"})
  void a_stack_draws_what_its_duct_lets_through(double k, double litres) {
    double pressure = StackPressure.pa(1.2, 5, 19, 5);
    assertThat(pressure).isCloseTo(2.8888606, within(1e-6));
    DuctSystem stack = new DuctSystem(new RoundDuct(0.125, 9e-5), 5, 1, 0, k);
    assertThat(stack.flowM3S(pressure, 2, Air.ROOM) * 1000).isCloseTo(litres, within(1e-5));
    assertThat(StackPressure.pa(1.2, 5, 5, 19)).isCloseTo(-pressure, within(1e-12));
  }
}
