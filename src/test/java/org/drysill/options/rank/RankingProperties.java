package org.drysill.options.rank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class RankingProperties {
  private static final Ranking RANKING = new Ranking(0.25);
  private static final String FAN = "continuous-extract";

  private static void ranks(Entry better, Entry worse) {
    assertThat(RANKING.ranked(List.of(worse, better))).containsExactly(better, worse);
    assertThat(RANKING.ranked(List.of(better, worse))).containsExactly(better, worse);
  }

  @Property
  void what_is_dearer_and_otherwise_equal_never_ranks_better(
      @ForAll boolean admissible,
      @ForAll @DoubleRange(max = 500) double annual,
      @ForAll @DoubleRange(min = 1, max = 500) double dearer,
      @ForAll @DoubleRange(max = 5000) double first,
      @ForAll @IntRange(max = 12) int wall,
      @ForAll @IntRange(max = 10) int air,
      @ForAll @IntRange(max = 12) int glass) {
    ranks(
        Entries.of(FAN, admissible, annual, first, wall, air, glass),
        Entries.of(FAN, admissible, annual + dearer, first + dearer, wall, air, glass));
  }

  @Property
  void what_needs_a_safety_test_never_ranks_before_what_is_safe_today(
      @ForAll @DoubleRange(max = 500) double annual, @ForAll @IntRange(max = 12) int wall) {
    ranks(
        Entries.of(FAN, true, 500, 5000, 12, 10, 12),
        Entries.of(FAN, false, annual, 0, wall, 0, 0));
  }

  /** Half of the air is a quarter of all that is open; a quarter beats any price. */
  @Example
  void a_quarter_further_goes_before_any_price() {
    ranks(Entries.of(FAN, true, 900, 9000, 12, 5, 12), Entries.of(FAN, true, 0, 0, 12, 10, 0));
  }

  @Example
  void less_than_a_quarter_does_not() {
    ranks(Entries.of(FAN, true, 10, 9000, 12, 10, 12), Entries.of(FAN, true, 11, 0, 11, 9, 0));
  }

  @Example
  void a_stop_gap_comes_after_what_lasts_and_before_what_does_less() {
    Entry lasting = Entries.of(FAN, true, 300, 450, 6, 5, 12);
    Entry stopGap = Entries.of("dehumidifier", true, 20, 200, 6, 5, 0);
    ranks(lasting, stopGap);
    ranks(stopGap, Entries.of(FAN, true, 1, 1, 12, 10, 12));
  }

  @Example
  void among_equals_wet_glass_then_first_cost_then_name_decide() {
    ranks(Entries.of(FAN, true, 50, 900, 6, 5, 3), Entries.of(FAN, true, 50, 100, 6, 5, 4));
    ranks(Entries.of(FAN, true, 50, 100, 6, 5, 3), Entries.of(FAN, true, 50, 900, 6, 5, 3));
    ranks(
        Entries.of(FAN, true, 50, 100, 6, 5, 3),
        Entries.of("positive-input", true, 50, 100, 6, 5, 3));
  }

  @Example
  void an_unknown_price_goes_behind_every_known_one() {
    ranks(Entries.of(FAN, true, 5000, 90_000, 6, 5, 3), Entries.of(FAN, true, -1, 0, 6, 5, 0));
  }

  @Example
  void the_rule_is_told_in_as_many_sentences_as_it_has_steps() {
    assertThat(RANKING.rule()).hasSize(7).allMatch(s -> s.endsWith("."));
  }
}
