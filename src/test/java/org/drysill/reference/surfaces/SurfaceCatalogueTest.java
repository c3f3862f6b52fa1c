package org.drysill.reference.surfaces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.reference.How;
import org.drysill.survey.ColdSpotKind;
import org.junit.jupiter.api.Test;

class SurfaceCatalogueTest {
  private final SurfaceCatalogue catalogue = SurfaceCatalogue.bundled();
  private final TypicalDetails details = TypicalDetails.bundled();

  /** ISO 13788:2012, 4.4 and DIN 4108-8 (memory). */
  @Test
  void films_are_those_of_the_standards() {
    assertThat(catalogue.resistance(FilmUse.WALL).range()).isEqualTo(Range.exactly(0.25));
    assertThat(catalogue.resistance(FilmUse.CORNER).range()).isEqualTo(new Range(0.25, 0.35, 0.5));
    assertThat(catalogue.resistance(FilmUse.FURNITURE).range().likely()).isEqualTo(0.5);
    assertThat(Arrays.stream(FilmUse.values()).map(catalogue::resistance)).doesNotContainNull();
  }

  /** BRE IP 1/06 as quoted in a certification report (seen). */
  @Test
  void the_english_critical_factor_is_three_quarters() {
    CriticalFactor england = catalogue.criticalFactor("england").orElseThrow();
    assertThat(england.value().value()).isEqualTo(0.75);
    assertThat(england.source().how()).isEqualTo(How.SEEN);
    assertThat(catalogue.criticalFactor("atlantis")).isEmpty();
  }

  @Test
  void every_kind_of_cold_spot_has_a_typical_detail_in_every_year() {
    for (ColdSpotKind kind : ColdSpotKind.values()) {
      for (int year = 1000; year <= 2100; year++) {
        assertThat(details.factor(kind.word(), Optional.of(year)).low()).isBetween(0.0, 1.0);
      }
    }
  }

  @Test
  void an_unknown_age_spans_all_ages() {
    assertThat(details.factor("lintel", Optional.empty())).isEqualTo(new Range(0.35, 0.6, 0.85));
  }

  @Test
  void an_unknown_kind_is_refused() {
    assertThatThrownBy(() -> details.factor("chimney", Optional.of(1900)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("chimney");
  }

  @Test
  void typical_details_say_that_nothing_published_stands_behind_them() {
    assertThat(details.source().how()).isEqualTo(How.ASSUMPTION);
  }

  @Test
  void defaults_are_read() {
    SurfaceDefaults defaults = SurfaceDefaults.bundled();
    assertThat(defaults.refusedBelow().likely()).isEqualTo(5);
    assertThat(defaults.paneFilm().range()).isEqualTo(new Range(2.5, 3, 4));
  }
}
