package org.drysill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ServiceLoader;
import net.jqwik.api.lifecycle.LifecycleHook;
import org.junit.jupiter.api.Test;

class SameCasesTest {
  @Test
  void a_property_has_one_lot_of_cases_by_number_and_others_of_its_own() {
    assertThat(SameCases.seed("0", "a")).isEqualTo(SameCases.seed("0", "a"));
    assertThat(SameCases.seed("0", "a")).isNotEqualTo(SameCases.seed("0", "b"));
    assertThat(SameCases.seed("0", "a")).isNotEqualTo(SameCases.seed("1", "a"));
    assertThat(SameCases.seed("new", "a")).isNotEqualTo(SameCases.seed("new", "a"));
  }

  @Test
  void every_property_gets_its_cases_from_it() {
    assertThat(ServiceLoader.load(LifecycleHook.class)).hasAtLeastOneElementOfType(SameCases.class);
  }
}
