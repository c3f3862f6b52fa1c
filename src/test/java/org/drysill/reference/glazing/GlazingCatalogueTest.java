package org.drysill.reference.glazing;

import static org.assertj.core.api.Assertions.assertThat;

import org.drysill.physics.Range;
import org.junit.jupiter.api.Test;

class GlazingCatalogueTest {
  private final GlazingCatalogue catalogue = GlazingCatalogue.bundled();

  /** ISO 10077-1:2006, Annex C (memory). */
  @Test
  void a_single_pane_has_the_handbook_transmittance() {
    assertThat(catalogue.find("single").orElseThrow().ug().range())
        .isEqualTo(new Range(5.4, 5.8, 6.0));
  }

  @Test
  void aliases_and_case_do_not_matter() {
    assertThat(catalogue.find("Misted Double"))
        .isEqualTo(catalogue.find("double with failed seal"));
    assertThat(catalogue.find("paper")).isEmpty();
  }

  @Test
  void no_word_means_two_kinds() {
    assertThat(catalogue.words()).doesNotHaveDuplicates().contains("single", "secondary");
  }

  @Test
  void glazing_that_nobody_looked_at_spans_from_single_to_coated() {
    assertThat(catalogue.unknown().ug().range()).isEqualTo(new Range(1.1, 2.8, 5.8));
  }

  /** DIN EN ISO 10077-1:2010-05, Table E.1, as quoted by a window maker (seen). */
  @Test
  void aluminium_spacers_of_coated_panes_have_the_printed_transmittance() {
    assertThat(catalogue.spacers())
        .filteredOn(s -> s.spacer().startsWith("aluminium") && s.glazing().equals("low-e"))
        .filteredOn(s -> s.frame().equals("timber or pvc"))
        .extracting(s -> s.psi().range().likely())
        .containsExactly(0.08);
  }

  @Test
  void every_bound_holds_its_likely_value() {
    assertThat(catalogue.kinds()).allSatisfy(k -> assertThat(k.ug().range().isSpread()).isTrue());
    assertThat(catalogue.frames()).hasSize(4);
  }
}
