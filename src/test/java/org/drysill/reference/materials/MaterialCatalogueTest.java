package org.drysill.reference.materials;

import static org.assertj.core.api.Assertions.assertThat;

import org.drysill.physics.Range;
import org.junit.jupiter.api.Test;

class MaterialCatalogueTest {
  private final MaterialCatalogue catalogue = MaterialCatalogue.bundled();

  /** ISO 10456:2007, Table 3 (memory). */
  @Test
  void brick_has_the_handbook_conductivity() {
    assertThat(catalogue.find("brick").orElseThrow().conductivity().orElseThrow().range())
        .isEqualTo(new Range(0.56, 0.77, 1.0));
  }

  @Test
  void aliases_are_understood() {
    assertThat(catalogue.find("Glass wool")).isEqualTo(catalogue.find("mineral wool"));
    assertThat(catalogue.find("moon dust")).isEmpty();
  }

  @Test
  void no_word_means_two_materials() {
    assertThat(catalogue.words()).doesNotHaveDuplicates().contains("brick", "osb");
  }

  @Test
  void every_material_resists_heat_or_vapour() {
    assertThat(catalogue.materials())
        .allSatisfy(m -> assertThat(m.conductivity().isPresent() || m.sd().isPresent()).isTrue());
  }
}
