package org.drysill.options.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Assessment;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.options.OptionsBasis;
import org.drysill.reference.measures.Measure;
import org.drysill.reference.measures.MeasurePlace;
import org.junit.jupiter.api.Test;

class OtherAirTest {
  private static final OptionsBasis BASIS = OptionsFixtures.basis();
  private static final String BARE =
      OptionsFixtures.text("small-flat").replaceAll(" *fans: \\[.*\\]\n", "");

  /** A unit in the first room of a use, after the use of that room was changed to another. */
  private static String with(String use, String instead) {
    return BARE.replaceFirst(
        "    use: " + use + "\n",
        "    use: "
            + instead
            + "\n    fans: [{id: u, kind: alternating heat recovery, declared_flow: 6 l/s,"
            + " power: 4 W, run: continuous, declared_heat_recovery: 70 %}]\n");
  }

  private static Assessment in(String use, String instead) {
    return OptionsFixtures.assess(with(use, instead));
  }

  private static OtherAir air(Assessment home) {
    return new OtherAir(home.home(), BASIS.catalogue().measures(), 0.9);
  }

  private static FanFlow unit(Assessment home) {
    return home.ventilation().provided().fans().get(0);
  }

  private static Set<MeasurePlace> here(Assessment home) {
    return BASIS.catalogue().measures().stream()
        .filter(m -> air(home).isHere(m, unit(home)))
        .map(Measure::place)
        .collect(Collectors.toSet());
  }

  @Test
  void a_measure_of_a_kitchen_is_at_its_place_in_a_kitchen_alone() {
    assertThat(here(in("kitchen", "kitchen")))
        .contains(MeasurePlace.KITCHEN, MeasurePlace.WET_ROOM)
        .doesNotContain(MeasurePlace.HABITABLE_ROOM, MeasurePlace.HOME, MeasurePlace.WINDOW);
    assertThat(here(in("kitchen", "kitchen-dining room"))).contains(MeasurePlace.KITCHEN);
    assertThat(here(in("bathroom", "bathroom")))
        .contains(MeasurePlace.WET_ROOM)
        .doesNotContain(MeasurePlace.KITCHEN);
    assertThat(here(in("bedroom", "bedroom")))
        .doesNotContain(MeasurePlace.KITCHEN, MeasurePlace.WET_ROOM, MeasurePlace.HOME);
  }

  /** From a bedroom, where no fan without recovery belongs, the air of the home counts. */
  @Test
  void what_draws_the_same_air_elsewhere_stands_in_where_nothing_fits_here() {
    Assessment home = in("bedroom", "bedroom");
    List<Measure> found = air(home).of(unit(home));
    assertThat(found).isNotEmpty().noneMatch(m -> air(home).isHere(m, unit(home)));
    assertThat(found).extracting(Measure::id).contains("continuous-extract");
  }

  @Test
  void where_no_room_is_wet_only_measures_of_the_whole_home_are_left() {
    Assessment dry =
        OptionsFixtures.assess(
            with("bedroom", "bedroom").replaceAll("use: (bathroom|kitchen)", "use: store"));
    assertThat(air(dry).of(unit(dry))).allMatch(m -> m.place() == MeasurePlace.HOME);
  }
}
