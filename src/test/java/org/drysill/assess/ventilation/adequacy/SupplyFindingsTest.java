package org.drysill.assess.ventilation.adequacy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.drysill.assess.ventilation.VentilationFixtures.assess;

import java.util.List;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.assess.ventilation.VentilationFixtures;
import org.drysill.assess.ventilation.VentilationResult;
import org.drysill.reference.DataFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Supply to an added room: a quarter of 25 l/s where it has a quarter of the habitable volume;
 * Approved Document F Volume 1, 2021, para 3.18(a): seen.
 */
class SupplyFindingsTest {
  private static VentilationResult home(String rules, String room, String others) {
    return assess(
        rules,
        "floor_area: 40, bedrooms: 2",
        "- {id: new, name: Study, use: study, floor_area: 10, height: 2.5, %s}\n%s"
            .formatted(room, others));
  }

  private static final String REST =
      """
      - {id: living, use: living, floor_area: 10, height: 2.5}
      - {id: bed, use: bedroom, floor_area: 10, height: 2.5}
      - {id: bed-2, use: bedroom, floor_area: 10, height: 2.5}
      """;

  private static String unit(String kind, String flow) {
    return "added: yes, fans: [{id: u, name: Unit, kind: %s%s}]".formatted(kind, flow);
  }

  private static Finding supply(String flow) {
    return home("england", unit("simultaneous heat recovery", flow), REST).supply().get(0);
  }

  @ParameterizedTest
  @CsvSource({
    "6.25..7 l/s, MEETS",
    "6.24..7 l/s, UNKNOWN",
    "5..6.25 l/s, UNKNOWN",
    "5..6.24 l/s, SHORT"
  })
  void the_supply_is_held_against_the_rooms_share_by_volume(String flow, Verdict verdict) {
    Finding finding = supply(", measured_flow: {value: " + flow + "}");
    assertThat(finding.verdict()).isEqualTo(verdict);
    assertThat(finding.required().orElseThrow().likely() * 1000).isCloseTo(6.25, within(1e-9));
    assertThat(finding.settledBy().isPresent()).isEqualTo(verdict == Verdict.UNKNOWN);
    assertThat(finding.required().orElseThrow().working().inputs()).hasSize(2);
    assertThat(finding.provided().orElseThrow().working().inputs()).hasSize(1);
  }

  @Test
  void a_lone_alternating_unit_supplies_half_of_its_flow() {
    Finding finding =
        home(
                "england",
                unit("alternating heat recovery", ", measured_flow: {value: 12.5..13 l/s}"),
                REST)
            .supply()
            .get(0);
    assertThat(finding.verdict()).isEqualTo(Verdict.MEETS);
    assertThat(finding.because())
        .isEqualTo(
            "Unit: 6.2 to 6.5 l/s in, averaged over a cycle; 6.3 l/s asked, the room's share of the"
                + " whole-home rate by volume.");
  }

  @Test
  void a_flow_that_nobody_stated_decides_nothing() {
    assertThat(supply("").verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(supply("").settledBy().orElseThrow()).startsWith("Measure the flow at Unit");
  }

  /** Rooms that are not listed would make the share smaller, so that it may be enough. */
  @Test
  void a_home_whose_rooms_are_not_all_listed_is_not_told_to_fall_short() {
    String flow = ", measured_flow: {value: 5..6 l/s}";
    Finding open =
        home("england", unit("simultaneous heat recovery", flow), "- {id: wc, use: wc}")
            .supply()
            .get(0);
    assertThat(open.required().orElseThrow().likely() * 1000).isCloseTo(25, within(1e-9));
    assertThat(open.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(open.settledBy().orElseThrow()).startsWith("List every habitable room");
    Finding enough =
        home(
                "england",
                unit("simultaneous heat recovery", ", measured_flow: {value: 25..26 l/s}"),
                "- {id: wc, use: wc}")
            .supply()
            .get(0);
    assertThat(enough.verdict()).isEqualTo(Verdict.MEETS);
  }

  @Test
  void a_doubtful_whole_home_rate_withholds_the_verdict_and_asks_for_its_document() {
    String rules =
        DataFiles.text("rules/england.yaml")
            .replace(
                "clause: \"Table 1.3 and its note 2\", how: seen}",
                "clause: \"Table 1.3 and its note 2\", how: memory}\n          confidence: low");
    String room =
        "- {id: new, use: study, floor_area: 10, height: 2.5, added: yes, fans: [{id: u, kind: %s,"
            + " measured_flow: {value: 1..2 l/s}}]}";
    VentilationResult supply =
        VentilationFixtures.assessBy(
            rules, "floor_area: 40, bedrooms: 2", room.formatted("simultaneous heat recovery"));
    VentilationResult extract =
        VentilationFixtures.assessBy(
            rules, "floor_area: 40, bedrooms: 2", room.formatted("continuous extract"));
    for (Finding finding :
        List.of(
            supply.supply().get(0),
            VentilationFixtures.finding(extract, "ventilation.extract.total"))) {
      assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
      assertThat(finding.settledBy().orElseThrow()).startsWith("Look the figure up");
    }
  }

  @Test
  void it_concerns_added_habitable_rooms_with_a_unit_of_their_own() {
    String fan = "fans: [{id: u, kind: %s, declared_flow: 9 l/s}]";
    for (String room :
        List.of(
            fan.formatted("simultaneous heat recovery"),
            "added: no, " + fan.formatted("simultaneous heat recovery"),
            "added: yes, " + fan.formatted("positive input"),
            "added: yes")) {
      assertThat(home("england", room, REST).supply()).as(room).isEmpty();
    }
    String kitchen = "- {id: k, use: kitchen, added: yes, %s}";
    assertThat(
            home(
                    "england",
                    "added: no",
                    kitchen.formatted(fan.formatted("simultaneous heat recovery")))
                .supply())
        .isEmpty();
    assertThat(home("norway", unit("simultaneous heat recovery", ""), REST).supply()).isEmpty();
  }
}
