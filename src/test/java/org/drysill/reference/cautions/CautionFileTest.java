package org.drysill.reference.cautions;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class CautionFileTest {
  private final List<Caution> all = CautionFile.all();

  @Test
  void the_open_flue_with_extract_is_the_gravest() {
    assertThat(all.get(0).id()).isEqualTo("open-flue-with-extract");
    assertThat(all).extracting(Caution::order).isSorted();
  }

  @Test
  void ids_are_unique_and_every_trigger_has_a_caution() {
    assertThat(all).extracting(Caution::id).doesNotHaveDuplicates();
    assertThat(all).extracting(Caution::trigger).contains(Trigger.values());
  }

  @Test
  void every_caution_says_what_can_happen_whom_to_ask_and_who_says_so() {
    assertThat(all)
        .allSatisfy(
            c -> {
              assertThat(c.hazard()).endsWith(".");
              assertThat(c.text()).endsWith(".");
              assertThat(c.ask()).endsWith(".");
              assertThat(c.source().document()).isNotBlank();
            });
  }
}
