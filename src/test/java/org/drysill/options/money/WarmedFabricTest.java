package org.drysill.options.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.drysill.OptionsFixtures;
import org.drysill.assess.Assessment;
import org.drysill.options.OptionsBasis;
import org.drysill.options.effect.EffectStudy;
import org.drysill.options.site.Candidate;
import org.drysill.options.site.Placings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The heat that warmer walls save, by the area whose price is paid. */
class WarmedFabricTest {
  /** Solid walls; the living room and a bedroom have cold places, none has walls with layers. */
  private static final String WRECK = OptionsFixtures.text("wreck");

  private static final OptionsBasis BASIS = OptionsFixtures.basis();

  private static Candidate candidate(Assessment home, String measure) {
    return new Placings(home, BASIS).of(OptionsFixtures.measure(measure)).candidates().get(0);
  }

  private static Costed costed(String survey) {
    Assessment home = OptionsFixtures.assess(survey);
    return new MoneyStudy(home, BASIS)
        .of(
            new EffectStudy(home, BASIS)
                .of(candidate(home, "internal-wall-insulation"))
                .orElseThrow());
  }

  private static double lessLost(String survey) {
    Assessment home = OptionsFixtures.assess(survey);
    return new WarmedFabric(home, BASIS)
        .lessLost(candidate(home, "internal-wall-insulation"))
        .likely();
  }

  private static double area(String survey) {
    return costed(survey).money().price().orElseThrow().count();
  }

  /** A solid wall of 1.8 W/(m²·K) becomes one of 0.35, an empty cavity of 1.5 as well. */
  @ParameterizedTest
  @CsvSource({"solid brick, 1.45", "cavity brick, 1.15", "'cavity brick, filled', 0", "timber, 0"})
  void a_wall_without_layers_is_one_of_its_kind(String walls, double less) {
    String survey = WRECK.replace("walls: solid brick", "walls: \"" + walls + "\"");
    assertThat(lessLost(survey)).isCloseTo(less * area(survey), within(1e-9));
  }

  /**
   * 215 mm of brick of 0.77 W/(m·K) and 13 mm of dense plaster of 0.57 with films of 0.13 and 0.04
   * m²K/W: 1/(0.17 + 0.2792 + 0.0228) = 2.118 W/(m²·K), on 6 m²; the living room's is as usual.
   */
  @Test
  void a_wall_with_layers_loses_by_them_on_its_own_area() {
    String layers =
        "    walls: [{id: w, area: 6 m2, layers: [{material: dense plaster, thickness: 13 mm},"
            + " {material: brick, thickness: 215 mm}]}]\n";
    String survey =
        WRECK.replace(
            "    cold_spots: [{id: bedroom-wall", layers + "    cold_spots: [{id: bedroom-wall");
    double living = area(survey) - 6;
    assertThat(lessLost(survey)).isCloseTo(6 * (2.118 - 0.35) + living * 1.45, within(0.1));
    Candidate walls = candidate(OptionsFixtures.assess(survey), "internal-wall-insulation");
    String unknown = survey.replace("walls: solid brick", "walls: timber");
    assertThat(lessLost(unknown)).isCloseTo(6 * (2.118 - 0.35), within(0.1));
    assertThat(walls.rooms()).hasSize(2);
    assertThat(costed(unknown).money().notTold().orElseThrow())
        .contains("the heat that the warmer wall saves is not counted");
  }

  /** 6 K below 19 °C October to May are heated in the Midlands: 2840.2 K·d, gas at 85 %. */
  @Test
  void what_is_not_lost_is_saved() {
    Costed costed = costed(WRECK);
    assertThat(costed.money().heatSaved().likely())
        .isCloseTo(1.45 * area(WRECK) * 2840.2 * 0.024 / 0.85, within(0.1));
    assertThat(costed.money().notTold()).isEmpty();
  }

  /** A pane is no wall. */
  @Test
  void windows_leave_out_no_wall() {
    Assessment home = OptionsFixtures.assess(WRECK.replace("walls: solid brick", "walls: timber"));
    assertThat(new WarmedFabric(home, BASIS).leavesOutAWall(candidate(home, "double-glazing")))
        .isFalse();
    assertThat(new WarmedFabric(home, BASIS).leavesOutAWall(candidate(home, "dehumidifier")))
        .isFalse();
  }
}
