package org.drysill.options;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ScopeTest {
  private static final List<String> NONE = List.of();
  private static final List<String> ONE = List.of("x");

  @Test
  void only_a_scope_without_any_place_is_the_whole_home() {
    assertThat(Scope.home().wholeHome()).isTrue();
    assertThat(new Scope(ONE, NONE, NONE, NONE).wholeHome()).isFalse();
    assertThat(new Scope(NONE, ONE, NONE, NONE).wholeHome()).isFalse();
    assertThat(new Scope(NONE, NONE, ONE, NONE).wholeHome()).isFalse();
    assertThat(new Scope(NONE, NONE, NONE, ONE).wholeHome()).isFalse();
  }
}
