package org.drysill.assess.humidity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.drysill.assess.humidity.HumidityFixtures.assess;
import static org.drysill.assess.humidity.HumidityFixtures.reading;

import java.util.List;
import java.util.Locale;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Direction;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.assess.humidity.OutdoorAir.Source;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What readings say; expected figures reckoned by hand with ps = 610.5 exp(17.269 T/(237.3 + T)).
 */
class HumidityAssessorTest {
  private static HumidityResult room(String outdoor, String... readings) {
    return assess(
        outdoor, "- {id: bed, use: bedroom, readings: [" + String.join(", ", readings) + "]}");
  }

  private static RoomAir air(String outdoor, String reading) {
    return room(outdoor, reading).readings().get(0);
  }

  private static Finding finding(HumidityResult result, String id) {
    return result.findings().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  /** A fine reading, so that no instrument blurs the verdict. */
  private static String exactly(double percent) {
    return "{temperature: 20 C, humidity: %s %% ± 0.01 %%}".formatted(percent);
  }

  @Test
  void a_reading_gives_dew_point_pressure_and_content() {
    RoomAir air = air(reading("10:00", 5, 80), reading("10:05", 20, 50));
    assertThat(air.vapourPressure().likely()).isCloseTo(1168.48, within(0.01));
    assertThat(air.dewPoint().likely()).isCloseTo(9.26, within(0.01));
    assertThat(air.vapourContent().likely()).isCloseTo(8.637e-3, within(1e-6));
    assertThat(air.excessPressure().likely()).isCloseTo(1168.48 - 697.49, within(0.01));
    assertThat(air.excess().likely()).isCloseTo(8.637e-3 - 5.4336e-3, within(1e-6));
  }

  /** The accuracy of a hygrometer is one of percentage points, not a share of the reading. */
  @Test
  void two_and_a_half_points_stay_two_and_a_half_points() {
    Range humidity = air("", reading("10:05", 20, 50)).relativeHumidity().value();
    assertThat(humidity.low()).isCloseTo(0.475, within(1e-12));
    assertThat(humidity.high()).isCloseTo(0.525, within(1e-12));
  }

  /** Errors that are independent add as squares: less than both at their worst. */
  @Test
  void the_error_of_the_excess_is_a_root_of_squares() {
    RoomAir air = air(reading("10:00", 5, 80), reading("10:05", 20, 50));
    double worst = (air.vapourPressure().value().high() - air.vapourPressure().value().low()) / 2;
    assertThat(air.excessPressureError()).isBetween(58.4, worst);
    assertThat(air.excessPressure().value())
        .isEqualTo(Range.around(air.excessPressure().likely(), air.excessPressureError()));
  }

  /**
   * ISO 13788:2012, Annex A (memory): 270, 540, 810, 1080 Pa up to 0 °C, in a line to nothing at 20
   * °C. Indoors 20 °C, so that 10 % are 233.7 Pa; outdoors dry, 1 %.
   */
  @ParameterizedTest
  @CsvSource({
    "-5, 11, 1", "-5, 13, 2", "0, 22, 2", "0, 25, 3", "0, 34, 3", "0, 36, 4", "0, 46, 4",
    "0, 48, 5", "10, 5, 1", "10, 7, 2", "10, 23, 4", "10, 25, 5", "19, 1, 1", "19, 4, 5"
  })
  void class_by_excess_and_outdoor_temperature(double outdoor, double indoor, int number) {
    String dry = "{at: 2026-01-22T10:00, temperature: %s C, humidity: 1 %%}".formatted(outdoor);
    assertThat(air(dry, exactly(indoor)).humidityClass().orElseThrow().likely()).isEqualTo(number);
  }

  @Test
  void the_class_spans_the_error_and_says_what_it_is_typical_of() {
    ClassIndication found =
        air(reading("10:00", 0, 80), reading("10:05", 20, 57)).humidityClass().orElseThrow();
    assertThat(found.lowest()).isEqualTo(3);
    assertThat(found.likely()).isEqualTo(4);
    assertThat(found.highest()).isEqualTo(4);
    assertThat(found.meaning()).isEqualTo("sports halls, kitchens and canteens");
    assertThat(found.source().edition()).contains("2012");
  }

  @Test
  void in_summer_there_is_no_class() {
    assertThat(air(reading("10:00", 21, 60), reading("10:05", 22, 60)).humidityClass()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "below_60, 57.4, MEETS", "below_60, 57.6, UNKNOWN", "below_60, 62.4, UNKNOWN",
    "below_60, 62.6, SHORT", "below_70, 62.6, MEETS", "below_80, 90, SHORT"
  })
  void thresholds_are_kept_beyond_the_error_of_the_instrument(
      String threshold, double percent, Verdict verdict) {
    Finding found = finding(room("", reading("10:05", 20, percent)), "humidity.bed." + threshold);
    assertThat(found.verdict()).isEqualTo(verdict);
    assertThat(found.direction()).isEqualTo(Direction.BELOW);
    assertThat(found.settledBy().isPresent()).isEqualTo(verdict == Verdict.UNKNOWN);
  }

  /** The limit is one to stay below: equality fails. */
  @Test
  void exactly_the_threshold_is_not_below_it() {
    String from = "{temperature: 20 C, humidity: 60..61 %}";
    String below = "{temperature: 20 C, humidity: 59..59.99 %}";
    assertThat(finding(room("", from), "humidity.bed.below_60").verdict()).isEqualTo(Verdict.SHORT);
    assertThat(finding(room("", below), "humidity.bed.below_60").verdict())
        .isEqualTo(Verdict.MEETS);
  }

  @Test
  void the_dampest_reading_of_a_room_counts() {
    HumidityResult twice = room("", reading("09:00", 20, 75), reading("10:05", 20, 50));
    assertThat(finding(twice, "humidity.bed.below_70").verdict()).isEqualTo(Verdict.SHORT);
    assertThat(twice.of("bed")).hasSize(2);
    assertThat(twice.of("bed").get(1).dewPoint().id()).isEqualTo("room.bed.reading_2.dew_point");
  }

  @Test
  void a_heated_room_without_a_reading_is_a_finding_and_a_cellar_is_not() {
    HumidityResult none =
        assess(
            "",
            "- {id: bed, use: bedroom, readings: [{temperature: 18 C}]}\n- {id: c, use: cellar}");
    Finding bed = finding(none, "humidity.bed.not_read");
    assertThat(bed.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(bed.direction()).isEqualTo(Direction.NONE);
    assertThat(bed.settledBy()).contains("Read temperature and relative humidity in the bed.");
    assertThat(none.findings()).noneMatch(f -> f.id().startsWith("humidity.c."));
    assertThat(none.readings()).isEmpty();
    assertThat(none.home()).isEmpty();
  }

  /** Approved Document F Volume 1, 2021 edition (England), Table B3 (seen). */
  @Test
  void criteria_of_means_are_not_judged_by_a_moment() {
    List<Finding> means =
        room("", exactly(90)).findings().stream()
            .filter(f -> f.id().startsWith("humidity.moving_average."))
            .toList();
    assertThat(means)
        .extracting(f -> f.required().orElseThrow().likely())
        .containsExactly(0.65, 0.75, 0.85);
    assertThat(means).extracting(Finding::verdict).containsOnly(Verdict.UNKNOWN);
    assertThat(means).allSatisfy(f -> assertThat(f.provided()).isEmpty());
    assertThat(means.get(0).because()).contains("65 %", "mean over a month", "new dwellings");
    assertThat(means.get(0).required().orElseThrow().working().sources())
        .extracting(Citation::document)
        .containsOnly("Approved Document F, Volume 1: Dwellings");
  }

  @ParameterizedTest
  @CsvSource({"07:05, READING", "07:04, CLIMATE_MONTH", "13:05, READING", "13:06, CLIMATE_MONTH"})
  void outdoor_air_belongs_to_a_reading_within_three_hours(String at, Source source) {
    assertThat(air(reading(at, 5, 80), reading("10:05", 20, 50)).outdoor().source())
        .isEqualTo(source);
  }

  @Test
  void without_outdoor_humidity_the_vapour_is_that_of_the_month() {
    String cold = "{at: 2026-01-22T10:00, temperature: 8 C, instrument: th1}";
    HumidityResult result = room(cold, reading("10:05", 20, 50));
    OutdoorAir outdoor = result.readings().get(0).outdoor();
    assertThat(outdoor.source()).isEqualTo(Source.READING_WITHOUT_HUMIDITY);
    assertThat(outdoor.temperature().likely()).isEqualTo(8);
    assertThat(outdoor.vapourPressure().likely()).isCloseTo(0.85 * 871.8, within(0.5));
    assertThat(outdoor.simultaneous()).isFalse();
    assertThat(outdoor.vapourPressure().basis()).isEqualTo(Basis.ASSUMED);
    assertThat(outdoor.said()).contains("humidity not", "climate test");
    assertThat(result.assumptions()).extracting(Assumption::id).contains("humidity.outdoor");
  }

  @Test
  void where_nothing_was_read_outdoors_the_month_stands_in_with_the_spread_of_days() {
    HumidityResult result = room("", reading("10:05", 20, 50));
    RoomAir air = result.readings().get(0);
    double month = 0.85 * 871.8;
    assertThat(air.outdoor().source()).isEqualTo(Source.CLIMATE_MONTH);
    assertThat(air.outdoor().at()).isEmpty();
    assertThat(air.outdoor().temperature().value()).isEqualTo(new Range(0, 5, 10));
    assertThat(air.outdoor().temperature().working().note().orElseThrow()).contains("single days");
    assertThat(air.outdoor().vapourPressure().value().high()).isCloseTo(871.8, within(0.5));
    assertThat(air.outdoor().vapourPressure().value().low()).isCloseTo(0.7 * month, within(0.5));
    assertThat(air.excessPressure().likely()).isCloseTo(1168.5 - month, within(0.5));
    assertThat(air.excessPressureError()).isGreaterThan(0.3 * month);
    assertThat(air.excess().basis()).isEqualTo(Basis.ASSUMED);
    assertThat(result.assumptions().get(0).assumed()).contains("climate test", "30 %");
  }

  @Test
  void readings_without_a_time_belong_to_the_visit() {
    RoomAir air = air("{temperature: 5 C, humidity: 80 %}", exactly(50));
    assertThat(air.outdoor().source()).isEqualTo(Source.READING);
    assertThat(air.outdoor().said()).isEqualTo("outdoor reading");
    assertThat(air(reading("10:00", 5, 80), exactly(50)).outdoor().said())
        .isEqualTo("outdoor reading of 22 January 2026, 10:00");
    assertThat(
            air("{at: 2026-01-22, temperature: 5 C, humidity: 80 %}", exactly(50)).outdoor().said())
        .isEqualTo("outdoor reading of 22 January 2026");
  }

  /** An instrument that nobody described is assumed to be poor, and the report says so. */
  @Test
  void an_accuracy_that_nobody_states_is_an_assumption() {
    HumidityResult result =
        room(reading("10:00", 5, 80), "{temperature: 20 C, humidity: 50 %, instrument: toy}");
    assertThat(result.assumptions())
        .extracting(Assumption::id)
        .containsExactly("instrument.toy.temperature_accuracy", "instrument.toy.humidity_accuracy");
    assertThat(result.readings().get(0).relativeHumidity().value())
        .isEqualTo(Range.around(0.5, 0.05));
  }

  @Test
  void below_freezing_the_dew_point_is_a_frost_point() {
    RoomAir air = air("", "{temperature: 5 C, humidity: 50 %}");
    assertThat(air.dewPoint().likely()).isCloseTo(-4.0, within(0.1));
    assertThat(air.dewPoint().working().note().orElseThrow()).contains("frost point");
  }

  /** 1150 ppm ± 50, outdoors 400 to 500, 2.9 to 4.6 ml/s a person; own arithmetic. */
  @Test
  void carbon_dioxide_tells_the_air_of_each_person_and_that_it_is_indicative() {
    Co2Air co2 = room("", "{temperature: 20 C, co2: 1150 ppm ± 50 ppm}", exactly(50)).co2().get(0);
    assertThat(co2.excess().value()).isEqualTo(new Range(600, 700, 800));
    Range litres = co2.airPerPerson().orElseThrow().value().times(1000);
    assertThat(litres.low()).isCloseTo(2.9e-3 / 800e-6, within(1e-9));
    assertThat(litres.likely()).isCloseTo(3.75e-3 / 700e-6, within(1e-9));
    assertThat(litres.high()).isCloseTo(4.6e-3 / 600e-6, within(1e-9));
    assertThat(co2.said()).startsWith("Indicative only");
    assertThat(co2.airPerPerson().orElseThrow().basis()).isEqualTo(Basis.ASSUMED);
    assertThat(co2.airPerPerson().orElseThrow().working().sources()).hasSize(2);
    assertThat(co2.excess().working().inputs()).hasSize(2);
    assertThat(co2.concentration().working().formula()).isEqualTo("as read");
  }

  @Test
  void air_as_good_as_outdoors_tells_nothing_of_fresh_air() {
    Co2Air co2 = room("", "{temperature: 20 C, co2: 520 ppm ± 50 ppm}").co2().get(0);
    assertThat(co2.airPerPerson()).isEmpty();
    assertThat(co2.said()).startsWith("Too close to outdoor air");
  }

  /** Each figure of a reading can be followed back to what was read. */
  @Test
  void every_figure_has_a_working() {
    RoomAir air = air(reading("10:00", 5, 80), reading("10:05", 20, 50));
    assertThat(air.temperature().working().formula()).isEqualTo("as read");
    assertThat(air.outdoor().temperature().working().formula()).isEqualTo("as read");
    assertThat(air("", exactly(50)).outdoor().temperature().working().formula())
        .isEqualTo("mean of the month");
    assertThat(List.of(air.vapourPressure(), air.dewPoint(), air.vapourContent(), air.excess()))
        .allSatisfy(f -> assertThat(f.working().sources()).isNotEmpty());
    assertThat(air.excessPressure().working().formula().toLowerCase(Locale.ROOT))
        .isEqualTo("δp = pi − pe");
    assertThat(air.excess().working().inputs())
        .extracting(i -> i.figure().orElseThrow())
        .containsExactly("room.bed.vapour_content", "room.bed.outdoor.vapour_content");
  }
}
