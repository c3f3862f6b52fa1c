package org.drysill.assess.home;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Home;
import org.drysill.assess.OutdoorClimate;
import org.drysill.physics.Range;
import org.drysill.reference.DataFiles;
import org.drysill.reference.dwelling.DwellingDefaults;
import org.drysill.reference.prices.MoneyDefaults;
import org.drysill.reference.prices.PriceDefaults;
import org.drysill.survey.Survey;
import org.drysill.yaml.Reading;
import org.drysill.yaml.RecordReader;
import org.drysill.yaml.Vocabularies;
import org.junit.jupiter.api.Test;

class HomeBuilderTest {
  private static final String TEN_MINUTES =
      """
      drysill: 1
      visit: {date: 2026-01-22}
      dwelling: {jurisdiction: england, floor_area: 50 m2}
      rooms:
        - {id: kitchen, use: kitchen}
      """;

  private static Home home(String yaml) {
    Reading<Survey> reading =
        RecordReader.read(Survey.class, yaml, "test.yaml", Vocabularies.none());
    assertThat(reading.value()).as(() -> reading.problems().toString()).isPresent();
    List<OutdoorClimate.Month> months =
        IntStream.rangeClosed(1, 12)
            .mapToObj(m -> new OutdoorClimate.Month(m, 30, 8, Range.exactly(0.8), Optional.empty()))
            .toList();
    return HomeBuilder.build(
        reading.value().orElseThrow(),
        new OutdoorClimate("test", months, Basis.ASSUMED, List.of(), Optional.empty()),
        List.of(),
        DwellingDefaults.bundled(),
        DataFiles.read("defaults/money.yaml", MoneyDefaults.class),
        DataFiles.readAll("prices", PriceDefaults.class));
  }

  private static List<String> assumed(Home home) {
    return home.assumptions().stream().map(Assumption::id).toList();
  }

  @Test
  void a_survey_of_ten_minutes_lists_everything_that_it_leaves_open() {
    Home home = home(TEN_MINUTES);
    assertThat(assumed(home))
        .containsExactlyInAnyOrder(
            "dwelling.setpoint",
            "room.kitchen.floor_area",
            "rooms.height",
            "dwelling.bedrooms",
            "dwelling.storeys",
            "dwelling.occupants",
            "dwelling.airtightness",
            "prices.currency",
            "dwelling.heating.fuel",
            "prices.electricity",
            "prices.heat",
            "dwelling.heating.efficiency",
            "prices.discount_rate",
            "prices.horizon");
    assertThat(home.volume().likely()).isCloseTo(120, within(1e-9));
    assertThat(home.n50().value()).isEqualTo(new Range(5, 11.5, 18));
  }

  @Test
  void stated_facts_are_taken_and_not_listed() {
    Home home =
        home(
            """
            drysill: 1
            visit: {date: 2026-01-22}
            dwelling:
              jurisdiction: england
              floor_area: 20 m2
              storeys: 1
              bedrooms: 1
              occupants: {adults: 2, children: 1}
              airtightness: {n50: 4 /h, basis: measured}
              heating: {fuel: oil, efficiency: 84 %, setpoint: 20 C}
            prices: {currency: GBP, electricity: 0.27 /kWh, heat: 0.07 /kWh, discount_rate: 3.5 %, horizon: 20 y}
            rooms:
              - {id: living, use: living, floor_area: 20 m2, height: 2.4 m, setpoint: 21 C}
            """);
    assertThat(home.assumptions()).isEmpty();
    assertThat(home.occupants().likely()).isEqualTo(3);
    assertThat(home.n50().basis()).isEqualTo(Basis.MEASURED);
    assertThat(home.room("living").orElseThrow().setpoint().likely()).isEqualTo(21);
    assertThat(home.volume().basis()).isEqualTo(Basis.CALCULATED);
    assertThat(home.money().discountRate().likely()).isCloseTo(0.035, within(1e-12));
    assertThat(home.volume().working().inputs()).hasSize(1);
  }

  @Test
  void an_assumed_leakage_gets_a_spread_and_is_listed() {
    Home home =
        home(
            TEN_MINUTES.replace("floor_area: 50 m2", "floor_area: 50 m2, airtightness: {n50: 10}"));
    assertThat(home.n50().value()).isEqualTo(new Range(7, 10, 13));
    assertThat(assumed(home)).contains("dwelling.airtightness");
  }

  /** n50 = q50 A/V: 7 m3/(h m2) over 165 m2 and 120 m3 are 9.625 /h; arithmetic. */
  @Test
  void a_measured_permeability_becomes_air_changes_by_envelope_and_volume() {
    Home home =
        home(
            TEN_MINUTES.replace(
                "floor_area: 50 m2",
                "floor_area: 50 m2, volume: 120 m3, envelope_area: 165 m2, airtightness: {air_permeability: 7, basis: measured}"));
    assertThat(home.n50().likely()).isCloseTo(9.625, within(1e-9));
    assertThat(home.n50().basis()).isEqualTo(Basis.CALCULATED);
    assertThat(home.n50().working().formula()).contains("q50");
  }

  @Test
  void a_permeability_without_an_envelope_takes_a_usual_one() {
    Home home =
        home(
            TEN_MINUTES.replace(
                "floor_area: 50 m2",
                "floor_area: 50 m2, type: mid-floor flat, airtightness: {air_permeability: 7}"));
    assertThat(assumed(home)).contains("dwelling.envelope_area", "dwelling.airtightness");
    assertThat(home.n50().value().low()).isLessThan(home.n50().value().high());
  }

  @Test
  void the_age_of_the_home_narrows_its_leakage() {
    Home home = home(TEN_MINUTES.replace("floor_area: 50 m2", "floor_area: 50 m2, built: 1931"));
    assertThat(home.n50().value()).isEqualTo(new Range(12, 15, 18));
  }

  @Test
  void rooms_without_area_share_what_the_others_leave() {
    Home home =
        home(
            """
            drysill: 1
            visit: {date: 2026-01-22}
            dwelling: {jurisdiction: england, floor_area: 50 m2, type: mid-terrace house}
            rooms:
              - {id: living, use: living, floor_area: 20 m2, height: 2.5 m}
              - {id: bath, use: bathroom}
              - {id: bed, use: bedroom}
            """);
    assertThat(home.room("bed").orElseThrow().floorArea().likely()).isCloseTo(15, within(1e-9));
    assertThat(home.room("bed").orElseThrow().height().likely()).isCloseTo(2.5, within(1e-9));
    assertThat(home.room("bath").orElseThrow().name()).isEqualTo("Bath");
    assertThat(home.storeys()).isEqualTo(2);
    assertThat(home.bedrooms()).isEqualTo(1);
    assertThat(home.room("nowhere")).isEmpty();
  }

  @Test
  void a_foreign_currency_without_a_tariff_falls_back_to_the_default_and_says_where_it_holds() {
    Home home = home(TEN_MINUTES + "prices: {currency: CHF}\n");
    assertThat(home.money().currency()).isEqualTo("CHF");
    assertThat(home.assumptions())
        .filteredOn(a -> a.id().equals("prices.electricity"))
        .singleElement()
        .satisfies(a -> assertThat(a.assumed()).contains("GBP"));
  }
}
