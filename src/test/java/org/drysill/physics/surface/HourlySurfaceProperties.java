package org.drysill.physics.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.drysill.physics.air.MoistAir;
import org.drysill.physics.mould.MouldSensitivity;
import org.drysill.physics.weather.HourlyYear;
import org.junit.jupiter.api.Test;

/** What must hold for any surface over any year. */
class HourlySurfaceProperties {
  private static final PaneYear.Pane PANE = new PaneYear.Pane(3, 0.002, 0.1, 7, 4344);
  private static final MouldYear.Surface PLASTER =
      new MouldYear.Surface(MouldSensitivity.SENSITIVE, 0.1, 0.8, 4344);

  private static HourlyAir air(double coldest, double excessPa) {
    double[] outdoor =
        IntStream.range(0, HourlyYear.HOURS)
            .mapToDouble(
                h ->
                    coldest
                        + 7 * (1 - Math.cos(2 * Math.PI * h / HourlyYear.HOURS))
                        - 3 * Math.cos(2 * Math.PI * (h % 24 - 3) / 24.0))
            .toArray();
    double[] vapour =
        IntStream.range(0, HourlyYear.HOURS)
            .mapToDouble(h -> MoistAir.vapourPressurePa(outdoor[h], 0.8) + excessPa)
            .toArray();
    double[] indoor =
        IntStream.range(0, HourlyYear.HOURS)
            .mapToDouble(h -> Math.max(20, outdoor[h] + 1))
            .toArray();
    return new HourlyAir(indoor, vapour, outdoor);
  }

  @Property(tries = 60)
  void water_on_a_pane_is_conserved(
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double factor,
      @ForAll @DoubleRange(min = -15, max = 8) double coldest,
      @ForAll @DoubleRange(min = 0, max = 1200) double excess) {
    PaneYear year = PaneYear.of(factor, air(coldest, excess), PANE);
    assertThat(year.evaporatedKgM2() + year.ranOffKgM2() + year.leftKgM2())
        .isCloseTo(year.settledKgM2(), within(1e-9));
    assertThat(year.runningNights() == 0).isEqualTo(year.ranOffKgM2() == 0);
    assertThat(year.worstNightKgM2()).isLessThanOrEqualTo(year.settledKgM2() + 1e-15);
  }

  @Property(tries = 60)
  void a_better_factor_never_raises_the_risk(
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double factor,
      @ForAll @DoubleRange(min = 0, max = 0.1) double better,
      @ForAll @DoubleRange(min = -15, max = 8) double coldest,
      @ForAll @DoubleRange(min = 0, max = 1200) double excess) {
    HourlyAir air = air(coldest, excess);
    PaneYear pane = PaneYear.of(factor, air, PANE);
    PaneYear warmer = PaneYear.of(factor + better, air, PANE);
    assertThat(warmer.settledKgM2()).isLessThanOrEqualTo(pane.settledKgM2() + 1e-12);
    assertThat(warmer.wetMornings()).isLessThanOrEqualTo(pane.wetMornings());
    assertThat(MouldYear.of(factor + better, air, PLASTER).moistHours())
        .isLessThanOrEqualTo(MouldYear.of(factor, air, PLASTER).moistHours());
  }

  @Property(tries = 60)
  void more_vapour_never_lowers_the_risk(
      @ForAll @DoubleRange(min = 0.3, max = 0.9) double factor,
      @ForAll @DoubleRange(min = -10, max = 8) double coldest,
      @ForAll @DoubleRange(min = 0, max = 800) double excess,
      @ForAll @DoubleRange(min = 0, max = 400) double more) {
    MouldYear less = MouldYear.of(factor, air(coldest, excess), PLASTER);
    MouldYear moister = MouldYear.of(factor, air(coldest, excess + more), PLASTER);
    assertThat(moister.peak()).isGreaterThanOrEqualTo(less.peak() - 1e-9);
    assertThat(moister.moistHours()).isGreaterThanOrEqualTo(less.moistHours());
    assertThat(moister.wetHours()).isGreaterThanOrEqualTo(less.wetHours());
  }

  @Property(tries = 60)
  void colder_outdoors_never_lowers_the_risk(
      @ForAll @DoubleRange(min = 0.2, max = 0.9) double factor,
      @ForAll @DoubleRange(min = 0, max = 8) double colder,
      @ForAll @DoubleRange(min = 600, max = 1600) double indoorPa) {
    HourlyAir mild = constantVapour(4, indoorPa);
    HourlyAir cold = constantVapour(4 - colder, indoorPa);
    assertThat(PaneYear.of(factor, cold, PANE).settledKgM2())
        .isGreaterThanOrEqualTo(PaneYear.of(factor, mild, PANE).settledKgM2() - 1e-12);
    assertThat(MouldYear.of(factor, cold, PLASTER).moistHours())
        .isGreaterThanOrEqualTo(MouldYear.of(factor, mild, PLASTER).moistHours());
  }

  private static HourlyAir constantVapour(double outdoorCelsius, double indoorPa) {
    double[] indoor = new double[HourlyYear.HOURS];
    double[] vapour = new double[HourlyYear.HOURS];
    double[] outdoor = new double[HourlyYear.HOURS];
    Arrays.fill(indoor, 20);
    Arrays.fill(vapour, indoorPa);
    for (int h = 0; h < HourlyYear.HOURS; h++) {
      outdoor[h] = outdoorCelsius - 4 * Math.cos(2 * Math.PI * h / 24);
    }
    return new HourlyAir(indoor, vapour, outdoor);
  }

  @Test
  void a_cold_moist_corner_grows_in_winter_and_shows_its_dates() {
    MouldYear year = MouldYear.of(0.5, air(2, 700), PLASTER);
    assertThat(year.peak()).isGreaterThan(3);
    assertThat(year.begins()).isPresent();
    assertThat(year.visible()).isPresent();
    assertThat(Math.floorMod(year.begins().getAsInt() - 4344, HourlyYear.HOURS))
        .isLessThan(Math.floorMod(year.visible().getAsInt() - 4344, HourlyYear.HOURS));
    assertThat(year.wetHours()).isPositive().isLessThan(year.moistHours());
  }

  @Test
  void a_warm_dry_wall_grows_nothing() {
    MouldYear year = MouldYear.of(0.95, air(-2, 100), PLASTER);
    assertThat(year.peak()).isZero();
    assertThat(year.begins()).isEmpty();
    assertThat(year.visible()).isEmpty();
  }

  @Test
  void a_running_mean_goes_round_the_year() {
    double[] ring = {1, 2, 3, 4};
    assertThat(HourlyAir.runningMean(ring, 2)).containsExactly(2.5, 1.5, 2.5, 3.5);
    assertThat(HourlyAir.runningMean(ring, 1)).containsExactly(ring);
    assertThat(HourlyAir.runningMean(ring, 4)).containsExactly(2.5, 2.5, 2.5, 2.5);
  }

  @Test
  void refuses_what_is_no_year_and_no_pane() {
    double[] few = new double[3];
    double[] hours = new double[HourlyYear.HOURS];
    assertThatThrownBy(() -> new HourlyAir(few, hours, hours)).hasMessageContaining("indoor");
    assertThatThrownBy(() -> new PaneYear.Pane(3, 0.1, 0.01, 7, 0)).hasMessageContaining("clings");
    assertThatThrownBy(() -> new PaneYear.Pane(3, 0.1, 0.2, 24, 0)).hasMessageContaining("morning");
    assertThatThrownBy(() -> new MouldYear.Surface(MouldSensitivity.SENSITIVE, 2, 0.8, 0))
        .hasMessageContaining("decline");
    HourlyAir air = air(0, 0);
    assertThatThrownBy(() -> PaneYear.of(1.2, air, PANE)).hasMessageContaining("factor");
  }
}
