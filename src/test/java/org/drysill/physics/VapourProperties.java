package org.drysill.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.drysill.physics.air.MoistAir;
import org.drysill.physics.moisture.TransientVapour;
import org.drysill.physics.moisture.VapourBalance;
import org.drysill.physics.surface.Iso13788Surface;
import org.drysill.physics.surface.TemperatureFactor;

/** What must hold of vapour in a room and at its surfaces whatever the numbers. */
class VapourProperties {
  @Property
  void what_is_produced_leaves(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1e-3) double production,
      @ForAll @Scale(9) @DoubleRange(min = 1e-4, max = 0.2) double flow) {
    double excess = VapourBalance.excessKgM3(production, flow);
    assertThat(VapourBalance.productionKgS(excess, flow)).isCloseTo(production, within(1e-15));
  }

  @Property
  void the_required_flow_meets_the_ceiling(
      @ForAll @Scale(9) @DoubleRange(min = 1e-6, max = 1e-3) double production,
      @ForAll @Scale(9) @DoubleRange(min = 0.002, max = 0.008) double outdoor,
      @ForAll @Scale(9) @DoubleRange(min = 0.0005, max = 0.008) double room) {
    double flow = VapourBalance.requiredFlowM3S(production, outdoor + room, outdoor).orElseThrow();
    assertThat(outdoor + VapourBalance.excessKgM3(production, flow))
        .isCloseTo(outdoor + room, within(1e-12));
  }

  @Property
  void content_and_pressure_excess_undo_each_other(
      @ForAll @Scale(9) @DoubleRange(min = -0.01, max = 0.01) double excess,
      @ForAll @Scale(9) @DoubleRange(min = -20, max = 30) double outdoor) {
    double pressure = VapourBalance.pressureExcessPa(excess, 20, outdoor);
    assertThat(VapourBalance.contentExcessKgM3(pressure, 20, outdoor))
        .isCloseTo(excess, within(1e-15));
  }

  /** Water is conserved: what is stored is what was made less what left, over a thousand steps. */
  @Property(tries = 50)
  void a_room_in_time_conserves_water(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.02) double start,
      @ForAll @Scale(9) @DoubleRange(min = 0.002, max = 0.01) double outdoor,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1e-4) double production,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.02) double flow,
      @ForAll @Scale(9) @DoubleRange(min = 1, max = 15) double capacitance) {
    TransientVapour room = new TransientVapour(30, flow, capacitance);
    int steps = 1000;
    double step = 3600.0 / steps;
    double left = 0;
    double before = start;
    for (int i = 1; i <= steps; i++) {
      double now = room.contentKgM3(start, outdoor, production, i * step);
      left += flow * ((before + now) / 2 - outdoor) * step;
      before = now;
    }
    double stored = capacitance * 30 * (before - start);
    assertThat(stored).isCloseTo(production * 3600 - left, within(1e-5));
  }

  @Property
  void a_room_in_time_passes_through_its_own_middle(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.02) double start,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1e-4) double production,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.02) double flow,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 86400) double seconds) {
    TransientVapour room = new TransientVapour(30, flow, 5);
    double half = room.contentKgM3(start, 0.005, production, seconds / 2);
    assertThat(room.contentKgM3(half, 0.005, production, seconds / 2))
        .isCloseTo(room.contentKgM3(start, 0.005, production, seconds), within(1e-12));
  }

  @Property
  void at_the_outdoor_temperature_of_onset_the_surface_stands_at_its_limit(
      @ForAll @Scale(9) @DoubleRange(min = 0.2, max = 0.75) double humidity,
      @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 0.9) double factor,
      @ForAll @Scale(9) @DoubleRange(min = 0.8, max = 1) double limit) {
    double pressure = MoistAir.vapourPressurePa(20, humidity);
    double outdoor = Iso13788Surface.onsetOutdoorCelsius(pressure, limit, 20, factor).orElseThrow();
    double surface = TemperatureFactor.surfaceCelsius(factor, 20, outdoor);
    assertThat(Iso13788Surface.humidity(pressure, surface)).isCloseTo(limit, within(1e-9));
  }

  @Property
  void at_the_required_factor_the_surface_stands_at_its_limit(
      @ForAll @Scale(9) @DoubleRange(min = 0.2, max = 0.75) double humidity,
      @ForAll @Scale(9) @DoubleRange(min = -20, max = 18) double outdoor) {
    double pressure = MoistAir.vapourPressurePa(20, humidity);
    double factor = Iso13788Surface.requiredFactor(pressure, 0.8, 20, outdoor).orElseThrow();
    double surface = TemperatureFactor.surfaceCelsius(factor, 20, outdoor);
    assertThat(Iso13788Surface.humidity(pressure, surface)).isCloseTo(0.8, within(1e-9));
  }

  @Property
  void the_highest_indoor_humidity_puts_the_surface_at_its_limit(
      @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 0.95) double factor,
      @ForAll @Scale(9) @DoubleRange(min = -20, max = 15) double outdoor) {
    double highest = Iso13788Surface.highestIndoorHumidity(factor, 20, outdoor, 0.8);
    double surface = TemperatureFactor.surfaceCelsius(factor, 20, outdoor);
    assertThat(Iso13788Surface.humidity(MoistAir.vapourPressurePa(20, highest), surface))
        .isCloseTo(0.8, within(1e-9));
  }
}
