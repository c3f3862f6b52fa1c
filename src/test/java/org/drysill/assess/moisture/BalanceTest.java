package org.drysill.assess.moisture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.drysill.assess.Direction;
import org.drysill.assess.Finding;
import org.drysill.assess.Home;
import org.drysill.assess.HomeFixtures;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.Working.Input;
import org.drysill.assess.humidity.HumidityAssessor;
import org.drysill.assess.moisture.MoistureResult.Balance;
import org.drysill.physics.Range;
import org.drysill.physics.moisture.VapourBalance;
import org.drysill.reference.moisture.MoistureSources;
import org.drysill.reference.readings.ReadingRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The list of sources against what readings imply, G = q Δp / (461.5 Ti) (ISO 13788:2012, Annex A,
 * memory). Outdoors 5 °C and 80 %, indoors 20 °C and 50 %: Δp = 470.98 Pa, 3.481 g/m³ at 20 °C.
 */
class BalanceTest {
  private static final ReadingRules RULES = ReadingRules.bundled();
  private static final String OUTDOOR = "{temperature: 5 C, humidity: 80 % ± 0.1 %}";
  private static final String INDOOR = "{temperature: 20 C, humidity: 50 % ± 0.1 %}";

  private static MoistureResult assess(String outdoor, String indoor, Range flow) {
    String text =
        """
        drysill: 1
        visit: {date: 2026-01-22}
        dwelling: {jurisdiction: england, floor_area: 84 m2, bedrooms: 2, occupants: {adults: 2}}
        outdoor_readings: [OUTDOOR]
        rooms:
          - {id: bed, use: bedroom, readings: [INDOOR]}
        """
            .replace("OUTDOOR", outdoor)
            .replace("INDOOR", indoor);
    Home home = HomeFixtures.of(HomeFixtures.read(text));
    return MoistureAssessor.assess(
        home,
        MoistureSources.bundled(),
        HomeFixtures.figure("ventilation.whole_home", flow, Unit.AIRFLOW),
        HumidityAssessor.assess(home, RULES),
        RULES.balance());
  }

  private static MoistureResult withFlow(double m3PerSecond) {
    return assess(OUTDOOR, INDOOR, Range.exactly(m3PerSecond));
  }

  /** 0.03 m³/s × 3.481 g/m³ × 86400 s = 9.02 kg a day. */
  @Test
  void readings_and_flow_imply_a_production() {
    MoistureResult home = withFlow(0.03);
    assertThat(home.implied().orElseThrow().likely() * 86_400).isCloseTo(9.02, within(0.005));
    assertThat(home.implied().orElseThrow().working().inputs())
        .extracting(i -> i.figure().orElseThrow())
        .containsExactly(
            "ventilation.whole_home", "home.vapour_pressure_excess", "home.temperature");
  }

  /** What is put in leaves with the air: the production gives back the excess that it came from. */
  @ParameterizedTest
  @ValueSource(doubles = {0.003, 0.03, 0.3})
  void moisture_is_conserved(double flow) {
    MoistureResult home = withFlow(flow);
    double produced = home.implied().orElseThrow().likely();
    double excess = VapourBalance.excessKgM3(produced, flow);
    double pressure =
        home.implied().orElseThrow().working().inputs().stream()
            .filter(i -> i.symbol().equals("Δp"))
            .map(Input::value)
            .findFirst()
            .orElseThrow()
            .likely();
    assertThat(excess * 461.5 * 293.15 / pressure).isCloseTo(1, within(1e-9));
  }

  @Test
  void more_water_than_the_list_explains_is_a_finding() {
    MoistureResult home = withFlow(0.3);
    Finding finding = home.finding();
    assertThat(home.balance()).isEqualTo(Balance.MORE_THAN_ITEMISED);
    assertThat(finding.verdict()).isEqualTo(Verdict.SHORT);
    assertThat(finding.direction()).isEqualTo(Direction.AGREES);
    assertThat(finding.because()).contains("a source is missing", "less air than believed");
    assertThat(finding.settledBy().orElseThrow()).contains("loggers");
    assertThat(home.implied().orElseThrow().value().low())
        .isGreaterThan(home.itemised().value().high());
  }

  @Test
  void less_water_than_the_list_says_is_said_too() {
    MoistureResult home = withFlow(0.001);
    assertThat(home.balance()).isEqualTo(Balance.LESS_THAN_ITEMISED);
    assertThat(home.finding().verdict()).isEqualTo(Verdict.MEETS);
    assertThat(home.finding().because()).contains("more air than believed");
    assertThat(home.finding().settledBy()).isPresent();
  }

  @Test
  void ranges_that_overlap_agree_and_prove_nothing() {
    MoistureResult home = assess(OUTDOOR, INDOOR, new Range(0.01, 0.02, 0.03));
    assertThat(home.balance()).isEqualTo(Balance.AGREE);
    assertThat(home.finding().because()).contains("proves neither");
    assertThat(home.finding().settledBy()).isEmpty();
  }

  @Test
  void what_keeps_the_readings_from_telling_is_named() {
    untold(assess(OUTDOOR, "{temperature: 20 C}", Range.exactly(0.03)), "No humidity was read");
    untold(assess("", INDOOR, Range.exactly(0.03)), "not both read outdoors");
    untold(
        assess(OUTDOOR, "{temperature: 20 C, humidity: 34 %}", Range.exactly(0.03)),
        "hygrometer's error");
    untold(assess(OUTDOOR, INDOOR, Range.exactly(0)), "No air flow");
  }

  private static void untold(MoistureResult home, String why) {
    assertThat(home.balance()).isEqualTo(Balance.UNKNOWN);
    assertThat(home.finding().verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(home.finding().because()).contains(why);
    assertThat(home.implied()).isEmpty();
  }

  /** Below the least excess nothing is implied; a negative bound is no negative production. */
  @Test
  void a_bound_below_nothing_counts_as_nothing() {
    MoistureResult home =
        assess(OUTDOOR, "{temperature: 20 C, humidity: 40 % ± 15 %}", Range.exactly(0.03));
    assertThat(home.implied().orElseThrow().value().low()).isZero();
    assertThat(home.implied().orElseThrow().likely()).isPositive();
  }
}
