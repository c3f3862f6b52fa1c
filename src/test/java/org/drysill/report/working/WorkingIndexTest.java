package org.drysill.report.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.physics.Range;
import org.drysill.report.block.WorkingEntry;
import org.drysill.report.block.WorkingFamily;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.UnitSystem;
import org.junit.jupiter.api.Test;

class WorkingIndexTest {
  private static final Numbers NUMBERS = new Numbers(UnitSystem.METRIC, "GBP");
  private final Figure hall = read("hall", "Air of the hall", 18);
  private final Figure attic = read("attic", "Air of the attic", 12);
  private final Figure mean =
      new Figure(
          "mean",
          "Mean air",
          Range.exactly(15),
          Unit.CELSIUS,
          Basis.CALCULATED,
          () ->
              new Working(
                  "T = (T1 + T2) / 2",
                  List.of(Working.Input.of("T1", hall), Working.Input.of("T2", attic)),
                  List.of(),
                  Optional.empty()));

  private static Figure read(String id, String name, double celsius) {
    return new Figure(
        id,
        name,
        Range.exactly(celsius),
        Unit.CELSIUS,
        Basis.MEASURED,
        () -> new Working("as read", List.of(), List.of(), Optional.empty()));
  }

  @Test
  void figures_by_one_formula_share_a_number_and_print_the_formula_once() {
    WorkingIndex index = new WorkingIndex(Found.in(List.of(hall, attic)));
    assertThat(index.mark(hall)).isEqualTo("w1");
    assertThat(index.mark(attic)).isEqualTo("w1.2");
    assertThat(index.mark(hall)).isEqualTo("w1");
    assertThat(index.families(NUMBERS))
        .extracting(WorkingFamily::formula)
        .containsExactly("as read");
  }

  @Test
  void equal_figures_are_one_for_the_reader() {
    WorkingIndex index = new WorkingIndex(Found.in(List.of(hall)));
    assertThat(index.mark(hall)).isEqualTo(index.mark(read("other", hall.name(), 18)));
    assertThat(index.mark(read("warmer", hall.name(), 19))).isEqualTo("w1.2");
  }

  @Test
  void whatever_a_figure_rests_on_gets_a_number_too() {
    WorkingIndex index = new WorkingIndex(Found.in(List.of(mean, hall, attic)));
    index.mark(mean);
    List<WorkingFamily> families = index.families(NUMBERS);
    assertThat(families).extracting(WorkingFamily::number).containsExactly("w1", "w2");
    assertThat(families.get(0).items())
        .extracting(WorkingEntry::inputs)
        .containsExactly(
            "T1 = 18.0\u00a0°C, Air of the hall, w2; T2 = 12.0\u00a0°C, Air of the attic, w2.2");
  }
}
