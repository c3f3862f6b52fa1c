package org.drysill.options.site;

import static org.assertj.core.api.Assertions.assertThat;

import org.drysill.OptionsFixtures;
import org.drysill.options.NotHere;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each condition with a home in which it holds, and the same home with the defect mended. */
class ConditionsTest {

  private static Placing placing(String survey, String measure) {
    return new Placings(OptionsFixtures.assess(survey), OptionsFixtures.basis())
        .of(OptionsFixtures.measure(measure));
  }

  @ParameterizedTest(name = "{0} needs \"{1}\" and not \"{2}\"")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          cavity-fill         | walls: cavity brick          | walls: timber frame          | no cavity walls were named
          external-wall-insulation | walls: solid brick      | walls: timber frame          | no solid walls were named
          cavity-fill         | walls: cavity brick, unfilled | walls: cavity brick, filled 2009 | the walls are filled or insulated already
          cavity-fill         | walls: cavity brick, uninsulated | walls: cavity brick, insulated 2009 | the walls are filled or insulated already
          cavity-fill         | walls: cavity brick, not insulated | walls: cavity, brick insulated | the walls are filled or insulated already
          leak-repair         | notes: Tide mark on the chimney breast | notes: Dry chimney breast | nothing in the notes points to water
          fan-repair          | kind: fitted but not working | kind: passive stack          | the survey has no place of this kind
          duct-repair         | material: slack flexible     | material: rigid plastic      | no fan was seen that loses flow
          desiccant-dehumidifier | setpoint: 14 C            | setpoint: 20 C               | no such room is kept below 18 °C
          lids-and-hood       | lids_and_hood: no            | lids_and_hood: yes           | lids and hood are in use already
          heat-pump-dryer     | clothes drying indoors, loads_per_week: 6 | house plants, count: 2 | no clothes are said to dry in the home
          secondary-glazing   | glazing: single              | glazing: triple low-e        | the window is not single glazed
          positive-input      | kind: alternating heat recovery | kind: positive input      | such a system is there already
          reveal-insulation   | temperature_factor: 0.5}     | temperature_factor: 0.99}    | nothing is at risk there
          """)
  void a_measure_has_a_place_only_where_its_condition_holds(
      String measure, String defect, String mended, String because) {
    String broken = OptionsFixtures.text("wreck");
    if (measure.equals("cavity-fill")) {
      broken = broken.replace("walls: solid brick", "walls: \"" + defect.substring(7) + "\"");
    }
    if (measure.equals("duct-repair")) {
      broken = broken.replace("measured_flow: {value: 6 l/s, instrument: hood}, ", "");
    }
    String was = measure.equals("cavity-fill") ? defect.substring(7) : defect;
    String is = measure.equals("cavity-fill") ? mended.substring(7) : mended;
    assertThat(broken).contains(was);
    assertThat(placing(broken, measure).candidates()).isNotEmpty();
    Placing refused = placing(broken.replace(was, is), measure);
    assertThat(refused.candidates()).isEmpty();
    assertThat(refused.refusal().orElseThrow().because()).contains(because);
    assertThat(refused.refusal().orElseThrow().kind()).isEqualTo(NotHere.Kind.DOES_NOT_APPLY);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          measured_flow: {value: 6 l/s, instrument: hood}, | ``                       | true
          material: slack flexible                         | material: rigid plastic  | true
          value: 6 l/s                                     | value: 24 l/s            | true
          declared_flow: 25 l/s,                           | ``                       | false
          """)
  void flow_is_lost_by_a_slack_duct_or_by_measurement_but_only_against_a_declared_flow(
      String was, String is, boolean lost) {
    String survey = OptionsFixtures.text("wreck");
    assertThat(survey).contains(was);
    assertThat(placing(survey.replace(was, is), "duct-repair").candidates().isEmpty())
        .isEqualTo(!lost);
  }

  @ParameterizedTest
  @CsvSource({"0 mm2, false", "90000 mm2, true"})
  void ventilators_have_a_place_where_their_area_is_not_met(String area, boolean refused) {
    String survey =
        OptionsFixtures.text("small-flat")
            .replace("use: bedroom", "use: hall")
            .replace("background_ventilator: 0 mm2", "background_ventilator: " + area);
    assertThat(placing(survey, "window-ventilator").candidates().isEmpty()).isEqualTo(refused);
  }

  @ParameterizedTest
  @CsvSource({"u_value: 5.2 W/m2K, true", "u_value: 1.4 W/m2K, false", "frame: timber, false"})
  void a_single_pane_is_known_by_its_u_value_too(String instead, boolean single) {
    String survey =
        OptionsFixtures.text("wreck").replace("glazing: single, frame: timber", instead);
    assertThat(placing(survey, "glazing-film").candidates().isEmpty()).isEqualTo(!single);
  }

  @ParameterizedTest
  @CsvSource({"kind: extract hood, false", "kind: recirculating hood, true"})
  void a_hood_counts_where_it_leads_outside(String kind, boolean missing) {
    String survey =
        OptionsFixtures.text("small-flat")
            .replace(
                "    moisture_sources: [{kind: cooking",
                "    fans: [{id: hood, " + kind + "}]\n    moisture_sources: [{kind: cooking");
    assertThat(placing(survey, "hood-to-outside").candidates().isEmpty()).isEqualTo(!missing);
  }

  @ParameterizedTest
  @CsvSource({"mid-floor flat", "ground-floor flat", "bungalow"})
  void measures_for_the_whole_home_have_one_candidate(String type) {
    String survey = OptionsFixtures.text("small-flat").replace("mid-floor flat", type);
    assertThat(placing(survey, "balanced-heat-recovery").candidates())
        .singleElement()
        .satisfies(c -> assertThat(c.scope().wholeHome()).isTrue())
        .satisfies(c -> assertThat(c.id()).isEqualTo("balanced-heat-recovery.home"))
        .satisfies(c -> assertThat(c.room()).isEmpty());
  }
}
