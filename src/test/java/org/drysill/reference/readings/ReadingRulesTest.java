package org.drysill.reference.readings;

import static org.assertj.core.api.Assertions.assertThat;

import org.drysill.reference.How;
import org.junit.jupiter.api.Test;

class ReadingRulesTest {
  private final ReadingRules rules = ReadingRules.bundled();

  /** Approved Document F Volume 1, 2021 edition (England), Table B3 (seen). */
  @Test
  void moving_average_limits_are_those_of_table_b3() {
    assertThat(rules.criteria()).extracting(Criterion::id).containsExactly("month", "week", "day");
    assertThat(rules.criteria())
        .extracting(c -> c.below().value())
        .containsExactly(0.65, 0.75, 0.85);
    assertThat(rules.criteria()).extracting(c -> c.source().how()).containsOnly(How.SEEN);
    assertThat(rules.criteria()).extracting(Criterion::writtenFor).containsOnly("new dwellings");
  }

  @Test
  void thresholds_rise_and_classes_count_from_one_to_five() {
    assertThat(rules.thresholds())
        .extracting(t -> t.humidity().value())
        .containsExactly(0.6, 0.7, 0.8);
    assertThat(rules.classes()).extracting(ClassMeaning::number).containsExactly(1, 2, 3, 4, 5);
  }

  @Test
  void accuracies_that_nobody_states_are_marked_as_assumptions() {
    assertThat(rules.accuracy().source().how()).isEqualTo(How.ASSUMPTION);
    assertThat(rules.accuracy().humidity().value()).isEqualTo(0.05);
  }
}
