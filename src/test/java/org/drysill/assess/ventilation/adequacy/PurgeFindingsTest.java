package org.drysill.assess.ventilation.adequacy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.drysill.assess.ventilation.VentilationFixtures.assess;

import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.assess.ventilation.VentilationFixtures;
import org.drysill.reference.DataFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Quick airing. Approved Document F Volume 1, 2021, paragraphs 1.27 to 1.31 and Table 1.4: seen.
 * The flow through openings is by EN 16798-7: memory.
 */
class PurgeFindingsTest {
  private static PurgeOpening airing(String rules, String windows) {
    return assess(
            rules,
            "floor_area: 84",
            "- {id: bed, use: bedroom, floor_area: 20, height: 2.4, windows: [" + windows + "]}")
        .purge()
        .get(0);
  }

  private static Finding finding(String windows) {
    return airing("england", windows).finding();
  }

  private static String opening(String id, String keys) {
    return "{id: %s, opening: {%s}}".formatted(id, keys);
  }

  /** A twentieth of 20 m² is 1 m²; a tenth is 2 m²; under 15° nothing counts. */
  @ParameterizedTest
  @CsvSource({
    "side-hung, 1 m, 1 m, 30 deg, MEETS, 1",
    "side-hung, 1 m, 0.999 m, 30 deg, SHORT, 1",
    "side-hung, 1 m, 1.999 m, 29.9 deg, SHORT, 2",
    "side-hung, 1 m, 2 m, 15 deg, MEETS, 2",
    "top-hung, 1 m, 1.5 m, 14.9 deg, SHORT, 1",
    "bottom-hung, 1 m, 1 m, 90 deg, MEETS, 1",
    "pivot, 1 m, 1 m, 40 deg, MEETS, 1"
  })
  void hinged_openings_count_by_their_angle(
      String kind, String width, String height, String angle, Verdict verdict, double asked) {
    Finding finding =
        finding(
            opening(
                "w",
                "kind: %s, width: %s, height: %s, angle: %s"
                    .formatted(kind, width, height, angle)));
    assertThat(finding.verdict()).isEqualTo(verdict);
    assertThat(finding.required().orElseThrow().likely()).isCloseTo(asked, within(1e-9));
    assertThat(finding.provided().orElseThrow().working().inputs()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource({"sash", "door"})
  void openings_without_hinge_angle_need_none(String kind) {
    assertThat(finding(opening("w", "kind: " + kind + ", width: 1 m, height: 1 m")).verdict())
        .isEqualTo(Verdict.MEETS);
  }

  /** With a sash of 0.5 and a casement of 1 m² at 20° that counts half, a twentieth is reached. */
  @Test
  void of_openings_in_different_rows_those_of_the_larger_share_count_less() {
    String sash = opening("v", "kind: sash, width: 1 m, height: 0.5 m");
    assertThat(
            finding(
                    sash
                        + ", "
                        + opening("w", "kind: side-hung, width: 1 m, height: 1 m, angle: 20 deg"))
                .verdict())
        .isEqualTo(Verdict.MEETS);
    assertThat(
            finding(
                    sash
                        + ", "
                        + opening(
                            "w", "kind: side-hung, width: 1 m, height: 0.99 m, angle: 20" + " deg"))
                .verdict())
        .isEqualTo(Verdict.SHORT);
  }

  @Test
  void openings_that_stay_too_narrow_are_counted_out_by_number() {
    Finding finding =
        finding(opening("w", "kind: side-hung, width: 2 m, height: 2 m, angle: 10 deg"));
    assertThat(finding.because())
        .isEqualTo(
            "0.00 m² of opening counts, 1.00 m² asked. One of its windows does not open wide"
                + " enough to count.");
  }

  @ParameterizedTest
  @CsvSource({
    "'kind: side-hung, width: 1 m, angle: 30 deg'",
    "'kind: side-hung, width: 1 m, height: 1 m'",
    "'kind: sash, height: 1 m'"
  })
  void what_was_not_measured_leaves_it_open(String keys) {
    Finding finding = finding(opening("w", keys));
    assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(finding.settledBy().orElseThrow()).startsWith("Measure the clear width and height");
    assertThat(airing("england", opening("w", keys)).airing()).isEmpty();
  }

  @Test
  void a_window_whose_opening_is_not_told_leaves_it_open_unless_the_others_are_enough() {
    String enough = opening("v", "kind: sash, width: 1 m, height: 1 m");
    assertThat(finding("{id: w}").verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(finding(enough + ", {id: w}").verdict()).isEqualTo(Verdict.MEETS);
    assertThat(finding("").verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(finding("").settledBy().orElseThrow()).startsWith("List the windows");
  }

  @Test
  void a_fixed_pane_airs_nothing_and_is_known_to() {
    PurgeOpening fixed = airing("england", opening("w", "kind: fixed"));
    assertThat(fixed.finding().verdict()).isEqualTo(Verdict.SHORT);
    assertThat(fixed.airing().orElseThrow().likely()).isZero();
  }

  /** 4 /h × 48 m³ = 53.3 l/s. */
  @Test
  void the_flow_while_airing_is_four_air_changes_of_the_room() {
    assertThat(airing("england", "").required().orElseThrow().likely() * 1000)
        .isCloseTo(53.333, within(0.001));
    assertThat(airing("england", "").required().orElseThrow().working().inputs()).hasSize(2);
    assertThat(airing("ireland", "").required()).isEmpty();
  }

  /**
   * EN 16798-7 (memory): q = A/2 · √max(0.001 · 2.1²; 0.0035 · h · 3) = 0.0512 m³/s through a sash
   * of 1 m² and 1 m height; bottom-hung at 30° it lets 0.458 of that through.
   */
  @Test
  void the_flow_to_be_expected_is_told_for_information() {
    assertThat(
            airing("england", opening("w", "kind: sash, width: 1 m, height: 1 m"))
                .airing()
                .orElseThrow()
                .likely())
        .isCloseTo(0.5 * Math.sqrt(0.0105), within(1e-9));
    assertThat(
            airing(
                    "england",
                    opening("w", "kind: bottom-hung, width: 1 m, height: 1 m, angle: 30 deg"))
                .airing()
                .orElseThrow()
                .likely())
        .isCloseTo(0.45792 * 0.5 * Math.sqrt(0.0105), within(1e-6));
    assertThat(
            airing("england", opening("w", "kind: door, width: 1 m, height: 1 m"))
                .airing()
                .orElseThrow()
                .working()
                .inputs())
        .hasSize(2);
    assertThat(airing("ireland", opening("w", "kind: sash, width: 1 m, height: 1 m")).airing())
        .isEmpty();
  }

  /** A rule set of one's own that prints the air changes and no area. */
  @Test
  void a_document_that_prints_no_area_has_no_finding() {
    String rules = DataFiles.text("rules/england.yaml");
    int purge = rules.indexOf("  openings:\n", rules.indexOf("purge:"));
    int after = rules.indexOf("transfer:", purge);
    assertThat(
            VentilationFixtures.assessBy(
                    rules.substring(0, purge) + rules.substring(after),
                    "floor_area: 84",
                    "- {id: bed, use: bedroom}")
                .purge())
        .isEmpty();
  }

  @Test
  void a_doubtful_share_withholds_the_verdict_and_asks_for_its_document() {
    String rules =
        DataFiles.text("rules/ireland.yaml")
            .replace(
                "clause: \"purge ventilation\", how: memory}, confidence: high}",
                "clause: \"purge ventilation\", how: memory}, confidence: low}");
    Finding finding =
        VentilationFixtures.assessBy(rules, "floor_area: 84", "- {id: bed, use: bedroom}")
            .purge()
            .get(0)
            .finding();
    assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(finding.settledBy().orElseThrow()).startsWith("Look the figure up");
  }

  @Test
  void a_document_without_openings_has_no_finding() {
    assertThat(assess("denmark", "floor_area: 84", "- {id: bed, use: bedroom}").purge()).isEmpty();
    assertThat(assess("england", "floor_area: 84", "- {id: k, use: kitchen}").purge()).isEmpty();
  }
}
