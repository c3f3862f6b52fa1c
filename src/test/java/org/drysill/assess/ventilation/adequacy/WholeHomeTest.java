package org.drysill.assess.ventilation.adequacy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.drysill.assess.ventilation.VentilationFixtures.assess;

import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.assess.ventilation.VentilationFixtures;
import org.drysill.assess.ventilation.VentilationResult;
import org.junit.jupiter.api.Test;

/** The outdoor air of the whole home against 31 l/s (AD F 2021, Table 1.3, seen) or as told. */
class WholeHomeTest {
  private static final String HOME =
      "floor_area: 84, bedrooms: 3, storeys: 1, volume: 216, airtightness: {n50: %s, basis:"
          + " measured}";

  private static Finding wholeHome(String n50, String fans) {
    return assess(
            "england",
            HOME.formatted(n50),
            "- {id: bath, use: bathroom, fans: [%s]}".formatted(fans))
        .wholeHome();
  }

  private static String exchange(String flow) {
    return "{id: f, name: Unit, kind: simultaneous heat recovery, run: continuous,"
        + " measured_flow: {value: "
        + flow
        + "}}";
  }

  /** n50 0.5: leaks of 0.86 to 2.14 l/s by the divisors 35 and 14. */
  @Test
  void even_the_least_reaches_it() {
    Finding finding = wholeHome("0.5", exchange("31..33 l/s"));
    assertThat(finding.verdict()).isEqualTo(Verdict.MEETS);
    assertThat(finding.because())
        .isEqualTo(
            "Even the least that fans and leaks together bring, of 31.8 to 35.1 l/s, reaches the"
                + " 31 l/s asked by number of bedrooms.");
    assertThat(finding.settledBy()).isEmpty();
  }

  @Test
  void even_the_most_falls_short_and_by_how_much() {
    Finding finding = wholeHome("0.5", exchange("9..11 l/s"));
    assertThat(finding.verdict()).isEqualTo(Verdict.SHORT);
    assertThat(finding.because())
        .isEqualTo(
            "Even the most that fans and leaks together bring, of 9.8 to 13.1 l/s, is at least 17.9"
                + " l/s short of the 31 l/s asked by number of bedrooms. For a home that stands"
                + " this is not by itself a breach.");
  }

  @Test
  void what_cannot_be_told_is_settled_by_the_reading_at_its_widest_part() {
    Finding leaks = wholeHome("8..12", "");
    assertThat(leaks.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(leaks.settledBy().orElseThrow()).startsWith("Have the air leakage measured");
    Finding flow = wholeHome("1", exchange("20..60 l/s"));
    assertThat(flow.settledBy().orElseThrow())
        .isEqualTo("Measure the flow at Unit with a flow hood while it runs.");
    Finding hours =
        wholeHome(
            "1",
            "{id: f, name: Unit, kind: simultaneous heat recovery, hours_per_day: 2..24 h,"
                + " measured_flow: {value: 60 l/s, instrument: hood}}");
    assertThat(hours.settledBy().orElseThrow())
        .isEqualTo("Find out how many hours a day Unit runs.");
    Finding ventilators =
        assess(
                "england",
                HOME.formatted("1"),
                "- {id: bath, use: bathroom, windows: [{id: w, background_ventilator: 90000 mm2}],"
                    + " fans: [{id: hood, kind: recirculating hood}]}")
            .wholeHome();
    assertThat(ventilators.settledBy().orElseThrow())
        .startsWith("Look at every background ventilator");
  }

  /** Norway counts fans alone: 1.2 m³/h by 84 m² are 28 l/s (TEK17 13-2, seen). */
  @Test
  void where_the_rate_allows_for_leaks_only_fans_count() {
    String leaky = HOME.formatted("30");
    Finding none = assess("norway", leaky, "- {id: bath, use: bathroom}").wholeHome();
    assertThat(none.verdict()).isEqualTo(Verdict.SHORT);
    assertThat(none.because()).contains("fans alone, as the rule counts").doesNotContain("breach");
    Finding reached =
        assess(
                "norway",
                leaky,
                "- {id: bath, use: bathroom, fans: [" + exchange("28..29 l/s") + "]}")
            .wholeHome();
    assertThat(reached.verdict()).isEqualTo(Verdict.MEETS);
    assertThat(reached.provided().orElseThrow().id()).isEqualTo("ventilation.by_fans");
  }

  /** Rooms with stated areas that cover less than three quarters of the floor are not all. */
  @Test
  void a_fact_that_is_missing_is_named_and_nothing_is_concluded() {
    Finding finding =
        assess("france", "floor_area: 84", "- {id: l, use: living, floor_area: 20}").wholeHome();
    assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(finding.required()).isEmpty();
    assertThat(finding.because()).contains("the number of main rooms");
    assertThat(finding.settledBy().orElseThrow()).startsWith("Add the number of main rooms");
  }

  /** A survey of ten minutes: one room whose area had to be assumed is not the whole home. */
  @Test
  void a_room_of_assumed_area_is_not_taken_for_the_whole_home() {
    assertThat(
            assess("netherlands", "floor_area: 84", "- {id: k, use: kitchen}")
                .wholeHome()
                .required())
        .isEmpty();
    VentilationResult bedroom =
        assess("england", "floor_area: 20, bedrooms: 1", "- {id: b, use: bedroom}");
    assertThat(bedroom.wholeHome().required().orElseThrow().likely() * 1000)
        .isCloseTo(19, within(1e-9));
  }

  /** Wales's table is remembered with low confidence: shown, and nothing concluded. */
  @Test
  void a_doubtful_figure_withholds_the_verdict() {
    Finding finding =
        assess("wales", HOME.formatted("30"), "- {id: bath, use: bathroom}").wholeHome();
    assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(finding.required()).isPresent();
    assertThat(finding.settledBy().orElseThrow()).startsWith("Look the figure up");
  }

  @Test
  void a_rule_of_one_term_is_told_without_what_governs_it() {
    Finding finding =
        VentilationFixtures.assessBy(
                """
                id: none
                title: Nothing
                edition: "1"
                place: Nowhere
                standing: voluntary
                meant_for: Tests.
                paper: Letter
                units: inch-pound
                whole_home:
                  - purpose: Test.
                    counts: all outdoor air
                    rate:
                      greatest_of:
                        - when: single storey
                          fixed: 0 cfm
                          source: {document: D, how: seen}
                """,
                "floor_area: 84, storeys: 2",
                "- {id: bath, use: bathroom}")
            .wholeHome();
    assertThat(finding.verdict()).isEqualTo(Verdict.MEETS);
    assertThat(finding.because()).endsWith("reaches the 0 cfm asked.");
  }
}
