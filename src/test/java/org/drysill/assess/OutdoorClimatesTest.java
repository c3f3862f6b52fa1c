package org.drysill.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.drysill.assess.OutdoorClimate.Month;
import org.drysill.assess.OutdoorClimates.Resolved;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.climate.ClimateCatalogue;
import org.drysill.reference.climate.EpwFile;
import org.drysill.reference.climate.EpwText;
import org.drysill.reference.climate.EpwText.Stamp;
import org.drysill.reference.climate.HumidityOver;
import org.drysill.reference.climate.ReferenceClimate;
import org.drysill.survey.Survey;
import org.drysill.yaml.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Where the outdoor climate of a home comes from. */
class OutdoorClimatesTest {
  private static final ClimateCatalogue CATALOGUE = ClimateCatalogue.bundled();

  static Stream<String> ids() {
    return CATALOGUE.ids().stream();
  }

  private static Survey survey(String climate) {
    return HomeFixtures.survey("england", "floor_area: 84 m2" + climate, "- {id: wc, use: wc}");
  }

  private static Resolved resolve(String climate) {
    return OutdoorClimates.resolve(survey(climate), CATALOGUE, Optional.empty(), Optional.empty());
  }

  private static List<String> assumed(Resolved resolved) {
    return resolved.assumptions().stream().map(Assumption::id).toList();
  }

  @ParameterizedTest
  @MethodSource("ids")
  void a_named_climate_keeps_its_monthly_means(String id) {
    ReferenceClimate published = CATALOGUE.find(id).orElseThrow();
    OutdoorClimate climate = resolve(", climate: " + id).climate();
    assertThat(climate.name()).isEqualTo(published.name());
    assertThat(climate.basis()).isEqualTo(Basis.PUBLISHED);
    for (int i = 0; i < 12; i++) {
      Month month = climate.months().get(i);
      assertThat(month.number()).isEqualTo(i + 1);
      assertThat(month.temperature()).isEqualTo(published.temperature().get(i).value());
      assertThat(month.relativeHumidity().likely()).isEqualTo(published.humidity().get(i).value());
      assertThat(month.relativeHumidity().high()).isLessThanOrEqualTo(1);
      assertThat(month.windMs().isPresent()).isEqualTo(!published.wind().isEmpty());
    }
    assertThat(climate.months().stream().mapToInt(Month::days).sum()).isEqualTo(365);
    assertThat(climate.sources()).contains(published.temperatureSource());
  }

  /** SAP has temperatures and wind but no humidity: that is estimated, and the report says so. */
  @Test
  void estimated_humidity_is_an_assumption_and_published_humidity_is_none() {
    assertThat(assumed(resolve(", climate: uk-midlands")))
        .containsExactly("dwelling.climate.humidity");
    assertThat(assumed(resolve(", climate: de-bilt"))).isEmpty();
    Month january = resolve(", climate: uk-midlands").climate().months().get(0);
    assertThat(january.relativeHumidity().low()).isCloseTo(0.82, within(1e-12));
    assertThat(january.relativeHumidity().high()).isCloseTo(0.90, within(1e-12));
  }

  @Test
  void where_nobody_names_a_climate_one_is_assumed() {
    Resolved none = resolve("");
    assertThat(none.climate().basis()).isEqualTo(Basis.ASSUMED);
    assertThat(assumed(none)).containsExactly("dwelling.climate", "dwelling.climate.humidity");
    assertThat(none.assumptions().get(0).source().how()).isEqualTo(How.ASSUMPTION);
    Resolved suggested =
        OutdoorClimates.resolve(survey(""), CATALOGUE, Optional.of("oslo"), Optional.empty());
    assertThat(suggested.climate().name()).startsWith("Oslo");
    assertThat(suggested.assumptions().get(0).why()).contains("the rule set suggests");
    assertThat(suggested.assumptions().get(0).source().how()).isNotEqualTo(How.ASSUMPTION);
  }

  /** In the south January is a summer month: the fallback of the north counts from its July on. */
  @Test
  void the_fallback_is_turned_for_homes_in_the_south() {
    OutdoorClimate north = resolve("").climate();
    Resolved south = resolve(", latitude: -43.5");
    assertThat(south.climate().months())
        .extracting(Month::temperature)
        .startsWith(north.months().get(6).temperature(), north.months().get(7).temperature());
    assertThat(south.climate().months().get(6).temperature())
        .isEqualTo(north.months().get(0).temperature());
    assertThat(south.climate().months()).extracting(Month::days).startsWith(31, 28, 31);
    assertThat(south.climate().months()).extracting(Month::number).startsWith(1, 2, 3);
    assertThat(south.assumptions().get(0).assumed())
        .isEqualTo("United Kingdom, average, turned by half a year");
    Survey rented = HomeFixtures.survey("new-zealand", "floor_area: 84 m2", "- {id: wc, use: wc}");
    assertThat(
            OutdoorClimates.resolve(rented, CATALOGUE, Optional.empty(), Optional.empty())
                .climate()
                .months())
        .isEqualTo(south.climate().months());
    assertThat(resolve(", latitude: 60").climate().months()).isEqualTo(north.months());
  }

  @Test
  void an_own_table_is_taken_as_it_stands() {
    OutdoorClimate own =
        resolve(
                """
                , climate: {monthly: {temperature: [1, 2, 5, 9, 13, 16, 18, 17, 14, 10, 5, 2],
                  humidity: [88, 85, 80 % ± 5 %, 75, 72, 72, 72, 74, 79, 84, 88, 89],
                  wind: [5, 5, 5, 4, 4, 3, 3, 3, 4, 4, 5, 5], source: own station}}
                """
                    .replace("\n", " "))
            .climate();
    assertThat(own.months()).extracting(Month::temperature).startsWith(1.0, 2.0, 5.0).hasSize(12);
    Range march = own.months().get(2).relativeHumidity();
    assertThat(march.low()).isCloseTo(0.75, within(1e-12));
    assertThat(march.high()).isCloseTo(0.85, within(1e-12));
    assertThat(own.months().get(5).windMs()).contains(3.0);
    assertThat(own.basis()).isEqualTo(Basis.MEASURED);
    assertThat(own.sources()).extracting(Citation::document).containsExactly("own station");
  }

  @Test
  void an_own_table_needs_neither_wind_nor_source() {
    Resolved own =
        resolve(
            ", climate: {monthly: {temperature: [1, 2, 5, 9, 13, 16, 18, 17, 14, 10, 5, 2],"
                + " humidity: [88, 85, 80, 75, 72, 72, 72, 74, 79, 84, 88, 89]}}");
    assertThat(own.climate().months().get(0).windMs()).isEmpty();
    assertThat(own.climate().sources())
        .extracting(Citation::document)
        .containsExactly("Monthly table of the survey");
    assertThat(own.assumptions()).isEmpty();
  }

  private static OutdoorClimate ofFile(Function<Stamp, String> record) {
    MonthlyWeather weather =
        MonthlyWeather.of(
            EpwFile.read(EpwText.year(2023, 1, record), "here.epw").weather().orElseThrow());
    return OutdoorClimates.resolve(
            survey(", climate: {file: here.epw}"),
            CATALOGUE,
            Optional.empty(),
            Optional.of(weather))
        .climate();
  }

  /** Hours 1 to 24 at month + hour/10: a mean of month + 1.25; the missing days change nothing. */
  @Test
  void a_weather_file_gives_its_monthly_means_without_its_missing_hours() {
    OutdoorClimate file =
        ofFile(
            s ->
                s.day().getDayOfMonth() == 7
                    ? EpwText.record(s, 99.9, 99.9, 999, 999)
                    : EpwText.record(s, s.day().getMonthValue() + s.hour() / 10.0, 0, 80, 4));
    for (Month month : file.months()) {
      assertThat(month.temperature()).isCloseTo(month.number() + 1.25, within(1e-9));
      assertThat(month.windMs().orElseThrow()).isCloseTo(4, within(1e-9));
    }
    assertThat(file.name()).isEqualTo("Testham, Nowhere");
    assertThat(file.basis()).isEqualTo(Basis.MEASURED);
    assertThat(file.sources())
        .extracting(Citation::document)
        .containsExactly("Weather file here.epw");
    assertThat(file.note().orElseThrow()).doesNotContain("above 100 %");
  }

  /**
   * Half of the hours 0 °C and 100 %, half 20 °C and 50 %: mean vapour (610.5 + 1168.5)/2 = 889.5
   * Pa at 10 °C, where 1227.3 Pa saturate: 72.5 %, not 75 %.
   */
  @Test
  void the_humidity_of_a_month_keeps_its_mean_vapour() {
    OutdoorClimate file =
        ofFile(
            s ->
                s.hour() % 2 == 0
                    ? EpwText.record(s, 0, 0, 100, 4)
                    : EpwText.record(s, 20, 9, 50, 4));
    assertThat(file.months().get(0).relativeHumidity().likely()).isCloseTo(0.7248, within(1e-4));
  }

  @Test
  void the_dew_point_stands_in_for_a_missing_humidity() {
    OutdoorClimate file = ofFile(s -> EpwText.record(s, 10, 5, 999, 999));
    Month january = file.months().get(0);
    assertThat(january.relativeHumidity().likely()).isCloseTo(871.86 / 1227.31, within(1e-4));
    assertThat(january.windMs()).isEmpty();
    OutdoorClimate fog = ofFile(s -> EpwText.record(s, 10, 12, 999, 4));
    assertThat(fog.months().get(0).relativeHumidity().likely()).isEqualTo(1);
  }

  @Test
  void humidity_above_saturation_is_told() {
    OutdoorClimate file = ofFile(s -> EpwText.record(s, 10, 10, s.hour() == 1 ? 104 : 90, 4));
    assertThat(file.note().orElseThrow()).endsWith("taken as 100 %: 365.");
  }

  /** At -5 °C saturation is 401.2 Pa over ice and 421.0 Pa over water (ISO 13788, memory). */
  @Test
  void humidity_over_ice_is_converted_to_that_over_water() {
    OutdoorClimate ice = overIce(-5, 0.9);
    assertThat(ice.months().get(0).relativeHumidity().likely())
        .isCloseTo(0.9 * 401.18 / 420.98, within(1e-4));
    assertThat(overIce(5, 0.9).months().get(0).relativeHumidity().likely()).isEqualTo(0.9);
    assertThat(overIce(-5, 1).months().get(0).relativeHumidity().high()).isLessThanOrEqualTo(1);
  }

  private static OutdoorClimate overIce(double celsius, double humidity) {
    ReferenceClimate oslo = CATALOGUE.find("oslo").orElseThrow();
    ReferenceClimate ice =
        new ReferenceClimate(
            "ice",
            "Ice",
            "XX",
            Optional.empty(),
            Optional.empty(),
            java.util.Collections.nCopies(12, exactly(celsius)),
            java.util.Collections.nCopies(12, exactly(humidity)),
            HumidityOver.ICE,
            exactly(0.02),
            List.of(),
            oslo.temperatureSource(),
            oslo.humiditySource(),
            Optional.empty(),
            Optional.empty());
    return OutdoorClimates.resolve(
            survey(", climate: ice"),
            ClimateCatalogue.of(List.of(ice), CATALOGUE.defaults()),
            Optional.empty(),
            Optional.empty())
        .climate();
  }

  private static Quantity exactly(double value) {
    return new Quantity(value, value, value, "");
  }

  @Test
  void what_readers_refuse_beforehand_is_refused_here_too() {
    assertThatThrownBy(() -> resolve(", climate: atlantis"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("atlantis");
    assertThatThrownBy(() -> resolve(", climate: {file: lost.epw}"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("not read");
    assertThatThrownBy(
            () ->
                new OutdoorClimate("short", List.of(), Basis.ASSUMED, List.of(), Optional.empty()))
        .hasMessageContaining("12 months but was 0");
  }

  /** The means of a leap year are those of all its days. */
  @Test
  void a_leap_day_counts_in_its_month() {
    MonthlyWeather leap =
        MonthlyWeather.of(
            EpwFile.read(
                    EpwText.year(
                        2024,
                        1,
                        s ->
                            EpwText.record(
                                s, s.day().equals(LocalDate.of(2024, 2, 29)) ? 29 : 0, -5, 60, 4)),
                    "leap.epw")
                .weather()
                .orElseThrow());
    assertThat(leap.months().get(1).temperature()).isCloseTo(1, within(1e-9));
  }

  /** Great circle by hand: from 52.5, -1.9 to 52.5, -1.6 it is 0.3 x cos 52.5 x 111.2 = 20 km. */
  @Test
  void a_home_whose_place_is_known_takes_the_nearest_climate() {
    Resolved near = resolve(", latitude: 52.5 deg, longitude: -1.9 deg");
    assertThat(near.climate().name()).isEqualTo("Midlands");
    assertThat(near.climate().basis()).isEqualTo(Basis.ASSUMED);
    assertThat(near.assumptions().get(0).assumed()).isEqualTo("Midlands, about 20 km away");
  }

  @Test
  void a_home_far_from_every_climate_takes_none_of_them_for_near() {
    Resolved far = resolve(", latitude: -40 deg, longitude: 175 deg");
    assertThat(far.climate().name()).isEqualTo("United Kingdom, average, turned by half a year");
    assertThat(resolve(", latitude: 52.5 deg").climate().name())
        .isEqualTo("United Kingdom, average");
  }
}
