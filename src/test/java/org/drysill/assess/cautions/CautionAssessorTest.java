package org.drysill.assess.cautions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drysill.assess.cautions.CautionFixtures.ASSESSOR;
import static org.drysill.assess.cautions.CautionFixtures.because;
import static org.drysill.assess.cautions.CautionFixtures.home;
import static org.drysill.assess.cautions.CautionFixtures.shown;

import org.drysill.assess.Home;
import org.drysill.assess.HomeFixtures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The cautions that a home calls for as it stands. */
class CautionAssessorTest {
  private static final String FIRE =
      ", combustion_appliances: [{kind: open-flued fire, fuel: mains gas, room: living}]";
  private static final String EXTRACT = ", fans: [{id: f, kind: intermittent extract}]";
  private static final String MOULD =
      ", cold_spots: [{id: c, kind: lintel, mould_seen: patches, mould_area: 0.2 m2}]";

  @Test
  void a_home_without_hazards_calls_for_nothing() {
    assertThat(shown("", "")).isEmpty();
  }

  /** The gravest of all: fumes drawn into the home. It comes before everything else. */
  @Test
  void an_open_flue_with_extract_outranks_every_other_caution() {
    String worst =
        FIRE
            + ", vulnerable_occupants: yes, construction: {listed: yes, radon_area: yes, asbestos: yes}";
    assertThat(shown(worst, EXTRACT + MOULD + ", notes: rising damp"))
        .startsWith("open-flue-with-extract", "open-flue")
        .contains("vulnerable-people", "asbestos", "radon", "water-ingress", "mould-cleaning");
    assertThat(because("open-flue-with-extract", FIRE, EXTRACT))
        .contains("The home has an open-flued fire and a fan that takes air out.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"continuous extract", "extract hood", "passive stack"})
  void whatever_takes_air_out_counts(String kind) {
    assertThat(shown(FIRE, ", fans: [{id: f, kind: " + kind + "}]"))
        .startsWith("open-flue-with-extract");
  }

  @ParameterizedTest
  @ValueSource(strings = {"positive input", "balanced heat recovery", "recirculating hood"})
  void a_fan_that_takes_no_air_out_does_not(String kind) {
    assertThat(shown(FIRE, ", fans: [{id: f, kind: " + kind + "}]"))
        .contains("open-flue")
        .doesNotContain("open-flue-with-extract");
  }

  @ParameterizedTest
  @ValueSource(strings = {"room-sealed boiler", "gas hob"})
  void an_appliance_that_is_not_open_flued_does_not(String kind) {
    assertThat(shown(", combustion_appliances: [{kind: " + kind + "}]", EXTRACT))
        .doesNotContain("open-flue-with-extract", "open-flue");
  }

  @ParameterizedTest
  @ValueSource(strings = {"open-flued fire", "open-flued boiler", "solid fuel stove"})
  void the_assessor_knows_an_open_flue(String kind) {
    assertThat(ASSESSOR.openFlued(home(", combustion_appliances: [{kind: " + kind + "}]", "")))
        .isTrue();
    assertThat(ASSESSOR.openFlued(home("", ""))).isFalse();
  }

  @Test
  void several_appliances_are_named_with_their_rooms() {
    String two =
        ", combustion_appliances: [{kind: open-flued fire, room: bath}, {kind: solid fuel stove}]";
    ShownCaution flue = ASSESSOR.assess(home(two, "")).caution("open-flue").orElseThrow();
    assertThat(flue.because()).isEqualTo("The home has an open-flued fire and a solid-fuel stove.");
    assertThat(flue.rooms()).containsExactly("bath");
  }

  @Test
  void a_heater_without_a_flue_is_found_among_appliances_and_among_moisture_sources() {
    String listed = ", combustion_appliances: [{kind: unflued heater, room: bath}]";
    assertThat(shown(listed, "")).contains("unflued-heater", "fuel-work");
    assertThat(because("unflued-heater", "", ", moisture_sources: [{kind: unflued heater}]"))
        .contains("A heater without a flue is among the moisture sources.");
    assertThat(shown("", ", moisture_sources: [{kind: cooking}]")).isEmpty();
  }

  @Test
  void a_gas_hob_adds_its_own_caution() {
    assertThat(shown(", combustion_appliances: [{kind: gas hob}]", "")).containsExactly("gas-hob");
  }

  /** As it stands the home is not drilled: what is not known calls for nothing before work. */
  @Test
  void building_facts_count_where_they_are_known() {
    assertThat(
            shown(", construction: {listed: yes, radon_area: yes, asbestos: yes}, built: 1850", ""))
        .containsExactly("asbestos", "radon", "protected-building");
    assertThat(
            shown(
                ", construction: {listed: unknown, radon_area: no, asbestos: unknown}, built: 1850",
                ""))
        .isEmpty();
  }

  @Test
  void mould_calls_for_care_in_its_rooms() {
    Home home = home("", MOULD);
    assertThat(ASSESSOR.assess(home).caution("mould-cleaning").orElseThrow().rooms())
        .containsExactly("bath");
    assertThat(shown("", ", cold_spots: [{id: c, kind: lintel, mould_seen: none}]")).isEmpty();
    assertThat(shown("", ", cold_spots: [{id: c, kind: lintel, mould_area: 0 m2}]")).isEmpty();
    assertThat(shown("", ", cold_spots: [{id: c, kind: lintel, mould_area: 0.1 m2}]"))
        .contains("mould-cleaning");
  }

  /** Size classes of 10 square feet (seen): above about 1 m² it is for a contractor. */
  @Test
  void mould_above_a_square_metre_is_for_a_contractor() {
    String spots =
        ", cold_spots: [{id: c, kind: lintel, mould_area: %s}, {id: d, kind: sill, mould_area: 0.5 m2}]";
    assertThat(shown("", spots.formatted("0.5 m2"))).doesNotContain("mould-extensive");
    assertThat(shown("", spots.formatted("0.6 m2"))).contains("mould-extensive");
    assertThat(shown("", spots.formatted("0.4..0.7 m2"))).contains("mould-extensive");
    assertThat(shown("", ", cold_spots: [{id: c, kind: lintel, mould_seen: extensive}]"))
        .contains("mould-extensive");
  }

  @Test
  void where_mould_was_seen_it_is_asked_who_lives_there() {
    assertThat(because("vulnerable-people", "", MOULD).orElseThrow()).contains("does not say");
    assertThat(because("vulnerable-people", ", vulnerable_occupants: unknown", MOULD)).isPresent();
    assertThat(because("vulnerable-people", ", vulnerable_occupants: no", MOULD)).isEmpty();
    assertThat(because("vulnerable-people", "", "")).isEmpty();
    assertThat(because("vulnerable-people", ", vulnerable_occupants: yes", "").orElseThrow())
        .contains("someone vulnerable lives here");
  }

  @Test
  void a_fan_out_of_use_is_found_by_its_kind_and_by_its_notes() {
    assertThat(shown("", ", fans: [{id: f, kind: fitted but not working}]")).contains("fan-off");
    assertThat(
            shown(
                "",
                ", fans: [{id: f, kind: continuous extract, notes: Switched off at the isolator}]"))
        .contains("fan-off");
    assertThat(shown("", ", fans: [{id: f, kind: continuous extract, notes: not blocked}]"))
        .doesNotContain("fan-off");
    assertThat(shown("", EXTRACT)).doesNotContain("fan-off");
  }

  @Test
  void positive_input_pushes_air_into_the_fabric() {
    assertThat(shown("", ", fans: [{id: f, kind: positive input}]"))
        .containsExactly("positive-pressure");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Tide mark 400 mm above the skirting",
        "stain below a leaking gutter",
        "no salts, but rising damp at the party wall"
      })
  void notes_that_point_to_water_from_elsewhere_are_heeded(String notes) {
    assertThat(shown("", ", notes: '" + notes + "'")).contains("water-ingress");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"No leak found", "no sign of a leak", "without any rising damp", "a bleak yard"})
  void notes_that_deny_it_are_not(String notes) {
    assertThat(shown("", ", notes: '" + notes + "'")).isEmpty();
  }

  @Test
  void notes_on_a_cold_spot_count_and_the_word_is_quoted() {
    String spot = ", cold_spots: [{id: c, kind: wall, notes: Failed pointing outside}]";
    assertThat(because("water-ingress", "", spot))
        .contains("The notes on the bath speak of \"failed pointing\".");
    Home home = home("", spot);
    assertThat(ASSESSOR.ingressWord(home.rooms().get(0))).contains("failed pointing");
    assertThat(ASSESSOR.ingressWord(HomeFixtures.home("- {id: wc, use: wc}").rooms().get(0)))
        .isEmpty();
  }
}
