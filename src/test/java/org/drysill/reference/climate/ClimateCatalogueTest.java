package org.drysill.reference.climate;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ClimateCatalogueTest {
  private final ClimateCatalogue climates = ClimateCatalogue.bundled();

  @Test
  void every_file_is_named_as_the_id_within_and_can_be_read() {
    assertThat(climates.ids()).isSorted().contains("uk-midlands", "oslo");
    assertThat(climates.ids())
        .allSatisfy(id -> assertThat(climates.find(id)).map(ReferenceClimate::id).contains(id));
  }

  @Test
  void an_id_that_no_file_has_is_not_found() {
    assertThat(climates.find("atlantis")).isEmpty();
    assertThat(climates.find("../defaults/climate")).isEmpty();
  }
}
