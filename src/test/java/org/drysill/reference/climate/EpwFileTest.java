package org.drysill.reference.climate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.drysill.reference.climate.EpwText.Stamp;
import org.drysill.yaml.Problem;
import org.junit.jupiter.api.Test;

/** Field numbers, units, ranges and missing codes: the published EPW data dictionary (seen). */
class EpwFileTest {
  private static String plain(Stamp stamp) {
    return EpwText.record(stamp, 5, 2, 81, 3.5);
  }

  private static WeatherReading read(String text) {
    return EpwFile.read(text, "weather.epw");
  }

  private static List<String> codes(WeatherReading reading) {
    return reading.problems().stream().map(Problem::code).toList();
  }

  @Test
  void a_common_year_has_8760_records() {
    WeatherReading reading = read(EpwText.year(2023, 1, EpwFileTest::plain));
    assertThat(reading.problems()).isEmpty();
    HourlyWeather weather = reading.weather().orElseThrow();
    assertThat(weather.records()).hasSize(8760);
    assertThat(weather.place()).isEqualTo("Testham, Nowhere");
    HourlyWeather.Hour first = weather.records().get(0);
    assertThat(first.temperature()).hasValue(5);
    assertThat(first.dewPoint()).hasValue(2);
    assertThat(first.relativeHumidity()).hasValue(0.81);
    assertThat(first.pressure()).hasValue(101325);
    assertThat(first.wind()).hasValue(3.5);
    assertThat(first.hour()).isEqualTo(1);
  }

  @Test
  void a_leap_year_has_8784_records_and_half_hours_twice_as_many() {
    assertThat(weather(EpwText.year(2024, 1, EpwFileTest::plain)).records()).hasSize(8784);
    HourlyWeather halves = weather(EpwText.year(2023, 2, EpwFileTest::plain));
    assertThat(halves.records()).hasSize(17520);
    assertThat(halves.recordsPerHour()).isEqualTo(2);
  }

  @Test
  void windows_line_ends_and_a_byte_order_mark_do_no_harm() {
    String text = "\uFEFF" + EpwText.year(2023, 1, EpwFileTest::plain).replace("\n", "\r\n");
    assertThat(weather(text).records()).hasSize(8760);
  }

  @Test
  void humidity_above_saturation_is_capped_and_counted() {
    HourlyWeather weather =
        weather(
            EpwText.year(
                2023, 1, s -> EpwText.record(s, 5, 5, s.day().getDayOfYear() == 1 ? 103 : 80, 3)));
    assertThat(weather.supersaturated()).isEqualTo(24);
    assertThat(weather.records().get(0).relativeHumidity()).hasValue(1);
  }

  @Test
  void codes_for_missing_values_are_not_values() {
    HourlyWeather weather =
        weather(
            EpwText.year(
                2023,
                1,
                s ->
                    s.day().getDayOfMonth() == 3
                        ? EpwText.record(s, 99.9, 99.9, 999, 999)
                        : plain(s)));
    HourlyWeather.Hour missing = weather.records().get(48);
    assertThat(missing.temperature()).isEmpty();
    assertThat(missing.dewPoint()).isEmpty();
    assertThat(missing.relativeHumidity()).isEmpty();
    assertThat(missing.wind()).isEmpty();
    assertThat(missing.usable()).isFalse();
  }

  @Test
  void a_file_of_100_records_is_refused_and_names_each_month_that_it_lacks() {
    String text =
        EpwText.year(2023, 1, EpwFileTest::plain)
            .lines()
            .limit(108)
            .collect(Collectors.joining("\n"));
    WeatherReading reading = read(text);
    assertThat(reading.weather()).isEmpty();
    assertThat(codes(reading)).hasSize(12).containsOnly("W006");
    assertThat(reading.problems().get(0).found()).isEqualTo("100 usable records of January");
    assertThat(reading.problems().get(11).found()).isEqualTo("0 usable records of December");
    assertThat(reading.problems().get(0).place().line()).isEqualTo(108);
  }

  @Test
  void a_month_of_missing_temperatures_is_not_covered() {
    WeatherReading reading =
        read(
            EpwText.year(
                2023,
                1,
                s -> s.day().getMonthValue() == 6 ? EpwText.record(s, 99.9, 9, 80, 3) : plain(s)));
    assertThat(codes(reading)).containsExactly("W006");
    assertThat(reading.problems().get(0).key()).isEqualTo("June");
  }

  @Test
  void text_in_a_number_is_located_by_line_and_column() {
    String text = EpwText.year(2023, 1, EpwFileTest::plain).replaceFirst(",5\\.0,", ",warm,");
    Problem problem = read(text).problems().get(0);
    assertThat(problem.code()).isEqualTo("W004");
    assertThat(problem.place().line()).isEqualTo(9);
    assertThat(problem.sourceLine().substring(problem.place().column() - 1)).startsWith("warm,");
    assertThat(problem.key()).isEqualTo("dry bulb temperature");
  }

  @Test
  void values_outside_the_ranges_of_the_layout_are_problems() {
    String text = EpwText.year(2023, 1, EpwFileTest::plain).replaceFirst(",81\\.0,", ",181.0,");
    Problem problem = read(text).problems().get(0);
    assertThat(problem.code()).isEqualTo("W005");
    assertThat(problem.found()).isEqualTo("181.0");
    assertThat(problem.expected()).isEqualTo("a relative humidity from 0 to 110");
  }

  @Test
  void short_records_are_problems_and_a_flood_of_them_is_cut() {
    WeatherReading reading = read(EpwText.year(2023, 1, s -> "2023,1,1,1,60"));
    assertThat(codes(reading)).hasSize(21).startsWith("W003").endsWith("W007");
    assertThat(reading.problems().get(0).place().line()).isEqualTo(9);
  }

  @Test
  void another_file_is_no_weather_file() {
    assertThat(codes(read(""))).containsExactly("W001");
    assertThat(codes(read("Date,Temp\n2023-01-01,5\n"))).containsExactly("W001");
    assertThat(codes(read("LOCATION,Testham\nDESIGN CONDITIONS,0\n"))).containsExactly("W001");
    assertThat(codes(read(EpwText.header(1).replace("PERIODS,1,1,", "PERIODS,1,many,"))))
        .containsExactly("W004");
  }

  @Test
  void a_header_that_says_too_little_is_told_as_far_as_it_goes() {
    String header = EpwText.header(1);
    assertThat(codes(read(header.replace("DATA PERIODS", "DATE PERIODS")))).containsExactly("W001");
    assertThat(codes(read(header.replace("DATA PERIODS,1,1,", "DATA PERIODS|")))).contains("W004");
    assertThat(codes(read(header.strip()))).hasSize(12).containsOnly("W006");
  }

  @Test
  void a_place_is_named_as_far_as_the_header_names_it() {
    String year = EpwText.year(2023, 1, EpwFileTest::plain);
    assertThat(weather(year.replace(",Nowhere,", ",,")).place()).isEqualTo("Testham");
    String bare = year.replace("LOCATION,Testham,-,Nowhere,invented,000000,52.0", "LOCATION|");
    assertThat(weather(bare.replaceFirst("LOCATION.*", "LOCATION")).place()).isEmpty();
  }

  @Test
  void line_ends_of_any_kind_end_a_line() {
    String text = EpwText.year(2023, 1, EpwFileTest::plain).replace('\n', '\r');
    assertThat(weather(text).records()).hasSize(8760);
  }

  @Test
  void an_hour_needs_a_temperature_and_either_humidity_or_dew_point() {
    assertThat(first(5, 99.9, 80).usable()).isTrue();
    assertThat(first(5, 2, 999).usable()).isTrue();
    assertThat(first(5, 99.9, 999).usable()).isFalse();
    assertThat(first(99.9, 2, 80).usable()).isFalse();
  }

  private static HourlyWeather.Hour first(double dryBulb, double dewPoint, double rh) {
    String text =
        EpwText.year(
            2023,
            1,
            s ->
                s.day().getDayOfYear() == 1
                    ? EpwText.record(s, dryBulb, dewPoint, rh, 3)
                    : plain(s));
    return weather(text).records().get(0);
  }

  @Test
  void a_broken_row_is_a_problem() {
    String text = EpwText.header(1) + "2023,1,\"1\"x,1,60\n";
    assertThat(codes(read(text))).containsExactly("W002");
  }

  private static HourlyWeather weather(String text) {
    return read(text).weather().orElseThrow();
  }
}
