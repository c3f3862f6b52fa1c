package org.drysill.assess.surfaces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drysill.assess.surfaces.SurfaceFixtures.TABLES;
import static org.drysill.assess.surfaces.SurfaceFixtures.assess;
import static org.drysill.assess.surfaces.SurfaceFixtures.home;
import static org.drysill.assess.surfaces.SurfaceFixtures.vapour;

import org.drysill.assess.Assumption;
import org.junit.jupiter.api.Test;

/** What other glazing would do for windows. */
class OtherGlazingTest {
  private static String window(String glazing) {
    return "windows: [{id: w, orientation: N, width: 1200 mm, height: 1000 mm"
        + (glazing.isEmpty() ? "" : ", glazing: " + glazing)
        + ", frame: timber}]";
  }

  private static CondensationResult result(String glazing) {
    return SurfaceAssessor.assess(home("", window(glazing)), vapour(700, 3), TABLES);
  }

  @Test
  void better_panes_are_wet_on_fewer_mornings() {
    OtherGlazing pane = result("single").glazing().get(0);
    assertThat(pane.item()).isEqualTo("w");
    assertThat(pane.now()).isEqualTo("a single pane");
    assertThat(pane.name()).isEqualTo("window facing N");
    assertThat(pane.choices()).hasSize(4);
    assertThat(pane.choices())
        .allSatisfy(
            c -> assertThat(c.wetMornings().likely()).isLessThan(pane.wetMorningsNow().likely()));
    assertThat(pane.choices().get(3).wetMornings().likely())
        .isLessThanOrEqualTo(pane.choices().get(2).wetMornings().likely());
  }

  @Test
  void what_a_window_has_already_is_no_choice() {
    OtherGlazing pane = result("double low-e").glazing().get(0);
    assertThat(pane.choices())
        .extracting(OtherGlazing.Choice::glazing)
        .doesNotContain("double low-e")
        .contains("triple low-e");
  }

  @Test
  void windows_of_unknown_glazing_are_compared_too() {
    assertThat(result("").glazing().get(0).choices()).hasSize(4);
  }

  @Test
  void dry_windows_are_left_alone() {
    CondensationResult dry =
        SurfaceAssessor.assess(home("", window("triple low-e")), vapour(50, 3), TABLES);
    assertThat(dry.glazing()).isEmpty();
  }

  @Test
  void each_kind_of_pane_that_never_dries_is_told_once() {
    assertThat(result("single").neverDry())
        .singleElement()
        .asString()
        .startsWith("A single pane can never stay dry at a humidity that people live in")
        .contains("back bedroom");
    assertThat(result("triple low-e").neverDry()).isEmpty();
  }

  @Test
  void made_hours_and_slow_walls_are_told_as_assumptions() {
    assertThat(assess(home("", window("single"))).assumptions())
        .extracting(Assumption::id)
        .contains("surface.made_hours", "surface.memory");
  }
}
