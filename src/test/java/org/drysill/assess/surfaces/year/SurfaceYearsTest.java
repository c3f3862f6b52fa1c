package org.drysill.assess.surfaces.year;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.HomeFixtures;
import org.drysill.assess.OutdoorClimate;
import org.drysill.assess.OutdoorClimates;
import org.drysill.assess.OutdoorHours;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.physics.Range;
import org.drysill.physics.weather.HourlyYear;
import org.drysill.reference.climate.ClimateCatalogue;
import org.drysill.reference.surfaces.HourDefaults;
import org.drysill.reference.surfaces.Sensitivity;
import org.drysill.reference.surfaces.SurfaceTables;
import org.drysill.survey.SurfaceMaterial;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Surfaces of one room through a year whose hours are made from months. */
class SurfaceYearsTest {
  private static final SurfaceTables TABLES = SurfaceTables.bundled();
  private static final Home HOME =
      HomeFixtures.of(
          HomeFixtures.survey(
              "england",
              "floor_area: 84 m2, climate: uk-midlands",
              "- {id: bed, use: bedroom, setpoint: 19 C}"));

  private static SurfaceYears.Place place(Range factor, double excess) {
    return new SurfaceYears.Place(
        "corner",
        HOME.rooms().get(0),
        new Figure(
            "surface.corner.factor",
            "temperature factor",
            factor,
            Unit.RATIO,
            Basis.MEASURED,
            () -> null),
        celsius ->
            new Range(0.9 * excess, excess, 1.1 * excess)
                .times(Math.max(0, Math.min(1, (20 - celsius) / 20))));
  }

  private static OutdoorHours hours() {
    OutdoorClimate midlands =
        OutdoorClimates.resolve(
                HOME.survey(), ClimateCatalogue.bundled(), Optional.empty(), Optional.empty())
            .climate();
    return OutdoorHours.of(midlands, TABLES.hours().weather());
  }

  private static SurfaceYears years() {
    return new SurfaceYears(hours(), TABLES);
  }

  @Test
  void a_cold_corner_grows_mould_in_winter_and_a_warm_one_does_not() {
    WallYear cold = years().wall(place(Range.around(0.55, 0.05), 1000), Optional.of("wallpaper"));
    assertThat(cold.mould().likely()).isBetween(3.0, 5.0);
    assertThat(cold.mould().value().low()).isLessThan(cold.mould().likely());
    assertThat(cold.mould().value().high())
        .isGreaterThan(cold.mould().likely())
        .isLessThanOrEqualTo(6.0);
    assertThat(cold.begins().orElseThrow().month()).isIn(10, 11, 12);
    assertThat(cold.visible()).isPresent();
    assertThat(cold.wetHours().likely()).isLessThan(cold.moistHours().likely());
    WallYear warm = years().wall(place(Range.around(0.9, 0.02), 300), Optional.empty());
    assertThat(warm.mould().value().high()).isZero();
    assertThat(warm.begins()).isEmpty();
    assertThat(warm.visible()).isEmpty();
  }

  @Test
  void tiles_grow_less_than_paper() {
    SurfaceYears.Place corner = place(Range.exactly(0.55), 800);
    double paper = years().wall(corner, Optional.of("wallpaper")).mould().likely();
    double tiles = years().wall(corner, Optional.of("tiles")).mould().likely();
    assertThat(tiles).isLessThan(paper / 3);
  }

  @Test
  void a_single_pane_is_wet_most_winter_mornings() {
    GlassYear pane = years().glass(place(Range.exactly(0.246), 700));
    assertThat(pane.wetMornings().likely()).isBetween(200.0, 330.0);
    assertThat(pane.runningNights().likely()).isLessThan(pane.wetMornings().likely());
    assertThat(pane.worstNight().unit()).isEqualTo(Unit.WATER_PER_AREA);
    assertThat(years().wetMornings(place(Range.exactly(0.246), 700)).value())
        .isEqualTo(pane.wetMornings().value());
  }

  @Test
  void the_working_names_its_hours_and_its_limit() {
    GlassYear pane = years().glass(place(Range.exactly(0.246), 700));
    Working working = pane.wetMornings().working();
    assertThat(working.formula()).contains("mornings with w ≥ 5 g/m²");
    assertThat(working.note().orElseThrow()).contains("made from monthly means");
    assertThat(working.inputs()).extracting(Working.Input::symbol).contains("f", "Ti", "Δp");
  }

  @Test
  void hours_of_a_weather_file_are_not_called_made() {
    HourlyYear year = hours().year();
    SurfaceYears read = new SurfaceYears(new OutdoorHours(year, 6, false), TABLES);
    WallYear wall = read.wall(place(Range.exactly(0.6), 700), Optional.empty());
    assertThat(wall.mould().working().note().orElseThrow()).doesNotContain("made from");
    assertThat(wall.material().sensitivity()).isEqualTo(Sensitivity.SENSITIVE);
  }

  @ParameterizedTest
  @EnumSource(SurfaceMaterial.class)
  void every_material_of_a_survey_has_a_sensitivity(SurfaceMaterial material) {
    assertThat(TABLES.hours().sensitivity(Optional.of(material.word())).material())
        .isEqualTo(material.word());
  }

  @Test
  void a_material_without_sensitivity_is_refused() {
    HourDefaults hours = TABLES.hours();
    Optional<String> unknown = Optional.of("marzipan");
    assertThatThrownBy(() -> hours.sensitivity(unknown)).hasMessageContaining("marzipan");
  }

  @Test
  void days_are_named_by_thirds_of_a_month() {
    assertThat(DayOfYear.ofHour(0)).isEqualTo(new DayOfYear(1, 0));
    assertThat(DayOfYear.ofHour(743)).isEqualTo(new DayOfYear(1, 2));
    assertThat(DayOfYear.ofHour(744 + 14 * 24)).isEqualTo(new DayOfYear(2, 1));
  }
}
