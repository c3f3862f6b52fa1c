package org.drysill.report.compared;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drysill.assess.change.ChangeFixtures.OUTDOOR;
import static org.drysill.assess.change.ChangeFixtures.compare;
import static org.drysill.assess.change.ChangeFixtures.living;
import static org.drysill.assess.change.ChangeFixtures.visit;

import java.util.List;
import org.drysill.assess.change.ChangeFixtures.Visit;
import org.drysill.assess.change.ChangeResult;
import org.drysill.report.chart.SourceBars;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.UnitSystem;
import org.junit.jupiter.api.Test;

/** What a comparison says, word by word. */
class StatementTest {
  private static final Numbers NUMBERS = new Numbers(UnitSystem.METRIC, "GBP");

  private static Statement of(ChangeResult change) {
    return new Statement(change, NUMBERS);
  }

  private static List<ComparedGroup> groups(ChangeResult change) {
    return Comparison.of(change, NUMBERS, id -> "the room " + id);
  }

  @Test
  void from_55_to_41_percent_is_told_in_points_and_as_a_share() {
    ChangeResult change = compare(living(20, 55), living(20, 41));
    assertThat(of(change).plain())
        .contains(
            "less moisture on top of what outdoor air brings",
            "from 55 % to 41 %: 14 percentage points lower, about a quarter less",
            "0 by the temperature of the rooms, 0 by the vapour of outdoor air and −14 by moisture"
                + " and air indoors")
        .doesNotContain("14 %");
    ComparedRow row = groups(change).get(1).rows().get(0);
    assertThat(row.change().line()).isEqualTo("−14\u00a0points (a quarter less)");
    assertThat(row.before().line()).isEqualTo("55 (20.0\u00a0°C)");
    assertThat(row.judgement().words()).isEqualTo("fell");
  }

  @Test
  void a_rise_is_told_as_one() {
    ChangeResult rose = compare(living(20, 41), living(20, 55));
    assertThat(of(rose).plain()).contains("held more moisture", "14 percentage points higher");
    assertThat(groups(rose).get(1).rows().get(0).change().text()).isEqualTo("+14\u00a0points");
  }

  @Test
  void what_is_not_shown_is_told_with_the_criterion() {
    ChangeResult unlike =
        compare(
            visit(OUTDOOR, living(20, 75)),
            visit(OUTDOOR.replace("5 C", "10.1 C"), living(20, 41)));
    assertThat(of(unlike).plain())
        .contains("is not shown", "further apart than the 5 K up to which weather counts as alike");
    assertThat(of(unlike).criteria())
        .contains("That a change is shown does not say what caused it");
  }

  @Test
  void without_outdoor_air_the_vapour_of_the_rooms_is_one_part() {
    ChangeResult once = compare(visit("", living(20, 55)), visit("", living(20, 41)));
    assertThat(of(once).plain()).contains("−14 by the vapour in the rooms");
    Split split = new Split(once.home().orElseThrow().humidity(), NUMBERS);
    assertThat(((SourceBars) split.chart()).rows()).hasSize(3);
  }

  @Test
  void the_chart_says_its_numbers_to_who_cannot_see_it() {
    ChangeResult change = compare(living(18, 65), living(20, 45));
    Split split = new Split(change.home().orElseThrow().humidity(), NUMBERS);
    assertThat(((SourceBars) split.chart()).rows()).hasSize(4);
    assertThat(split.chart().text().alt()).contains("all in all −20 percentage points");
    assertThat(((SourceBars) split.chart()).axis().min()).isLessThanOrEqualTo(-20);
    assertThat(((SourceBars) split.chart()).axis().max()).isNotNegative();
  }

  /** Factor 0.2 and 80 % at 5 °C outdoors: water on the surface, whatever the number. */
  @Test
  void surfaces_mould_fans_and_units_have_rows_of_their_own() {
    String bed =
        """
        - id: bed
          use: bedroom
          readings: [{temperature: 18 C, humidity: %s %%, instrument: fine}]
          cold_spots:
            - {id: one, kind: external corner, mould_area: %s m2, readings: [{surface: 8 C, air: 18 C, outdoor: 5 C}]}
            - {id: two, kind: external corner, mould_area: %s m2, temperature_factor: 0.7}
          fans:
            - {id: f, kind: %s, measured_flow: {value: 10 l/s, instrument: hood}}
            - {id: hr, kind: simultaneous heat recovery, heat_recovery_tests: [{outdoor: 0 C, indoor: 20 C, supply: 14 C, instrument: fine}]}
            - {id: d, kind: intermittent extract, declared_flow: 15 l/s}
        """;
    ChangeResult change =
        compare(
            bed.formatted("80", "0.5", "0.4", "intermittent extract"),
            bed.formatted("50", "0", "0", "continuous extract"));
    List<ComparedGroup> groups = groups(change);
    assertThat(groups).extracting(g -> g.rows().size()).containsExactly(1, 1, 1, 3, 3, 1);
    assertThat(groups.get(2).rows().get(0).before().text()).isEqualTo("wet");
    assertThat(groups.get(3).rows().get(2).label()).isEqualTo("All of these places");
    assertThat(groups.get(4).rows().get(0).before().line()).isEqualTo("10 (intermittent extract)");
    assertThat(groups.get(4).rows().get(2).before().line()).isEqualTo("15 (declared only)");
    assertThat(groups.get(5).rows().get(0).before().text()).isEqualTo("70");
    assertThat(of(change).plain()).contains("Mould was seen on 0.9\u00a0m² before and on none");
  }

  @Test
  void nothing_in_common_is_said() {
    String bare = "- {id: living, use: living}";
    assertThat(of(compare(bare, bare)).plain()).startsWith("Nothing was read or seen at both");
    assertThat(groups(compare(bare, bare))).isEmpty();
  }

  @Test
  void what_was_done_is_told_without_who_was_to_blame() {
    String events =
        "{date: 2025-03-01, event: works started, by: contractor, note: late},"
            + " {date: 2025-03-20, event: works completed}";
    String rooms = living(20, 55);
    Statement statement =
        of(compare(new Visit(OUTDOOR, rooms, events), new Visit(OUTDOOR, rooms, events)));
    assertThat(statement.between())
        .isEqualTo(
            "works started on 1\u00a0March\u00a02025, works completed on 20\u00a0March\u00a02025");
  }

  @Test
  void comparisons_that_came_out_otherwise_stand_by_how_they_come_out_now() {
    assertThat(of(compare(living(20, 75), living(20, 45))).verdicts())
        .startsWith("Now met: ")
        .contains("(short before)");
    assertThat(of(compare(living(20, 45), living(20, 75))).verdicts()).startsWith("Now short: ");
  }
}
