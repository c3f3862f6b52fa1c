package org.drysill.physics.zones;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.air.MoistAir;
import org.drysill.physics.moisture.TransientVapour;
import org.drysill.physics.moisture.VapourBalance;
import org.drysill.physics.surface.GlassCondensate;
import org.drysill.physics.weather.HourlyYear;
import org.junit.jupiter.api.Test;

/** Zones against what can be reckoned by hand, and against the balances of a single room. */
class ZonesTest {
  private static final double VE = 0.005;

  private static ZoneFlows one(double flow) {
    return new ZoneFlows(new double[1][1], new double[] {flow}, new double[] {flow});
  }

  @Test
  void a_single_zone_is_production_over_flow() {
    double vapour =
        new SteadyZones(one(0.02), List.of()).at(new double[] {1e-4}, VE, new double[0]).content(0);
    assertThat(vapour - VE).isCloseTo(VapourBalance.excessKgM3(1e-4, 0.02), within(1e-15));
  }

  /**
   * Outdoor air enters a living room at 10 l/s, goes on to a kitchen and out there; nothing comes
   * back. 20 mg/s and 60 mg/s: 2 g/m³ and 2 + 6 g/m³ over outdoors.
   */
  @Test
  void air_carries_vapour_on() {
    ZoneFlows flows =
        new ZoneFlows(
            new double[][] {{0, 0.01}, {0, 0}}, new double[] {0.01, 0}, new double[] {0, 0.01});
    ZoneVapour vapour =
        new SteadyZones(flows, List.of()).at(new double[] {2e-5, 6e-5}, VE, new double[0]);
    assertThat(vapour.content(0)).isCloseTo(0.007, within(1e-15));
    assertThat(vapour.content(1)).isCloseTo(0.013, within(1e-15));
    assertThat(flows.outdoorAir()).isEqualTo(0.01);
    assertThat(flows.leaving(0)).isEqualTo(0.01);
  }

  /**
   * 20 l/s and 120 mg/s without panes: 11 g/m³. A pane of 5 l/s at 8 g/m³ takes (0.02·5 + 0.12 +
   * 5·8e-3)/25 = 10.4 g/m³ and 12 mg/s; one at 10.7 g/m³ is wet in the first pass only.
   */
  @Test
  void panes_dry_as_the_air_does() {
    List<Pane> panes = List.of(new Pane(0, 0.005), new Pane(0, 0.005));
    ZoneVapour vapour =
        new SteadyZones(one(0.02), panes)
            .at(new double[] {1.2e-4}, VE, new double[] {0.008, 0.0107});
    assertThat(vapour.content(0)).isCloseTo(0.0104, within(1e-15));
    assertThat(vapour.settling(0)).isCloseTo(1.2e-5, within(1e-17));
    assertThat(vapour.settling(1)).isZero();
  }

  /** The same balance asked twice with another pane wet. */
  @Test
  void panes_turn_wet_again() {
    SteadyZones zones = new SteadyZones(one(0.02), List.of(new Pane(0, 0.005)));
    double[] production = {1.2e-4};
    double dry = zones.at(production, VE, new double[] {0.02}).content(0);
    double wet = zones.at(production, VE, new double[] {0.008}).content(0);
    assertThat(dry).isCloseTo(0.011, within(1e-15));
    assertThat(wet).isCloseTo(0.0104, within(1e-15));
    assertThat(zones.at(production, VE, new double[] {0.02}).content(0)).isEqualTo(dry);
  }

  /** A pane in contents is the Lewis relation in pressures. */
  @Test
  void a_pane_is_the_lewis_relation() {
    Pane pane = Pane.of(0, 1.5, 3, 20);
    double content = MoistAir.vapourContentKgM3(20, 1400);
    double saturation = MoistAir.vapourContentKgM3(20, Iso13788Vapour.saturationPressurePa(7));
    assertThat(pane.transferM3S() * (content - saturation))
        .isCloseTo(1.5 * GlassCondensate.rateKgM2S(1400, 7, 3), within(1e-15));
  }

  /** Small steps follow the exact exponential of one room. */
  @Test
  void small_steps_follow_the_exponential() {
    ZoneSteps steps = new ZoneSteps(List.of(one(0.02)), new double[] {8 * 50}, List.of(), 1);
    steps.start(new double[] {0.009});
    for (int second = 0; second < 20_000; second++) {
      steps.step(0, new double[] {4e-5}, VE, new double[0]);
    }
    double exact = new TransientVapour(50, 0.02, 8).contentKgM3(0.009, VE, 4e-5, 20_000);
    assertThat(steps.content(0)).isCloseTo(exact, within(1e-7));
  }

  /** A year in which a fan runs by day and a pane is cold in May only. */
  @Test
  void a_year_of_hours() {
    ZoneSteps steps =
        new ZoneSteps(
            List.of(one(0.01), one(0.03)), new double[] {300}, List.of(new Pane(0, 0.002)), 3600);
    HourlyZones year =
        HourlyZones.run(
            steps,
            new HourlyZones.Drive() {
              @Override
              public int state(int hour) {
                return hour % 24 < 12 ? 0 : 1;
              }

              @Override
              public double outdoor(int hour) {
                return VE;
              }

              @Override
              public void production(int hour, double[] zones) {
                zones[0] = 5e-5;
              }

              @Override
              public void saturation(int hour, double[] panes) {
                panes[0] = HourlyYear.month(hour) == 4 ? 0.006 : 0.02;
              }
            });
    double[] months = year.monthlyContent(0);
    assertThat(months[4]).isLessThan(months[5]);
    assertThat(months[5]).isBetween(VE + 5e-5 / 0.03, VE + 5e-5 / 0.01);
    assertThat(year.settling(0, 3000)).isPositive();
    assertThat(year.settling(0, 5000)).isZero();
    // Periodic from the first day on: the store was filled before January.
    assertThat(year.content(0, 24)).isCloseTo(year.content(0, 48), within(1e-9));
  }

  @Test
  void refuses_what_does_not_balance_or_has_no_way_out() {
    assertThatThrownBy(
            () -> new ZoneFlows(new double[1][1], new double[] {0.01}, new double[] {0.02}))
        .hasMessageContaining("zone 0 gets 0.01");
    assertThatThrownBy(
            () ->
                new ZoneFlows(
                    new double[][] {{0, 0, 0}, {0, 0, 0.01}, {0, 0.01, 0}},
                    new double[] {0.01, 0, 0},
                    new double[] {0.01, 0, 0}))
        .hasMessageContaining("zone 1 has no way outdoors");
    assertThatThrownBy(
            () -> new ZoneFlows(new double[][] {{0.1}}, new double[] {1}, new double[] {1}))
        .hasMessageContaining("into itself");
    assertThatThrownBy(
            () ->
                new ZoneFlows(
                    new double[][] {{0, -0.1}, {0, 0}}, new double[] {1, 1}, new double[] {1, 1}))
        .hasMessageContaining("between zones");
    assertThatThrownBy(() -> new SteadyZones(one(0.1), List.of(new Pane(1, 0.1))))
        .hasMessageContaining("zone of a pane");
    assertThatThrownBy(
            () -> new SteadyZones(one(0.1), List.of()).at(new double[] {-1e-5}, VE, new double[0]))
        .hasMessageContaining("production");
  }

  @Test
  void routes_join_rooms_and_carry_the_surplus() {
    double[] thirds = {0, 0.5, 0.5};
    AirRoutes routes =
        new AirRoutes(
            thirds, thirds, List.of(new AirRoutes.Door(0, 1, 1), new AirRoutes.Door(0, 2, 1)));
    ZoneFlows flows =
        routes.flows(new double[3], new double[] {0, 0, 0.01}, 0.02, new double[] {0.003, 0.001});
    // 5 l/s from room 1 through the hall into room 2: 3 + 2.5 against 0.5, and one way only.
    assertThat(flows.in(1)).isCloseTo(0.01, within(1e-15));
    assertThat(flows.out(2)).isCloseTo(0.015, within(1e-15));
    assertThat(flows.between(1, 0)).isCloseTo(0.0055, within(1e-15));
    assertThat(flows.between(0, 1)).isCloseTo(0.0005, within(1e-15));
    assertThat(flows.between(0, 2)).isCloseTo(0.005, within(1e-15));
    assertThat(flows.between(2, 0)).isZero();
  }

  @Test
  void routes_refuse_a_room_without_door() {
    double[] halves = {0.5, 0.5};
    assertThatThrownBy(() -> new AirRoutes(halves, halves, List.of()))
        .hasMessageContaining("no door joins zone 1");
    assertThatThrownBy(() -> new AirRoutes.Door(1, 1, 1)).hasMessageContaining("into itself");
    assertThatThrownBy(() -> new AirRoutes(new double[] {0.5}, new double[] {1}, List.of()))
        .hasMessageContaining("sum of");
    AirRoutes room = new AirRoutes(new double[] {1}, new double[] {1}, List.of());
    assertThatThrownBy(() -> room.flows(new double[] {0.02}, new double[] {0}, 0.01, new double[0]))
        .hasMessageContaining("outdoor air less fans");
  }
}
