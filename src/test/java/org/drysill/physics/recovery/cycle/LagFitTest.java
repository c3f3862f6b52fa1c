package org.drysill.physics.recovery.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class LagFitTest {
  /** r = 0.8 − 0.6·exp(−u/10): at 0.2 when it turns, at 0.5 after 10·ln 2 = 6.93 s. */
  @Test
  void a_level_is_reached_when_the_answer_of_first_order_reaches_it() {
    LagFit fit = new LagFit(10, 0.8, 0.6);
    assertThat(fit.when(0.2)).isCloseTo(0, within(1e-12));
    assertThat(fit.when(0.5)).isCloseTo(6.931, within(1e-3));
  }

  @Test
  void a_level_that_it_never_reaches_stands_at_the_turn() {
    assertThat(new LagFit(10, 0.8, 0.6).when(0.9)).isZero();
    assertThat(new LagFit(10, 0.8, 0).when(0.5)).isZero();
  }

  /** Cycles that are all alike have no scatter, and none has yet to settle. */
  @Test
  void like_cycles_have_no_error() {
    Window cycle = new Window(1, 15, 15, 20, 5);
    Spell spell = Spell.of(Collections.nCopies(6, cycle));
    assertThat(spell.mean()).isCloseTo(10.0 / 15, within(1e-12));
    assertThat(spell.error()).isZero();
    assertThat(spell.settling()).isZero();
  }

  /** What starts far off has not settled, and half of the cycles are kept whatever they show. */
  @Test
  void half_of_the_cycles_at_most_are_left_out() {
    Window early = new Window(1, 18, 18, 20, 5);
    Window late = new Window(1, 14, 14, 20, 5);
    Spell spell = Spell.of(List.of(early, early, late, late, late, late));
    assertThat(spell.settling()).isEqualTo(2);
    assertThat(Spell.of(List.of(early, early, late, late)).settling()).isEqualTo(2);
    assertThat(spell.mean()).isCloseTo(0.6, within(1e-12));
  }
}
