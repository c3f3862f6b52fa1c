package org.drysill.report.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class LabelsTest {
  @Test
  void what_all_names_end_with_is_left_to_the_title() {
    assertThat(Labels.of(List.of("Kitchen extract", "Bathroom extract")))
        .containsExactly("Kitchen", "Bathroom");
    assertThat(Labels.of(List.of("Hall: background ventilators", "Home: background ventilators")))
        .containsExactly("Hall", "Home");
  }

  @Test
  void no_name_loses_its_last_word() {
    assertThat(Labels.of(List.of("Extract", "Kitchen extract")))
        .containsExactly("Extract", "Kitchen extract");
    assertThat(Labels.of(List.of("Fan", "Fan"))).containsExactly("Fan", "Fan");
    assertThat(Labels.of(List.of("Kitchen extract"))).containsExactly("Kitchen extract");
    assertThat(Labels.of(List.of())).isEmpty();
  }
}
