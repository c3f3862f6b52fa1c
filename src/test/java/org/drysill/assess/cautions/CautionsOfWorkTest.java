package org.drysill.assess.cautions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drysill.assess.cautions.CautionFixtures.ASSESSOR;
import static org.drysill.assess.cautions.CautionFixtures.ofWork;

import java.util.List;
import org.drysill.assess.Home;
import org.drysill.assess.HomeFixtures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The cautions of work: what nobody has looked at counts as if it were so. */
class CautionsOfWorkTest {
  private static String construction(String keys) {
    return ", construction: {" + keys + "}";
  }

  /** Asbestos was banned in 1999 (Control of Asbestos Regulations, memory): before 2000. */
  @ParameterizedTest
  @CsvSource({"1999, true", "2000, false", "2015, false"})
  void asbestos_is_possible_before_2000_where_nobody_looked(int built, boolean shown) {
    assertThat(ofWork("asbestos", ", built: " + built).isPresent()).isEqualTo(shown);
    assertThat(
            ofWork("asbestos", ", built: " + built + construction("asbestos: unknown")).isPresent())
        .isEqualTo(shown);
  }

  @Test
  void asbestos_counts_where_it_is_known_and_where_the_age_is_not() {
    assertThat(ofWork("asbestos", ", built: 2015" + construction("asbestos: yes")))
        .contains("Asbestos is known or suspected.");
    assertThat(ofWork("asbestos", ", built: 1960" + construction("asbestos: no"))).isEmpty();
    assertThat(ofWork("asbestos", "").orElseThrow()).contains("before 2000");
  }

  @Test
  void radon_counts_until_somebody_has_looked_it_up() {
    assertThat(ofWork("radon", "").orElseThrow()).startsWith("Nobody has looked up");
    assertThat(ofWork("radon", construction("radon_area: yes"))).isPresent();
    assertThat(ofWork("radon", construction("radon_area: no"))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"1918, true", "1919, false"})
  void an_old_building_may_be_protected(int built, boolean shown) {
    assertThat(ofWork("protected-building", ", built: " + built).isPresent()).isEqualTo(shown);
  }

  @Test
  void a_building_known_to_be_protected_is_and_one_known_not_to_be_is_not() {
    assertThat(ofWork("protected-building", ", built: 1990" + construction("listed: yes")))
        .contains("The building is protected.");
    assertThat(ofWork("protected-building", ", built: 1850" + construction("listed: no")))
        .isEmpty();
  }

  @Test
  void electricity_in_a_bathroom_is_about_the_rooms_of_the_work() {
    Home home =
        HomeFixtures.home(
            "- {id: bath, use: bathroom}\n- {id: shower, use: shower room}\n- {id: bed, use: bedroom}");
    List<ShownCaution> work = ASSESSOR.ofWork(List.of("bathroom-electrics"), home, home.rooms());
    assertThat(work).hasSize(1);
    assertThat(work.get(0).rooms()).containsExactly("bath", "shower");
    assertThat(work.get(0).caution().source().document()).isEqualTo("BS 7671");
    assertThat(
            ASSESSOR.ofWork(
                List.of("bathroom-electrics"), home, List.of(home.room("bed").orElseThrow())))
        .isEmpty();
  }

  @Test
  void an_open_flue_counts_until_the_survey_says_what_burns() {
    assertThat(ofWork("open-flue-with-extract", "").orElseThrow()).contains("does not say");
    assertThat(ofWork("open-flue-with-extract", ", heating: {fuel: mains gas}")).isPresent();
    assertThat(ofWork("open-flue-with-extract", ", heating: {fuel: heat pump}")).isEmpty();
    assertThat(ofWork("open-flue", ", combustion_appliances: [{kind: open-flued boiler}]"))
        .contains("The home has an open-flued boiler.");
    assertThat(ofWork("open-flue", ", combustion_appliances: [{kind: room-sealed boiler}]"))
        .isEmpty();
  }

  @Test
  void work_on_fuel_is_for_registered_people() {
    assertThat(ofWork("fuel-work", ", combustion_appliances: [{kind: room-sealed boiler}]"))
        .isPresent();
    assertThat(ofWork("fuel-work", ", heating: {fuel: electricity}")).isEmpty();
    assertThat(ofWork("fuel-work", ", heating: {fuel: oil}")).contains("The home may burn fuel.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"ground-floor flat", "mid-floor flat", "top-floor flat", "maisonette", "studio"})
  void a_hole_in_a_flat_is_one_between_homes(String type) {
    assertThat(ofWork("fire", ", type: " + type)).contains("The home is a flat.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"detached house", "bungalow", "mid-terrace house"})
  void a_hole_in_a_house_is_not(String type) {
    assertThat(ofWork("fire", ", type: " + type)).isEmpty();
    assertThat(ofWork("fire", "")).isEmpty();
  }

  @Test
  void work_itself_calls_for_care_and_facts_of_the_home_count_as_they_stand() {
    assertThat(ofWork("height", "")).contains("The work itself calls for it.");
    assertThat(ofWork("positive-pressure", "")).isPresent();
    assertThat(ofWork("mould-cleaning", "")).isEmpty();
    assertThat(ofWork("vulnerable-people", ", vulnerable_occupants: yes")).isPresent();
  }

  /** However a measure lists them, the open flue stands before electricity, that before ladders. */
  @Test
  void they_come_gravest_first_and_only_those_that_the_measure_names() {
    Home home = CautionFixtures.home("", "");
    assertThat(
            ASSESSOR.ofWork(
                List.of("height", "bathroom-electrics", "open-flue-with-extract"),
                home,
                home.rooms()))
        .extracting(ShownCaution::id)
        .containsExactly("open-flue-with-extract", "bathroom-electrics", "height");
    assertThat(ASSESSOR.ofWork(List.of(), home, home.rooms())).isEmpty();
  }
}
