package org.drysill.assess.ventilation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.drysill.assess.ventilation.VentilationFixtures.assess;
import static org.drysill.assess.ventilation.VentilationFixtures.comparison;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.Working;
import org.drysill.reference.rules.RuleSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** All rule sets side by side. */
class ComparisonsTest {
  private static final String HALL = "- {id: hall, use: hall}";
  private static final VentilationResult ENGLAND =
      assess(
          "england",
          "floor_area: 95, volume: 228, bedrooms: 3, occupants: {adults: 2, children: 2}",
          HALL);

  @Test
  void the_governing_rule_set_stands_first_and_every_other_once() {
    List<RuleComparison> rows = ENGLAND.comparisons();
    assertThat(rows.get(0).id()).isEqualTo("england");
    assertThat(rows).filteredOn(RuleComparison::governing).hasSize(1);
    assertThat(rows).extracting(RuleComparison::id).doesNotHaveDuplicates();
    long variants =
        VentilationFixtures.RULES.all().stream().mapToLong(r -> r.wholeHome().size()).sum();
    assertThat(rows).hasSize((int) variants);
  }

  /** 31 l/s in 228 m³, of four people, on 95 m². */
  @Test
  void a_rate_is_told_in_four_ways() {
    RuleComparison row = comparison(ENGLAND, "england");
    assertThat(row.required().orElseThrow().likely()).isCloseTo(0.031, within(1e-12));
    assertThat(row.airChange().orElseThrow().likely()).isCloseTo(0.48947, within(1e-5));
    assertThat(row.perPerson().orElseThrow().likely()).isCloseTo(0.00775, within(1e-12));
    assertThat(row.perFloorArea().orElseThrow().likely()).isCloseTo(0.031 / 95, within(1e-12));
    for (Figure figure :
        List.of(
            row.airChange().orElseThrow(),
            row.perPerson().orElseThrow(),
            row.perFloorArea().orElseThrow())) {
      assertThat(figure.working().inputs()).as(figure.id()).hasSize(2);
    }
  }

  /**
   * A survey cannot say it, but an own rule set may be used on a home whose count starts at none.
   */
  @ParameterizedTest
  @CsvSource({
    "england, 'Governs here'",
    "sweden, 'For comparison'",
    "ashrae-62-1989, 'For comparison, superseded'",
    "germany, 'For comparison; from memory, unconfirmed (high confidence)'",
    "wales, 'For comparison; from memory, unconfirmed (low confidence)'"
  })
  void the_standing_of_a_row_is_said(String id, String status) {
    assertThat(comparison(ENGLAND, id).status()).isEqualTo(status);
  }

  @Test
  void a_rule_that_lacks_a_fact_says_which_and_gives_no_number() {
    RuleComparison france = comparison(ENGLAND, "france");
    assertThat(france.required()).isEmpty();
    assertThat(france.airChange()).isEmpty();
    assertThat(france.perPerson()).isEmpty();
    assertThat(france.status()).startsWith("Needs the number of main rooms: list every room");
    assertThat(comparison(ENGLAND, "ashrae-62-2/credited").status())
        .startsWith("Needs the weather and shielding factor");
  }

  @Test
  void a_value_remembered_without_a_confidence_is_unconfirmed_all_the_same() {
    RuleSet own =
        VentilationFixtures.rules(
            """
            id: own
            title: Own rules
            edition: "1"
            place: Nowhere
            standing: voluntary
            meant_for: Tests.
            paper: A4
            units: metric
            whole_home:
              - purpose: Test.
                counts: all outdoor air
                rate: {fixed: 20 l/s, source: {document: D, how: memory}}
            """);
    Home home = VentilationFixtures.home("england", "floor_area: 84", HALL);
    VentilationResult result =
        VentilationAssessor.assess(
            home, VentilationFixtures.RULES.with(own), VentilationFixtures.DEFAULTS);
    assertThat(comparison(result, "own").status())
        .isEqualTo("For comparison; from memory, unconfirmed");
  }

  @Test
  void what_is_asked_comes_with_each_of_its_terms() {
    RequiredAir asked = ENGLAND.required();
    assertThat(asked.governedBy()).isEqualTo("number of bedrooms");
    assertThat(asked.terms())
        .extracting(RequiredAir.Term::name)
        .containsExactly("number of bedrooms", "floor area");
    assertThat(asked.terms().get(1).rate().likely()).isCloseTo(0.0285, within(1e-12));
    assertThat(asked.notes()).anyMatch(n -> n.contains("Internal floor area of all storeys"));
  }

  @ParameterizedTest
  @CsvSource({
    "england, 'N_bedrooms A'",
    "sweden, A",
    "half-air-change, V",
    "germany, A",
    "ashrae-62-2, 'A N_bedrooms N_persons'",
    "ashrae-62-2/credited, 'A N_bedrooms N_persons w N_storeys n50 V'",
    "france, 'N_main rooms'"
  })
  void a_working_names_the_facts_of_its_formula_and_no_others(String id, String symbols) {
    VentilationResult result =
        assess(
            "england",
            "floor_area: 40, bedrooms: 1, airtightness: {n50: 5, weather_factor: 0.6}",
            "- {id: l, use: living, floor_area: 20}\n- {id: b, use: bedroom, floor_area: 20}");
    Working working = comparison(result, id).required().orElseThrow().working();
    assertThat(String.join(" ", working.inputs().stream().map(Working.Input::symbol).toList()))
        .satisfies(
            found ->
                assertThat(List.of(found.split(" ")))
                    .containsExactlyInAnyOrder(symbols.split(" ")));
    assertThat(working.sources()).isNotEmpty();
  }

  @Test
  void air_changes_that_people_quote_are_flows_of_this_home_where_they_are_of_homes() {
    QuotedAirChange half =
        ENGLAND.quoted().stream()
            .filter(q -> q.airChange().likely() == 0.5)
            .findFirst()
            .orElseThrow();
    assertThat(half.flow().orElseThrow().likely()).isCloseTo(0.5 * 228 / 3600, within(1e-12));
    assertThat(half.flow().orElseThrow().working().inputs()).hasSize(2);
    assertThat(ENGLAND.quoted())
        .filteredOn(q -> !q.wholeHome())
        .isNotEmpty()
        .allMatch(q -> q.flow().isEmpty());
  }

  @Test
  void a_rule_set_of_ones_own_governs_where_the_survey_names_its_file() {
    Home home = VentilationFixtures.home("{file: own.yaml}", "floor_area: 84, bedrooms: 3", HALL);
    RuleSet first = VentilationFixtures.RULES.all().get(0);
    VentilationResult result =
        VentilationAssessor.assess(home, VentilationFixtures.RULES, VentilationFixtures.DEFAULTS);
    assertThat(result.rules()).isEqualTo(first);
  }

  @Test
  void a_rule_set_that_is_not_there_is_refused() {
    assertThatThrownBy(() -> assess("atlantis", "floor_area: 84", HALL))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("no rule set named atlantis");
  }

  @Test
  void a_fan_is_found_by_its_id() {
    VentilationResult result =
        assess(
            "england",
            "floor_area: 84",
            "- {id: b, use: bathroom, fans: [{id: f, kind: passive stack}]}");
    assertThat(result.fan("f").map(fan -> fan.room())).isEqualTo(Optional.of("b"));
    assertThat(result.fan("g")).isEmpty();
  }
}
