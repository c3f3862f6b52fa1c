package org.drysill.assess.ventilation.adequacy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.drysill.assess.ventilation.VentilationFixtures.assess;
import static org.drysill.assess.ventilation.VentilationFixtures.assessBy;
import static org.drysill.assess.ventilation.VentilationFixtures.finding;

import java.util.Arrays;
import java.util.List;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.assess.ventilation.VentilationResult;
import org.drysill.reference.DataFiles;
import org.drysill.reference.rules.RuleSets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Background ventilators. Approved Document F Volume 1, 2021, Table 1.7, paragraphs 1.57 and 1.64
 * and Table D1: seen.
 */
class BackgroundFindingsTest {
  private static final String HOME = "floor_area: 84, storeys: 2, bedrooms: 2";

  private static String room(String id, String use, String... areas) {
    StringBuilder windows = new StringBuilder();
    for (String area : areas) {
      windows.append("{id: w%d%s".formatted(windows.length(), id));
      windows.append(area.isEmpty() ? "}, " : ", background_ventilator: " + area + "}, ");
    }
    return "- {id: %s, use: %s, windows: [%s]}%n".formatted(id, use, windows);
  }

  private static Finding living(String... areas) {
    return finding(
        assess("england", HOME, room("living", "living", areas)), "room.living.background");
  }

  @ParameterizedTest
  @CsvSource({
    "8000 mm2, MEETS",
    "7999 mm2, SHORT",
    "7999..8000 mm2, UNKNOWN",
    "8000..9000 mm2, MEETS"
  })
  void the_area_of_a_room_is_held_against_its_row(String area, Verdict verdict) {
    Finding finding = living(area);
    assertThat(finding.verdict()).isEqualTo(verdict);
    assertThat(finding.required().orElseThrow().likely()).isCloseTo(8e-3, within(1e-12));
    assertThat(finding.settledBy().isPresent()).isEqualTo(verdict == Verdict.UNKNOWN);
  }

  @Test
  void windows_of_a_room_add() {
    assertThat(living("4000 mm2", "4000 mm2").verdict()).isEqualTo(Verdict.MEETS);
    assertThat(living("4000 mm2", "4000 mm2").provided().orElseThrow().working().inputs())
        .hasSize(2);
  }

  @Test
  void a_window_where_nobody_looked_leaves_it_open_unless_the_others_are_enough() {
    assertThat(living("4000 mm2", "").verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(living("4000 mm2", "").because()).startsWith("4000 mm² found where it was looked");
    assertThat(living("8000 mm2", "").verdict()).isEqualTo(Verdict.MEETS);
    assertThat(living().verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(living().settledBy().orElseThrow()).startsWith("Look at every window of the Living");
  }

  @Test
  void what_is_there_is_rounded_down_and_what_is_asked_up() {
    assertThat(living("7999.9 mm2").because())
        .isEqualTo("7999 mm² found, 8000 mm² of equivalent area asked.");
  }

  @Test
  void rooms_without_a_row_have_no_finding() {
    VentilationResult result =
        assess(
            "england",
            HOME,
            room("hall", "hall", "0 mm2") + room("wc", "wc", "0 mm2") + room("loft", "loft"));
    assertThat(result.background()).isEmpty();
  }

  /** One storey 10000, more 8000 mm²; a bathroom 4000. */
  @Test
  void homes_on_one_storey_need_more() {
    String rooms = room("living", "living", "9000 mm2") + room("bath", "bathroom", "4000 mm2");
    VentilationResult flat = assess("england", "floor_area: 50, storeys: 1, bedrooms: 1", rooms);
    assertThat(finding(flat, "room.living.background").verdict()).isEqualTo(Verdict.SHORT);
    assertThat(finding(flat, "room.bath.background").verdict()).isEqualTo(Verdict.MEETS);
    assertThat(finding(flat, "ventilation.background.total").required().orElseThrow().likely())
        .isCloseTo(14e-3, within(1e-12));
    assertThat(finding(assess("england", HOME, rooms), "room.living.background").verdict())
        .isEqualTo(Verdict.MEETS);
  }

  @Test
  void the_total_says_where_the_rule_does_not_hold() {
    Finding total =
        finding(
            assess("england", HOME, room("living", "living", "0 mm2")),
            "ventilation.background.total");
    assertThat(total.because()).contains("one exposed facade only").contains("take expert advice");
    Finding without =
        finding(
            assess("scotland", HOME, room("living", "living", "0 mm2")),
            "ventilation.background.total");
    assertThat(without.because()).doesNotContain("expert");
  }

  /** The document prints 4000 in its text and 5000 mm² in its checklist: both are shown. */
  @Test
  void with_continuous_extract_both_printed_areas_are_shown() {
    String fan =
        "- {id: bath, use: bathroom, windows: [{id: v}], fans: [{id: f, kind: continuous extract}]}";
    VentilationResult result =
        assess(
            "england",
            HOME,
            room("living", "living", "4500 mm2") + room("bed", "bedroom", "4500 mm2") + fan);
    assertThat(finding(result, "room.living.background").verdict()).isEqualTo(Verdict.MEETS);
    Finding also = finding(result, "room.living.background.also_printed");
    assertThat(also.verdict()).isEqualTo(Verdict.SHORT);
    assertThat(also.because()).contains("the other figure that the document prints");
    Finding total = finding(result, "ventilation.background.total.also_printed");
    assertThat(total.required().orElseThrow().likely()).isCloseTo(10e-3, within(1e-12));
    assertThat(total.verdict()).isEqualTo(Verdict.SHORT);
    assertThat(result.background()).noneMatch(f -> f.id().startsWith("room.bath"));
  }

  /** Five ventilators with two bedrooms, four with one; bedrooms + 2 with continuous extract. */
  @ParameterizedTest
  @CsvSource({
    "1, 4, MEETS",
    "1, 3, SHORT",
    "2, 5, MEETS",
    "2, 4, SHORT",
  })
  void ventilators_are_counted(int bedrooms, int ventilators, Verdict verdict) {
    String[] areas = new String[ventilators];
    Arrays.fill(areas, "3000 mm2");
    VentilationResult result =
        assess(
            "england",
            "floor_area: 84, storeys: 2, bedrooms: " + bedrooms,
            room("living", "living", areas) + room("bath", "bathroom", "4000 mm2"));
    assertThat(finding(result, "ventilation.background.count").verdict()).isEqualTo(verdict);
  }

  @Test
  void a_count_that_is_not_reached_stays_open_while_windows_were_not_looked_at() {
    VentilationResult result =
        assess("england", HOME, room("living", "living", "3000 mm2", "0 mm2", ""));
    Finding count = finding(result, "ventilation.background.count");
    assertThat(count.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(count.because()).isEqualTo("1 found, 5 asked at least.");
    assertThat(count.settledBy().orElseThrow()).startsWith("Look at every window of the home");
    assertThat(count.provided().orElseThrow().working().formula()).isEqualTo("counted");
  }

  @Test
  void a_strategy_without_a_rule_is_not_assessed_and_says_so() {
    VentilationResult result =
        assess(
            "england",
            HOME,
            "- {id: loft, use: loft, fans: [{id: f, kind: balanced heat recovery}]}");
    assertThat(result.background()).hasSize(1);
    Finding finding = result.background().get(0);
    assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(finding.because()).contains("balanced ventilation; not assessed");
  }

  /** A rule set of one's own may ask for more of homes of one habitable room, not of rooms. */
  @Test
  void an_area_may_hold_for_homes_of_one_room_and_not_for_rooms_without_outside_wall() {
    String rules = DataFiles.text("rules/england.yaml");
    String one =
        rules.replace("when: single storey, area: 10000", "when: one habitable room, area: 12000");
    Finding finding =
        finding(
            assessBy(
                one,
                "floor_area: 30, storeys: 1, type: studio, bedrooms: 0",
                room("l", "living", "0 mm2")),
            "room.l.background");
    assertThat(finding.required().orElseThrow().likely()).isCloseTo(12e-3, within(1e-12));
    assertThat(
            RuleSets.read(
                    rules.replace("when: single storey, area", "when: no external wall, area"),
                    "own.yaml")
                .problems())
        .isNotEmpty();
  }

  @Test
  void a_doubtful_area_or_number_decides_nothing() {
    String rules = DataFiles.text("rules/england.yaml");
    for (String clause : List.of("Table 1.7", "para 1.57, Table 1.7 note 3")) {
      rules =
          rules.replace(
              "clause: \"%s\", how: seen}".formatted(clause),
              "clause: \"%s\", how: memory}, confidence: low".formatted(clause));
    }
    VentilationResult result = assessBy(rules, HOME, room("living", "living", "9000 mm2"));
    for (String id : List.of("room.living.background", "ventilation.background.count")) {
      assertThat(finding(result, id).verdict()).as(id).isEqualTo(Verdict.UNKNOWN);
      assertThat(finding(result, id).settledBy().orElseThrow()).startsWith("Look the figure up");
    }
  }
}
