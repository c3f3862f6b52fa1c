package org.drysill.options.packs;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Assessment;
import org.drysill.options.packs.PackValue.Bits;
import org.drysill.options.rank.Purse;
import org.junit.jupiter.api.Test;

/** What decides between a package and the best one, in words. */
class PackReasonsTest {
  private static final Assessment FLAT = OptionsFixtures.assess(OptionsFixtures.text("small-flat"));
  private static final PackValue BEST = value(true, false, 0.002, 5, 0, 100);

  private static PackValue value(
      boolean safe, boolean stopGap, double lacks, int mould, int wet, double annual) {
    return new PackValue(
        new Bits(1, 0), 1, safe, stopGap, lacks, mould, wet, 1, 1, new Bill(0, annual, 0, 0, 0, 0));
  }

  /** As sure as it leaves months of mould: 100 less ten for each. */
  private static SureOrder sure(PackOrder order) {
    return new SureOrder(order, v -> Math.max(0, 1 - v.mould() / 10.0), 0.8, 0.1);
  }

  private static String beside(PackValue value, PackValue best) {
    List<String> said =
        new PackReasons(FLAT, sure(new PackOrder(0.01, 20, 0.1)), Purse.of(FLAT.home()))
            .of(value, Optional.of(best));
    assertThat(said.get(1)).startsWith("With all that is not known for sure it has enough air");
    return said.get(2);
  }

  @Test
  void what_is_surer_but_ranks_behind_says_so() {
    assertThat(beside(value(false, false, 0, 0, 0, 100), BEST))
        .isEqualTo(
            "It is surer than A, which has both in 50 of 100 cases, but needs a safety test"
                + " first.");
    assertThat(beside(value(true, false, 0, 0, 0, 100), BEST))
        .isEqualTo("It is surer than A, which has both in 50 of 100 cases.");
  }

  @Test
  void what_needs_a_test_first_says_so() {
    assertThat(beside(value(false, false, 0.002, 5, 0, 100), BEST))
        .isEqualTo("It needs a safety test first, and A does not.");
    PackValue unsafe = value(false, false, 0.002, 5, 0, 100);
    assertThat(beside(unsafe, unsafe)).startsWith("It goes about as far");
  }

  @Test
  void what_is_less_sure_says_how_sure_the_best_is() {
    assertThat(beside(value(true, false, 0.002, 7, 0, 100), BEST))
        .isEqualTo("A has both in 50 of 100 cases.");
    assertThat(beside(value(true, false, 0.002, 6, 0, 100), BEST)).startsWith("It goes about");
    PackValue sure = value(true, false, 0, 0, 0, 200);
    assertThat(beside(value(true, false, 0, 2, 0, 100), sure)).startsWith("It goes about");
  }

  @Test
  void where_none_has_a_chance_what_closes_less_says_how_much() {
    PackValue best = value(true, false, 0.002, 10, 0, 100);
    assertThat(beside(value(true, false, 0.01, 10, 0, 100), best))
        .isEqualTo("It likely closes 25 % of what is lacking, A 65 %.");
  }

  @Test
  void a_stop_gap_says_so_beside_what_is_none() {
    PackValue gap = value(true, true, 0.002, 5, 0, 100);
    assertThat(beside(gap, BEST)).startsWith("Part of it is a stop-gap");
    assertThat(beside(gap, gap)).startsWith("It goes about as far");
  }

  @Test
  void what_is_cheaper_and_still_behind_says_less() {
    assertThat(beside(value(true, false, 0.002, 5, 0, 90), BEST)).contains(" less a year");
    assertThat(beside(value(true, false, 0.002, 5, 0, 110), BEST)).contains(" more a year");
  }

  @Test
  void one_month_is_no_months() {
    List<String> said =
        new PackReasons(FLAT, sure(new PackOrder(0.01, 1, 0.1)), Purse.of(FLAT.home()))
            .of(value(true, false, 0, 0, 1, 10), Optional.empty());
    assertThat(said.get(0)).contains("all 1 month at risk");
    assertThat(said.get(2)).contains("leaves 1 month with wet glass");
  }
}
