package org.drysill.assess.recovery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.HomeFixtures;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.physics.Range;
import org.drysill.reference.readings.ReadingRules;
import org.drysill.reference.recovery.RecoveryDefaults;
import org.drysill.survey.log.Logs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeatRecoveryAssessorTest {
  private static final RecoveryDefaults DEFAULTS = RecoveryDefaults.bundled();
  private static final String TEST =
      "{indoor: 20.0 C, outdoor: 3.0 C, supply: 12.2 C, extract: 20.1 C, exhaust: 9.8 C";

  private static HeatRecoveryResult assess(String fans, Map<String, Figure> flows) {
    return HeatRecoveryAssessor.assess(
        HomeFixtures.home("- {id: kitchen, use: kitchen, fans: [" + fans + "]}"),
        Logs.none(),
        flows,
        DEFAULTS,
        ReadingRules.bundled().accuracy());
  }

  private static RecoveryUnit unit(String keys) {
    return assess("{id: u, " + keys + "}", Map.of()).unit("u").orElseThrow();
  }

  private static RecoveryTest test(String kind, String test) {
    return unit("kind: " + kind + ", heat_recovery_tests: [" + test + "]").tests().get(0);
  }

  /** Common practice of the trade: 22 °C indoors, 11 °C outdoors, 17 °C supplied is 54.5 %. */
  @Test
  void the_common_check_is_54_and_a_half_percent() {
    RecoveryTest test =
        test("simultaneous heat recovery", "{indoor: 22 C, outdoor: 11 C, supply: 17 C}");
    assertThat(test.supplyRatio().orElseThrow().likely()).isCloseTo(0.5454545, within(1e-6));
    assertThat(test.quality()).isEqualTo(TestQuality.NORMAL);
    assertThat(test.exhaustRatio()).isEmpty();
  }

  /**
   * EN 13141-7 (memory): 20 °C, 7 °C, 17.4 °C is 0.80; with 0.5 K on each thermometer u = 0.5/13 x
   * √(1 + 0.64 + 0.04) = 0.0499 (GUM, own arithmetic).
   */
  @Test
  void the_laboratory_point_with_its_error() {
    Range ratio =
        test("simultaneous heat recovery", "{indoor: 20 C, outdoor: 7 C, supply: 17.4 C}")
            .supplyRatio()
            .orElseThrow()
            .value();
    assertThat(ratio.likely()).isCloseTo(0.80, within(1e-9));
    assertThat(ratio.high() - ratio.likely()).isCloseTo(0.0499, within(0.0001));
    assertThat(ratio.likely() - ratio.low()).isCloseTo(0.0499, within(0.0001));
  }

  /**
   * (12.2 - 3) / (20 - 3) = 0.541 on the supply side, (20.1 - 9.8) / (20.1 - 3) = 0.602 on the
   * other.
   */
  @Test
  void both_sides_are_shown_apart() {
    RecoveryTest test = test("alternating heat recovery", TEST + "}");
    assertThat(test.supplyRatio().orElseThrow().likely()).isCloseTo(0.541, within(0.0005));
    assertThat(test.exhaustRatio().orElseThrow().likely()).isCloseTo(0.602, within(0.0005));
    assertThat(test.difference().orElseThrow().likely()).isCloseTo(17, within(1e-9));
    assertThat(test.exhaustRatio().orElseThrow().working().note().orElseThrow())
        .contains("never averaged");
  }

  @Test
  void a_single_reading_of_an_alternating_unit_warns_and_lowers_the_lower_bound() {
    RecoveryTest single = test("alternating heat recovery", TEST + "}");
    RecoveryTest whole = test("alternating heat recovery", TEST + ", whole_cycle: yes}");
    assertThat(single.warnings()).hasSize(1);
    assertThat(single.warnings().get(0)).contains("start of supply reads high");
    assertThat(whole.warnings()).isEmpty();
    assertThat(single.supplyRatio().orElseThrow().value().low())
        .isCloseTo(0.866 * whole.supplyRatio().orElseThrow().value().low(), within(1e-9));
    assertThat(single.supplyRatio().orElseThrow().working().note()).isPresent();
    assertThat(whole.supplyRatio().orElseThrow().working().note()).isEmpty();
  }

  @Test
  void below_five_kelvin_there_is_no_result_below_ten_an_indication() {
    RecoveryTest refused =
        test("simultaneous heat recovery", "{indoor: 20 C, outdoor: 15.1 C, supply: 18 C}");
    assertThat(refused.quality()).isEqualTo(TestQuality.REFUSED);
    assertThat(refused.supplyRatio()).isEmpty();
    assertThat(refused.why())
        .isEqualTo(
            "Refused: indoors was only 4.9 K warmer than outdoors; below 5 K the test says"
                + " nothing.");
    RecoveryTest indicative =
        test("simultaneous heat recovery", "{indoor: 20 C, outdoor: 15 C, supply: 18 C}");
    assertThat(indicative.quality()).isEqualTo(TestQuality.INDICATIVE);
    assertThat(indicative.why()).startsWith("Indicative only: indoors was 5 K warmer");
    assertThat(
            test("simultaneous heat recovery", "{indoor: 20 C, outdoor: 10 C, supply: 18 C}")
                .quality())
        .isEqualTo(TestQuality.NORMAL);
  }

  @Test
  void impossible_supply_temperatures_are_refused() {
    assertThat(
            test("simultaneous heat recovery", "{indoor: 20 C, outdoor: 5 C, supply: 21 C}").why())
        .contains("warmer than the room");
    assertThat(
            test("simultaneous heat recovery", "{indoor: 20 C, outdoor: 5 C, supply: 4 C}").why())
        .contains("colder than outdoors");
  }

  @Test
  void missing_temperatures_are_named() {
    assertThat(test("simultaneous heat recovery", "{supply: 12 C}").why())
        .isEqualTo("Refused: no indoor and no outdoor temperature was noted.");
    assertThat(test("simultaneous heat recovery", "{indoor: 20 C, outdoor: 3 C}").why())
        .isEqualTo("Refused: no supply temperature was noted.");
  }

  @Test
  void extract_air_stands_in_for_room_air() {
    assertThat(
            test("simultaneous heat recovery", "{extract: 22 C, outdoor: 11 C, supply: 17 C}")
                .supplyRatio()
                .orElseThrow()
                .likely())
        .isCloseTo(0.545, within(0.001));
  }

  @Test
  void a_test_of_the_exhaust_alone_gives_no_supply_ratio() {
    RecoveryUnit unit =
        unit(
            "kind: simultaneous heat recovery, declared_heat_recovery: 85 %, heat_recovery_tests:"
                + " [{indoor: 20 C, outdoor: 3 C, exhaust: 9 C}]");
    assertThat(unit.tests().get(0).exhaustRatio()).isPresent();
    assertThat(unit.measured()).isEmpty();
    assertThat(unit.saved()).isEmpty();
  }

  @Test
  void a_log_that_could_not_be_read_leaves_the_readings_beside_it() {
    RecoveryTest log = test("alternating heat recovery", "{log: logs/cycle.csv}");
    assertThat(log.quality()).isEqualTo(TestQuality.REFUSED);
    assertThat(log.form()).isEqualTo(TestForm.LOG);
    assertThat(log.why()).isEqualTo("Refused: its log of cycles could not be read.");
    RecoveryTest both =
        test("alternating heat recovery", TEST + ", whole_cycle: yes, log: logs/cycle.csv}");
    assertThat(both.quality()).isEqualTo(TestQuality.NORMAL);
    assertThat(both.form()).isEqualTo(TestForm.MEANS);
    assertThat(both.warnings())
        .containsExactly("Of its log: Refused: its log of cycles could not be read.");
  }

  @Test
  void a_unit_that_does_not_alternate_has_no_cycle() {
    assertThat(test("simultaneous heat recovery", "{log: logs/cycle.csv}").why())
        .contains("does not blow both ways in turn");
  }

  /** 0.54 from means over whole cycles; a single reading of 0.69 tells its moment. */
  @Test
  void single_readings_do_not_count_beside_whole_cycles() {
    String means =
        "kind: alternating heat recovery, measured_flow: 11 l/s, heat_recovery_tests: ["
            + TEST
            + ", whole_cycle: yes}";
    RecoveryUnit alone = unit(means + "]");
    RecoveryUnit both =
        unit(means + ", {indoor: 20 C, outdoor: 3.4 C, supply: 14.9 C, whole_cycle: no}]");
    assertThat(both.tests()).hasSize(2);
    assertThat(both.measured().orElseThrow().value())
        .isEqualTo(alone.measured().orElseThrow().value());
    assertThat(both.saved().orElseThrow().heat().value())
        .isEqualTo(alone.saved().orElseThrow().heat().value());
  }

  @Test
  void a_declared_ratio_is_held_against_the_measured_one() {
    RecoveryUnit unit =
        unit(
            "kind: alternating heat recovery, declared_heat_recovery: 85 %, heat_recovery_tests: ["
                + TEST
                + "}]");
    assertThat(unit.declaredAgainstMeasured().orElseThrow().verdict()).isEqualTo(Verdict.SHORT);
    assertThat(unit.declaredAgainstMeasured().orElseThrow().because())
        .contains("falls short")
        .contains("declared 85 %");
    assertThat(unit.verdict()).startsWith("It keeps about 54 % of the heat");
    assertThat(unit.declared().orElseThrow().working().note()).isPresent();
  }

  @Test
  void a_measured_ratio_may_reach_or_straddle_the_declared_one() {
    String test = "heat_recovery_tests: [{indoor: 20 C, outdoor: 3 C, supply: 12.2 C}]";
    assertThat(
            unit("kind: balanced heat recovery, declared_heat_recovery: 40 %, " + test)
                .declaredAgainstMeasured()
                .orElseThrow()
                .verdict())
        .isEqualTo(Verdict.MEETS);
    RecoveryUnit close =
        unit("kind: balanced heat recovery, declared_heat_recovery: 55 %, " + test);
    assertThat(close.declaredAgainstMeasured().orElseThrow().verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(close.declaredAgainstMeasured().orElseThrow().settledBy().orElseThrow())
        .contains("13 K");
  }

  @Test
  void a_unit_without_tests_is_declared_only() {
    HeatRecoveryResult result =
        assess("{id: u, kind: alternating heat recovery, declared_heat_recovery: 85 %}", Map.of());
    RecoveryUnit unit = result.unit("u").orElseThrow();
    assertThat(unit.verdict()).contains("nobody has measured");
    assertThat(unit.notes()).anyMatch(n -> n.contains("No temperatures were taken"));
    assertThat(result.findings()).hasSize(1);
    assertThat(result.findings().get(0).verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(result.assumptions()).isEmpty();
  }

  @Test
  void a_unit_of_which_nothing_is_known_says_so() {
    RecoveryUnit unit = unit("kind: balanced heat recovery");
    assertThat(unit.verdict()).startsWith("Neither a declared nor a measured");
    assertThat(unit.declaredAgainstMeasured()).isEmpty();
  }

  @Test
  void plain_fans_are_left_out_and_dead_units_save_nothing() {
    assertThat(assess("{id: f, kind: intermittent extract}", Map.of()).units()).isEmpty();
    RecoveryUnit dead =
        unit(
            "kind: fitted but not working, measured_flow: 11 l/s, heat_recovery_tests: ["
                + TEST
                + "}]");
    assertThat(dead.saved()).isEmpty();
    assertThat(dead.notes()).anyMatch(n -> n.contains("does not work"));
    assertThat(
            assess("{id: p, kind: positive input, declared_heat_recovery: 10 %}", Map.of()).units())
        .hasSize(1);
  }

  /**
   * 11 l/s in a phase are 5.5 l/s of exchange: 0.0055 x 1224 J/(m³·K) x 0.5412 x 17 K = 61.9 W,
   * less 3.5 W for the fan.
   */
  @Test
  void an_alternating_unit_saves_by_half_of_its_flow() {
    HeatSaved saved =
        unit("kind: alternating heat recovery, measured_flow: {value: 11 l/s, instrument: hood},"
                + " power: 3.5 W, heat_recovery_tests: ["
                + TEST
                + "}]")
            .saved()
            .orElseThrow();
    assertThat(saved.exchange().likely()).isCloseTo(0.0055, within(1e-9));
    assertThat(saved.heat().likely()).isCloseTo(61.9, within(0.1));
    assertThat(saved.net().orElseThrow().likely()).isCloseTo(58.4, within(0.1));
    assertThat(saved.heat().working().inputs()).hasSize(3);
    assertThat(saved.exchange().working().note()).isPresent();
  }

  @Test
  void a_declared_flow_is_derated_and_a_given_flow_counts_first() {
    String keys =
        "{id: u, kind: simultaneous heat recovery, declared_flow: 20 l/s, heat_recovery_tests: ["
            + TEST
            + "}]}";
    HeatSaved own = assess(keys, Map.of()).unit("u").orElseThrow().saved().orElseThrow();
    assertThat(own.exchange().value().low()).isCloseTo(0.010, within(1e-9));
    assertThat(own.exchange().value().high()).isCloseTo(0.020, within(1e-9));
    assertThat(own.exchange().basis()).isEqualTo(Basis.DECLARED);
    assertThat(own.net()).isEmpty();
    Figure given = HomeFixtures.figure("flow", Range.exactly(0.012), Unit.AIRFLOW);
    assertThat(
            assess(keys, Map.of("u", given))
                .unit("u")
                .orElseThrow()
                .saved()
                .orElseThrow()
                .exchange()
                .likely())
        .isEqualTo(0.012);
  }

  /** Own arithmetic: 0.541 x 8/11 = 0.394, the rest comes in cold. */
  @Test
  void unequal_flows_of_a_pair_recover_less() {
    String pair =
        "{id: u, kind: alternating heat recovery, paired_with: v, measured_flow: 11 l/s,"
            + " heat_recovery_tests: ["
            + TEST
            + "}]}, {id: v, kind: alternating heat recovery, measured_flow: 8 l/s}";
    RecoveryUnit unit = assess(pair, Map.of()).unit("u").orElseThrow();
    assertThat(unit.effective().orElseThrow().likely()).isCloseTo(0.394, within(0.001));
    assertThat(unit.effective().orElseThrow().value().high())
        .isLessThanOrEqualTo(unit.measured().orElseThrow().value().high());
    assertThat(unit.effective().orElseThrow().working().inputs()).hasSize(3);
    assertThat(unit.notes()).anyMatch(n -> n.contains("the smaller one governs"));
  }

  @Test
  void a_pair_with_an_unmeasured_or_unknown_partner_has_no_balance() {
    for (String other : new String[] {"v", "nowhere"}) {
      String pair =
          "{id: u, kind: alternating heat recovery, paired_with: "
              + other
              + ", measured_flow: 11 l/s, heat_recovery_tests: ["
              + TEST
              + "}]}, {id: v, kind: alternating heat recovery}";
      assertThat(assess(pair, Map.of()).unit("u").orElseThrow().effective()).isEmpty();
    }
  }

  /** The smaller flow governs whichever of the two it is, and no flow at all has no balance. */
  @Test
  void the_balance_of_a_pair_does_not_ask_which_unit_is_named_first() {
    String pair =
        "{id: u, kind: alternating heat recovery, paired_with: v, measured_flow: %s,"
            + " heat_recovery_tests: ["
            + TEST
            + "}]}, {id: v, kind: alternating heat recovery, measured_flow: %s}";
    RecoveryUnit less = assess(pair.formatted("8 l/s", "11 l/s"), Map.of()).unit("u").orElseThrow();
    RecoveryUnit more = assess(pair.formatted("11 l/s", "8 l/s"), Map.of()).unit("u").orElseThrow();
    assertThat(less.effective().orElseThrow().value())
        .isEqualTo(more.effective().orElseThrow().value());
    for (String[] still : new String[][] {{"0 l/s", "8 l/s"}, {"8 l/s", "0 l/s"}}) {
      RecoveryUnit unit =
          assess(pair.formatted(still[0], still[1]), Map.of()).unit("u").orElseThrow();
      assertThat(unit.effective()).isEmpty();
    }
  }

  @Test
  void the_exchange_of_a_unit_that_does_not_alternate_is_its_whole_flow() {
    HeatSaved saved =
        unit("kind: simultaneous heat recovery, measured_flow: 11 l/s, heat_recovery_tests: ["
                + TEST
                + "}]")
            .saved()
            .orElseThrow();
    assertThat(saved.exchange().likely()).isCloseTo(0.011, within(1e-9));
    assertThat(saved.exchange().working().formula()).isEqualTo("q = q_running");
    assertThat(saved.exchange().working().note()).isEmpty();
  }

  @Test
  void a_dead_unit_with_tests_of_its_better_days_saves_nothing() {
    assertThat(unit("kind: fitted but not working, heat_recovery_tests: [" + TEST + "}]").saved())
        .isEmpty();
  }

  /** GUM, own arithmetic: u = s/ΔT √(1 + η² + (1 - η)²), for s = 0.5 K assumed and ΔT of 12 K. */
  @ParameterizedTest
  @CsvSource({"8, 0.0", "14, 0.5", "17, 0.75", "20, 1.0"})
  void the_error_of_a_ratio_follows_the_formula(double supply, double ratio) {
    Range found =
        test("simultaneous heat recovery", "{indoor: 20 C, outdoor: 8 C, supply: " + supply + " C}")
            .supplyRatio()
            .orElseThrow()
            .value();
    double u = 0.5 / 12 * Math.sqrt(1 + ratio * ratio + (1 - ratio) * (1 - ratio));
    assertThat(found.likely()).isCloseTo(ratio, within(1e-12));
    assertThat(found.low()).isCloseTo(Math.max(0, ratio - u), within(1e-12));
    assertThat(found.high()).isCloseTo(Math.min(1, ratio + u), within(1e-12));
  }

  /** An accuracy that nobody states is listed, for a thermometer as for a flow. */
  @Test
  void assumed_accuracies_are_listed() {
    HeatRecoveryResult result =
        assess(
            "{id: u, kind: simultaneous heat recovery, measured_flow: 11 l/s,"
                + " heat_recovery_tests: ["
                + TEST
                + "}]}",
            Map.of());
    assertThat(result.assumptions())
        .extracting(Assumption::id)
        .contains("instrument.unnamed.temperature_accuracy", "instrument.unnamed.flow_accuracy");
  }

  @Test
  void several_tests_are_weighted_together() {
    RecoveryUnit unit =
        unit(
            "kind: simultaneous heat recovery, heat_recovery_tests: [{indoor: 20 C, outdoor: 0 C,"
                + " supply: 10 C}, {indoor: 20 C, outdoor: 0 C, supply: 14 C}]");
    Range measured = unit.measured().orElseThrow().value();
    assertThat(measured.likely()).isBetween(0.5, 0.7);
    assertThat(measured.low()).isLessThan(0.55);
    assertThat(unit.measured().orElseThrow().working().inputs()).hasSize(2);
  }

  /**
   * Estimate by hand: aluminium, D 160 mm, t 1 mm, L 300 mm: K = 160 x π x 0.16 x 0.001 / 0.3 =
   * 0.268 W/K; lips of 30 mm, 7.7 and 25 W/(m²·K): factor 0.426, and 0.12 more by the wall around
   * it; plastic 3 mm 0.993.
   */
  @Test
  void a_metal_sleeve_is_a_cold_bridge() {
    HeatRecoveryResult result =
        assess(
            "{id: u, kind: alternating heat recovery, duct: {diameter: 160 mm, length: 300 mm,"
                + " material: metal sleeve}}",
            Map.of());
    SleeveBridge sleeve = result.unit("u").orElseThrow().sleeve().orElseThrow();
    assertThat(sleeve.conductance().likely()).isCloseTo(0.268, within(0.0005));
    assertThat(sleeve.innerEnd().likely()).isCloseTo(0.546, within(0.0005));
    assertThat(sleeve.alternative().likely()).isCloseTo(0.993, within(0.0005));
    assertThat(sleeve.words())
        .contains("water forms on a metal rim below 2 °C outdoors, on a plastic one in no weather")
        .contains("An estimate.");
    assertThat(sleeve.innerEnd().working().sources()).hasSize(5);
    assertThat(sleeve.conductance().working().sources()).hasSize(3);
    assertThat(result.assumptions()).extracting(a -> a.id()).containsExactly("recovery.sleeve");
  }

  @Test
  void plastic_sleeves_and_sleeves_of_unknown_size_are_no_bridge() {
    for (String duct :
        new String[] {
          "{diameter: 160 mm, length: 300 mm, material: smooth plastic}",
          "{diameter: 160 mm, length: 300 mm}",
          "{length: 300 mm, material: metal sleeve}",
          "{diameter: 160 mm, length: 0 mm, material: galvanised steel}"
        }) {
      assertThat(unit("kind: alternating heat recovery, duct: " + duct).sleeve()).isEmpty();
    }
  }
}
