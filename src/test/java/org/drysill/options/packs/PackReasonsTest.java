package org.drysill.options.packs;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Assessment;
import org.drysill.options.Chance;
import org.drysill.options.HourlySpread;
import org.drysill.options.packs.PackValue.Bits;
import org.drysill.options.rank.Purse;
import org.drysill.physics.Range;
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
    return new SureOrder(order, PackValue::wet, PackReasonsTest::chance, 0.8, 0.1);
  }

  private static double chance(PackValue value) {
    return Math.max(0, 1 - value.mould() / 10.0);
  }

  /** As sure by hour as by month, and 30 wet mornings for each month, 10 more or less. */
  private static HourlySpread hourly(PackValue value) {
    double mornings = 30.0 * value.wet();
    double bounds = value.wet() > 0 ? 10 : 0;
    return hourly(new Range(mornings - bounds, mornings, mornings + bounds), chance(value));
  }

  private static HourlySpread hourly(Range mornings, double share) {
    return new HourlySpread(mornings, new Chance(1, 0), new Chance(share, 0.03));
  }

  private static PackReasons reasons(int mouldToday, Function<PackValue, HourlySpread> hourly) {
    return reasons(mouldToday, 0, hourly);
  }

  private static PackReasons reasons(
      int mouldToday, double surest, Function<PackValue, HourlySpread> hourly) {
    return new PackReasons(
        FLAT, sure(new PackOrder(0.01, mouldToday, 0.1)), surest, hourly, Purse.of(FLAT.home()));
  }

  private static String beside(PackValue value, PackValue best) {
    List<String> said = reasons(20, PackReasonsTest::hourly).of(value, Optional.of(best));
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

  /** A has 60, the surest 70 of 100: what has less than 60 stands behind A however cheap it is. */
  @Test
  void what_is_cheaper_and_not_sure_enough_says_what_it_would_take() {
    PackValue best = value(true, false, 0.002, 4, 0, 353);
    PackReasons reasons = reasons(20, 0.7, PackReasonsTest::hourly);
    assertThat(reasons.of(value(true, false, 0.002, 5, 0, 240), Optional.of(best)).get(2))
        .isEqualTo(
            "It costs £113 less a year, all in all, but is not sure enough to go before A: that"
                + " takes 60 of 100 cases here, the surest package has both in 70.");
    assertThat(reasons.of(value(true, false, 0.002, 5, 0, 353), Optional.of(best)).get(2))
        .startsWith("It costs as much a year, all in all, but is not sure enough");
    assertThat(reasons.of(value(true, false, 0.002, 4, 0, 400), Optional.of(best)).get(2))
        .startsWith("It goes about as far as A and costs £47 more a year");
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
  void what_costs_as_much_says_so_without_a_nought() {
    assertThat(beside(value(true, false, 0.002, 5, 0, 100.4), BEST))
        .isEqualTo("It goes about as far as A and costs as much a year, all in all.");
  }

  @Test
  void one_month_is_no_months() {
    List<String> said =
        reasons(1, PackReasonsTest::hourly).of(value(true, false, 0, 0, 1, 10), Optional.empty());
    assertThat(said.get(0)).contains("all 1 month at risk");
    assertThat(said.get(2))
        .isEqualTo(
            "It leaves 1 month with wet glass, summed over windows, and the wettest window is seen"
                + " to be wet on 30 mornings a year (20 to 40 in nine of ten cases).");
  }

  @Test
  void glass_that_is_dry_by_hour_or_by_both_says_so() {
    PackValue wet = value(true, false, 0, 0, 2, 10);
    assertThat(reasons(1, v -> hourly(Range.exactly(0), 1)).of(wet, Optional.empty()).get(2))
        .endsWith("the wettest window is likely wet on no morning of the year.");
    assertThat(reasons(1, v -> hourly(Range.exactly(7), 1)).of(wet, Optional.empty()).get(2))
        .endsWith("is seen to be wet on 7 mornings a year.");
    PackValue dry = value(true, false, 0, 0, 0, 10);
    assertThat(reasons(1, v -> hourly(Range.exactly(0), 1)).of(dry, Optional.empty())).hasSize(2);
    assertThat(reasons(1, v -> hourly(Range.exactly(3), 1)).of(dry, Optional.empty()).get(2))
        .contains("leaves 0 months with wet glass")
        .contains("on 3 mornings");
  }

  @Test
  void another_chance_by_hour_is_told_beside_that_by_month() {
    PackValue value = value(true, false, 0, 5, 0, 10);
    assertThat(reasons(9, v -> hourly(Range.exactly(0), 0.58)).of(value, Optional.empty()).get(1))
        .endsWith("in 50 of 100 cases.");
    assertThat(reasons(9, v -> hourly(Range.exactly(0), 0.3)).of(value, Optional.empty()).get(1))
        .endsWith(
            "in 50 of 100 cases, judged by the means of months; followed hour by hour in 30 of"
                + " 100.");
  }
}
