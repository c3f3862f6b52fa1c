package org.drysill.physics.recovery.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cycles of plain shapes; (18 + 10) / 2 / 20 = 0.70 by arithmetic. */
class CycleSearchTest {
  private static CycleRatio found(FaceLog log) {
    CycleOutcome outcome = CycleSearch.of(log, Made.RULES);
    assertThat(outcome).isInstanceOf(CycleRatio.class);
    return (CycleRatio) outcome;
  }

  private static CycleOutcome.None none(FaceLog log) {
    CycleOutcome outcome = CycleSearch.of(log, Made.RULES);
    assertThat(outcome).isInstanceOf(CycleOutcome.None.class);
    return (CycleOutcome.None) outcome;
  }

  @Test
  void a_plain_fall_has_the_mean_of_its_ends() {
    CycleRatio cycles = found(new Made().log());
    assertThat(cycles.ratio()).isCloseTo(0.70, within(0.004));
    assertThat(cycles.judged()).isCloseTo(14, within(0.08));
    assertThat(cycles.near()).isCloseTo(20, within(1e-9));
    assertThat(cycles.far()).isZero();
    assertThat(cycles.timing().cycleS()).isCloseTo(140, within(0.1));
    assertThat(cycles.timing().judgedS()).isCloseTo(70, within(0.5));
    assertThat(cycles.timing().otherS()).isCloseTo(70, within(0.5));
    assertThat(cycles.timing().equalHalves()).isTrue();
    assertThat(cycles.used()).isBetween(27, 29);
    assertThat(cycles.incomplete()).isZero();
    assertThat(cycles.balance()).isCloseTo(1, within(0.02));
  }

  /** Without the lag taken out, 12 s of it add τ·(20 − 10)/70/20 = 0.086 to the ratio. */
  @ParameterizedTest
  @CsvSource({"3", "8", "12"})
  void the_lag_of_the_thermometer_is_found_and_taken_out(double lag) {
    Made made = new Made();
    made.lagS = lag;
    CycleRatio cycles = found(made.log());
    assertThat(cycles.timing().lagS()).isCloseTo(lag, within(0.06 * lag));
    assertThat(cycles.ratio()).isCloseTo(0.70, within(0.006));
    assertThat(cycles.lagCorrection()).isCloseTo(-lag * 10 / 70 / 20, within(0.25 * lag / 140));
  }

  /** At the face outdoors all is mirrored: 1 − (2 + 10)/2/20 = 0.70 of the heat stays. */
  @Test
  void the_other_face_is_the_mirror() {
    Made made = new Made();
    double[] mirrored = Arrays.stream(made.face()).map(t -> 20 - t).toArray();
    FaceLog outdoors =
        FaceLog.of(made.seconds(), mirrored, made.filled(0), made.filled(20), made.filled(1));
    assertThat(found(outdoors).ratio()).isCloseTo(found(made.log()).ratio(), within(1e-9));
  }

  @Test
  void a_pause_shows_and_does_not_count_as_supply() {
    Made made = new Made();
    made.pauseS = 6;
    made.lagS = 2;
    CycleRatio cycles = found(made.log());
    assertThat(cycles.timing().pauseS()).isBetween(3.0, 7.0);
    assertThat(cycles.timing().blowingS()).isCloseTo(64, within(3.5));
    assertThat(cycles.ratio()).isCloseTo(0.70, within(0.012));
  }

  @Test
  void a_logged_flow_tells_the_pauses_and_the_halves() {
    Made made = new Made();
    made.supplyS = 60;
    made.otherS = 80;
    made.pauseS = 5;
    CycleRatio cycles = found(made.withFlow());
    assertThat(cycles.timing().equalHalves()).isFalse();
    assertThat(cycles.timing().judgedS()).isCloseTo(60, within(1.5));
    assertThat(cycles.timing().pauseS()).isCloseTo(5, within(1.0));
    assertThat(cycles.ratio()).isCloseTo(0.70, within(0.008));
    assertThat(cycles.balance()).isCloseTo(55.0 / 75, within(0.04));
  }

  /** Where supply takes 100 of 140 s its fall begins long before the middle. */
  @Test
  void a_fall_that_begins_early_shows_unequal_halves() {
    Made made = new Made();
    made.supplyS = 100;
    made.otherS = 40;
    CycleRatio cycles = found(made.log());
    assertThat(cycles.timing().equalHalves()).isFalse();
    assertThat(cycles.timing().judgedS()).isCloseTo(100, within(3.0));
    assertThat(cycles.ratio()).isCloseTo(0.70, within(0.012));
    assertThat(cycles.balance()).isCloseTo(2.5, within(0.3));
  }

  @Test
  void scatter_of_readings_costs_little() {
    Made made = new Made();
    made.noiseK = 0.3;
    made.lagS = 4;
    CycleRatio cycles = found(made.log());
    assertThat(cycles.ratio()).isCloseTo(0.70, within(0.01));
    assertThat(cycles.scatterError()).isBetween(1e-4, 3e-3);
  }

  /** Cycles whose mean rises from 0.45 to 0.70 before it stays. */
  @Test
  void cycles_in_which_the_store_settles_are_left_out() {
    Made made = new Made();
    double[] face = made.face();
    for (int i = 0; i < face.length; i++) {
      double unsettled = Math.exp(-i / 150.0);
      face[i] -= face[i] < 19.9 ? 5 * unsettled : 0;
    }
    CycleRatio cycles =
        found(FaceLog.of(made.seconds(), face, made.filled(20), made.filled(0), made.filled(1)));
    assertThat(cycles.settling()).isBetween(2, 6);
    assertThat(cycles.ratio()).isCloseTo(0.70, within(0.006));
  }

  @Test
  void a_gap_breaks_its_cycle_and_no_other() {
    Made made = new Made();
    FaceLog whole = made.log();
    int[] kept = IntStream.range(0, whole.size()).filter(i -> i < 1000 || i > 1060).toArray();
    FaceLog broken =
        FaceLog.of(
            Arrays.stream(kept).mapToDouble(whole::seconds).toArray(),
            Arrays.stream(kept).mapToDouble(whole::face).toArray(),
            Arrays.stream(kept).mapToDouble(whole::near).toArray(),
            Arrays.stream(kept).mapToDouble(whole::far).toArray(),
            Arrays.stream(kept).mapToDouble(whole::air).toArray());
    CycleRatio cycles = found(broken);
    assertThat(cycles.incomplete()).isEqualTo(1);
    assertThat(cycles.used()).isBetween(found(whole).used() - 2, found(whole).used() - 1);
    assertThat(cycles.ratio()).isCloseTo(0.70, within(0.004));
  }

  /** A turn that was missed makes one cycle of two. */
  @Test
  void cycles_of_odd_length_are_left_out() {
    Made made = new Made();
    double[] face = made.face();
    for (int i = 1000; i < 1140; i++) {
      face[i] = Math.max(face[i], 19.5);
    }
    CycleRatio cycles =
        found(FaceLog.of(made.seconds(), face, made.filled(20), made.filled(0), made.filled(1)));
    assertThat(cycles.incomplete()).isPositive();
    assertThat(cycles.ratio()).isCloseTo(0.70, within(0.004));
  }

  @Test
  void the_folded_curve_falls_through_supply_and_rests_at_the_room() {
    CycleRatio cycles = found(new Made().log());
    double before = Double.NEGATIVE_INFINITY;
    for (FoldedPoint point : cycles.folded()) {
      assertThat(point.offsetS()).isGreaterThanOrEqualTo(before);
      before = point.offsetS();
      if (point.offsetS() > 5 && point.offsetS() < 65) {
        assertThat(point.ratio()).isCloseTo(0.9 - 0.4 * point.offsetS() / 70, within(0.02));
      } else if (point.offsetS() > 75 && point.offsetS() < 135) {
        assertThat(point.ratio()).isCloseTo(1, within(1e-9));
      }
    }
  }

  @Test
  void a_still_thermometer_shows_no_swing() {
    Made made = new Made();
    made.start = 20;
    made.end = 20;
    made.noiseK = 0.1;
    assertThat(none(made.log()).why()).isEqualTo(NoCycle.NO_SWING);
  }

  /** Readings at random, as of a loose plug. */
  @Test
  void readings_that_only_scatter_are_no_cycle() {
    Made made = new Made();
    made.start = 20;
    made.end = 20;
    made.noiseK = 2;
    assertThat(none(made.log()).why()).isEqualTo(NoCycle.SCATTER);
  }

  @Test
  void no_difference_gives_no_ratio() {
    Made made = new Made();
    made.outdoor = 19.8;
    assertThat(none(made.log()).why()).isEqualTo(NoCycle.NO_DIFFERENCE);
  }

  @ParameterizedTest
  @CsvSource({
    "70, 70, 20, 4200, TOO_COARSE",
    "900, 900, 5, 20000, TOO_SLOW",
    "10, 10, 1, 1000, TOO_FAST",
    "70, 70, 1, 330, TOO_FEW",
    "70, 70, 1, 120, TOO_FEW",
    "70, 70, 1, 15, TOO_SHORT"
  })
  void what_is_no_cycle_of_a_unit_is_refused(
      double supply, double other, double step, double length, NoCycle why) {
    Made made = new Made();
    made.supplyS = supply;
    made.otherS = other;
    made.stepS = step;
    made.lengthS = length;
    assertThat(none(made.log()).why()).isEqualTo(why);
  }

  /** Doors that are opened now and then. */
  @Test
  void swings_at_no_steady_pace_are_no_cycles() {
    Made made = new Made();
    Random dice = new Random(3);
    double[] face = made.filled(20);
    for (int i = 0; i < face.length; i++) {
      int length = 20 + dice.nextInt(200);
      int pause = 20 + dice.nextInt(200);
      for (int k = 0; k < length && i + k < face.length; k++) {
        face[i + k] = 14;
      }
      i += length + pause;
    }
    assertThat(
            none(FaceLog.of(made.seconds(), face, made.filled(20), made.filled(0), made.filled(1)))
                .why())
        .isEqualTo(NoCycle.IRREGULAR);
  }

  @Test
  void air_that_never_flows_gives_no_ratio() {
    Made made = new Made();
    FaceLog still =
        FaceLog.of(made.seconds(), made.face(), made.filled(20), made.filled(0), made.filled(0));
    assertThat(none(still).why()).isEqualTo(NoCycle.TOO_FEW);
  }

  /**
   * With 0.5 K on each thermometer, 20 K and η = 0.70 the law of propagation gives 0.5/20 · √(1 +
   * 0.49 + 0.09) = 0.0314 (own arithmetic); scatter, lag and turns come on top.
   */
  @Test
  void the_thermometers_are_propagated_and_the_rest_added() {
    CycleRatio cycles = found(new Made().log());
    assertThat(cycles.uncertainty(0.5, 0.5, 0.5, 0, 0))
        .isCloseTo(Math.hypot(0.0314, cycles.edgeError()), within(2e-4));
    assertThat(cycles.uncertainty(0, 0, 0, 2, 0.25))
        .isCloseTo(
            Math.hypot(
                Math.hypot(2 * cycles.scatterError(), 0.25 * cycles.lagCorrection()),
                cycles.edgeError()),
            within(1e-12));
  }

  @Test
  void a_log_must_be_whole() {
    double[] three = {0, 1, 2};
    assertThatThrownBy(() -> FaceLog.of(three, three, three, three, new double[2]))
        .hasMessageContaining("expected 3 values but was 2");
    assertThatThrownBy(() -> FaceLog.of(new double[] {0, 2, 1}, three, three, three, three))
        .hasMessageContaining("time after the one before");
    assertThatThrownBy(
            () -> FaceLog.of(three, new double[] {0, Double.NaN, 1}, three, three, three))
        .hasMessageContaining("temperature at the face");
    assertThat(
            FaceLog.of(new double[1], new double[1], new double[1], new double[1], new double[1])
                .medianStepS())
        .isZero();
  }

  @Test
  void rules_that_no_search_could_follow_are_refused() {
    assertThatThrownBy(() -> new CycleRules(15, 10, 0.5, 4, 4, 3, 0.15, 0.3))
        .hasMessageContaining("longest half-cycle");
    assertThatThrownBy(() -> new CycleRules(15, 400, 0.5, 4, 4, 1, 0.15, 0.3))
        .hasMessageContaining("fewest cycles");
  }
}
