package org.drysill.assess.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What is stated holds the truth, in homes whose truth is known: 200 homes with fixed seeds. */
class SyntheticHomesTest {
  private static final List<String> UNKNOWNS =
      List.of("model.water", "model.air", "model.leaks", "model.doors");

  @Test
  void intervals_hold_the_truth_in_nine_of_ten_homes() {
    List<SyntheticHome> homes = SyntheticHome.some(200, false, SyntheticHome.Draw.BELIEVED);
    for (String unknown : UNKNOWNS) {
      Coverage coverage = Coverage.of(unknown, homes);
      assertThat(coverage.cases()).isEqualTo(200);
      assertThat(coverage.share()).as(unknown).isGreaterThanOrEqualTo(0.9);
      assertThat(coverage.width()).as(unknown).isLessThan(coverage.widthBefore());
    }
    // Doors that stand wide open read like doors that stand open: their middle comes out low.
    for (String unknown : List.of("model.water", "model.air", "model.leaks")) {
      assertThat(Math.abs(Coverage.of(unknown, homes).bias())).as(unknown).isLessThan(0.1);
    }
    assertThat(Coverage.leftOut(homes)).isLessThan(0.01);
  }
}
