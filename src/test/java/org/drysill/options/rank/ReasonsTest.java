package org.drysill.options.rank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.drysill.OptionsFixtures;
import org.drysill.physics.Range;
import org.junit.jupiter.api.Test;

class ReasonsTest {
  private static final String FAN = "continuous-extract";
  private static final Reasons REASONS =
      new Reasons(
          OptionsFixtures.assess(OptionsFixtures.text("small-flat")),
          new Ranking(0.25),
          new Purse(Optional.of(Range.exactly(800)), "GBP"));

  private static List<String> after(Entry above, Entry entry) {
    return REASONS.of(entry, Optional.of(above));
  }

  @Test
  void the_first_tells_what_it_does_in_figures() {
    assertThat(REASONS.of(Entries.of(FAN, true, 50, 450, 4, 2.5, 12), Optional.empty()))
        .containsExactly(
            "It closes 7.5 l/s of the 10 l/s of outdoor air that the home likely lacks; it ends 8"
                + " of the 12 months of mould risk a year at the only wall or corner at risk, Room, corner.");
  }

  @Test
  void all_of_a_shortfall_is_called_all_and_a_trifle_is_left_out() {
    assertThat(REASONS.of(Entries.of(FAN, true, 50, 450, 12, 0, 9), Optional.empty()).get(0))
        .isEqualTo(
            "It closes all of the 10 l/s of outdoor air that the home likely lacks; it ends 3 of"
                + " the 12 months of wet glass a year, summed over 1 window.");
    assertThat(REASONS.of(Entries.of(FAN, true, 50, 450, 12, 9.99, 9), Optional.empty()).get(0))
        .startsWith("It ends 3 of the 12 months of wet glass");
  }

  @Test
  void each_step_of_the_ranking_has_its_sentence() {
    Entry above = Entries.of(FAN, true, 50, 450, 6, 5, 6);
    assertThat(after(above, Entries.of(FAN, false, 50, 450, 6, 5, 6)).get(1))
        .contains("a spillage test comes before the work");
    assertThat(after(above, Entries.of(FAN, true, 50, 450, 12, 9, 6)).get(1))
        .isEqualTo("It closes 5 % of what the home lacks; “Continuous extract fan” closes 50 %.");
    assertThat(after(above, Entries.of("dehumidifier", true, 50, 450, 6, 5, 6)).get(1))
        .startsWith("It is a stop-gap");
    assertThat(after(above, Entries.of(FAN, true, 74, 450, 6, 5, 6)).get(1))
        .isEqualTo(
            "It goes about as far as “Continuous extract fan” and costs £24 more a year, all in"
                + " all.");
    assertThat(after(above, Entries.of(FAN, true, -1, 0, 6, 5, 6)).get(1))
        .startsWith("Its cost cannot be told");
    assertThat(after(above, Entries.of(FAN, true, 50.2, 450, 6, 5, 6))).hasSize(1);
  }

  @Test
  void two_stop_gaps_and_two_that_need_a_test_are_told_apart_by_cost() {
    assertThat(
            after(
                    Entries.of("dehumidifier", true, 50, 450, 6, 5, 6),
                    Entries.of("dehumidifier", true, 60, 450, 6, 5, 6))
                .get(1))
        .contains("£10 more a year");
    assertThat(
            after(
                    Entries.of(FAN, false, 50, 450, 12, 10, 6),
                    Entries.of(FAN, false, 60, 450, 12, 10, 6))
                .get(1))
        .isEqualTo("It costs £10 a year more than “Continuous extract fan”, all in all.");
  }

  @Test
  void what_brings_no_air_says_so_where_air_is_not_surely_enough() {
    List<String> reasons =
        REASONS.of(Entries.of("dehumidifier", true, 50, 450, 6, 10, 6), Optional.empty());
    assertThat(reasons.get(reasons.size() - 1)).startsWith("It brings no outdoor air");
  }

  @Test
  void beyond_the_budget_the_price_is_the_first_reason() {
    assertThat(REASONS.beyond(Entries.of(FAN, true, 50, 7500, 0, 0, 0)).get(0))
        .isEqualTo("It costs £7,500 and the budget is £800.");
  }

  @Test
  void a_measure_that_settles_what_falls_short_says_what() {
    var options = OptionsFixtures.study(OptionsFixtures.text("wreck"));
    assertThat(OptionsFixtures.find(options, "door-undercut.hall").reasons())
        .contains("It gives one opening for air the size that is asked and lacking today.");
    var doors =
        OptionsFixtures.study(
            OptionsFixtures.text("wreck")
                .replace("doors: [", "doors: [{to: kitchen, undercut: 3 mm, width: 760 mm}, "));
    assertThat(OptionsFixtures.find(doors, "door-undercut.hall").reasons())
        .contains("It gives 2 openings for air the size that is asked and lacking today.");
    var flat = OptionsFixtures.study(OptionsFixtures.text("small-flat"));
    assertThat(OptionsFixtures.find(flat, "continuous-extract.bathroom").reasons())
        .anyMatch(r -> r.startsWith("Set to 8 l/s, it gives its room the extract"));
    assertThat(OptionsFixtures.find(options, "window-ventilator").reasons().get(0))
        .matches(".* months .*of mould risk a year at \\d walls and corners; .* of it\\.");
  }
}
