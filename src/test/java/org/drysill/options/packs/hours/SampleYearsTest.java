package org.drysill.options.packs.hours;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.drysill.OptionsFixtures;
import org.drysill.assess.OutdoorHours;
import org.drysill.assess.surfaces.year.YearsAgain;
import org.drysill.options.OptionsBasis;
import org.drysill.physics.Range;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.surface.HourlyAir;
import org.drysill.physics.surface.PaneYear;
import org.drysill.physics.weather.HourlyYear;
import org.drysill.physics.zones.ExcessLanes;
import org.drysill.physics.zones.LaneHome;
import org.drysill.physics.zones.ZoneFlows;
import org.junit.jupiter.api.Test;

/** Years of one room in weather that is made up for what is hard to pass over. */
class SampleYearsTest {
  private static final OptionsBasis BASIS = OptionsFixtures.basis();
  private static final HourlyGlass NO_GLASS = new HourlyGlass(new double[0][]);
  private static final double FLOW = 0.02;

  private interface Hourly {
    double at(int hour);
  }

  private static double[] each(Hourly of) {
    double[] values = new double[HourlyYear.HOURS];
    Arrays.setAll(values, of::at);
    return values;
  }

  private static YearsAgain years(double[] celsius, double[] pascal) {
    return new YearsAgain(
        new OutdoorHours(new HourlyYear(celsius, pascal), 6, true), BASIS.tables());
  }

  /** Hot before people look at the window, cold from noon on; nothing of it is weather. */
  private static YearsAgain hotNights() {
    return years(each(h -> h % 24 < 8 ? 34 : 2), each(h -> 700));
  }

  private static ExcessLanes zone(double... production) {
    ZoneFlows flows = new ZoneFlows(new double[1][1], new double[] {FLOW}, new double[] {FLOW});
    return new ExcessLanes(
        Arrays.stream(production)
            .mapToObj(g -> new LaneHome(flows, List.of(), new double[] {g}))
            .toList(),
        new double[] {300},
        3600,
        RingYear.HALF_DAY);
  }

  private static YearOutcome quick(
      YearsAgain years, double excess, double now, double then, double... factors) {
    return quick(years, excess, zone(now), zone(then), factors).get(0);
  }

  /** The outcome in each sample. */
  private static List<YearOutcome> quick(
      YearsAgain years, double excess, ExcessLanes now, ExcessLanes then, double... factors) {
    RingYear ring = new RingYear(years, 0.8);
    int samples = now.lanes();
    double[][] times = new double[samples][12];
    double[][] levels = new double[1][samples];
    Arrays.fill(levels[0], 1);
    for (double[] of : times) {
      Arrays.fill(of, 1);
    }
    HourlyRoom room =
        new HourlyRoom(
            ring,
            0,
            0,
            18,
            ring.ring(each(h -> excess)),
            DoubleStream.of(factors)
                .mapToObj(f -> new DrawnFactor(Range.exactly(f), s -> 0))
                .toList(),
            List.of());
    HourlyPackages home = new HourlyPackages(now, NO_GLASS, List.of());
    return new SampleYears(ring, 0, times, levels, home)
        .of(List.of(new HourlyPackages(then, NO_GLASS, List.of(List.of(room)))))
        .get(0)
        .get(0);
  }

  private static int plain(YearsAgain years, double excess, double... factors) {
    double[] indoor = years.indoorCelsius(18);
    double[] outdoor = years.slowVapourPa();
    double[] vapour =
        each(h -> Math.min(Iso13788Vapour.saturationPressurePa(indoor[h]), outdoor[h] + excess));
    HourlyAir air = new HourlyAir(indoor, vapour, years.outdoorCelsius());
    return IntStream.range(0, factors.length)
        .map(f -> PaneYear.of(factors[f], air, years.pane()).wetMornings())
        .max()
        .orElse(0);
  }

  @Test
  void a_warmer_pane_that_stays_wet_longer_is_found() {
    YearsAgain years = hotNights();
    int colder = plain(years, 3000, 0.05);
    int both = plain(years, 3000, 0.05, 0.95);
    assertThat(both).isGreaterThan(colder);
    assertThat(quick(years, 3000, 1e-4, 1e-4, 0.95, 0.05).wetMornings()).isEqualTo(both);
  }

  @Test
  void a_pane_alone_is_never_doubtful() {
    YearsAgain years = hotNights();
    assertThat(quick(years, 3000, 1e-4, 1e-4, 0.05).wetMornings())
        .isEqualTo(plain(years, 3000, 0.05));
    assertThat(quick(years, 3000, 1e-4, 1e-4)).isEqualTo(new YearOutcome(0, true));
  }

  @Test
  void a_room_whose_zone_holds_nothing_keeps_its_excess() {
    YearsAgain years = years(each(h -> 5 + 4 * Math.sin(h * Math.PI / 12)), each(h -> 800));
    int wet = plain(years, 500, 0.4);
    assertThat(wet).isGreaterThan(0);
    assertThat(quick(years, 500, 0, 0, 0.4).wetMornings()).isEqualTo(wet);
    assertThat(quick(years, 500, 0, 1e-4, 0.4).wetMornings()).isEqualTo(wet);
  }

  @Test
  void half_the_water_is_half_the_excess() {
    YearsAgain years = years(each(h -> 5 + 4 * Math.sin(h * Math.PI / 12)), each(h -> 800));
    assertThat(quick(years, 1000, 2e-4, 1e-4, 0.4).wetMornings()).isEqualTo(plain(years, 500, 0.4));
    assertThat(quick(years, 0, 1e-4, 1e-4, 0.4).wetMornings()).isZero();
  }

  @Test
  void samples_side_by_side_are_as_one_by_one() {
    YearsAgain years =
        years(each(h -> 5 + 4 * Math.sin(h * Math.PI / 12) + h / 800.0), each(h -> 800));
    double[] now = {0, 2e-4, 2e-4, 2e-4, 2e-4, 1e-4};
    double[] then = {1e-4, 1e-4, 1.2e-4, 1.4e-4, 1.6e-4, 0};
    List<YearOutcome> together = quick(years, 700, zone(now), zone(then), 0.4, 0.6);
    for (int s = 0; s < now.length; s++) {
      assertThat(together.get(s)).isEqualTo(quick(years, 700, now[s], then[s], 0.4, 0.6));
    }
    assertThat(together.stream().map(YearOutcome::wetMornings).distinct()).hasSizeGreaterThan(3);
  }

  @Test
  void what_does_nothing_goes_through_the_year_of_the_home_as_it_is() {
    YearsAgain years = years(each(h -> 5 + 4 * Math.sin(h * Math.PI / 12)), each(h -> 800));
    ExcessLanes zone = zone(1e-4);
    assertThat(quick(years, 500, zone, zone, 0.4).get(0).wetMornings())
        .isEqualTo(plain(years, 500, 0.4));
  }
}
