package org.drysill.assess.ventilation.adequacy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.drysill.assess.ventilation.VentilationFixtures.assess;
import static org.drysill.assess.ventilation.VentilationFixtures.finding;

import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.assess.ventilation.VentilationFixtures;
import org.drysill.assess.ventilation.VentilationResult;
import org.drysill.reference.DataFiles;
import org.drysill.reference.rules.RuleSets;
import org.drysill.yaml.ProblemText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Extract of wet rooms. Rates of Approved Document F Volume 1, 2021, Tables 1.1 and 1.2 and
 * paragraphs 1.48, 1.49 and 3.26: seen. Others name their document.
 */
class ExtractFindingsTest {
  private static VentilationResult room(String use, String keys, String... fans) {
    return roomBy("england", use, keys, fans);
  }

  private static VentilationResult roomBy(String rules, String use, String keys, String... fans) {
    return assess(
        rules,
        "floor_area: 84, bedrooms: 2",
        "- {id: wet, name: Wet room, use: %s, floor_area: 6, height: 2.5%s, fans: [%s]}"
            .formatted(use, keys, String.join(", ", fans)));
  }

  private static Finding extract(String use, String... fans) {
    return finding(room(use, "", fans), "room.wet.extract");
  }

  private static String fan(String kind, String flow) {
    return "{id: f-%s, name: Fan, kind: %s, measured_flow: {value: %s}}"
        .formatted(kind.replace(' ', '-'), kind, flow);
  }

  private static double asked(Finding finding) {
    return finding.required().orElseThrow().likely() * 1000;
  }

  /** The kitchen's 60 l/s at the edges of the three values: equality reaches it. */
  @ParameterizedTest
  @CsvSource({
    "60..66 l/s, MEETS",
    "59.999..66 l/s, UNKNOWN",
    "54..60 l/s, UNKNOWN",
    "54..59.999 l/s, SHORT"
  })
  void a_flow_meets_when_its_least_reaches_the_rate_and_is_short_when_its_most_does_not(
      String flow, Verdict verdict) {
    Finding finding = extract("kitchen", fan("intermittent extract", flow));
    assertThat(finding.verdict()).isEqualTo(verdict);
    assertThat(finding.settledBy().isPresent()).isEqualTo(verdict == Verdict.UNKNOWN);
    assertThat(asked(finding)).isCloseTo(60, within(1e-9));
    assertThat(finding.provided()).isPresent();
    assertThat(finding.sources()).extracting(s -> s.clause().orElse("")).contains("Table 1.1");
  }

  @Test
  void what_is_short_is_told_by_how_much_rounded_up() {
    assertThat(extract("kitchen", fan("intermittent extract", "40..47.26 l/s")).because())
        .isEqualTo(
            "Fan: 40.0 to 47.2 l/s out while running, 60 l/s asked of intermittent elsewhere"
                + " extract; at least 12.8 l/s short.");
  }

  @ParameterizedTest
  @CsvSource({
    "kitchen, extract hood, 30",
    "kitchen-dining room, intermittent extract, 60",
    "utility, intermittent extract, 30",
    "bathroom, intermittent extract, 15",
    "shower room, intermittent extract, 15",
    "wc, intermittent extract, 6",
    "kitchen, continuous extract, 13",
    "utility, continuous extract, 8",
    "bathroom, continuous extract, 8",
    "wc, continuous extract, 6",
    "bathroom, passive stack, 8",
    "bathroom, balanced heat recovery, 8"
  })
  void each_room_and_way_has_its_rate(String use, String kind, double litres) {
    assertThat(asked(extract(use, fan(kind, "10..11 l/s")))).isCloseTo(litres, within(1e-9));
  }

  /** 6 m² × 2.5 m × 4 /h = 16.67 l/s, more than the 15 of a bathroom and less than 30 of a hood. */
  @ParameterizedTest
  @CsvSource({"bathroom, 16.6667", "wc, 16.6667", "utility, 30", "kitchen, 60"})
  void a_room_without_outside_wall_has_four_air_changes_where_that_is_more(
      String use, double litres) {
    Finding finding =
        finding(
            room(use, ", external_wall: no", fan("intermittent extract", "10..11 l/s")),
            "room.wet.extract");
    assertThat(asked(finding)).isCloseTo(litres, within(1e-3));
    assertThat(finding.required().orElseThrow().working().inputs()).hasSize(2);
    assertThat(
            asked(
                finding(
                    room(use, ", external_wall: yes", fan("intermittent extract", "10..11 l/s")),
                    "room.wet.extract")))
        .isNotEqualTo(16.6667);
  }

  @Test
  void a_fan_counts_at_its_running_rate_however_rarely_it_runs() {
    String rare =
        "{id: f, kind: intermittent extract, hours_per_day: 0.1 h,"
            + " measured_flow: {value: 15..16 l/s}}";
    assertThat(extract("bathroom", rare).verdict()).isEqualTo(Verdict.MEETS);
  }

  @Test
  void two_fans_of_a_room_count_together() {
    String fans = "{id: %s, kind: intermittent extract, measured_flow: {value: 7.5..8.5 l/s}}";
    Finding finding = extract("bathroom", fans.formatted("a"), fans.formatted("b"));
    assertThat(finding.verdict()).isEqualTo(Verdict.MEETS);
    assertThat(finding.provided().orElseThrow().likely()).isCloseTo(0.016, within(1e-12));
    assertThat(finding.because()).contains(" and ");
  }

  @Test
  void of_two_ways_in_a_room_the_better_counts() {
    Finding finding =
        extract(
            "bathroom",
            fan("intermittent extract", "15..16 l/s"),
            fan("continuous extract", "2..3 l/s"));
    assertThat(finding.verdict()).isEqualTo(Verdict.MEETS);
    assertThat(finding.because()).contains("intermittent");
    assertThat(
            extract(
                    "bathroom",
                    fan("intermittent extract", "5..6 l/s"),
                    fan("continuous extract", "8..9 l/s"))
                .because())
        .contains("continuous (high rate)");
  }

  @Test
  void a_flow_that_nobody_stated_decides_nothing() {
    Finding finding = extract("bathroom", "{id: f, name: Fan, kind: intermittent extract}");
    assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(finding.settledBy().orElseThrow())
        .isEqualTo("Measure the flow at Fan with a flow hood, doors and windows shut.");
  }

  /** The usual setting falls short; the highest one, which is what is asked, may not. */
  @Test
  void a_continuous_fan_whose_boost_was_not_measured_may_reach_its_rate() {
    String low = "{id: f, kind: continuous extract, measured_flow: {value: 4..5 l/s}%s}";
    Finding open = extract("bathroom", low.formatted(""));
    assertThat(open.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(open.settledBy().orElseThrow()).contains("at its highest setting").contains("boost");
    assertThat(extract("bathroom", low.formatted(", declared_flow: 8 l/s")).verdict())
        .isEqualTo(Verdict.UNKNOWN);
    assertThat(extract("bathroom", low.formatted(", declared_flow: 7.9 l/s")).verdict())
        .isEqualTo(Verdict.SHORT);
    assertThat(extract("bathroom", low.formatted(", boost_flow: {value: 6..7 l/s}")).verdict())
        .isEqualTo(Verdict.SHORT);
    assertThat(extract("bathroom", low.formatted(", boost_flow: {value: 8..9 l/s}")).verdict())
        .isEqualTo(Verdict.MEETS);
  }

  /** A lone unit takes out half of its phase flow: 16 l/s are 8. */
  @Test
  void an_alternating_unit_takes_out_half_of_its_flow() {
    assertThat(extract("bathroom", fan("alternating heat recovery", "16..17 l/s")).verdict())
        .isEqualTo(Verdict.MEETS);
    assertThat(
            extract(
                    "bathroom",
                    "{id: f, kind: alternating heat recovery, measured_flow: {value: 14..15.9"
                        + " l/s}, boost_flow: {value: 14..15.9 l/s}}")
                .verdict())
        .isEqualTo(Verdict.SHORT);
  }

  /** Para 3.26: half of the high rate all the time; 4 l/s in a bathroom, 6.5 in a kitchen. */
  @Test
  void a_heat_recovery_unit_has_a_continuous_rate_besides() {
    VentilationResult result = room("bathroom", "", fan("simultaneous heat recovery", "4..5 l/s"));
    Finding continuous = finding(result, "room.wet.extract.continuous");
    assertThat(continuous.verdict()).isEqualTo(Verdict.MEETS);
    assertThat(asked(continuous)).isCloseTo(4, within(1e-9));
    assertThat(
            finding(
                    room("bathroom", "", fan("simultaneous heat recovery", "3..3.99 l/s")),
                    "room.wet.extract.continuous")
                .verdict())
        .isEqualTo(Verdict.SHORT);
    Finding open =
        finding(
            room("bathroom", "", "{id: f, kind: alternating heat recovery}"),
            "room.wet.extract.continuous");
    assertThat(open.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(open.settledBy().orElseThrow()).contains("usual setting");
    assertThat(open.required().orElseThrow().working().inputs()).hasSize(2);
  }

  @Test
  void a_mixed_room_or_a_document_without_such_a_rule_has_none() {
    assertThat(
            room(
                    "bathroom",
                    "",
                    fan("simultaneous heat recovery", "4..5 l/s"),
                    fan("continuous extract", "4..5 l/s"))
                .extract())
        .hasSize(2)
        .noneMatch(f -> f.id().equals("room.wet.extract.continuous"));
    assertThat(
            roomBy("denmark", "bathroom", "", fan("simultaneous heat recovery", "4..5 l/s"))
                .extract())
        .hasSize(1);
  }

  /** A unit of that kind that is switched by hand does not run all the time. */
  @ParameterizedTest
  @CsvSource({
    "continuous extract, continuous, 8",
    "continuous extract, humidity-controlled, 8",
    "continuous extract, manual, 15",
    "continuous extract, with light, 15",
    "intermittent extract, continuous, 15"
  })
  void the_mode_follows_the_kind_and_how_it_is_switched(String kind, String run, double litres) {
    String fan = "{id: f, kind: %s, run: %s, measured_flow: {value: 4..5 l/s}}";
    assertThat(asked(extract("bathroom", fan.formatted(kind, run))))
        .isCloseTo(litres, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "recirculating hood, takes no moisture out",
    "fitted but not working, moves no air",
    "positive input, indoor air goes out through leaks"
  })
  void what_takes_nothing_out_is_named_with_its_reason(String kind, String why) {
    Finding finding = extract("kitchen", fan(kind, "80..90 l/s"));
    assertThat(finding.verdict()).isEqualTo(Verdict.SHORT);
    assertThat(finding.provided().orElseThrow().likely()).isZero();
    assertThat(finding.because()).contains(why).contains("60 l/s is asked");
  }

  @Test
  void a_recirculating_hood_beside_a_fan_adds_nothing_and_is_named() {
    Finding finding =
        extract(
            "kitchen",
            fan("intermittent extract", "60..61 l/s"),
            "{id: hood-1, name: Hood, kind: recirculating hood, declared_flow: 90 l/s}");
    assertThat(finding.verdict()).isEqualTo(Verdict.MEETS);
    assertThat(finding.because()).contains("Hood: Blows the air back");
    assertThat(finding.provided().orElseThrow().likely()).isCloseTo(0.0605, within(1e-9));
  }

  @Test
  void a_kitchen_without_a_fan_is_short_and_told_what_a_hood_would_need() {
    Finding finding = extract("kitchen");
    assertThat(finding.verdict()).isEqualTo(Verdict.SHORT);
    assertThat(finding.because())
        .isEqualTo(
            "The survey lists no fan in the Wet room. Nothing is taken out where 60 l/s is asked."
                + " With a hood that blows outside it would be 30 l/s.");
    assertThat(extract("bathroom").because()).doesNotContain("hood");
    assertThat(finding.settledBy()).isEmpty();
  }

  @Test
  void a_system_for_the_whole_home_may_end_in_the_room() {
    VentilationResult result =
        assess(
            "england",
            "floor_area: 84",
            """
            - {id: bath, use: bathroom}
            - {id: loft, use: loft, fans: [{id: f, name: Loft unit, kind: balanced heat recovery, declared_flow: 40 l/s}]}
            """);
    Finding finding = finding(result, "room.bath.extract");
    assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(finding.because()).startsWith("Loft unit may end in this room");
    assertThat(finding.settledBy()).hasValue("Measure the flow at the valve in the Bath.");
  }

  /** Para 1.49: a WC may have openings for airing instead, one twentieth of its 6 m². */
  @ParameterizedTest
  @CsvSource({
    "'windows: [{id: w, opening: {kind: sash, width: 1 m, height: 0.3 m}}]', MEETS",
    "'windows: [{id: w, opening: {kind: sash, width: 1 m, height: 0.299 m}}]', SHORT",
    "'windows: [{id: w, opening: {kind: sash, width: 1 m}}]', UNKNOWN",
    "'windows: []', UNKNOWN"
  })
  void openings_may_do_instead_where_the_document_says_so(String windows, Verdict verdict) {
    Finding finding = finding(room("wc", ", " + windows), "room.wet.extract");
    assertThat(finding.verdict()).isEqualTo(verdict);
    assertThat(finding.because().contains("openings may do it instead"))
        .isEqualTo(verdict != Verdict.SHORT);
    assertThat(finding(room("bathroom", ", " + windows), "room.wet.extract").verdict())
        .isEqualTo(Verdict.SHORT);
  }

  /** Norway's text gives continuous rates alone, France none for kitchens, Sweden none at all. */
  @Test
  void where_only_a_continuous_rate_is_printed_it_is_asked() {
    Finding finding = finding(roomBy("norway", "bathroom", ""), "room.wet.extract");
    assertThat(asked(finding)).isCloseTo(30, within(1e-9));
    assertThat(finding.verdict()).isEqualTo(Verdict.SHORT);
  }

  @Test
  void where_no_rate_is_printed_it_is_not_assessed_and_says_so() {
    Finding none = finding(roomBy("france", "kitchen", ""), "room.wet.extract");
    assertThat(none.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(none.because())
        .endsWith("no rate of extract is known for such a room; not assessed.");
    assertThat(none.provided()).isEmpty();
    Finding withFan =
        finding(
            roomBy("france", "kitchen", "", fan("intermittent extract", "9..10 l/s")),
            "room.wet.extract");
    assertThat(withFan.because()).contains("no rate of intermittent extract");
    assertThat(withFan.provided()).isPresent();
    Finding unit =
        finding(
            roomBy("sweden", "kitchen", "", fan("simultaneous heat recovery", "9..10 l/s")),
            "room.wet.extract");
    assertThat(unit.verdict()).isEqualTo(Verdict.UNKNOWN);
  }

  /** A rule set of one's own with figures of low confidence: shown, and nothing concluded. */
  @Test
  void a_doubtful_figure_withholds_the_verdict_and_asks_for_its_document() {
    String rules =
        """
        id: doubt
        title: Doubtful rules
        edition: "1"
        place: Nowhere
        standing: voluntary
        meant_for: Tests.
        paper: A4
        units: metric
        whole_home:
          - purpose: Test.
            counts: all outdoor air
            rate: {fixed: 1 l/s, source: {document: D, how: seen}}
        single_room_heat_recovery: {continuous_share_of_high: 50 %, source: {document: D, how: seen}}
        extract:
          - {room: bathroom, mode: continuous, rate: 8 l/s, source: {document: D, how: memory}, confidence: low}
          - {room: bathroom, mode: intermittent, rate: 15 l/s, source: {document: D, how: memory}, confidence: low}
        """;
    String bath = "- {id: wet, use: bathroom, fans: [%s]}";
    for (String fans :
        new String[] {
          "", fan("intermittent extract", "1..2 l/s"), fan("simultaneous heat recovery", "1..2 l/s")
        }) {
      VentilationResult result =
          VentilationFixtures.assessBy(rules, "floor_area: 84", bath.formatted(fans));
      assertThat(result.extract()).allMatch(f -> f.verdict() == Verdict.UNKNOWN);
      assertThat(finding(result, "room.wet.extract").settledBy().orElseThrow())
          .isEqualTo("Look the figure up in D; it is remembered here, and doubtful.");
    }
  }

  @Test
  void a_condition_that_extract_cannot_have_is_refused_at_its_place() {
    String text =
        DataFiles.text("rules/england.yaml")
            .replaceFirst(
                "mode: intermittent, when: no external wall",
                "mode: intermittent, when: single storey");
    assertThat(RuleSets.read(text, "own.yaml").problems())
        .singleElement()
        .satisfies(
            problem ->
                assertThat(ProblemText.of(problem))
                    .contains("own.yaml:")
                    .contains("no other condition of extract than no external wall"));
  }

  @Test
  void all_continuous_extract_together_is_held_against_the_whole_home_rate() {
    String fans = "- {id: %1$s, use: %1$s, fans: [{id: f-%1$s, kind: continuous extract%2$s}]}%n";
    String flow = ", measured_flow: {value: %s l/s}";
    VentilationResult enough =
        assess(
            "england",
            "floor_area: 80, bedrooms: 2",
            fans.formatted("kitchen", flow.formatted("13..14"))
                + fans.formatted("bathroom", flow.formatted("12..13")));
    Finding total = finding(enough, "ventilation.extract.total");
    assertThat(total.verdict()).isEqualTo(Verdict.MEETS);
    assertThat(asked(total)).isCloseTo(25, within(1e-9));
    assertThat(total.because())
        .isEqualTo(
            "All continuous extract together takes out 25 to 27 l/s; it should reach the"
                + " whole-home rate of 25 l/s.");
    assertThat(total.provided().orElseThrow().working().inputs()).hasSize(2);
    VentilationResult open =
        assess(
            "england",
            "floor_area: 80, bedrooms: 2",
            fans.formatted("kitchen", flow.formatted("30..31")) + fans.formatted("bathroom", ""));
    assertThat(finding(open, "ventilation.extract.total").verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(finding(open, "ventilation.extract.total").settledBy()).isPresent();
    assertThat(assess("netherlands", "floor_area: 80", fans.formatted("kitchen", "")).extract())
        .noneMatch(f -> f.id().equals("ventilation.extract.total"));
  }
}
