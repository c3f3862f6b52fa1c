package org.drysill.physics.tracer.event;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.drysill.reference.logs.LogRules;
import org.junit.jupiter.api.Test;

/** Vapour in kg/m³, every five minutes unless a test says otherwise. */
class EventsTest {
  private static final EventRules RULES = LogRules.bundled().events().rules();
  private static final double SCATTER = 0.00003;

  /** 8 g/m³ at rest; a rise of 6 g/m³ within a quarter of an hour, gone at 2/h. */
  @Test
  void a_shower_has_start_peak_size_and_end() {
    List<VapourEvent> events = found(6, t -> 0.008 + bump(t, 2, 0.25, 0.006, 2), t -> 20);
    assertThat(events).hasSize(1);
    VapourEvent shower = events.get(0);
    assertThat(shower.kind()).isEqualTo(EventKind.SHOWER);
    assertThat(shower.startHours()).isCloseTo(2, within(0.09));
    assertThat(shower.peakHours()).isCloseTo(2.25, within(0.01));
    assertThat(shower.change()).isCloseTo(0.006, within(0.0002));
    double quarterLeft = Math.log(4) / 2;
    assertThat(shower.hoursToRecover().orElseThrow()).isCloseTo(quarterLeft, within(0.03));
  }

  @Test
  void cooking_and_drying_are_told_by_their_pace() {
    assertThat(kinds(8, t -> 0.008 + bump(t, 2, 1, 0.003, 1))).containsExactly(EventKind.COOKING);
    assertThat(kinds(20, t -> 0.008 + bump(t, 2, 8, 0.002, 0.5)))
        .containsExactly(EventKind.DRYING_OR_SLEEP);
  }

  /** Vapour of a night, and a shower at its end without a fall between. */
  @Test
  void a_shower_stands_on_the_slow_rise_of_a_night() {
    DoubleUnaryOperator night = t -> 0.008 + bump(t, 1, 7, 0.0015, 0.3);
    List<VapourEvent> events =
        found(16, t -> night.applyAsDouble(t) + bump(t, 7.5, 0.25, 0.004, 2), t -> 20);
    assertThat(events)
        .extracting(VapourEvent::kind)
        .containsExactly(EventKind.DRYING_OR_SLEEP, EventKind.SHOWER);
    assertThat(events.get(1).startHours()).isCloseTo(7.5, within(0.09));
    assertThat(events.get(1).change()).isCloseTo(0.004, within(0.0003));
    assertThat(events.get(0).recoveredHours()).isEmpty();
    DoubleUnaryOperator quiet = t -> 0.008 + bump(t, 1, 7, 0.0005, 0.3);
    assertThat(kinds(16, t -> quiet.applyAsDouble(t) + bump(t, 7.5, 0.25, 0.004, 2)))
        .containsExactly(EventKind.SHOWER);
  }

  @Test
  void a_weak_quick_rise_has_no_name() {
    assertThat(kinds(5, t -> 0.008 + bump(t, 2, 0.1, 0.0012, 1))).containsExactly(EventKind.OTHER);
    assertThat(kinds(40, t -> 0.008 + bump(t, 2, 30, 0.002, 1))).containsExactly(EventKind.OTHER);
  }

  @Test
  void an_open_window_cools_and_dries_at_once() {
    DoubleUnaryOperator vapour = t -> 0.010 - 0.004 * opened(t);
    DoubleUnaryOperator celsius = t -> 21 - 4 * opened(t);
    VapourEvent airing = found(8, vapour, celsius).get(0);
    assertThat(airing.kind()).isEqualTo(EventKind.AIRING);
    assertThat(airing.startHours()).isCloseTo(2, within(0.09));
    assertThat(airing.change()).isCloseTo(-0.004, within(0.0005));
    assertThat(airing.recoveredHours().orElseThrow()).isBetween(2.5, 5.0);
  }

  @Test
  void a_fall_without_cooling_or_too_slow_or_too_small_is_no_airing() {
    assertThat(falls(t -> 0.010 - 0.004 * opened(t), t -> 21)).isEmpty();
    assertThat(falls(t -> 0.010 - 0.004 * opened(t), t -> Double.NaN)).isEmpty();
    assertThat(falls(t -> 0.012 - 0.001 * t, t -> 21 - 3 * opened(t))).isEmpty();
  }

  @Test
  void a_second_rise_a_gap_or_the_end_hides_the_recovery() {
    DoubleUnaryOperator twice =
        t -> 0.008 + bump(t, 2, 0.25, 0.003, 0.9) + bump(t, 3, 0.25, 0.006, 2);
    assertThat(found(8, twice, t -> 20).get(0).recoveredHours()).isEmpty();
    assertThat(found(2.5, t -> 0.008 + bump(t, 2, 0.25, 0.006, 2), t -> 20).get(0).hoursToRecover())
        .isEmpty();
    double[] hours = Arrays.stream(times(6)).filter(t -> t < 2.4 || t > 3.5).toArray();
    double[] vapour = Arrays.stream(hours).map(t -> 0.008 + bump(t, 2, 0.25, 0.006, 2)).toArray();
    double[] celsius = Arrays.stream(hours).map(t -> 20).toArray();
    RoomAirSeries gap = RoomAirSeries.of(hours, vapour, celsius);
    assertThat(Events.find(gap, SCATTER, RULES).get(0).recoveredHours()).isEmpty();
  }

  @Test
  void noise_makes_no_event_and_missing_readings_are_left_out() {
    Random dice = new Random(2);
    double[] hours = times(48);
    double[] vapour = Arrays.stream(hours).map(t -> 0.008 + 0.0002 * dice.nextGaussian()).toArray();
    double[] celsius = Arrays.stream(hours).map(t -> 20).toArray();
    vapour[7] = Double.NaN;
    assertThat(Events.find(RoomAirSeries.of(hours, vapour, celsius), 0.0002, RULES)).isEmpty();
  }

  @Test
  void lengths_that_differ_are_refused() {
    assertThatThrownBy(() -> RoomAirSeries.of(new double[2], new double[1], new double[2]))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> RoomAirSeries.of(new double[2], new double[2], new double[1]))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("expected 2 values");
  }

  /** A straight rise and an exponential fall. */
  private static double bump(double t, double start, double rises, double height, double rate) {
    double since = t - start;
    if (since <= 0) {
      return 0;
    }
    return since < rises ? height * since / rises : height * Math.exp(-rate * (since - rises));
  }

  /** Open at 2 h for ten minutes, back at 1/h. */
  private static double opened(double t) {
    return bump(t, 2, 0.17, 1, 1);
  }

  private static List<EventKind> kinds(double hours, DoubleUnaryOperator vapour) {
    return found(hours, vapour, t -> 20).stream().map(VapourEvent::kind).toList();
  }

  private static List<VapourEvent> falls(DoubleUnaryOperator vapour, DoubleUnaryOperator celsius) {
    return found(8, vapour, celsius).stream().filter(e -> e.kind() == EventKind.AIRING).toList();
  }

  private static List<VapourEvent> found(
      double hours, DoubleUnaryOperator vapour, DoubleUnaryOperator celsius) {
    double[] times = times(hours);
    return Events.find(
        RoomAirSeries.of(
            times,
            Arrays.stream(times).map(vapour).toArray(),
            Arrays.stream(times).map(celsius).toArray()),
        SCATTER,
        RULES);
  }

  private static double[] times(double hours) {
    return IntStream.rangeClosed(0, (int) (hours * 12)).mapToDouble(i -> i / 12.0).toArray();
  }
}
