package org.drysill.assess.surfaces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drysill.assess.surfaces.SurfaceFixtures.assess;
import static org.drysill.assess.surfaces.SurfaceFixtures.constant;
import static org.drysill.assess.surfaces.SurfaceFixtures.home;
import static org.drysill.assess.surfaces.SurfaceFixtures.place;
import static org.drysill.assess.surfaces.SurfaceFixtures.withClimate;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.drysill.assess.Basis;
import org.drysill.assess.readings.WeightedMean;
import org.drysill.assess.surfaces.months.MonthRow;
import org.drysill.physics.Range;

class SurfaceProperties {
  private static final int TRIES = 60;

  private static MonthRow year(double factor, double outdoor) {
    String spot =
        String.format(
            Locale.ROOT, "cold_spots: [{id: s, kind: lintel, temperature_factor: %.4f}]", factor);
    return place(assess(withClimate(home("", spot), constant(outdoor, 0.8))), "s")
        .months()
        .rows()
        .get(0);
  }

  private static MonthRow vapourHeld(double factor, double outdoor) {
    double pascal = 1200 - 0.8 * saturation(outdoor);
    String spot =
        String.format(
            Locale.ROOT, "cold_spots: [{id: s, kind: lintel, temperature_factor: %.4f}]", factor);
    return place(
            SurfaceAssessor.assess(
                withClimate(home("", spot), constant(outdoor, 0.8)),
                SurfaceFixtures.vapour(pascal, outdoor),
                SurfaceFixtures.TABLES),
            "s")
        .months()
        .rows()
        .get(0);
  }

  private static double saturation(double celsius) {
    return 610.5 * Math.exp(17.269 * celsius / (237.3 + celsius));
  }

  @Property(tries = TRIES)
  void colder_outdoors_never_reduces_the_risk_at_the_same_indoor_vapour(
      @ForAll @DoubleRange(min = 0.2, max = 0.95) double factor,
      @ForAll @DoubleRange(min = 1, max = 9) double outdoor,
      @ForAll @DoubleRange(min = 0, max = 24) double colder) {
    MonthRow mild = vapourHeld(factor, outdoor);
    MonthRow cold = vapourHeld(factor, outdoor - colder);
    assertThat(cold.surfaceHumidity().likely())
        .isGreaterThanOrEqualTo(mild.surfaceHumidity().likely() - 1e-9);
    assertThat(cold.risk()).isGreaterThanOrEqualTo(mild.risk());
  }

  @Property(tries = TRIES)
  void more_vapour_never_lowers_the_risk(
      @ForAll @DoubleRange(min = 0.2, max = 0.95) double factor,
      @ForAll @DoubleRange(min = -15, max = 18) double outdoor,
      @ForAll @DoubleRange(min = 0, max = 900) double excess,
      @ForAll @DoubleRange(min = 0, max = 600) double more) {
    MonthRow dry = withVapour(factor, outdoor, Range.around(excess, 50));
    MonthRow damp = withVapour(factor, outdoor, Range.around(excess + more, 50));
    assertThat(damp.risk()).isGreaterThanOrEqualTo(dry.risk());
    assertThat(damp.worst()).isGreaterThanOrEqualTo(dry.worst());
    assertThat(damp.surfaceHumidity().low())
        .isGreaterThanOrEqualTo(dry.surfaceHumidity().low() - 1e-12);
    damp.requiredFactor()
        .ifPresent(
            asked ->
                assertThat(asked.likely())
                    .isGreaterThanOrEqualTo(dry.requiredFactor().orElseThrow().likely() - 1e-12));
  }

  private static MonthRow withVapour(double factor, double outdoor, Range excess) {
    String spot =
        String.format(
            Locale.ROOT, "cold_spots: [{id: s, kind: lintel, temperature_factor: %.4f}]", factor);
    IndoorVapour vapour =
        new IndoorVapour(excess, 0, Basis.MEASURED, "the readings", Optional.empty(), List.of());
    return place(
            SurfaceAssessor.assess(
                withClimate(home("", spot), constant(outdoor, 0.8)),
                new IndoorVapours(Optional.of(vapour), Map.of()),
                SurfaceFixtures.TABLES),
            "s")
        .months()
        .rows()
        .get(0);
  }

  @Property(tries = TRIES)
  void a_better_factor_never_raises_the_risk(
      @ForAll @DoubleRange(min = 0.2, max = 0.9) double factor,
      @ForAll @DoubleRange(min = 0, max = 0.1) double better,
      @ForAll @DoubleRange(min = -15, max = 15) double outdoor) {
    MonthRow worse = year(factor, outdoor);
    MonthRow improved = year(factor + better, outdoor);
    assertThat(improved.risk()).isLessThanOrEqualTo(worse.risk());
    assertThat(improved.worst()).isLessThanOrEqualTo(worse.worst());
  }

  @Property(tries = TRIES)
  void low_likely_high_keep_their_order_and_the_worst_is_no_better(
      @ForAll @DoubleRange(min = 0, max = 1) double factor,
      @ForAll @DoubleRange(min = -25, max = 30) double outdoor) {
    MonthRow row = year(factor, outdoor);
    for (Range range :
        List.of(
            row.vapourPressure(),
            row.indoorHumidity(),
            row.dewPoint(),
            row.surface(),
            row.surfaceHumidity(),
            row.highestIndoorHumidity())) {
      assertThat(range.low()).isLessThanOrEqualTo(range.likely());
      assertThat(range.likely()).isLessThanOrEqualTo(range.high());
    }
    assertThat(row.worst()).isGreaterThanOrEqualTo(row.risk());
    assertThat(row.indoorHumidity().high()).isLessThanOrEqualTo(1 + 1e-9);
  }

  @Property(tries = TRIES)
  void a_warmer_reading_never_lowers_the_factor(
      @ForAll @DoubleRange(min = 6, max = 19) double surface,
      @ForAll @DoubleRange(min = 0, max = 0.9) double warmer) {
    Range cool = read(surface);
    Range warm = read(surface + warmer);
    assertThat(warm.low()).isGreaterThanOrEqualTo(cool.low() - 1e-9);
    assertThat(warm.likely()).isGreaterThanOrEqualTo(cool.likely() - 1e-9);
    assertThat(warm.high()).isGreaterThanOrEqualTo(cool.high() - 1e-9);
  }

  private static Range read(double surface) {
    String spot =
        String.format(
            Locale.ROOT,
            "cold_spots: [{id: s, kind: lintel, readings: [{surface: %.4f C, air: 20 C, outdoor: 5 C}]}]",
            surface);
    return place(assess(home("", spot)), "s").factor().figure().value();
  }

  @Property
  void combined_readings_stay_within_the_readings(
      @ForAll @Size(min = 1, max = 6) List<@DoubleRange(min = 0, max = 1) Double> ratios,
      @ForAll @DoubleRange(min = 0, max = 0.2) double error) {
    Range mean =
        WeightedMean.of(
            Stream.iterate(0, i -> i < ratios.size(), i -> i + 1)
                .map(i -> Range.around(ratios.get(i), error * (i + 1)))
                .toList());
    double least = ratios.stream().mapToDouble(r -> r).min().orElseThrow();
    double most = ratios.stream().mapToDouble(r -> r).max().orElseThrow();
    assertThat(mean.likely()).isBetween(least - 1e-9, most + 1e-9);
    assertThat(mean.low()).isLessThanOrEqualTo(mean.likely());
  }
}
