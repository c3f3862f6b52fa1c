package org.drysill.assess.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drysill.assess.change.ChangeFixtures.OUTDOOR;
import static org.drysill.assess.change.ChangeFixtures.compare;
import static org.drysill.assess.change.ChangeFixtures.living;

import org.drysill.assess.Assumption;
import org.drysill.assess.Verdict;
import org.drysill.assess.change.ChangeFixtures.Visit;
import org.drysill.assess.change.visit.VerdictChange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whether two surveys are of one home, and what came out otherwise there. */
class SameHomeTest {
  private static ChangeResult at(String before, String after) {
    String room = living(20, 55);
    return compare(new Visit(OUTDOOR, room, "", before), new Visit(OUTDOOR, room, "", after));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'Flat 9, Specimen Court' | Flat 9 specimen court | MEETS | Both surveys are of",
        "'Flat 9, Specimen Court' | 'Flat 8, Specimen Court' | SHORT | different addresses",
        "'' | 'Flat 9, Specimen Court' | UNKNOWN | not stated in both",
        "'Flat 9, Specimen Court' | '' | UNKNOWN | rooms that are in both, 1 of them",
        "'' | '' | UNKNOWN | not stated in both"
      })
  void addresses_decide_whatever_their_commas_and_capitals(
      String before, String after, Verdict verdict, String said) {
    ChangeResult result = at(quoted(before), quoted(after));
    assertThat(result.sameHome().verdict()).isEqualTo(verdict);
    assertThat(result.sameHome().said()).contains(said);
    assertThat(result.findings().get(0).id()).isEqualTo("change.same_home");
    assertThat(result.findings().get(0).settledBy().isEmpty()).isEqualTo(verdict == Verdict.MEETS);
    assertThat(result.rooms()).hasSize(1);
  }

  private static String quoted(String address) {
    return address.isEmpty() ? "" : '"' + address + '"';
  }

  @Test
  void homes_without_a_room_in_common_are_not_compared() {
    ChangeResult other =
        compare(living(20, 55), living(20, 55).replace("id: living", "id: lounge"));
    assertThat(other.sameHome().verdict()).isEqualTo(Verdict.SHORT);
    assertThat(other.sameHome().said()).contains("No room is in both surveys");
    assertThat(other.rooms()).isEmpty();
    assertThat(other.notCompared())
        .containsExactly(
            "The living: in the earlier survey only", "The lounge: in the later survey only");
  }

  @Test
  void a_comparison_that_came_out_otherwise_is_listed_with_both_verdicts() {
    ChangeResult result = compare(living(20, 75), living(20, 45));
    assertThat(result.verdicts())
        .isNotEmpty()
        .allSatisfy(v -> assertThat(v.before()).isEqualTo(Verdict.SHORT))
        .extracting(VerdictChange::after)
        .containsOnly(Verdict.MEETS);
  }

  @Test
  void what_the_earlier_visit_had_to_assume_is_among_the_assumptions() {
    String unnamed = living(20, 55).replace(", instrument: fine", "");
    assertThat(compare(unnamed, living(20, 55)).assumptions())
        .extracting(Assumption::id)
        .contains("change.before.instrument.unnamed.humidity_accuracy", "change.weather");
    assertThat(compare(living(20, 55), living(20, 55)).assumptions())
        .extracting(Assumption::id)
        .containsExactly("change.weather");
  }

  @Test
  void planning_values_that_were_used_are_among_the_assumptions() {
    String spot =
        living(20, 55)
            .replace("}]}", "}], cold_spots: [{id: c, kind: external corner, mould_area: 1 m2}]}");
    assertThat(compare(spot, spot).assumptions())
        .extracting(Assumption::id)
        .contains("change.same_air", "change.mould_area");
  }
}
