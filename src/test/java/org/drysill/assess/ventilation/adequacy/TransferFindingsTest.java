package org.drysill.assess.ventilation.adequacy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.drysill.assess.ventilation.VentilationFixtures.assess;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.assess.ventilation.VentilationFixtures;
import org.drysill.reference.DataFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The way of air under doors: 7600 mm², Approved Document F Volume 1, 2021, para 1.25: seen. */
class TransferFindingsTest {
  private static final String HALL = "- {id: hall, use: hall}\n- {id: loft, use: loft}\n";

  private static List<Finding> doors(String doors) {
    return assess(
            "england", "floor_area: 84", HALL + "- {id: bed, use: bedroom, doors: [" + doors + "]}")
        .transfer();
  }

  /** 10 mm × 760 mm are 7600 mm². */
  @ParameterizedTest
  @CsvSource({
    "undercut: 10 mm, width: 760 mm, MEETS",
    "undercut: 9.99 mm, width: 760 mm, SHORT",
    "undercut: 9..11 mm, width: 760 mm, UNKNOWN",
    "undercut: 0 mm, width: 760 mm, SHORT"
  })
  void the_gap_by_the_width_is_held_against_the_free_area(
      String undercut, String width, Verdict verdict) {
    Finding finding = doors("{to: hall, " + undercut + ", " + width + "}").get(0);
    assertThat(finding.id()).isEqualTo("door.bed.hall.transfer");
    assertThat(finding.verdict()).isEqualTo(verdict);
    assertThat(finding.required().orElseThrow().likely()).isCloseTo(7.6e-3, within(1e-12));
    assertThat(finding.required().orElseThrow().working().formula()).isEqualTo("as printed");
    assertThat(finding.provided().orElseThrow().working().inputs()).hasSize(2);
  }

  /** 7600 / 826 = 9.2 mm: the whole millimetre above. */
  @Test
  void the_gap_that_is_needed_is_rounded_up_to_a_millimetre() {
    assertThat(doors("{to: hall, undercut: 8 mm, width: 826 mm}").get(0).because())
        .isEqualTo(
            "6608 mm² free under it, 7600 mm² asked, a gap of 10 mm under a door of this width.");
  }

  @Test
  void a_gap_that_was_not_measured_is_asked_for() {
    Finding finding = doors("{to: hall, width: 760 mm}").get(0);
    assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(finding.provided()).isEmpty();
    assertThat(finding.because()).startsWith("The gap was not measured; ");
    assertThat(finding.settledBy().orElseThrow()).startsWith("Measure the gap under the door");
  }

  /** Leaves are 626 to 926 mm wide (planning assumption): 8.3 to 12.1 mm of gap are open. */
  @ParameterizedTest
  @CsvSource({"12.2 mm, MEETS", "10 mm, UNKNOWN", "8.2 mm, SHORT"})
  void a_width_that_was_not_measured_is_a_range(String undercut, Verdict verdict) {
    Finding finding = doors("{to: hall, undercut: " + undercut + "}").get(0);
    assertThat(finding.verdict()).isEqualTo(verdict);
    assertThat(finding.settledBy().map(s -> s.startsWith("Measure the width of the leaf")))
        .isEqualTo(verdict == Verdict.UNKNOWN ? Optional.of(true) : Optional.empty());
  }

  @Test
  void a_door_stands_between_two_heated_rooms_of_the_survey_and_counts_once() {
    assertThat(doors("{to: loft, undercut: 5 mm}")).isEmpty();
    assertThat(doors("{to: nowhere, undercut: 5 mm}")).isEmpty();
    assertThat(doors("{to: bed, undercut: 5 mm}")).isEmpty();
    assertThat(
            assess(
                    "england",
                    "floor_area: 84",
                    """
                    - {id: hall, use: hall, doors: [{to: bed, undercut: 10 mm}, {to: loft}]}
                    - {id: bed, use: bedroom, doors: [{to: hall, undercut: 10 mm}]}
                    - {id: loft, use: loft, doors: [{to: bed, undercut: 10 mm}]}
                    """)
                .transfer())
        .extracting(Finding::id)
        .containsExactly("door.hall.bed.transfer");
  }

  /** Whichever room lists it first, the gap that was measured counts. */
  @Test
  void of_two_entries_for_one_door_the_measured_one_counts() {
    String rooms =
        "- {id: hall, use: hall, doors: [{to: bed%s}]}\n- {id: bed, use: bedroom, doors: [{to: hall%s}]}";
    String gap = ", undercut: 10 mm, width: 760 mm";
    for (String text : List.of(rooms.formatted(gap, ""), rooms.formatted("", gap))) {
      assertThat(assess("england", "floor_area: 84", text).transfer())
          .extracting(Finding::verdict)
          .containsExactly(Verdict.MEETS);
    }
  }

  @Test
  void a_document_without_transfer_has_no_finding() {
    assertThat(
            assess(
                    "denmark",
                    "floor_area: 84",
                    HALL + "- {id: bed, use: bedroom, doors: [{to: hall}]}")
                .transfer())
        .isEmpty();
  }

  @Test
  void a_doubtful_area_withholds_the_verdict_and_asks_for_its_document() {
    String rules =
        DataFiles.text("rules/england.yaml")
            .replace(
                "clause: \"para 1.25\", how: seen}",
                "clause: \"para 1.25\", how: memory}\n  confidence: low");
    Finding finding =
        VentilationFixtures.assessBy(
                rules,
                "floor_area: 84",
                HALL + "- {id: bed, use: bedroom, doors: [{to: hall, undercut: 5 mm}]}")
            .transfer()
            .get(0);
    assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(finding.settledBy().orElseThrow()).startsWith("Look the figure up");
  }
}
