package org.drysill.options.rank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The works where no package is ranked. */
class InTurnTest {
  private static Entry glass(String measure, double monthsLeft) {
    return Entries.of(measure, true, 10, 100, 12, 10, monthsLeft);
  }

  private static Entry air(String measure, double litresLacking) {
    return Entries.of(measure, true, 10, 100, 12, litresLacking, 12);
  }

  @Test
  void what_ends_wet_months_that_an_earlier_work_has_ended_is_left_out() {
    Entry habit = glass("purge-habit", 4);
    Entry panes = glass("double-glazing", 0);
    Entry dryer = glass("heat-pump-dryer", 0);
    assertThat(InTurn.of(List.of(habit, panes, dryer))).containsExactly(habit, panes);
  }

  @Test
  void what_dries_less_than_an_earlier_work_is_left_out() {
    Entry panes = glass("double-glazing", 0);
    Entry habit = glass("purge-habit", 4);
    assertThat(InTurn.of(List.of(panes, habit))).containsExactly(panes);
  }

  @Test
  void what_brings_air_that_is_lacking_adds_to_what_others_bring() {
    Entry slot = air("window-ventilator", 5);
    Entry fan = air("continuous-extract", 5);
    assertThat(InTurn.of(List.of(slot, fan))).containsExactly(slot, fan);
  }

  @Test
  void what_settles_something_that_no_earlier_work_has_settled_stays() {
    Entry panes = glass("double-glazing", 0);
    Entry door = Entries.settling("door-undercut", "door.hall");
    Entry slot = Entries.settling("window-ventilator", "door.hall", "ventilators.bedroom");
    Entry habit = Entries.settling("purge-habit", "door.hall");
    assertThat(InTurn.of(List.of(panes, door, slot, habit))).containsExactly(panes, door, slot);
  }

  @Test
  void what_an_earlier_work_excludes_is_left_out() {
    Entry panes = air("double-glazing", 5);
    Entry more = air("triple-glazing", 0);
    assertThat(InTurn.of(List.of(panes, more))).containsExactly(panes);
  }
}
