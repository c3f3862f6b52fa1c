package org.drysill.physics.tracer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.drysill.physics.tracer.DecayFixtures.RULES;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.drysill.physics.tracer.AirChangeEvidence.FromTracer;
import org.drysill.physics.tracer.TurningPoints.Turn;

/** What must hold of decays whatever the numbers. */
class TracerProperties {
  private static final ReadingErrors ERRORS = new ReadingErrors(10, 20);

  @Property(tries = 50)
  void a_decay_does_not_depend_on_when_it_was_logged(
      @ForAll @Scale(2) @DoubleRange(min = -1e5, max = 1e5) double shift,
      @ForAll @Scale(3) @DoubleRange(min = 0.3, max = 1.2) double rate) {
    TracerSeries series = log(rate, 3);
    TracerSeries later =
        TracerSeries.of(
            Arrays.stream(series.hours()).map(h -> h + shift).toArray(), series.excesses());
    assertThat(airChange(later, ERRORS)).isCloseTo(airChange(series, ERRORS), within(1e-6));
  }

  /** Ppm or ratio, grams or kilograms: the rate is the same. */
  @Property(tries = 50)
  void the_unit_of_concentration_does_not_matter(
      @ForAll @Scale(7) @DoubleRange(min = 1e-6, max = 1e3) double factor,
      @ForAll @Scale(3) @DoubleRange(min = 0.3, max = 1.2) double rate) {
    TracerSeries series = log(rate, 5);
    TracerSeries scaled =
        TracerSeries.of(
            series.hours(), Arrays.stream(series.excesses()).map(x -> x * factor).toArray());
    ReadingErrors errors = new ReadingErrors(10 * factor, 20 * factor);
    assertThat(airChange(scaled, errors)).isCloseTo(airChange(series, ERRORS), within(1e-7));
  }

  /** Dropping every third reading, or not, changes what is known and not what is true. */
  @Property(tries = 50)
  void irregular_steps_give_the_same_rate_without_noise(
      @ForAll @IntRange(min = 1, max = 10_000) int seed,
      @ForAll @Scale(3) @DoubleRange(min = 0.3, max = 1.2) double rate) {
    Random dice = new Random(seed);
    double[] all = DecayFixtures.every5Minutes(8);
    double[] hours =
        IntStream.range(0, all.length)
            .filter(i -> i % 3 != 0 || dice.nextBoolean())
            .mapToDouble(i -> all[i] + 0.03 * dice.nextDouble())
            .toArray();
    double[] excess =
        Arrays.stream(hours).map(h -> DecayFixtures.riseAndDecay(h, 2000, rate)).toArray();
    assertThat(airChange(TracerSeries.of(hours, excess), ERRORS)).isCloseTo(rate, within(1e-5));
  }

  @Property(tries = 200)
  void turns_alternate_and_lie_a_threshold_apart(
      @ForAll @IntRange(min = 1, max = 10_000) int seed,
      @ForAll @Scale(3) @DoubleRange(min = 0.5, max = 4) double threshold) {
    Random dice = new Random(seed);
    double[] values = dice.doubles(100).map(x -> 5 * x).toArray();
    List<Turn> turns = TurningPoints.of(values, 0, 99, threshold);
    for (int i = 1; i < turns.size(); i++) {
      Turn before = turns.get(i - 1);
      Turn turn = turns.get(i);
      assertThat(turn.peak()).isNotEqualTo(before.peak());
      double step = values[turn.index()] - values[before.index()];
      assertThat(turn.peak() ? step : -step).isGreaterThanOrEqualTo(threshold);
    }
  }

  private static TracerSeries log(double rate, double noise) {
    return DecayFixtures.series(8, t -> DecayFixtures.riseAndDecay(t, 2000, rate), noise);
  }

  private static double airChange(TracerSeries series, ReadingErrors errors) {
    Decays decays = Decays.find(series, errors, new Substance.Inert(), RULES.decays().ofCo2());
    AirChangeEvidence evidence = decays.airChange(RULES.confidence().confidence()).orElseThrow();
    return ((FromTracer) evidence).perHour().likely();
  }
}
