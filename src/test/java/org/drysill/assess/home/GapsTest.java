package org.drysill.assess.home;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.HomeFixtures;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.assess.ventilation.VentilationFixtures;
import org.drysill.physics.Range;
import org.drysill.reference.How;
import org.drysill.survey.DwellingType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Every gap that a survey may leave. The values that fill them are planning assumptions of
 * defaults/dwelling.yaml, but for the ratio of envelope to volume (EN ISO 9972, memory).
 */
class GapsTest {
  private static final String ROOM = "- {id: kitchen, use: kitchen}";

  private static Home home(String dwelling, String rooms) {
    return VentilationFixtures.home("england", "floor_area: 50 m2" + dwelling, rooms);
  }

  private static Home home(String dwelling) {
    return home(dwelling, ROOM);
  }

  private static List<String> assumed(Home home) {
    return home.assumptions().stream().map(Assumption::id).toList();
  }

  private static Assumption assumption(Home home, String id) {
    return home.assumptions().stream().filter(a -> a.id().equals(id)).findFirst().orElseThrow();
  }

  private static void assertRange(Range range, double low, double likely, double high) {
    assertThat(range.low()).isCloseTo(low, within(1e-9));
    assertThat(range.likely()).isCloseTo(likely, within(1e-9));
    assertThat(range.high()).isCloseTo(high, within(1e-9));
  }

  // ---- leakage

  @Test
  void a_measured_leakage_is_taken_as_it_is() {
    Home home = home(", airtightness: {n50: 4 ± 0.4 /h, basis: measured}");
    assertRange(home.n50().value(), 3.6, 4, 4.4);
    assertThat(home.n50().basis()).isEqualTo(Basis.MEASURED);
    assertThat(home.n50().working().note().orElseThrow()).contains("4 ± 0.4 /h");
    assertThat(assumed(home)).doesNotContain("dwelling.airtightness");
  }

  /** Give or take three tenths, unless the survey gives its own range. */
  @ParameterizedTest
  @CsvSource({
    "'n50: 10 /h', 7, 10, 13",
    "'n50: 10 /h, basis: assumed', 7, 10, 13",
    "'n50: 8..12 /h', 8, 10, 12"
  })
  void a_leakage_that_nobody_measured_gets_a_spread_and_is_listed(
      String airtightness, double low, double likely, double high) {
    Home home = home(", airtightness: {" + airtightness + "}");
    assertRange(home.n50().value(), low, likely, high);
    assertThat(home.n50().basis()).isEqualTo(Basis.ASSUMED);
    assertThat(assumption(home, "dwelling.airtightness").better()).contains("tested");
  }

  /** n50 = q50 A / V = 6 × 200 / 120 = 10 /h. */
  @Test
  void a_permeability_is_by_envelope_and_volume() {
    String home = ", volume: 120, envelope_area: 200, airtightness: {air_permeability: 6%s}";
    Home measured = home(home.formatted(", basis: measured"));
    assertRange(measured.n50().value(), 10, 10, 10);
    assertThat(measured.n50().basis()).isEqualTo(Basis.CALCULATED);
    assertThat(measured.n50().working().inputs())
        .extracting(Input::symbol)
        .containsExactly("q50", "A_E", "V");
    Home assumed = home(home.formatted(""));
    assertRange(assumed.n50().value(), 7, 10, 13);
    assertThat(assumed.n50().basis()).isEqualTo(Basis.ASSUMED);
    assertThat(assumption(assumed, "dwelling.airtightness").assumed()).contains("at 50 Pa");
  }

  /** A flat has 0.5 to 0.8 and a house 0.8 to 1.3 m² of envelope by m³. */
  @ParameterizedTest
  @EnumSource(DwellingType.class)
  void an_envelope_that_nobody_measured_is_by_the_kind_of_home(DwellingType type) {
    Home home =
        home(
            ", volume: 100, type: "
                + type.word()
                + ", airtightness: {air_permeability: 10, basis: measured}");
    boolean flat = LeakageGap.isFlat(type);
    assertThat(flat)
        .isEqualTo(type.word().contains("flat") || type.word().matches("maisonette|studio"));
    assertRange(home.n50().value(), flat ? 5 : 8, flat ? 6.5 : 10.5, flat ? 8 : 13);
    assertThat(home.n50().basis()).isEqualTo(Basis.ASSUMED);
    assertThat(assumption(home, "dwelling.envelope_area").assumed())
        .isEqualTo(flat ? "50 to 80 m²" : "80 to 130 m²");
  }

  /**
   * Where the area is a usual share of the volume, n50 = q50 × A/V has no volume in it: however
   * doubtful the height, a house of 10 m³/(h·m²) has 8 to 13 /h.
   */
  @Test
  void an_uncertain_volume_cancels_against_the_envelope_taken_from_it() {
    Home home = home(", airtightness: {air_permeability: 10, basis: measured}");
    assertThat(home.volume().value().isSpread()).isTrue();
    assertRange(home.n50().value(), 8, 10.5, 13);
    assertThat(home.n50().working().formula()).isEqualTo("n50 = q50 × r");
  }

  @Test
  void a_home_of_unknown_kind_has_the_envelope_of_a_house() {
    Home home = home(", volume: 100, airtightness: {air_permeability: 10, basis: measured}");
    assertThat(assumption(home, "dwelling.envelope_area").assumed()).isEqualTo("80 to 130 m²");
    assertThat(assumption(home, "dwelling.envelope_area").source().how()).isEqualTo(How.MEMORY);
  }

  @ParameterizedTest
  @CsvSource({
    "1850, 10, 16",
    "1919, 10, 16",
    "1920, 12, 18",
    "1979, 11, 16",
    "1999, 8, 13",
    "2010, 5, 10",
    "2011, 3, 6"
  })
  void an_unknown_leakage_is_by_age(int built, double low, double high) {
    Home home = home(", built: " + built);
    assertRange(home.n50().value(), low, (low + high) / 2, high);
    assertThat(assumption(home, "dwelling.airtightness").why()).contains("year of construction");
  }

  @Test
  void without_an_age_it_is_anything_and_says_so() {
    assertRange(home("").n50().value(), 5, 11.5, 18);
    assertThat(assumption(home(""), "dwelling.airtightness").why())
        .startsWith("Neither a test nor");
  }

  // ---- people, bedrooms, storeys, temperature

  @Test
  void people_are_counted_or_taken_as_bedrooms_plus_one() {
    assertThat(home(", occupants: {adults: 2, children: 3}").occupants().likely()).isEqualTo(5);
    assertThat(home(", occupants: {adults: 2}").occupants().likely()).isEqualTo(2);
    Home silent = home(", bedrooms: 3");
    assertRange(silent.occupants().value(), 3, 4, 5);
    assertThat(assumption(silent, "dwelling.occupants").assumed()).isEqualTo("4");
    assertThat(silent.occupants().working().formula()).isEqualTo("assumed");
    assertRange(home(", bedrooms: 0").occupants().value(), 1, 1, 2);
    assertThat(home(", occupants: {adults: 2}").occupants().working().note().orElseThrow())
        .contains("2 people");
  }

  /** An empty home has no one to count by; the number of those who may live there is taken. */
  /** Two bedrooms would make 3 people (2 to 4); four children have at least one adult with them. */
  @Test
  void children_do_not_live_alone() {
    assertRange(home(", bedrooms: 2, occupants: {children: 1}").occupants().value(), 2, 3, 4);
    assertRange(home(", bedrooms: 2, occupants: {children: 4}").occupants().value(), 5, 5, 5);
    assertThat(assumption(home(", occupants: {children: 1}"), "dwelling.occupants").why())
        .contains("children");
    assertThat(home(", occupants: {adults: 0, children: 2}").occupants().likely()).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource({"'occupants: {home_by_day: true}'", "'occupants: {adults: 0}'"})
  void an_empty_home_is_taken_as_lived_in(String occupants) {
    Home home = home(", bedrooms: 1, " + occupants);
    assertRange(home.occupants().value(), 1, 2, 3);
    assertThat(assumed(home)).contains("dwelling.occupants");
  }

  @Test
  void bedrooms_are_counted_where_the_survey_does_not_say() {
    String rooms = "- {id: a, use: bedroom}\n- {id: b, use: bedroom}\n- {id: c, use: living}";
    assertThat(home("", rooms).bedrooms()).isEqualTo(2);
    assertThat(assumed(home("", rooms))).contains("dwelling.bedrooms");
    assertThat(home(", bedrooms: 4", rooms).bedrooms()).isEqualTo(4);
    assertThat(assumed(home(", bedrooms: 4", rooms))).doesNotContain("dwelling.bedrooms");
  }

  @ParameterizedTest
  @EnumSource(DwellingType.class)
  void storeys_are_those_of_the_kind_of_home(DwellingType type) {
    boolean one =
        switch (type) {
          case BUNGALOW, GROUND_FLOOR_FLAT, MID_FLOOR_FLAT, TOP_FLOOR_FLAT, STUDIO -> true;
          case DETACHED_HOUSE,
              SEMI_DETACHED_HOUSE,
              END_TERRACE_HOUSE,
              MID_TERRACE_HOUSE,
              MAISONETTE ->
              false;
        };
    assertThat(home(", type: " + type.word()).storeys()).isEqualTo(one ? 1 : 2);
  }

  @Test
  void storeys_are_counted_from_the_rooms_where_that_is_more() {
    String rooms =
        "- {id: a, use: hall, storey: 0}\n- {id: b, use: bedroom, storey: 1}\n"
            + "- {id: c, use: bedroom, storey: 2}";
    assertThat(home(", type: mid-terrace house", rooms).storeys()).isEqualTo(3);
    assertThat(home("", rooms).storeys()).isEqualTo(3);
    assertThat(home("").storeys()).isEqualTo(1);
    assertThat(home(", storeys: 2", rooms).storeys()).isEqualTo(2);
  }

  /** Planning values: a loft 0 to 10 °C, a cellar 8 to 14 °C; what was read there goes first. */
  @Test
  void rooms_without_heating_are_not_as_warm_as_the_home() {
    Home home =
        home(
            ", heating: {setpoint: 20 C}",
            ROOM
                + """

                - {id: loft, use: loft}
                - {id: coal, name: coal cellar, use: cellar}
                - {id: read, use: cellar, readings: [{temperature: 12 C}, {temperature: 13 C}]}
                - {id: summer, use: cellar, readings: [{temperature: 21 C}]}
                - {id: told, use: cellar, setpoint: 18 C, readings: [{temperature: 12 C}]}
                """);
    assertRange(home.room("loft").orElseThrow().setpoint().value(), 0, 5, 10);
    assertRange(home.room("coal").orElseThrow().setpoint().value(), 8, 11, 14);
    assertRange(home.room("read").orElseThrow().setpoint().value(), 12, 12.5, 13);
    assertRange(home.room("summer").orElseThrow().setpoint().value(), 8, 11, 14);
    assertRange(home.room("told").orElseThrow().setpoint().value(), 18, 18, 18);
    assertThat(assumption(home, "room.coal.setpoint").why()).contains("nobody read");
    assertThat(assumption(home, "room.read.setpoint").assumed()).isEqualTo("12.5 °C");
    assertThat(assumed(home)).doesNotContain("room.told.setpoint", "room.kitchen.setpoint");
  }

  @Test
  void the_usual_temperature_is_stated_or_assumed_and_rooms_may_differ() {
    Home stated =
        home(
            ", heating: {setpoint: 20 C}",
            "- {id: a, use: living, setpoint: 22 C}\n- {id: b, use: bedroom}");
    assertThat(stated.setpoint().likely()).isEqualTo(20);
    assertThat(stated.room("a").orElseThrow().setpoint().likely()).isEqualTo(22);
    assertThat(stated.room("b").orElseThrow().setpoint()).isEqualTo(stated.setpoint());
    assertThat(stated.setpoint().working().note().orElseThrow()).contains("20 C");
    assertRange(home(", heating: {fuel: oil}").setpoint().value(), 18, 19.5, 21);
    assertThat(assumed(home(""))).contains("dwelling.setpoint");
  }

  // ---- rooms and volume

  @Test
  void a_volume_that_is_stated_is_taken() {
    Figure volume = home(", volume: 130 m3").volume();
    assertThat(volume.likely()).isEqualTo(130);
    assertThat(volume.basis()).isEqualTo(Basis.DECLARED);
  }

  /** 46 of 50 m² are nearly all: their volumes stand for the home's. */
  @Test
  void the_volume_is_that_of_the_rooms_where_they_are_nearly_all() {
    String rooms =
        """
        - {id: a, use: living, floor_area: 40, height: 2.5}
        - {id: b, use: wc, floor_area: 6, height: 2}
        - {id: c, use: loft, floor_area: 50, height: 2}
        """;
    Figure volume = home("", rooms).volume();
    assertThat(volume.likely()).isCloseTo(112, within(1e-9));
    assertThat(volume.basis()).isEqualTo(Basis.CALCULATED);
    assertThat(volume.working().inputs()).hasSize(2);
    Figure guessed = home("", rooms.replace(", height: 2}\n- {id: c", "}\n- {id: c")).volume();
    assertThat(guessed.basis()).isEqualTo(Basis.ASSUMED);
  }

  /** 20 of 50 m² are not: the floor area by the mean height of the rooms, 3 m, and a range. */
  @Test
  void else_it_is_the_floor_area_by_the_height_of_the_rooms() {
    Figure volume = home("", "- {id: a, use: living, floor_area: 20, height: 3}").volume();
    assertRange(volume.value(), 50 * 2.3, 150, 150);
    assertThat(volume.basis()).isEqualTo(Basis.ASSUMED);
    assertThat(volume.working().inputs()).extracting(Input::symbol).containsExactly("A", "h");
    Figure loft = home("", "- {id: a, use: loft, floor_area: 20, height: 2}").volume();
    assertRange(loft.value(), 50 * 2.3, 50 * 2.4, 50 * 2.5);
  }

  /** What is left is shared out, and is at least what such a room has. */
  @ParameterizedTest
  @CsvSource({
    "wc, 1",
    "store, 1",
    "bathroom, 3",
    "shower room, 3",
    "utility, 3",
    "hall, 3",
    "kitchen, 6",
    "bedroom, 6",
    "living, 6",
    "dining, 6",
    "study, 6",
    "loft, 6",
    "cellar, 6",
    "kitchen-dining room, 6"
  })
  void a_room_has_at_least_the_area_that_such_rooms_have(String use, double least) {
    Home home = home("", "- {id: a, use: living, floor_area: 50}\n- {id: b, use: " + use + "}");
    RoomFacts room = home.room("b").orElseThrow();
    assertRange(room.floorArea().value(), least * 0.7, least, least * 1.3);
    assertThat(room.volume().basis()).isEqualTo(Basis.ASSUMED);
    assertThat(assumption(home, "room.b.floor_area").source().how()).isEqualTo(How.ASSUMPTION);
  }

  @Test
  void a_height_is_the_mean_of_those_that_are_known_within_their_range() {
    Home home =
        home(
            "",
            """
            - {id: a, use: living, floor_area: 20, height: 2.4}
            - {id: b, use: hall, floor_area: 5, height: 3}
            - {id: c, use: wc, floor_area: 2}
            """);
    assertRange(home.room("c").orElseThrow().height().value(), 2.4, 2.7, 3);
    assertThat(assumption(home, "room.c.height").assumed()).isEqualTo("2.70 m");
    assertThat(assumed(home)).doesNotContain("rooms.height");
  }

  @Test
  void where_no_height_is_known_one_assumption_stands_for_all_rooms() {
    Home home =
        home("", "- {id: a, use: living, floor_area: 20}\n- {id: b, use: hall, floor_area: 5}");
    assertThat(assumed(home)).containsOnlyOnce("rooms.height");
    assertRange(home.room("b").orElseThrow().height().value(), 2.3, 2.4, 2.5);
  }

  @Test
  void a_room_is_called_by_its_name_or_its_id() {
    Home home =
        home("", "- {id: back-bed_room, use: bedroom}\n- {id: b, name: Nursery, use: bedroom}");
    assertThat(home.rooms())
        .extracting(RoomFacts::name)
        .containsExactly("Back bed room", "Nursery");
  }

  // ---- money

  @Test
  void prices_of_the_survey_are_taken() {
    Home home =
        VentilationFixtures.home(
            HomeFixtures.read(
                """
                drysill: 1
                visit: {date: 2026-01-22}
                dwelling: {jurisdiction: england, floor_area: 50, heating: {fuel: oil, efficiency: 84 %}}
                prices: {currency: EUR, electricity: 0.30, heat: 0.1, discount_rate: 2 %, horizon: 15 y}
                rooms: [{id: kitchen, use: kitchen}]
                """));
    assertThat(home.money().currency()).isEqualTo("EUR");
    assertThat(home.money().electricity().likely()).isEqualTo(0.3);
    assertThat(home.money().heat().likely()).isEqualTo(0.1);
    assertThat(home.money().heatingEfficiency().likely()).isCloseTo(0.84, within(1e-12));
    assertThat(home.money().discountRate().likely()).isCloseTo(0.02, within(1e-12));
    assertThat(home.money().horizon().unit()).isEqualTo(Unit.YEARS);
    assertThat(assumed(home)).noneMatch(id -> id.startsWith("prices") || id.contains("heating"));
  }

  @Test
  void what_the_survey_does_not_price_is_usual_for_its_fuel_and_listed() {
    Home oil = home(", heating: {fuel: oil}");
    Home gas = home(", heating: {fuel: mains gas}");
    assertThat(oil.money().heat().likely()).isNotEqualTo(gas.money().heat().likely());
    assertThat(assumption(oil, "prices.heat").about()).isEqualTo("Price of oil");
    assertThat(assumption(oil, "dwelling.heating.efficiency").about()).endsWith("with oil");
    assertThat(assumed(oil)).contains("prices.currency").doesNotContain("dwelling.heating.fuel");
    assertThat(assumed(home(""))).contains("dwelling.heating.fuel");
    assertThat(assumption(oil, "prices.horizon").assumed()).endsWith(" years");
    assertThat(assumption(oil, "prices.discount_rate").assumed()).endsWith(" a year, as ratio");
  }

  @Test
  void every_figure_of_a_home_can_tell_how_it_came_about() {
    Home home = home("");
    Stream.of(
            home.floorArea(),
            home.volume(),
            home.occupants(),
            home.setpoint(),
            home.n50(),
            home.money().electricity(),
            home.rooms().get(0).volume(),
            home.rooms().get(0).floorArea())
        .forEach(figure -> assertThat(figure.working().formula()).as(figure.id()).isNotBlank());
    assertThat(home.rooms().get(0).volume().working().inputs()).hasSize(2);
    assertThat(home.n50().working().sources()).isNotEmpty();
  }
}
