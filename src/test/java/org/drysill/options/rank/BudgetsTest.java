package org.drysill.options.rank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drysill.OptionsFixtures.study;

import org.drysill.OptionsFixtures;
import org.drysill.options.Budget;
import org.drysill.options.OptionsResult;
import org.drysill.options.RankedMeasure;
import org.junit.jupiter.api.Test;

class BudgetsTest {
  private static final String WRECK = OptionsFixtures.text("wreck");

  private static Budget budget(String survey, String money) {
    return study(survey + "options: {budget: " + money + "}\n").budget().orElseThrow();
  }

  @Test
  void it_is_never_overspent_and_the_sum_is_that_of_its_parts() {
    OptionsResult options = study(WRECK + "options: {budget: 2500}\n");
    Budget budget = options.budget().orElseThrow();
    double defects =
        options.first().stream()
            .flatMap(f -> f.money().stream())
            .mapToDouble(m -> m.firstCost().orElseThrow().likely())
            .sum();
    double bought =
        options.ranked().stream()
            .filter(m -> budget.bought().contains(m.id()))
            .mapToDouble(m -> m.money().firstCost().orElseThrow().likely())
            .sum();
    assertThat(defects).isEqualTo(300);
    assertThat(budget.spent().likely()).isEqualTo(defects + bought).isLessThanOrEqualTo(2500);
    assertThat(budget.bought()).isNotEmpty();
    assertThat(budget.words()).anyMatch(s -> s.startsWith("First "));
    assertThat(budget.words()).anyMatch(s -> s.startsWith("What else comes before"));
  }

  @Test
  void nothing_is_bought_beside_what_excludes_it() {
    OptionsResult options = study(WRECK + "options: {budget: 20000}\n");
    Budget budget = options.budget().orElseThrow();
    for (RankedMeasure one : options.ranked()) {
      for (RankedMeasure other : options.ranked()) {
        boolean both = budget.bought().contains(one.id()) && budget.bought().contains(other.id());
        boolean apart =
            !one.scope().rooms().isEmpty()
                && !other.scope().rooms().isEmpty()
                && other.scope().rooms().stream().noneMatch(one.scope().rooms()::contains);
        assertThat(both && !apart && one.exclusions().contains(title(other.measure())))
            .as(one.id() + " beside " + other.id())
            .isFalse();
      }
    }
  }

  private static String title(String measure) {
    return OptionsFixtures.measure(measure).title();
  }

  @Test
  void what_does_nothing_more_than_a_bought_one_is_left_out() {
    String flat = OptionsFixtures.text("small-flat");
    assertThat(budget(flat, "20000").bought())
        .contains("positive-input.home")
        .doesNotContain("double-glazing.living-n");
  }

  @Test
  void where_what_comes_first_takes_more_than_there_is_it_says_so() {
    Budget budget = budget(WRECK, "100");
    assertThat(budget.words()).contains("£200 is lacking for what comes first.");
  }

  @Test
  void a_budget_that_buys_nothing_says_so() {
    Budget budget = budget(OptionsFixtures.text("small-flat"), "10");
    assertThat(budget.bought()).isEmpty();
    assertThat(budget.words()).contains("No ranked measure fits.", "£10 is left.");
  }

  @Test
  void what_needs_a_safety_test_first_is_not_bought() {
    String fire =
        OptionsFixtures.text("small-flat")
            .replace(
                "  heating:",
                "  combustion_appliances: [{kind: open-flued fire, room: living}]\n  heating:");
    OptionsResult options = study(fire + "options: {budget: 20000}\n");
    assertThat(options.ranked())
        .filteredOn(m -> !m.admissible())
        .isNotEmpty()
        .noneMatch(m -> options.budget().orElseThrow().bought().contains(m.id()));
  }
}
