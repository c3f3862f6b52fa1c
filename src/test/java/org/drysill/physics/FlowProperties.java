package org.drysill.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.drysill.physics.flow.Bs5925;
import org.drysill.physics.flow.Colebrook;
import org.drysill.physics.flow.CombinedFlow;
import org.drysill.physics.flow.Iso13789Infiltration;
import org.drysill.physics.flow.LblBasicModel;
import org.drysill.physics.flow.LeakagePowerLaw;
import org.drysill.physics.flow.Orifice;
import org.drysill.physics.flow.RoundDuct;
import org.drysill.physics.flow.WindowAiring;

/** What must hold of flows whatever the numbers. */
class FlowProperties {
  @Property
  void colebrook_is_solved(
      @ForAll @Scale(9) @DoubleRange(min = 2300, max = 1e7) double reynolds,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.05) double roughness) {
    double x = 1 / Math.sqrt(Colebrook.frictionFactor(reynolds, roughness));
    double right = -2 * Math.log10(roughness / 3.7 + 2.51 * x / reynolds);
    assertThat(x).isCloseTo(right, within(1e-11 * x));
  }

  /**
   * Swamee and Jain 1976, an independent explicit formula for 5000 ≤ Re and ε/D from 10⁻⁶ to 0.01,
   * departs from Colebrook by up to 3 % there (memory of later comparisons).
   */
  @Property
  void colebrook_is_near_to_its_explicit_approximation(
      @ForAll @Scale(9) @DoubleRange(min = 5000, max = 1e7) double reynolds,
      @ForAll @Scale(9) @DoubleRange(min = 1e-6, max = 0.01) double roughness) {
    double log = Math.log10(roughness / 3.7 + 5.74 / Math.pow(reynolds, 0.9));
    double explicit = 0.25 / (log * log);
    assertThat(Colebrook.frictionFactor(reynolds, roughness))
        .isCloseTo(explicit, within(0.03 * explicit));
  }

  @Property
  void total_flow_lies_between_the_larger_part_and_the_sum(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.2) double supply,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.2) double extract,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.2) double infiltration) {
    double total = CombinedFlow.totalM3S(supply, extract, infiltration);
    double fans = Math.max(supply, extract);
    assertThat(total)
        .isGreaterThanOrEqualTo(Math.max(fans, infiltration) - 1e-15)
        .isLessThanOrEqualTo(fans + infiltration + 1e-15)
        .isEqualTo(CombinedFlow.totalM3S(extract, supply, infiltration));
  }

  @Property
  void balanced_flow_adds(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.2) double flow,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.2) double infiltration) {
    assertThat(CombinedFlow.totalM3S(flow, flow, infiltration))
        .isCloseTo(flow + infiltration, within(1e-15));
  }

  @Property
  void unbalance_takes_away_from_infiltration(
      @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 1) double leakage,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.2) double extract) {
    Iso13789Infiltration model = new Iso13789Infiltration(0.07, 15);
    assertThat(model.flowM3S(leakage, 0, extract))
        .isLessThanOrEqualTo(model.flowM3S(leakage, 0, 0))
        .isEqualTo(model.flowM3S(leakage, extract, 0));
  }

  @Property
  void pressure_undoes_orifice_flow(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 100) double pascal,
      @ForAll @Scale(9) @DoubleRange(min = 1e-4, max = 1) double area) {
    Orifice orifice = new Orifice(0.61, area);
    assertThat(orifice.pressurePa(orifice.flowM3S(pascal, 1.2), 1.2))
        .isCloseTo(pascal, within(1e-9 * (1 + pascal)));
  }

  /** A crack of n = 0.5 is an orifice: its leakage area is Cd·A (ASTM E779 takes Cd = 1). */
  @Property
  void leakage_area_of_an_orifice_is_its_own(
      @ForAll @Scale(9) @DoubleRange(min = 1e-3, max = 0.1) double area) {
    Orifice orifice = new Orifice(1, area);
    LeakagePowerLaw law = LeakagePowerLaw.through(orifice.flowM3S(50, 1.2), 50, 0.5);
    assertThat(law.effectiveAreaM2(1.2)).isCloseTo(area, within(1e-12));
  }

  @Property
  void more_wind_or_difference_never_means_less_infiltration(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 30) double difference,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 10) double wind,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 5) double more) {
    LblBasicModel model = new LblBasicModel(0.00029, 0.000231);
    double flow = model.flowM3S(0.035, difference, wind);
    assertThat(model.flowM3S(0.035, difference + more, wind)).isGreaterThanOrEqualTo(flow);
    assertThat(model.flowM3S(0.035, difference, wind + more)).isGreaterThanOrEqualTo(flow);
    assertThat(model.flowM3S(0.035, -difference, wind)).isEqualTo(flow);
  }

  @Property
  void openings_in_series_pass_less_than_the_smaller(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 2) double first,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 2) double second) {
    double series = Bs5925.areaInSeriesM2(first, second);
    assertThat(series).isLessThanOrEqualTo(Math.min(first, second) * (1 + 1e-14)).isNotNegative();
    assertThat(series).isCloseTo(Bs5925.areaInSeriesM2(second, first), within(1e-15));
  }

  @Property
  void the_older_airing_formula_never_gives_less(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 2) double area,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 3) double height,
      @ForAll @Scale(9) @DoubleRange(min = -30, max = 30) double difference,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 10) double wind) {
    assertThat(WindowAiring.en15242M3S(area, height, difference, wind))
        .isGreaterThanOrEqualTo(WindowAiring.en16798M3S(area, height, difference, wind));
  }

  @Property
  void equivalent_length_loses_what_the_fitting_loses(
      @ForAll @Scale(9) @DoubleRange(min = 0.001, max = 0.1) double flow,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 6) double coefficient) {
    RoundDuct duct = new RoundDuct(0.125, 0.09e-3);
    RoundDuct.Air air = RoundDuct.Air.ROOM;
    double fitting = duct.fittingPa(coefficient, flow, air);
    assertThat(duct.equivalentLengthM(coefficient, flow, air) * duct.frictionPaPerM(flow, air))
        .isCloseTo(fitting, within(1e-9 * (1 + fitting)));
  }
}
