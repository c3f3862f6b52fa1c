package org.drysill.assess.ventilation.provided;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.ventilation.VentilationFixtures;
import org.drysill.assess.ventilation.provided.FanFlow.Counting;
import org.drysill.physics.Airflow;
import org.drysill.physics.Range;
import org.drysill.survey.FanKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What fans count for. Deratings, hours and unstated flows are planning assumptions, not published.
 */
class FanFlowsTest {
  private static final Offset<Double> TINY = within(1e-12);

  private static ProvidedAir air(String... fans) {
    return Provision.of(
        VentilationFixtures.home(
            "england",
            "floor_area: 84, volume: 200",
            "- {id: bath, use: bathroom, fans: [" + String.join(", ", fans) + "]}"),
        VentilationFixtures.DEFAULTS,
        Map.of());
  }

  private static FanFlow fan(String keys) {
    return air("{id: fan, " + keys + "}").fans().get(0);
  }

  private static Range litres(double low, double likely, double high) {
    return new Range(low / 1000, likely / 1000, high / 1000);
  }

  private static void assertRange(Figure figure, Range expected) {
    assertThat(figure.value().low()).as(figure.id()).isCloseTo(expected.low(), TINY);
    assertThat(figure.value().likely()).as(figure.id()).isCloseTo(expected.likely(), TINY);
    assertThat(figure.value().high()).as(figure.id()).isCloseTo(expected.high(), TINY);
  }

  private static List<String> ids(ProvidedAir air) {
    return air.assumptions().stream().map(Assumption::id).toList();
  }

  @Test
  void measured_beats_declared() {
    FanFlow fan =
        fan(
            "kind: intermittent extract, declared_flow: 30 l/s,"
                + " measured_flow: {value: 10 l/s, instrument: hood}");
    assertRange(fan.running(), litres(9.5, 10, 10.5));
    assertThat(fan.running().basis()).isEqualTo(Basis.MEASURED);
    assertThat(fan.derating()).isEmpty();
    assertThat(fan.stated()).isTrue();
    Working working = fan.running().working();
    assertThat(working.inputs()).extracting(Working.Input::basis).contains(Basis.DECLARED);
    assertThat(working.sources()).isEmpty();
  }

  @Test
  void a_reading_with_its_own_uncertainty_keeps_it() {
    FanFlow fan = fan("kind: intermittent extract, measured_flow: {value: 8..12 l/s}");
    assertRange(fan.running(), litres(8, 10, 12));
  }

  @Test
  void a_reading_by_an_instrument_that_tells_no_accuracy_is_taken_wide_and_said_once() {
    ProvidedAir air =
        air(
            "{id: a, kind: intermittent extract, measured_flow: {value: 10 l/s, instrument: th1}}",
            "{id: b, kind: intermittent extract, measured_flow: 20 l/s}");
    assertRange(air.fans().get(0).running(), litres(8.5, 10, 11.5));
    assertRange(air.fans().get(1).running(), litres(17, 20, 23));
    assertThat(ids(air)).containsOnlyOnce("ventilation.flow_accuracy");
    assertThat(air.fans().get(0).running().working().sources()).hasSize(1);
  }

  @Test
  void the_flow_at_boost_stands_beside_the_usual_one() {
    FanFlow fan =
        fan(
            "kind: continuous extract, measured_flow: {value: 4 l/s, instrument: hood},"
                + " boost_flow: {value: 10 l/s, instrument: hood}");
    assertRange(fan.running(), litres(3.8, 4, 4.2));
    assertThat(fan.extractAtBoost().orElseThrow().likely()).isCloseTo(0.010, TINY);
    assertThat(fan("kind: continuous extract").extractAtBoost()).isEmpty();
  }

  /** Factors of defaults/ventilation.yaml, planning assumptions. */
  @ParameterizedTest
  @CsvSource({
    "'duct: {length: 350 mm, bends: 0}', 0.8, 0.2",
    "'duct: {length: 600 mm}', 0.8, 0.2",
    "'duct: {length: 601 mm}', 0.65, 0.25",
    "'duct: {length: 350 mm, bends: 1}', 0.65, 0.25",
    "'duct: {length: 1500 mm}', 0.65, 0.25",
    "'duct: {length: 1501 mm}', 0.4, 0.3",
    "'duct: {length: 350 mm, bends: 2}', 0.4, 0.3",
    "'duct: {length: 350 mm, material: slack flexible}', 0.4, 0.3",
    "'duct: {length: 350 mm, material: smooth plastic}', 0.8, 0.2",
    "'duct: {diameter: 100 mm}', 0.65, 0.35",
    "'run: manual', 0.65, 0.35"
  })
  void a_declared_flow_is_derated_by_its_duct(String duct, double factor, double spread) {
    FanFlow fan = fan("kind: intermittent extract, declared_flow: 20 l/s, " + duct);
    assertRange(fan.running(), litres(20 * (factor - spread), 20 * factor, 20 * (factor + spread)));
    assertThat(fan.running().basis()).isEqualTo(Basis.ASSUMED);
    assertThat(fan.derating().orElseThrow()).contains("20 l/s").contains("a planning assumption");
    assertThat(fan.running().working().inputs()).hasSize(2);
  }

  @ParameterizedTest
  @CsvSource({"balanced heat recovery", "positive input"})
  void a_fan_made_for_ducts_is_derated_as_such(String kind) {
    FanFlow fan = fan("kind: " + kind + ", declared_flow: 20 l/s, duct: {length: 9 m, bends: 5}");
    assertRange(fan.running(), litres(12, 16, 20));
  }

  @Test
  void a_fan_of_unknown_flow_gets_a_wide_range_and_says_what_to_measure() {
    ProvidedAir air = air("{id: fan, name: Wall fan, kind: intermittent extract}");
    FanFlow fan = air.fans().get(0);
    assertRange(fan.running(), litres(3, 14, 25));
    assertThat(fan.stated()).isFalse();
    assertThat(fan.derating()).isEmpty();
    assertThat(air.assumptions())
        .filteredOn(a -> a.id().equals("fan.fan.flow"))
        .singleElement()
        .satisfies(a -> assertThat(a.better()).contains("Wall fan").contains("flow hood"));
    assertThat(fan.running().working().inputs()).hasSize(1);
  }

  @Test
  void a_fan_without_a_name_is_called_by_its_kind_and_room() {
    assertThat(fan("kind: intermittent extract").name())
        .isEqualTo("the intermittent extract in the Bath");
    assertThat(fan("name: Wall fan, kind: intermittent extract").name()).isEqualTo("Wall fan");
  }

  @ParameterizedTest
  @CsvSource({
    "intermittent extract, EXTRACT, 0, 1",
    "extract hood, EXTRACT, 0, 1",
    "continuous extract, EXTRACT, 0, 1",
    "passive stack, EXTRACT, 0, 1",
    "positive input, SUPPLY, 1, 0",
    "alternating heat recovery, ALTERNATING, 0.5, 0.5",
    "simultaneous heat recovery, EXCHANGE, 1, 1",
    "balanced heat recovery, EXCHANGE, 1, 1",
    "recirculating hood, NOTHING, 0, 0",
    "fitted but not working, NOTHING, 0, 0"
  })
  void each_kind_counts_in_its_way(String kind, Counting counting, double in, double out) {
    FanFlow fan =
        fan(
            "kind: "
                + kind
                + ", run: continuous, measured_flow: {value: 10 l/s, instrument: hood}");
    assertThat(fan.counting()).isEqualTo(counting);
    assertThat(fan.supply().likely()).isCloseTo(0.010 * in, TINY);
    assertThat(fan.extract().likely()).isCloseTo(0.010 * out, TINY);
    assertThat(fan.extractWhileRunning().likely()).isCloseTo(0.010 * out, TINY);
    assertThat(fan.why()).endsWith(".");
    assertThat(fan.supply().working().note()).contains(fan.why());
  }

  @ParameterizedTest
  @EnumSource(FanKind.class)
  void every_kind_has_a_sort_and_a_pattern(FanKind kind) {
    assertThat(VentilationFixtures.DEFAULTS.unstated(FanClasses.sort(kind)).flow().high())
        .isPositive();
    boolean counts = FanClasses.counting(kind) != Counting.NOTHING;
    assertThat(FanClasses.madeToRunAlways(kind) && !counts).isFalse();
  }

  /** E37 of the worked rows: a lone unit of 40 m3/h brings 20, a pair 40; arithmetic. */
  @Test
  void a_lone_alternating_unit_is_half_its_phase_flow_and_a_pair_is_one_of_them() {
    String unit =
        "kind: alternating heat recovery, run: continuous,"
            + " measured_flow: {value: 40 m3/h, instrument: hood}";
    ProvidedAir alone = air("{id: a, " + unit + "}");
    assertThat(Airflow.m3PerSecond(alone.supply().likely()).m3PerHour())
        .isCloseTo(20, within(1e-9));
    assertThat(alone.fans().get(0).why()).contains("without a partner");
    ProvidedAir pair =
        air("{id: a, paired_with: b, " + unit + "}", "{id: b, paired_with: a, " + unit + "}");
    assertThat(Airflow.m3PerSecond(pair.supply().likely()).m3PerHour()).isCloseTo(40, within(1e-9));
    assertThat(pair.fans().get(0).why()).contains("its partner b");
    assertThat(pair.supply().value()).isEqualTo(pair.extract().value());
  }

  @ParameterizedTest
  @CsvSource({"recirculating hood, filters grease", "fitted but not working, moves no air"})
  void what_moves_no_air_between_inside_and_outside_says_why(String kind, String why) {
    ProvidedAir air =
        air("{id: fan, kind: " + kind + ", declared_flow: 60 l/s, power: 100 W, run: continuous}");
    FanFlow fan = air.fans().get(0);
    assertThat(fan.running().value()).isEqualTo(Range.exactly(0));
    assertThat(fan.shareOfDay().value()).isEqualTo(Range.exactly(0));
    assertThat(fan.running().working().note().orElseThrow())
        .contains(why)
        .contains("counts nothing");
    assertThat(fan.specificFanPower()).isEmpty();
    assertThat(fan.boost()).isEmpty();
    assertThat(fan.derating()).isEmpty();
    assertThat(ids(air)).noneMatch(id -> id.startsWith("fan."));
    assertThat(air.byFans().value()).isEqualTo(Range.exactly(0));
  }

  @ParameterizedTest
  @CsvSource({
    "hours_per_day: 6 h, 0.25, 0.25",
    "run: continuous, 1, 1",
    "run: humidity-controlled, 0.0416667, 0.4166667",
    "run: with light, 0.0208333, 0.1041667",
    "run: manual, 0.0083333, 0.0833333",
    "run: hours per day, 0.0083333, 0.1666667",
    "power: 3 W, 0.0083333, 0.1666667"
  })
  void the_flow_while_it_runs_is_averaged_over_the_hours_that_it_runs(
      String run, double low, double high) {
    FanFlow fan = fan("kind: intermittent extract, measured_flow: {value: 10..10 l/s}, " + run);
    assertThat(fan.shareOfDay().value().low()).isCloseTo(low, within(1e-6));
    assertThat(fan.shareOfDay().value().high()).isCloseTo(high, within(1e-6));
    assertThat(fan.extract().value().low())
        .isCloseTo(fan.running().value().low() * fan.shareOfDay().value().low(), TINY);
    assertThat(fan.extractWhileRunning()).isEqualTo(fan.running().value());
  }

  @Test
  void hours_that_nobody_recorded_are_listed_with_what_would_replace_them() {
    ProvidedAir said = air("{id: fan, kind: intermittent extract, run: manual}");
    assertThat(said.assumptions())
        .filteredOn(a -> a.id().equals("fan.fan.hours"))
        .singleElement()
        .satisfies(a -> assertThat(a.why()).contains("manual"))
        .satisfies(a -> assertThat(a.better()).contains("how many hours a day"));
    ProvidedAir silent = air("{id: fan, kind: continuous extract}");
    assertThat(silent.fans().get(0).shareOfDay().value()).isEqualTo(Range.exactly(1));
    assertThat(silent.fans().get(0).shareOfDay().basis()).isEqualTo(Basis.ASSUMED);
    assertThat(silent.assumptions())
        .filteredOn(a -> a.id().equals("fan.fan.hours"))
        .singleElement()
        .satisfies(a -> assertThat(a.why()).contains("does not say"));
    ProvidedAir stated = air("{id: fan, kind: continuous extract, run: continuous}");
    assertThat(ids(stated)).doesNotContain("fan.fan.hours");
    assertThat(stated.fans().get(0).shareOfDay().basis()).isEqualTo(Basis.DECLARED);
    assertThat(stated.fans().get(0).shareOfDay().working().formula()).isEqualTo("s = h / 24 h");
  }

  /** 3.5 W over half of 40 m3/h, and over all of it; arithmetic. */
  @Test
  void power_is_told_by_the_flow_that_is_exchanged() {
    String keys = "power: 3.6 W, measured_flow: {value: 36..36 m3/h}, kind: ";
    assertThat(fan(keys + "alternating heat recovery").specificFanPower().orElseThrow().likely())
        .isCloseTo(720, within(1e-9));
    Figure single = fan(keys + "continuous extract").specificFanPower().orElseThrow();
    assertThat(single.likely()).isCloseTo(360, within(1e-9));
    assertThat(single.working().inputs()).hasSize(3);
    assertThat(fan("kind: continuous extract, measured_flow: 9 l/s").specificFanPower()).isEmpty();
    assertThat(
            fan("kind: continuous extract, power: 3 W, measured_flow: {value: 0 l/s}")
                .specificFanPower())
        .isEmpty();
  }

  /** Of 70 s it blows 63: 10 l/s within a phase exchange 5 · 0.9; arithmetic. */
  @Test
  void the_pause_of_an_alternating_unit_counts_against_what_it_exchanges() {
    String unit =
        "kind: alternating heat recovery, run: continuous, power: 4.5 W,"
            + " measured_flow: {value: 10..10 l/s}, boost_flow: {value: 20..20 l/s}, ";
    ProvidedAir air = air("{id: fan, " + unit + "half_cycle: 70 s, switching_pause: 7 s}");
    FanFlow fan = air.fans().get(0);
    assertThat(fan.inMotion().orElseThrow().likely()).isCloseTo(0.9, TINY);
    assertThat(fan.inMotion().orElseThrow().basis()).isEqualTo(Basis.MEASURED);
    assertThat(fan.inMotion().orElseThrow().working().sources()).isEmpty();
    assertThat(fan.supply().likely()).isCloseTo(0.0045, TINY);
    assertThat(fan.supply().working().formula()).isEqualTo("q_mean = c × s × m × q");
    assertThat(fan.supply().working().inputs()).hasSize(4);
    assertThat(fan.supplyWhileRunning().likely()).isCloseTo(0.0045, TINY);
    assertThat(fan.extractWhileRunning().likely()).isCloseTo(0.0045, TINY);
    assertThat(fan.extractAtBoost().orElseThrow().likely()).isCloseTo(0.009, TINY);
    assertThat(fan.specificFanPower().orElseThrow().likely()).isCloseTo(1000, within(1e-9));
    assertThat(air.supply().likely()).isCloseTo(0.0045, TINY);
    assertThat(ids(air)).noneMatch(id -> id.startsWith("fan."));
  }

  @Test
  void a_pause_without_a_half_cycle_is_reckoned_by_a_usual_one_and_said() {
    ProvidedAir air =
        air(
            "{id: fan, kind: alternating heat recovery, run: continuous, switching_pause: 7 s,"
                + " measured_flow: {value: 10..10 l/s}}",
            "{id: slow, kind: alternating heat recovery, run: continuous, switching_pause: 90 s,"
                + " measured_flow: {value: 10..10 l/s}}");
    Figure share = air.fans().get(0).inMotion().orElseThrow();
    assertThat(share.value().low()).isCloseTo(53.0 / 60, TINY);
    assertThat(share.value().high()).isCloseTo(73.0 / 80, TINY);
    assertThat(share.basis()).isEqualTo(Basis.ASSUMED);
    assertThat(share.working().sources()).hasSize(1);
    assertThat(ids(air))
        .filteredOn(id -> id.startsWith("fan."))
        .containsExactly("fan.fan.half_cycle", "fan.slow.half_cycle");
    assertThat(air.fans().get(1).supply().value()).isEqualTo(Range.exactly(0));
  }

  /** 5 s of 70 s are 7 %: more than a reading of 5 % may err, less than one of 15 %. */
  @ParameterizedTest
  @CsvSource({
    "'measured_flow: {value: 10 l/s, instrument: hood}', true",
    "'measured_flow: {value: 10 l/s, instrument: hood}, half_cycle: 120 s', false",
    "'measured_flow: 10 l/s', false",
    "'declared_flow: 10 l/s', false"
  })
  void a_pause_that_nobody_timed_is_said_where_it_would_matter(String keys, boolean matters) {
    ProvidedAir air =
        air("{id: fan, kind: alternating heat recovery, run: continuous, " + keys + "}");
    assertThat(ids(air).contains("fan.fan.switching_pause")).isEqualTo(matters);
    assertThat(air.fans().get(0).inMotion()).isEmpty();
  }

  @Test
  void a_unit_that_blows_in_tells_whence_its_air_comes() {
    String unit = "kind: positive input, run: continuous, measured_flow: {value: 10..10 l/s}";
    assertThat(fan(unit + ", air_source: loft").why()).contains("loft").contains("hatch");
    assertThat(fan(unit + ", air_source: outside wall").why()).contains("as cold");
    assertThat(fan(unit).why()).doesNotContain("loft");
    FanFlow within = fan(unit + ", air_source: room");
    assertThat(within.why()).contains("counts nothing");
    assertThat(within.counting()).isEqualTo(Counting.NOTHING);
    assertThat(within.supply().value()).isEqualTo(Range.exactly(0));
    assertThat(fan("kind: extract hood, air_source: room, measured_flow: 5 l/s").counting())
        .isEqualTo(Counting.EXTRACT);
  }

  private static final String TURNING =
      "{id: fan, kind: alternating heat recovery, run: continuous, declared_flow: 54 m3/h}";

  private static FanFlow logged(String fan, LoggedTurns turns) {
    return Provision.of(
            VentilationFixtures.home(
                "england",
                "floor_area: 84, volume: 200",
                "- {id: bath, use: bathroom, fans: [" + fan + "]}"),
            VentilationFixtures.DEFAULTS,
            Map.of("fan", turns))
        .fans()
        .get(0);
  }

  private static LoggedTurns turns(double in, double out, Double pause) {
    return new LoggedTurns(
        seconds("in", in),
        seconds("out", out),
        Optional.ofNullable(pause).map(p -> seconds("pause", p)));
  }

  private static Figure seconds(String id, double value) {
    return new Figure(
        "log." + id,
        id,
        Range.exactly(value),
        Unit.SECONDS,
        Basis.MEASURED,
        () -> new Working("read from the log", List.of(), List.of(), Optional.empty()));
  }

  /** A log shows a pause of 4 s at least in halves of 75 and 85 s; the usual one is 5 s. */
  @Test
  void the_turns_that_a_log_shows_count_where_nobody_timed_them() {
    FanFlow unit = logged(TURNING, turns(75, 85, 4.0));
    assertRange(unit.inMotion().orElseThrow(), new Range(75 / 80.0, 76 / 80.0, 76 / 80.0));
    assertThat(unit.inMotion().get().basis()).isEqualTo(Basis.MEASURED);
    assertThat(unit.extract().likely()).isCloseTo(unit.running().likely() / 2 * 76 / 80, TINY);
    assertThat(unit.inMotion().get().working().inputs())
        .extracting(i -> i.figure().orElse("") + i.unit())
        .contains("log.inSECONDS", "log.outSECONDS", "log.pauseSECONDS");
    assertThat(unit.inMotion().get().working().note()).isPresent();
  }

  @Test
  void a_pause_in_a_log_that_is_longer_than_usual_is_as_long_as_it_is() {
    assertRange(logged(TURNING, turns(80, 80, 8.0)).inMotion().orElseThrow(), Range.exactly(0.9));
  }

  @Test
  void a_watch_goes_before_a_log() {
    String timed = TURNING.replace("}", ", half_cycle: 70 s, switching_pause: 7 s}");
    assertRange(logged(timed, turns(80, 80, 4.0)).inMotion().orElseThrow(), Range.exactly(0.9));
    String paused = TURNING.replace("}", ", switching_pause: 8 s}");
    assertRange(logged(paused, turns(80, 80, null)).inMotion().orElseThrow(), Range.exactly(0.9));
  }

  @Test
  void a_log_without_a_pause_tells_nothing_of_pauses() {
    assertThat(logged(TURNING, turns(80, 80, null)).inMotion()).isEmpty();
  }
}
