package org.drysill.report.block;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class PairsTest {
  private static final Fact AREA = new Fact("Floor area", "84 m²");
  private static final Fact PEOPLE = new Fact("People", "3");
  private static final Fact LONG = new Fact("Reason", "mould behind the wardrobe; ".repeat(4));

  @Test
  void facts_stand_below_each_other_unless_they_are_wide() {
    assertThat(new Facts(List.of(), List.of(AREA, PEOPLE)).rows())
        .containsExactly(List.of(AREA), List.of(PEOPLE));
  }

  /** None is lost, and their order stays. */
  @Test
  void a_long_fact_has_a_row_of_its_own_between_pairs() {
    assertThat(Facts.wide(List.of(AREA, PEOPLE, AREA, LONG, PEOPLE)).rows())
        .containsExactly(List.of(AREA, PEOPLE), List.of(AREA), List.of(LONG), List.of(PEOPLE));
  }

  @Test
  void entries_of_less_than_a_column_stand_side_by_side() {
    Entry entry = new Entry("A document", "table 1 and its note; table 2", "seen");
    assertThat(new Entries("", Collections.nCopies(60, entry), "").paired()).isTrue();
    assertThat(new Entries("", Collections.nCopies(70, entry), "").paired()).isFalse();
  }
}
