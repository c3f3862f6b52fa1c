package org.drysill.options.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.drysill.physics.Range;
import org.drysill.reference.measures.AirMove;

class SteadyZoneProperties {
  private static final double OUTDOORS = 0.005;

  /** Flows in l/s. */
  private static SteadyZone zone(double supply, double extract, double leaks) {
    return new SteadyZone(
        Range.exactly(supply / 1000), Range.exactly(extract / 1000), Range.exactly(leaks / 1000));
  }

  private static FlowChange change(AirMove moves, double flow) {
    return FlowChange.of(moves, Range.exactly(flow / 1000), List.of());
  }

  /** In the steady state as much water leaves with the air as is given off: Q' (vi' − ve) = G. */
  @Property
  void water_is_conserved(
      @ForAll @DoubleRange(max = 50) double supply,
      @ForAll @DoubleRange(max = 50) double extract,
      @ForAll @DoubleRange(min = 1, max = 100) double leaks,
      @ForAll @DoubleRange(max = 50) double flow,
      @ForAll @DoubleRange(min = 0.01, max = 1) double gramsPerSecond,
      @ForAll AirMove moves) {
    SteadyZone zone = zone(supply, extract, leaks);
    FlowChange change = change(moves, flow);
    double production = gramsPerSecond / 1000;
    double today = production / zone.outdoorAir(FlowChange.NONE).likely();
    double inside = OUTDOORS + today * zone.dilution(change).likely();
    double leaves = zone.outdoorAir(change).likely() * (inside - OUTDOORS);
    assertThat(leaves).isCloseTo(production, within(1e-9 * production));
  }

  /** Whichever way it moves, and whatever fans are there: outdoors is drier, so more air dries. */
  @Property
  void more_air_never_makes_it_wetter(
      @ForAll @DoubleRange(max = 50) double extract,
      @ForAll @DoubleRange(max = 50) double supply,
      @ForAll @DoubleRange(min = 1, max = 100) double leaks,
      @ForAll @DoubleRange(max = 50) double less,
      @ForAll @DoubleRange(max = 50) double more,
      @ForAll AirMove moves) {
    SteadyZone zone = zone(supply, extract, leaks);
    double dry = zone.dilution(change(moves, less + more)).likely();
    assertThat(dry).isLessThanOrEqualTo(zone.dilution(change(moves, less)).likely() + 1e-12);
    assertThat(dry).isLessThanOrEqualTo(1 + 1e-12);
  }

  @Property
  void the_ends_enclose_the_likely_value(
      @ForAll @DoubleRange(min = 1, max = 50) double leaks,
      @ForAll @DoubleRange(max = 50) double spread,
      @ForAll @DoubleRange(max = 50) double flow,
      @ForAll AirMove moves) {
    SteadyZone zone =
        new SteadyZone(
            new Range(0, spread / 2, spread).times(0.001),
            Range.exactly(0.01),
            new Range(leaks, leaks, 3 * leaks).times(0.001));
    Range added =
        zone.addedAir(
            FlowChange.of(moves, new Range(flow / 2, flow, 2 * flow).times(0.001), List.of()));
    Range dilution =
        zone.dilution(
            FlowChange.of(moves, new Range(flow / 2, flow, 2 * flow).times(0.001), List.of()));
    assertThat(added.low()).isBetween(0 - 1e-12, added.likely());
    assertThat(dilution.high()).isBetween(dilution.likely(), 1 + 1e-12);
  }

  /** Nothing moves the air of a home without leaks and fans: its excess is left as it is. */
  @Property(tries = 1)
  void a_home_without_any_air_keeps_its_excess() {
    assertThat(zone(0, 0, 0).dilution(FlowChange.NONE).likely()).isEqualTo(1);
  }
}
