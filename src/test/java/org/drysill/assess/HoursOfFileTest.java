package org.drysill.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.function.Function;
import org.drysill.physics.weather.HourlyYear;
import org.drysill.reference.climate.ClimateCatalogue;
import org.drysill.reference.climate.EpwFile;
import org.drysill.reference.climate.EpwText;
import org.drysill.reference.climate.EpwText.Stamp;
import org.drysill.reference.climate.HourlyWeather;
import org.drysill.reference.surfaces.HourDefaults;
import org.junit.jupiter.api.Test;

/** A weather file as a year of hours. */
class HoursOfFileTest {
  private static HourlyWeather file(int year, int perHour, Function<Stamp, String> record) {
    return EpwFile.read(EpwText.year(year, perHour, record), "here.epw").weather().orElseThrow();
  }

  private static String warm(Stamp s) {
    return EpwText.record(s, s.day().getDayOfMonth() + s.hour() / 10.0, 0, 80, 4);
  }

  @Test
  void every_hour_stands_where_the_calendar_puts_it() {
    HoursOfFile hours = HoursOfFile.of(file(2023, 1, HoursOfFileTest::warm));
    assertThat(hours.filled()).isZero();
    assertThat(hours.year().celsius(0)).isCloseTo(1.1, within(1e-9));
    assertThat(hours.year().celsius(HourlyYear.firstHour(2) + 24 * 4 + 9))
        .as("5 March, hour 10")
        .isCloseTo(6.0, within(1e-9));
  }

  @Test
  void the_leap_day_is_left_out() {
    HoursOfFile hours = HoursOfFile.of(file(2024, 1, HoursOfFileTest::warm));
    assertThat(hours.year().celsius(HourlyYear.firstHour(2))).isCloseTo(1.1, within(1e-9));
    assertThat(hours.year().celsius(HourlyYear.firstHour(2) - 1)).isCloseTo(30.4, within(1e-9));
  }

  @Test
  void several_records_of_an_hour_are_averaged() {
    HoursOfFile hours =
        HoursOfFile.of(file(2023, 2, s -> EpwText.record(s, s.minute() / 10.0, 0, 80, 4)));
    assertThat(hours.year().celsius(100)).isCloseTo(4.5, within(1e-9));
  }

  @Test
  void missing_hours_are_filled_in_a_straight_line_and_counted() {
    HoursOfFile hours =
        HoursOfFile.of(
            file(
                2023,
                1,
                s ->
                    s.day().getDayOfYear() == 10 && (s.hour() == 5 || s.hour() == 6)
                        ? EpwText.record(s, 99.9, 99.9, 999, 999)
                        : warm(s)));
    assertThat(hours.filled()).isEqualTo(2);
    assertThat(hours.year().celsius(9 * 24 + 4)).isCloseTo(10.5, within(1e-9));
    assertThat(hours.year().celsius(9 * 24 + 5)).isCloseTo(10.6, within(1e-9));
  }

  @Test
  void a_home_with_a_weather_file_takes_its_hours_and_says_what_was_filled() {
    MonthlyWeather weather =
        MonthlyWeather.of(
            file(
                2023,
                1,
                s ->
                    s.day().getDayOfYear() == 1 && s.hour() == 1
                        ? EpwText.record(s, 99.9, 99.9, 999, 999)
                        : warm(s)));
    OutdoorClimate climate =
        OutdoorClimates.resolve(
                HomeFixtures.survey(
                    "england",
                    "floor_area: 84 m2, climate: {file: here.epw}",
                    "- {id: wc, use: wc}"),
                ClimateCatalogue.bundled(),
                Optional.empty(),
                Optional.of(weather))
            .climate();
    assertThat(climate.note().orElseThrow()).contains("filled between their neighbours: 1");
    OutdoorHours hours = OutdoorHours.of(climate, HourDefaults.bundled().weather());
    assertThat(hours.made()).isFalse();
    assertThat(hours.year()).isSameAs(weather.year());
  }

  @Test
  void months_alone_make_hours_that_keep_their_means() {
    OutdoorClimate climate =
        OutdoorClimates.resolve(
                HomeFixtures.survey(
                    "england", "floor_area: 84 m2, climate: uk-midlands", "- {id: wc, use: wc}"),
                ClimateCatalogue.bundled(),
                Optional.empty(),
                Optional.empty())
            .climate();
    OutdoorHours hours = OutdoorHours.of(climate, HourDefaults.bundled().weather());
    assertThat(hours.made()).isTrue();
    assertThat(hours.warmestMonth()).isEqualTo(6);
    double january = 0;
    for (int h = 0; h < HourlyYear.firstHour(1); h++) {
      january += hours.year().celsius(h) / HourlyYear.firstHour(1);
    }
    assertThat(january).isCloseTo(climate.months().get(0).temperature(), within(1e-9));
  }
}
